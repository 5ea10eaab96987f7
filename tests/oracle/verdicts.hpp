// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Ranges against needs, and several parts of one rule taken together.
#pragma once

#include "length/range.hpp"
#include "oracle/rules.hpp"

namespace oracle {

inline Judged passed() {
    return {match::Verdict::pass, {}, false};
}
inline Judged passed_after_work() {
    return {match::Verdict::pass, {}, true};
}
inline Judged unknown() {
    return {match::Verdict::unknown, {}, false};
}
inline Judged failed(Fraction shortfall = {}) {
    return {match::Verdict::fail, shortfall, false};
}

// Every value is at least `need`, or none is, or it is not known.
inline match::Verdict at_least(const length::Range& have, length::Length need) {
    if (have.lo >= need) {
        return match::Verdict::pass;
    }
    return have.hi < need ? match::Verdict::fail : match::Verdict::unknown;
}

inline Judged judged(match::Verdict verdict, Fraction shortfall) {
    return verdict == match::Verdict::fail ? failed(shortfall) : Judged{verdict, {}, false};
}

// Fail beats unknown beats pass; of two failures the greater shortfall counts.
inline Judged both(const Judged& a, const Judged& b) {
    using match::Verdict;
    if (a.verdict == Verdict::fail && b.verdict == Verdict::fail) {
        return failed(greater_of(a.shortfall, b.shortfall));
    }
    if (a.verdict == Verdict::fail || b.verdict == Verdict::fail) {
        return a.verdict == Verdict::fail ? a : b;
    }
    if (a.verdict == Verdict::unknown || b.verdict == Verdict::unknown) {
        return unknown();
    }
    return {Verdict::pass, {}, a.work || b.work};
}

} // namespace oracle
