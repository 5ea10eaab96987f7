// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "tables.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <stdexcept>

#include "length/parse.hpp"

namespace tables {

namespace {

template <typename Rows, typename Wanted>
auto one_of(const Rows& rows, std::string_view what, std::string_view size, Wanted wanted) {
    for (const auto& row : rows)
        if (wanted(row))
            return row;
    throw std::out_of_range(fmt::format("no row: {} {}", what, size));
}

trade::SizeSystem system_of(const std::string& text) {
    if (text == "number")
        return trade::SizeSystem::number;
    if (text == "inch")
        return trade::SizeSystem::inch;
    return text == "metric" ? trade::SizeSystem::metric : trade::SizeSystem::ba;
}

} // namespace

const store::Reference& reference() {
    static const store::Reference tables;
    return tables;
}

std::vector<trade::ScrewSize> sizes() {
    SQLite::Statement query(reference().database(),
                            "SELECT system, name, diameter_nm FROM size ORDER BY diameter_nm");
    std::vector<trade::ScrewSize> result;
    while (query.executeStep())
        result.push_back({system_of(query.getColumn(0)), query.getColumn(1),
                          length::Length::from_nm(query.getColumn(2).getInt64())});
    return result;
}

trade::Head head(std::string_view series, std::string_view size) {
    return one_of(reference().heads(size), series, size,
                  [&](const auto& row) { return row.series == series; });
}

trade::Clearance clearance(std::string_view system, std::string_view size) {
    return one_of(reference().clearances(size), system, size,
                  [&](const auto& row) { return row.system == system; });
}

trade::Counterbore counterbore(std::string_view rule, std::string_view size) {
    return one_of(reference().counterbores(size), rule, size,
                  [&](const auto& row) { return row.rule == rule; });
}

trade::Washer washer(std::string_view series, std::string_view size) {
    return one_of(reference().washers(size), series, size,
                  [&](const auto& row) { return row.series == series; });
}

trade::TapDrill tap_drill(std::string_view size, std::string_view pitch) {
    return one_of(reference().tap_drills(size), size, pitch,
                  [&](const auto& row) { return row.pitch == pitch; });
}

trade::Drill drill(std::string_view name) {
    using trade::DrillKind;
    for (const auto kind :
         {DrillKind::fraction, DrillKind::number, DrillKind::letter, DrillKind::metric})
        for (const auto& row : reference().drills(kind))
            if (row.name == name)
                return row;
    throw std::out_of_range(fmt::format("no drill: {}", name));
}

length::Length in(std::string_view text) {
    return length::parse_length(text, length::Unit::inch).value;
}
length::Length mm(std::string_view text) {
    return length::parse_length(text, length::Unit::millimetre).value;
}

} // namespace tables
