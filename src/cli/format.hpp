// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `--json` and `--csv`, for every command that prints records.
#pragma once

#include <string>
#include <vector>

#include "cli/context.hpp"
#include "cli/syntax.hpp"

namespace cli {

struct Format {
    bool json = false;
    bool csv = false;
};

void declare_format(const Syntax& syntax, Format& format);

// A row of CSV. On a terminal what could disturb it is escaped.
void print_csv_row(std::vector<std::string> cells, const Context& context);
// The first is the header.
void print_csv(const std::vector<std::vector<std::string>>& rows, const Context& context);

} // namespace cli
