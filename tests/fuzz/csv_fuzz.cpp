// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// CSV: read at once and read byte by byte gives the same rows and the same complaints, and what was
// read without a complaint and is written again reads back the same.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>

#include "present/csv.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string text(reinterpret_cast<const char*>(data), size);
    const present::CsvFile whole = present::read_csv(text);
    std::size_t at = 0;
    const present::CsvFile parts = present::read_csv([&](char* to, std::size_t) {
        if (at == text.size())
            return std::size_t{0};
        *to = text[at++];
        return std::size_t{1};
    });
    if (whole.header != parts.header || whole.problems != parts.problems ||
        whole.rows.size() != parts.rows.size())
        std::abort();
    // A second byte order mark would be passed over in what is written again.
    if (!whole.problems.empty() || whole.header.front().rfind("\xEF\xBB\xBF", 0) == 0)
        return 0;
    std::string again = present::csv_row(whole.header);
    for (const auto& row : whole.rows)
        again += present::csv_row(row.cells);
    const present::CsvFile back = present::read_csv(again);
    if (back.header != whole.header || back.rows.size() != whole.rows.size())
        std::abort();
    for (std::size_t i = 0; i < back.rows.size(); ++i)
        if (back.rows[i].cells != whole.rows[i].cells)
            std::abort();
    return 0;
}
