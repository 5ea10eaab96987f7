// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What is worth measuring, for people and for programs.
#pragma once

#include <string>
#include <vector>

#include "match/to_measure.hpp"
#include "present/json.hpp"
#include "present/style.hpp"

namespace present {

struct ToMeasureLayout {
    length::Unit unit;
    Style style;
    std::size_t width;
    bool helpers = false; // also what settles nothing alone
};

// `asked` is the list that was asked for.
[[nodiscard]] std::string to_measure_text(const std::vector<match::ToMeasure>& list,
                                          const std::vector<match::Asked>& asked,
                                          const ToMeasureLayout& layout);
[[nodiscard]] Json to_measure_json(const std::vector<match::ToMeasure>& list,
                                   const std::vector<match::Asked>& asked);
// The first row is the header; sizes in `unit`.
[[nodiscard]] std::vector<std::vector<std::string>>
to_measure_rows(const std::vector<match::ToMeasure>& list, const std::vector<match::Asked>& asked,
                length::Unit unit);

} // namespace present
