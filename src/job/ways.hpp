// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// When no counterbore on hand will do: what the tools of a shop allow instead, each with its
// conditions and cautions. Common practice.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "match/answer.hpp"

namespace job {

enum class On { drill_press, mill, lathe };
// Reads `drill press` (also in one word), `mill`, `lathe`.
[[nodiscard]] std::optional<On> read_on(std::string_view text);

struct Way {
    std::string what;       // `end mill`
    std::string how;        // with this screw's sizes
    std::string conditions; // under which it works
    std::string caution;
};

// The ways for a question whose report has nothing to use or measure, the machine's best first.
[[nodiscard]] std::vector<Way> other_ways(const match::Question& question,
                                          const match::Report& report, On on, length::Unit unit);

} // namespace job
