// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The tables of the house list, the shop's own practice and the bar stock.
#include "store/lists.hpp"

#include "error/error.hpp"
#include "store/query.hpp"
#include "trade/text.hpp"

namespace store {

namespace {

using trade::folded;

constexpr auto k_house = R"(
SELECT screw, hole, note FROM house ORDER BY id)";

constexpr auto k_put_house = R"(
INSERT INTO house (screw_key, hole_key, screw, hole, note) VALUES (?1, ?2, ?3, ?4, ?5)
ON CONFLICT (screw_key, hole_key) DO UPDATE
SET screw = excluded.screw, hole = excluded.hole, note = excluded.note)";

constexpr auto k_drop_house = R"(
DELETE FROM house WHERE screw_key = ?1 AND hole_key = ?2)";

constexpr auto k_practice = R"(
SELECT name, value FROM practice ORDER BY name)";

constexpr auto k_set_practice = R"(
INSERT INTO practice (name, value) VALUES (?1, ?2)
ON CONFLICT (name) DO UPDATE SET value = excluded.value)";

constexpr auto k_reset_practice = R"(
DELETE FROM practice WHERE name = ?1)";

constexpr auto k_stock = R"(
SELECT diameter FROM stock ORDER BY diameter)";

constexpr auto k_put_stock = R"(
INSERT INTO stock (diameter) VALUES (?1) ON CONFLICT (diameter) DO NOTHING)";

constexpr auto k_drop_stock = R"(
DELETE FROM stock WHERE diameter = ?1)";

} // namespace

std::vector<HouseScrew> house(const File& file) {
    std::vector<HouseScrew> all;
    Query query(file.database(), k_house);
    while (query.step()) {
        HouseScrew& screw = all.emplace_back();
        screw.screw = query.text();
        screw.hole = query.text();
        screw.note = query.text();
    }
    return all;
}

void put_house(Change& change, const HouseScrew& screw) {
    Query query(change.database(), k_put_house);
    query.put(folded(screw.screw)).put(folded(screw.hole));
    query.put(screw.screw).put(screw.hole).put(screw.note).run();
}

void drop_house(Change& change, const std::string& screw, const std::string& hole) {
    Query query(change.database(), k_drop_house);
    if (query.put(folded(screw)).put(folded(hole)).run() == 0)
        throw error::NoSuchRecord("not on the house list: " + screw +
                                      (hole.empty() ? "" : ", hole " + hole),
                                  "`counterpart house list` shows it; name the hole if it has one");
}

std::vector<trade::PracticeRow> own_practice(const File& file) {
    std::vector<trade::PracticeRow> all;
    Query query(file.database(), k_practice);
    while (query.step()) {
        trade::PracticeRow& row = all.emplace_back();
        row.name = query.text();
        row.value = query.text();
        row.own = true;
    }
    return all;
}

void set_practice(Change& change, const std::string& name, const std::string& value) {
    Query(change.database(), k_set_practice).put(folded(name)).put(value).run();
}

void reset_practice(Change& change, const std::string& name) {
    if (Query(change.database(), k_reset_practice).put(folded(name)).run() == 0)
        throw error::NoSuchRecord("the shop has no value of its own for: " + name,
                                  "the default stands already");
}

std::vector<length::Length> stock_bars(const File& file) {
    std::vector<length::Length> all;
    Query query(file.database(), k_stock);
    while (query.step())
        all.push_back(length::Length::from_nm(query.integer()));
    return all;
}

void put_stock_bar(Change& change, length::Length diameter) {
    Query(change.database(), k_put_stock).put(diameter.nm()).run();
}

void drop_stock_bar(Change& change, length::Length diameter, const std::string& size) {
    if (Query(change.database(), k_drop_stock).put(diameter.nm()).run() == 0)
        throw error::NoSuchRecord("the shop's list has no such bar: " + size,
                                  "`counterpart stock list` shows them");
}

} // namespace store
