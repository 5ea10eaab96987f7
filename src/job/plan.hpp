// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A job of many lines: what to pull, and the runs in an order in which drills and tools are changed
// least: every drill once, every body once, its pilots one after the other.
#pragma once

#include "job/sheet.hpp"

namespace job {

struct Pull {
    std::string kind;   // `body`, `pilot`, `drill`
    std::string number; // or the drill's name
    std::string place;
};

struct Run {
    std::string operation; // `drill`, `counterbore`
    std::string with;      // `F`, `body 12, pilot 30`
    int holes = 0;
    std::vector<std::size_t> lines; // of the job
};

struct Plan {
    std::vector<Pull> pull;
    std::vector<Run> runs; // all drilling, by drill; then all counterboring, by body and pilot
    std::vector<std::size_t> not_ready; // lines with nothing ready or after work
};

[[nodiscard]] Plan plan_job(const std::vector<Sheet>& sheets);

} // namespace job
