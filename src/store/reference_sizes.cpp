// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The tables that are read one screw size at a time, each by its index.
#include <SQLiteCpp/SQLiteCpp.h>

#include "length/print.hpp"
#include "store/reference.hpp"
#include "store/reference_read.hpp"
#include "store/statements.hpp"

namespace store {

namespace {

using length::Length;
using length::Unit;

constexpr auto k_heads = R"(
    SELECT head.series, series.form, size.name, size.system, size.diameter_nm, coarse, fine,
           screw_dia_nm, min_nm, max_nm, head_limit.note, head_height_max_nm, head_height_min_nm,
           drive, drive_size_nm, recess, head.unit, fillet_dia_max_nm, thread,
           citation, head.confidence, head.note
    FROM head
    JOIN series ON series.name = head.series
    JOIN size ON size.name = head.size
    JOIN head_limit ON head_limit.head = head.id
    JOIN source ON source.id = head.source
    WHERE head.size = ? ORDER BY series.rank)";

constexpr auto k_sizes_of_heads = R"(
    SELECT name FROM size WHERE name IN (SELECT size FROM head)
    ORDER BY CASE system WHEN 'number' THEN 1 WHEN 'inch' THEN 2 WHEN 'metric' THEN 3 ELSE 4 END,
             diameter_nm, name)";

constexpr auto k_clearances = R"(
    SELECT system, close.name, close.diameter_nm, normal.name, normal.diameter_nm,
           loose.name, loose.diameter_nm, citation, clearance.confidence, clearance.note
    FROM clearance
    JOIN source ON source.id = clearance.source
    LEFT JOIN drill AS close ON close.name = clearance.close
    LEFT JOIN drill AS normal ON normal.name = clearance.normal
    LEFT JOIN drill AS loose ON loose.name = clearance.loose
    WHERE size = ? ORDER BY clearance.id)";

constexpr auto k_counterbores = R"(
    SELECT counterbore_head.series, counterbore.rule, counterbore_rule.kind, diameter_nm, unit,
           depth_addition_nm, edge_countersink_nm, citation, counterbore.confidence,
           counterbore.note
    FROM counterbore
    JOIN counterbore_rule ON counterbore_rule.name = counterbore.rule
    JOIN source ON source.id = counterbore.source
    LEFT JOIN counterbore_head ON counterbore_head.rule = counterbore.rule
    LEFT JOIN series ON series.name = counterbore_head.series
    WHERE size = ? ORDER BY counterbore_rule.rank, series.rank)";

constexpr auto k_washers = R"(
    SELECT series, inside_dia_nm, outside_dia_max_nm, thickness_max_nm, citation,
           washer.confidence, washer.note
    FROM washer
    JOIN washer_series ON washer_series.name = washer.series
    JOIN source ON source.id = washer.source
    WHERE size = ? ORDER BY washer_series.rank)";

constexpr auto k_tap_drills = R"(
    SELECT pitch, drill, diameter_nm, citation, thread.confidence, thread.note, thread
    FROM thread
    JOIN drill ON drill.name = thread.drill
    JOIN source ON source.id = thread.source
    WHERE size = ? ORDER BY thread.id)";

trade::SizeSystem system_of(const std::string& text) {
    if (text == "number")
        return trade::SizeSystem::number;
    if (text == "inch")
        return trade::SizeSystem::inch;
    return text == "metric" ? trade::SizeSystem::metric : trade::SizeSystem::ba;
}

// `7/32` or `.050`, `6 mm`.
std::string named(Length value, Unit unit) {
    if (unit == Unit::millimetre)
        return length::with_unit(value, unit);
    auto fraction = length::as_fraction(value);
    return fraction.empty() ? length::to_text(value, unit) : fraction;
}

std::vector<std::string> pitches(std::string coarse, std::string fine) {
    std::vector<std::string> result;
    for (auto* pitch : {&coarse, &fine})
        if (!pitch->empty())
            result.push_back(std::move(*pitch));
    return result;
}

std::string drive_size(SQLite::Statement& row, int size, int recess, int unit) {
    const auto length = maybe_length_at(row, size);
    return length ? named(*length, unit_at(row, unit)) : text_at(row, recess);
}

trade::Head head_at(SQLite::Statement& row) {
    trade::Head head;
    head.series = text_at(row, 0);
    head.form = text_at(row, 1);
    head.size = {system_of(text_at(row, 3)), text_at(row, 2), length_at(row, 4)};
    head.pitches = pitches(text_at(row, 5), text_at(row, 6));
    head.screw_dia = length::exactly(length_at(row, 7));
    head.head_dia = {length_at(row, 8), length_at(row, 9)};
    head.head_min_note = text_at(row, 10);
    head.head_height_max = length_at(row, 11);
    head.head_height_min = maybe_length_at(row, 12);
    head.drive = text_at(row, 13);
    head.drive_size = drive_size(row, 14, 15, 16);
    head.fillet_dia_max = maybe_length_at(row, 17);
    head.thread = text_at(row, 18);
    head.origin = origin_at(row, 19);
    return head;
}

std::optional<trade::Clearance::Hole> hole_at(SQLite::Statement& row, int at) {
    if (row.isColumnNull(at))
        return std::nullopt;
    return trade::Clearance::Hole{text_at(row, at), length_at(row, at + 1)};
}

trade::Counterbore counterbore_at(SQLite::Statement& row) {
    const auto diameter = length_at(row, 3);
    return {text_at(row, 0),
            text_at(row, 1),
            text_at(row, 2),
            diameter,
            named(diameter, unit_at(row, 4)),
            maybe_length_at(row, 5),
            maybe_length_at(row, 6),
            origin_at(row, 7)};
}

// What `take` makes of every row of a query by size.
template <typename Take>
auto rows_of(Statements& statements, const char* statement, std::string_view size, Take take) {
    Lent lent(statements, statement);
    auto& query = *lent;
    query.bind(1, std::string(size));
    std::vector<decltype(take(query))> result;
    while (query.executeStep())
        result.push_back(take(query));
    return result;
}

} // namespace

std::vector<trade::Head> Reference::heads(std::string_view size) const {
    if (size.empty() || size != heads_size_) {
        heads_ = rows_of(*statements_, k_heads, size, head_at);
        heads_size_ = size;
    }
    return heads_;
}

std::vector<trade::Head> Reference::every_head() const {
    SQLite::Statement sizes(*database_, k_sizes_of_heads);
    std::vector<trade::Head> result;
    while (sizes.executeStep())
        for (auto& head : heads(text_at(sizes, 0)))
            result.push_back(std::move(head));
    return result;
}

std::vector<trade::Clearance> Reference::clearances(std::string_view size) const {
    return rows_of(*statements_, k_clearances, size, [](SQLite::Statement& row) {
        return trade::Clearance{text_at(row, 0), hole_at(row, 1), hole_at(row, 3), hole_at(row, 5),
                                origin_at(row, 7)};
    });
}

std::vector<trade::Counterbore> Reference::counterbores(std::string_view size) const {
    return rows_of(*statements_, k_counterbores, size, counterbore_at);
}

std::vector<trade::Washer> Reference::washers(std::string_view size) const {
    return rows_of(*statements_, k_washers, size, [](SQLite::Statement& row) {
        return trade::Washer{text_at(row, 0), length_at(row, 1), length_at(row, 2),
                             maybe_length_at(row, 3), origin_at(row, 4)};
    });
}

std::vector<trade::TapDrill> Reference::tap_drills(std::string_view size) const {
    return rows_of(*statements_, k_tap_drills, size, [](SQLite::Statement& row) {
        return trade::TapDrill{text_at(row, 0), text_at(row, 1), length_at(row, 2),
                               origin_at(row, 3), text_at(row, 6)};
    });
}

} // namespace store
