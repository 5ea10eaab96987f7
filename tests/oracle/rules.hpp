// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The ten rules, a plain function each. A rule passes if it holds for every value that the ranges
// allow, fails if for none, and is unknown otherwise or where something it needs is not recorded.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "match/answer.hpp"
#include "oracle/fraction.hpp"
#include "oracle/triple.hpp"

namespace oracle {

struct Judged {
    match::Verdict verdict = match::Verdict::pass;
    Fraction shortfall; // of a failure; nothing where it is not a matter of size
    bool work = false;  // passes only after work
};

[[nodiscard]] Judged head_in_the_counterbore(const Context& context, const Triple& triple);
[[nodiscard]] Judged pilot_in_the_hole(const Context& context, const Triple& triple);
[[nodiscard]] Judged drill(const Context& context, const Triple& triple);
[[nodiscard]] Judged pilot_shank_in_the_bore(const Context& context, const Triple& triple);
[[nodiscard]] Judged set_screw_on_the_flat(const Context& context, const Triple& triple);
[[nodiscard]] Judged teeth_reach_the_hole(const Context& context, const Triple& triple);
[[nodiscard]] Judged depth(const Context& context, const Triple& triple);
[[nodiscard]] Judged pilot_has_room_and_guidance(const Context& context, const Triple& triple);
[[nodiscard]] Judged in_hand(const Context& context, const Triple& triple);
[[nodiscard]] Judged shank_in_the_spindle(const Context& context, const Triple& triple);

// How far a pilot is from running in this hole, as a share of the size it would have to be.
// Both ends are known and rule 2 fails.
// Whether body and pilot surely hold each other in different ways.
[[nodiscard]] bool unlike_pair(const Context& context, const Triple& triple);

[[nodiscard]] Fraction pilot_misfit(const match::Shop& shop, const length::Range& hole,
                                    const length::Range& pilot_dia);

struct Ruling {
    std::string_view rule;
    Judged judged;
};

// Every rule that applies, in order. `without_pilot` is for a body whose pilot is yet to be made:
// only what the body itself decides.
[[nodiscard]] std::vector<Ruling> rulings(const Context& context, const Triple& triple);
[[nodiscard]] std::vector<Ruling> rulings_without_pilot(const Context& context,
                                                        const Triple& triple);

} // namespace oracle
