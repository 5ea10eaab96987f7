// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/finding.hpp"

#include <fmt/format.h>

namespace cli {

namespace {

std::string value(const std::optional<std::string>& text) {
    return text ? *text : "not known";
}

} // namespace

std::string line_of(const store::Finding& finding) {
    std::string line = finding.table;
    if (finding.number)
        line += fmt::format(" {}", *finding.number);
    else if (!finding.key.empty())
        line += ' ' + finding.key;
    if (!finding.column.empty())
        line += fmt::format(", {}: {} -> {}", finding.column, value(finding.recorded),
                            value(finding.found));
    return line + (line.empty() ? "" : ": ") + finding.what;
}

} // namespace cli
