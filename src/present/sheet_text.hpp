// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The operation sheet for a person at a terminal.
#pragma once

#include <string>
#include <vector>

#include "job/plan.hpp"
#include "job/sheet.hpp"
#include "present/style.hpp"

namespace present {

struct SheetLayout {
    length::Unit unit = length::Unit::inch;
    Style style;
    std::size_t width = 80;
    bool explain = false; // formula, inputs and source of every figure
};

// Figures, tick list, cautions; the other ways where no counterbore will do.
[[nodiscard]] std::string sheet_text(const job::Sheet& sheet, const SheetLayout& layout);

// What to pull, and the order of work for a job of many lines; without the sheets.
[[nodiscard]] std::string plan_text(const job::Plan& plan, const std::vector<job::Sheet>& sheets,
                                    const SheetLayout& layout);

} // namespace present
