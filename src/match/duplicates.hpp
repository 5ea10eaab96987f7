// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Tools that do the same, and those that nobody would miss.
#pragma once

#include <cstdint>
#include <vector>

#include "match/jobs.hpp"
#include "match/tools.hpp"

namespace match {

// Bodies, or pilots, that serve exactly the same questions.
struct AlikeTools {
    bool pilots = false;
    std::vector<std::int64_t> tools;    // the one to keep first
    std::vector<std::size_t> questions; // places in the jobs, ascending
};

struct Duplicates {
    std::vector<AlikeTools> alike;            // by the number of the first
    std::vector<std::int64_t> each_can_go;    // any one of them, ascending
    std::vector<std::int64_t> can_go_at_once; // all of them, ascending; no further one with them
};

// A body serves a question that some pilot makes it ready or after work for, a pilot one that it
// does that for in some body. A tool can go if without it no answer gets worse: none of the first
// `house` jobs, and of the others none that is ready or after work. Where the best that a house job
// has is measure first, nobody knows which tool will do, and none of them can go. Tools that serve
// nothing, as far as is known, are not looked at.
// The order to keep in: condition, work noted, how many dimensions are not known, how far the known
// ones are from exact, number.
[[nodiscard]] Duplicates find_duplicates(const Jobs& jobs, std::size_t house, const Tools& tools);

} // namespace match
