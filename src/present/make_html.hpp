// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The make-list as one sheet to print: what to make, from which bar, and a page for every piece
// with its drawing, the order of work and where its limits are from. Valid as XML; no scripts,
// nothing from outside.
#pragma once

#include <string>

#include "make/drawing.hpp"
#include "make/list.hpp"
#include "make/stock.hpp"
#include "present/html.hpp"

namespace present {

struct Sheet {
    Paper paper = Paper::a4;
    drawing::Lettering lettering;
    std::string date; // ISO 8601, of the drawings
};

// `specs` are those of the pieces, in order.
[[nodiscard]] std::string make_html(const make::MakeList& list,
                                    const std::vector<make::Spec>& specs,
                                    const std::vector<make::BarPlan>& bars, const Sheet& sheet);

} // namespace present
