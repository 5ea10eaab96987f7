// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a rule finds of one body with one pilot and one hole: the verdict, and how far short it
// falls. Small and without text, since most findings are never shown.
#pragma once

#include <array>
#include <cstdint>

#include "match/answer.hpp"

namespace match {

enum class Rule : std::uint8_t {
    head,
    running,
    drill,
    slip,
    flat,
    teeth,
    depth,
    guidance,
    in_hand,
    spindle,
};
inline constexpr std::size_t k_rules = 10;

// Fixed names: output that other programs read depends on them.
[[nodiscard]] std::string_view to_text(Rule);

__extension__ using WideInteger = __int128; // products of nanometres do not fit in 64 bits

// By how much a failure misses, as a share of what was needed. Not dimensional: 0.
struct Shortfall {
    std::int64_t missing = 0;
    std::int64_t needed = 1; // > 0

    friend bool operator<(const Shortfall& a, const Shortfall& b) {
        return static_cast<WideInteger>(a.missing) * b.needed <
               static_cast<WideInteger>(b.missing) * a.needed;
    }
};

struct Finding {
    Rule rule = Rule::head;
    Verdict verdict = Verdict::pass;
    Shortfall shortfall; // of a failure
    bool work = false;   // passes once work is done
};

// A value that must be no less than `need`.
[[nodiscard]] constexpr Verdict at_least(const length::Range& have, length::Length need) {
    if (have.lo >= need)
        return Verdict::pass;
    return have.hi < need ? Verdict::fail : Verdict::unknown;
}

// A value that must lie in [least, most].
[[nodiscard]] constexpr Verdict within(const length::Range& have, length::Length least,
                                       length::Length most) {
    if (have.lo >= least && have.hi <= most)
        return Verdict::pass;
    return have.hi < least || have.lo > most ? Verdict::fail : Verdict::unknown;
}

// How far outside [least, most] a failing range lies.
[[nodiscard]] constexpr length::Length outside(const length::Range& have, length::Length least,
                                               length::Length most) {
    return have.hi < least ? least - have.hi : have.lo > most ? have.lo - most : length::Length();
}

// Fail outweighs unknown, unknown outweighs pass.
[[nodiscard]] constexpr Verdict worse(Verdict a, Verdict b) {
    if (a == Verdict::fail || b == Verdict::fail)
        return Verdict::fail;
    return a == Verdict::unknown || b == Verdict::unknown ? Verdict::unknown : Verdict::pass;
}

} // namespace match
