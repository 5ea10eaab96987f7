// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Labels in one column, values in the next.
#include "present/fields.hpp"

#include <algorithm>

#include "present/text.hpp"

namespace present {

void Fields::add(const std::string& label, const std::string& value) {
    if (!value.empty())
        fields_.emplace_back(label, safe(value));
}

std::string Fields::text(std::size_t width) const {
    constexpr std::size_t k_indent = 2;
    constexpr std::size_t k_gap = 2;
    std::size_t column = 0;
    for (const auto& field : fields_)
        column = std::max(column, display_width(field.first));
    column += k_indent + k_gap;
    std::string text;
    for (const auto& [label, value] : fields_) {
        std::string left = std::string(k_indent, ' ') + label;
        for (const std::string& line : wrapped(value, width > column ? width - column : 1)) {
            text += padded(left, column, false) + line + '\n';
            left.clear();
        }
    }
    return text;
}

} // namespace present
