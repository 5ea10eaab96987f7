// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Pages to print: one shell for all of them. Valid as XML; no scripts, nothing from outside.
#pragma once

#include <string>
#include <string_view>

namespace present {

enum class Paper { a4, letter };

// A whole document. `title` is text; `style` and `body` are markup.
[[nodiscard]] std::string html_page(std::string_view title, Paper paper, std::string_view style,
                                    std::string_view body);

} // namespace present
