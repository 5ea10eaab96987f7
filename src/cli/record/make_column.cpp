// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Cells that are not dimensions.
#include "cli/record/make_column.hpp"

#include <fmt/format.h>

#include <charconv>

#include "present/csv.hpp"
#include "present/utf8.hpp"
#include "trade/text.hpp"

namespace cli::record {

std::int64_t read_count(std::string_view cell, std::int64_t most) {
    const std::string_view text = trade::trimmed(cell);
    std::int64_t value = 0;
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool whole = problem == std::errc() && end == text.data() + text.size();
    if (!whole || value < 1 || value > most)
        throw error::BadData("not a whole number from 1 to " + std::to_string(most) + ": '" +
                             std::string(cell) + "'");
    return value;
}

std::optional<bool> read_flag(std::string_view cell) {
    const std::string word = trade::folded(cell);
    if (word.empty())
        return std::nullopt;
    if (word == "yes" || word == "y")
        return true;
    if (word == "no" || word == "n")
        return false;
    throw error::BadData("neither yes nor no: '" + std::string(cell) + "'",
                         "yes, no, or nothing when it is not known");
}

std::string read_text(const std::string& cell) {
    if (cell.size() > present::k_longest_cell) // which could not be read back from CSV
        throw error::BadData(fmt::format("longer than {} bytes", present::k_longest_cell));
    const std::size_t bad = present::find_invalid(cell);
    if (bad != std::string_view::npos)
        throw error::BadData(fmt::format("not UTF-8 at byte {}: '{}'", bad, cell));
    return cell;
}

std::vector<std::string> read_list(const std::string& cell) {
    return trade::split(read_text(cell), ';');
}

std::string list_text(const std::vector<std::string>& parts) {
    return fmt::format("{}", fmt::join(parts, "; "));
}

trade::How how_in(const Cells& cells, const std::string& how_column) {
    const auto cell = cells.find(how_column);
    if (how_column.empty() || cell == cells.end())
        return trade::How::unstated;
    try {
        return trade::parse_how(cell->second);
    } catch (const error::BadData&) {
        return trade::How::unstated; // its own column says so
    }
}

} // namespace cli::record
