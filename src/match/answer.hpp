// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The answers, with their reasons.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "match/question.hpp"

namespace match {

enum class AnswerKind : std::uint8_t { ready, after_work, measure_first, make_pilot, closest };
inline constexpr std::size_t k_answer_kinds = 5;
[[nodiscard]] std::string_view to_text(AnswerKind); // `ready`, `after work`, ...

enum class Verdict : std::uint8_t { pass, fail, unknown };
[[nodiscard]] std::string_view to_text(Verdict);

// In the order of preference.
enum class SizeClass { recommended, tool_size, small, large };
[[nodiscard]] std::string_view to_text(SizeClass);

// A rule as it is reported: its fixed name, the result, what was needed and what the tool has.
struct Reason {
    std::string rule;
    Verdict result = Verdict::pass;
    std::string need;
    std::string have;
};

// Where the pilot of an answer is.
enum class Seat { integral, in_this_body, free, in_other_body, none };

struct Answer {
    AnswerKind kind = AnswerKind::ready;
    std::int64_t body = 0;
    std::optional<std::int64_t> pilot; // absent: integral, to be made, or none
    Seat seat = Seat::none;
    length::MaybeRange pilot_dia;      // of the part that runs in the hole
    std::string pilot_place;           // of a free pilot
    int other_pilots = 0;              // further pilots that would do in this body
    std::optional<trade::Drill> drill; // absent: hole given as measured, or none suits
    length::MaybeRange hole;           // as it may come out, or as measured
    bool reamed = false;               // the hole, for a shoulder
    length::MaybeRange pilot_to_make;  // for that hole, where the answer is to make one
    length::MaybeRange counterbore;    // cutting diameter
    std::optional<SizeClass> size;
    length::MaybeRange running_clearance; // hole less pilot, to expect
    std::optional<length::Length> depth;  // to cut; absent: head height or washer unknown
    std::vector<Reason> rules;            // those that apply, in the order of the rules
    std::vector<std::string> work;        // needed first
    std::vector<std::string> assumed;     // for sizes that nobody recorded
    std::vector<std::string> notes;       // play, pilot to be moved, a better drill, ...
    std::vector<std::string> floor_notes; // of the floor: edge to break, what is left under it
    std::string place;
};

// The tool that the job wants, whether or not the shop has it.
struct Wanted {
    length::MaybeRange cutter;               // smallest that takes the head, to the largest
    std::optional<length::Length> published; // counterbore by the tables
    std::string published_source;
    std::optional<trade::Drill> drill; // the preferred one; absent: hole as measured
    length::MaybeRange hole;
    bool reamed = false;
    length::MaybeRange pilot; // runs well in that hole
    std::optional<length::Length> depth;
};

struct Report {
    Wanted wanted;
    std::vector<Answer> answers;                       // in order
    std::array<std::int64_t, k_answer_kinds> counts{}; // bodies by answer
};

// The best answer of every body, in the documented order, reasons in `unit`.
// At most `most` answers are spelled out (closest: at most five), 0 for every one; counts are
// complete.
[[nodiscard]] Report match(const Question& question, const Shop& shop, const trade::Rack& rack,
                           length::Unit unit, std::size_t most);

// What would make this answer ready, or is missing, in one sentence.
[[nodiscard]] std::string next_step(const Answer& answer);

} // namespace match
