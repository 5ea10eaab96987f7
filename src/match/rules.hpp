// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The ten rules. Each has a file of its own with two functions: `judge_` finds (pure, no text),
// `explain_` says what was needed and what the tool has, for the findings that are shown.
#pragma once

#include <string>
#include <vector>

#include "match/finding.hpp"
#include "match/triple.hpp"

namespace match {

// What was needed and what there is, in the unit of the reader.
struct Explanation {
    std::string need;
    std::string have;
};

// 1. The head goes into the counterbore, the cutter is not too large, and the hole leaves a seat.
[[nodiscard]] Finding judge_head(const Job& job, const Triple& triple);
[[nodiscard]] Explanation explain_head(const Job& job, const Triple& triple, const Records& records,
                                       length::Unit unit);

// 2. The pilot runs in the hole.
[[nodiscard]] Finding judge_running(const Job& job, const Triple& triple);
[[nodiscard]] Explanation explain_running(const Job& job, const Triple& triple,
                                          const Records& records, length::Unit unit);

// 3. The hole passes the screw.
[[nodiscard]] Finding judge_drill(const Job& job, const Triple& triple);
[[nodiscard]] Explanation explain_drill(const Job& job, const Triple& triple,
                                        const Records& records, length::Unit unit);

// 4. The pilot's shank slips into the body's bore.
[[nodiscard]] Finding judge_slip(const Job& job, const Triple& triple);
[[nodiscard]] Explanation explain_slip(const Job& job, const Triple& triple, const Records& records,
                                       length::Unit unit);

// 5. The set screw bears on the flat.
[[nodiscard]] Finding judge_flat(const Job& job, const Triple& triple);
[[nodiscard]] Explanation explain_flat(const Job& job, const Triple& triple, const Records& records,
                                       length::Unit unit);

// 6. The teeth reach in to the hole.
[[nodiscard]] Finding judge_teeth(const Job& job, const Triple& triple);
[[nodiscard]] Explanation explain_teeth(const Job& job, const Triple& triple,
                                        const Records& records, length::Unit unit);

// 7. The body reaches the depth.
[[nodiscard]] Finding judge_depth(const Job& job, const Triple& triple);
[[nodiscard]] Explanation explain_depth(const Job& job, const Triple& triple,
                                        const Records& records, length::Unit unit);

// 8. The pilot has room below and guidance before the teeth touch.
[[nodiscard]] Finding judge_guidance(const Job& job, const Triple& triple);
[[nodiscard]] Explanation explain_guidance(const Job& job, const Triple& triple,
                                           const Records& records, length::Unit unit);

// 9. Body and pilot are in hand.
[[nodiscard]] Finding judge_in_hand(const Job& job, const Triple& triple);
[[nodiscard]] Explanation explain_in_hand(const Job& job, const Triple& triple,
                                          const Records& records, length::Unit unit);

// 10. The shank goes in the spindle.
[[nodiscard]] Finding judge_spindle(const Job& job, const Triple& triple);
[[nodiscard]] Explanation explain_spindle(const Job& job, const Triple& triple,
                                          const Records& records, length::Unit unit);

// Rule 5: half the point of the body's set screw, whose size must be known.
[[nodiscard]] length::Length half_point(const Job& job, const trade::BodyFacts& body);

// Rule 1: what the cutter must have over the head, with this pilot.
[[nodiscard]] length::Length clearance_needed(const Job& job, const Triple& triple);

// Rule 1, of the hole alone: it leaves the head a seat.
[[nodiscard]] bool leaves_seat(const Job& job, const CandidateHole& hole);

// Rule 6: the hole that the teeth must reach.
[[nodiscard]] length::Range hole_for_teeth(const Job& job, const CandidateHole& hole);

// Rules 7 and 8: what stands for a size that nobody recorded.
[[nodiscard]] bool assumes_reach(const Job& job, const trade::BodyFacts& body);
[[nodiscard]] bool assumes_pilot_length(const Job& job, const Triple& triple);

// Rule 9, of one tool: retired, on loan or broken.
template <typename Facts>
[[nodiscard]] bool is_out_of_use(const Facts& tool) {
    return tool.gone || tool.condition == trade::Condition::broken;
}

// What each rule asks to be done first, where it passes after work.
void add_slip_work(const Triple& triple, std::vector<std::string>& work);
void add_flat_work(const Job& job, const Triple& triple, std::vector<std::string>& work);

} // namespace match
