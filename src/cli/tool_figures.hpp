// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Stored tools as what was measured of them.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "cli/tool.hpp"
#include "match/likeness.hpp"

namespace cli {

// A removable pilot that is in a body counts as its pilot.
[[nodiscard]] match::ToolFigures figures_of(const Tool& tool,
                                            const std::vector<trade::Pilot>& pilots);

struct UnnamedTool {
    std::int64_t number = 0;
    std::string about; // `counterbore`, `pilot`
    match::ToolFigures figures;
};

// Bodies whose kind or kind of pilot nobody knows, or that bear no mark, and pilots whose diameter
// is not known from a mark; less the retired ones and those of which nothing is measured.
[[nodiscard]] std::vector<UnnamedTool> unnamed_tools(const store::File& file);

} // namespace cli
