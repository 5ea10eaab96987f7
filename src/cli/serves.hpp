// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The screws that one tool serves.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cli/tool.hpp"
#include "match/answer.hpp"

namespace cli {

struct Served {
    std::string screw;
    std::string hole; // of the house list; empty: any
    match::Answer answer;
};

// With all the shop's other tools at hand: the screws of the house list, or if that is empty the
// listed socket head and fillister screws of about this size. Those for which nothing can be done
// are left out.
[[nodiscard]] std::vector<Served> served_screws(const Tool& tool, Context& context);

} // namespace cli
