// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The tables of the work itself: materials, feeds, torques, nut factors, grades of screws, set
// screws.
#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <map>

#include "store/reference.hpp"
#include "store/reference_read.hpp"
#include "trade/conversion.hpp"
#include "trade/material.hpp"

namespace store {

namespace {

constexpr auto k_materials = R"(
    SELECT name, condition, drill_speed, speed_low, speed_high, feed_class, coolant,
           pressure_low_mpa, pressure_high_mpa, pressure_basis, citation, confidence, note, family
    FROM material JOIN source ON source.id = material.source ORDER BY material.id)";

constexpr auto k_restrictions = R"(
    SELECT family, about, words, citation, confidence, note
    FROM restriction JOIN source ON source.id = restriction.source ORDER BY restriction.id)";

constexpr auto k_feeds = R"(
    SELECT class, above_nm, upto_nm, least_nm, most_nm, citation, confidence, note
    FROM feed JOIN source ON source.id = feed.source ORDER BY class, coalesce(above_nm, 0))";

constexpr auto k_torques = R"(
    SELECT chart, torque, torque_unit, surface, about, citation, confidence, note
    FROM torque JOIN source ON source.id = torque.source WHERE size = ? ORDER BY chart)";

constexpr auto k_nut_factors = R"(
    SELECT surface, usual_low, usual_high, seen_low, seen_high, citation, confidence, note
    FROM nut_factor JOIN source ON source.id = nut_factor.source ORDER BY surface)";

constexpr auto k_grades = R"(
    SELECT name, standard, above_nm, upto_nm, proof, proof_unit, citation, confidence, note
    FROM grade JOIN source ON source.id = grade.source ORDER BY grade.id)";

constexpr auto k_set_screws = R"(
    SELECT set_screw.size, key, citation, set_screw.confidence, set_screw.note
    FROM set_screw JOIN source ON source.id = set_screw.source
    JOIN size ON size.name = set_screw.size ORDER BY diameter_nm)";

int whole_at(SQLite::Statement& row, int at) {
    return row.getColumn(at).getInt();
}

trade::Torque torque_at(SQLite::Statement& row) {
    const int printed = whole_at(row, 1);
    const auto unit = text_at(row, 2);
    const double newton_metres = unit == "ft-lb" ? trade::k_newton_metres_in_foot_pound
                                                 : trade::k_newton_metres_in_inch_pound;
    return {text_at(row, 0), printed * newton_metres, fmt::format("{} {}", printed, unit),
            text_at(row, 3), text_at(row, 4),         origin_at(row, 5)};
}

trade::Grade grade_at(SQLite::Statement& row) {
    const double megapascals = text_at(row, 5) == "ksi" ? trade::k_megapascals_in_ksi : 1;
    return {text_at(row, 0),
            text_at(row, 1),
            maybe_length_at(row, 2),
            maybe_length_at(row, 3),
            whole_at(row, 4) * megapascals,
            origin_at(row, 6)};
}

using Restrictions = std::map<std::string, std::vector<trade::Restriction>>; // by family

Restrictions restrictions_in(SQLite::Database& database) {
    SQLite::Statement query(database, k_restrictions);
    Restrictions restrictions;
    while (query.executeStep())
        restrictions[text_at(query, 0)].push_back(
            {trade::matter_of(text_at(query, 1)), text_at(query, 2), origin_at(query, 3)});
    return restrictions;
}

// What `take` makes of every row.
template <typename Take>
auto rows_of(SQLite::Statement& query, Take take) {
    std::vector<decltype(take(query))> result;
    while (query.executeStep())
        result.push_back(take(query));
    return result;
}

} // namespace

std::vector<trade::Material> Reference::materials() const {
    const auto restrictions = restrictions_in(*database_);
    SQLite::Statement query(*database_, k_materials);
    return rows_of(query, [&](SQLite::Statement& row) {
        const auto found = restrictions.find(text_at(row, 13));
        return trade::Material{.name = text_at(row, 0),
                               .condition = text_at(row, 1),
                               .drill_speed = whole_at(row, 2),
                               .speed_low = whole_at(row, 3),
                               .speed_high = whole_at(row, 4),
                               .feed_class = text_at(row, 5),
                               .coolant = text_at(row, 6),
                               .pressure_low_mpa = whole_at(row, 7),
                               .pressure_high_mpa = whole_at(row, 8),
                               .pressure_basis = text_at(row, 9),
                               .restrictions = found == restrictions.end()
                                                   ? std::vector<trade::Restriction>()
                                                   : found->second,
                               .asked_as = {},
                               .origin = origin_at(row, 10)};
    });
}

std::vector<trade::Feed> Reference::feeds() const {
    SQLite::Statement query(*database_, k_feeds);
    return rows_of(query, [](SQLite::Statement& row) {
        return trade::Feed{text_at(row, 0),   maybe_length_at(row, 1), maybe_length_at(row, 2),
                           length_at(row, 3), length_at(row, 4),       origin_at(row, 5)};
    });
}

std::vector<trade::Torque> Reference::torques(std::string_view size) const {
    SQLite::Statement query(*database_, k_torques);
    query.bind(1, std::string(size));
    return rows_of(query, torque_at);
}

std::vector<trade::NutFactor> Reference::nut_factors() const {
    SQLite::Statement query(*database_, k_nut_factors);
    return rows_of(query, [](SQLite::Statement& row) {
        return trade::NutFactor{text_at(row, 0),  whole_at(row, 1), whole_at(row, 2),
                                whole_at(row, 3), whole_at(row, 4), origin_at(row, 5)};
    });
}

std::vector<trade::Grade> Reference::grades() const {
    SQLite::Statement query(*database_, k_grades);
    return rows_of(query, grade_at);
}

std::vector<trade::SetScrew> Reference::set_screws() const {
    SQLite::Statement query(*database_, k_set_screws);
    return rows_of(query, [](SQLite::Statement& row) {
        return trade::SetScrew{text_at(row, 0), text_at(row, 1), origin_at(row, 2)};
    });
}

} // namespace store
