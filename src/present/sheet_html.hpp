// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Operation sheets in large print, a page each: tools, the section of the hole, figures, tick list,
// cautions. Valid as XML; no scripts, nothing from outside.
#pragma once

#include <string>
#include <vector>

#include "drawing/drawing.hpp"
#include "job/plan.hpp"
#include "present/html.hpp"

namespace present {

// With a plan, for a job of many lines, the first page says what to pull and the order of work.
[[nodiscard]] std::string sheet_html(const std::vector<job::Sheet>& sheets, const job::Plan* plan,
                                     Paper paper, const drawing::Lettering& lettering);

} // namespace present
