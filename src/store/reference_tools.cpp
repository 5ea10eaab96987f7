// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The counterbores and pilots that standards and handbooks list.
#include <SQLiteCpp/SQLiteCpp.h>

#include "store/reference.hpp"
#include "store/reference_read.hpp"
#include "store/statements.hpp"

namespace store {

namespace {

constexpr auto k_tools = R"(
    SELECT standard, edition, coalesce(size, ''), hole, unit,
           coalesce(cut_dia_nm, cut_from_nm), coalesce(cut_dia_nm, cut_to_nm), cut_min_nm,
           cut_max_nm, pilot_kind,
           coalesce(pilot_dia_nm, pilot_from_nm), coalesce(pilot_dia_nm, pilot_to_nm),
           pilot_min_nm, pilot_max_nm, bore_nm, bore_nm, NULL, NULL,
           shank, shank_dia_nm, coalesce(shank_dia_to_nm, shank_dia_nm), NULL, NULL,
           citation, tool.confidence, tool.note
    FROM tool JOIN source ON source.id = tool.source
    WHERE kind <> 'scope' AND (?1 IS NULL OR size = ?1) ORDER BY tool.id)";

constexpr auto k_pilots = R"(
    SELECT standard, coalesce(size, ''), hole, unit,
           coalesce(cut_dia_nm, cut_from_nm), coalesce(cut_dia_nm, cut_to_nm), NULL, NULL,
           coalesce(pilot_dia_nm, pilot_from_nm), coalesce(pilot_dia_nm, pilot_to_nm),
           pilot_min_nm, pilot_max_nm,
           shank_dia_nm, coalesce(shank_dia_to_nm, shank_dia_nm), shank_min_nm, shank_max_nm,
           retention, citation, pilot.confidence, pilot.note
    FROM pilot JOIN source ON source.id = pilot.source
    WHERE kind <> 'rule' ORDER BY pilot.id)";

length::MaybeRange range_at(SQLite::Statement& row, int at) {
    const auto lo = maybe_length_at(row, at);
    const auto hi = maybe_length_at(row, at + 1);
    return lo && hi ? length::MaybeRange(length::Range{*lo, *hi}) : std::nullopt;
}

// Four columns: listed from and to, least and most.
trade::PublishedSize size_at(SQLite::Statement& row, int at) {
    return {range_at(row, at), range_at(row, at + 2)};
}

std::vector<trade::PublishedTool> tools_of(SQLite::Statement& row) {
    std::vector<trade::PublishedTool> result;
    while (row.executeStep())
        result.push_back({text_at(row, 0), text_at(row, 1), text_at(row, 2), text_at(row, 3),
                          unit_at(row, 4), size_at(row, 5), text_at(row, 9), size_at(row, 10),
                          size_at(row, 14), text_at(row, 18), size_at(row, 19),
                          origin_at(row, 23)});
    return result;
}

} // namespace

std::vector<trade::PublishedTool> Reference::published_tools() const {
    Lent row(*statements_, k_tools);
    (*row).bind(1);
    return tools_of(*row);
}

std::vector<trade::PublishedTool> Reference::published_tools_for(std::string_view size) const {
    Lent row(*statements_, k_tools);
    (*row).bind(1, std::string(size));
    return tools_of(*row);
}

std::vector<trade::PublishedPilot> Reference::published_pilots() const {
    SQLite::Statement row(*database_, k_pilots);
    std::vector<trade::PublishedPilot> result;
    while (row.executeStep())
        result.push_back({text_at(row, 0), text_at(row, 1), text_at(row, 2), unit_at(row, 3),
                          size_at(row, 4), size_at(row, 8), size_at(row, 12), text_at(row, 16),
                          origin_at(row, 17)});
    return result;
}

} // namespace store
