// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The table of the shop's own screws.
#include "error/error.hpp"
#include "store/lists.hpp"
#include "store/query.hpp"
#include "store/record.hpp"
#include "trade/text.hpp"

namespace store {

namespace {

// {0}: the columns; {1}: a parameter for each, the key first.
constexpr auto k_all = R"(
SELECT {0} FROM own_screw ORDER BY name_key)";

constexpr auto k_add = R"(
INSERT INTO own_screw ({0}) VALUES ({1}))";

constexpr auto k_update = R"(
UPDATE own_screw SET ({0}) = ({1}) WHERE name_key = ?1)";

constexpr auto k_drop = R"(
DELETE FROM own_screw WHERE name_key = ?1)";

template <class Visitor, class Key, class Record>
void visit(Visitor& visitor, Key& key, Record& screw) {
    visitor.column("name_key", key);
    visitor.column("name", screw.name);
    visitor.column("head_dia", screw.head_dia);
    visitor.column("head_height", screw.head_height);
    visitor.column("screw_dia", screw.screw_dia);
    visitor.column("drive", screw.drive);
    visitor.column("drive_size", screw.drive_size);
    visitor.column("note", screw.note);
}

std::string with_columns(const char* sql) {
    Names names;
    const trade::OwnScrew any;
    visit(names, any.name, any);
    return fmt::format(fmt::runtime(sql), names.list(), names.parameters());
}

int write(Change& change, const char* sql, const trade::OwnScrew& screw) {
    Query query(change.database(), with_columns(sql));
    Writer writer(query);
    const std::string key = trade::folded(screw.name);
    visit(writer, key, screw);
    return query.run();
}

} // namespace

std::vector<trade::OwnScrew> own_screws(const File& file) {
    std::vector<trade::OwnScrew> all;
    Query query(file.database(), with_columns(k_all));
    while (query.step()) {
        Reader reader(query);
        std::string key;
        visit(reader, key, all.emplace_back());
    }
    return all;
}

void put_own_screw(Change& change, const trade::OwnScrew& screw) {
    if (write(change, k_update, screw) == 0)
        write(change, k_add, screw);
}

void drop_own_screw(Change& change, const std::string& name) {
    if (Query(change.database(), k_drop).put(trade::folded(name)).run() == 0)
        throw error::NoSuchRecord("the shop has no such screw of its own: " + name,
                                  "`counterpart list screws` shows them");
}

} // namespace store
