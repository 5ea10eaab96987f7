// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the history holds, and that no table or column is left out of it.
#include "store/history.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <regex>
#include <set>

#include "random_tools.hpp"
#include "scratch.hpp"
#include "store/kept_table.hpp"
#include "store/session.hpp"
#include "store/tools.hpp"

using store::Change;
using store::File;

namespace {

std::set<std::string> texts(const File& file, const std::string& sql) {
    std::set<std::string> all;
    SQLite::Statement statement(file.database(), sql);
    while (statement.executeStep())
        all.insert(statement.getColumn(0).getString());
    return all;
}

std::string trigger(const File& file, const std::string& name) {
    SQLite::Statement statement(
        file.database(), "SELECT sql FROM sqlite_schema WHERE type = 'trigger' AND name = ?");
    statement.bind(1, name);
    const std::string sql = statement.executeStep() ? statement.getColumn(0).getString() : "";
    return std::regex_replace(sql, std::regex("\\s+"), " ");
}

// `'number', NEW.number, 'tool_set', NEW.tool_set, ...` in the table's own order.
std::string whole_row(const File& file, const std::string& table, const std::string& which) {
    std::string row;
    SQLite::Statement columns(file.database(),
                              "SELECT name FROM pragma_table_xinfo(?) ORDER BY cid");
    columns.bind(1, table);
    while (columns.executeStep()) {
        const auto name = columns.getColumn(0).getString();
        row += fmt::format("{}'{}', {}.{}", row.empty() ? "" : ", ", name, which, name);
    }
    return "counterpart_row( " + row + ")";
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

trade::Body noted(std::int64_t number, const std::string& note) {
    trade::Body body;
    body.number = number;
    body.note = note;
    return body;
}

} // namespace

TEST_CASE("every table is kept in the history or known not to be") {
    const scratch::Folder folder;
    const File file = scratch::catalogue(folder / "c.db");
    std::set<std::string> expected(store::kept_tables().begin(), store::kept_tables().end());
    expected.insert({"setting", "tool_number", "loan", "closed_loan", "change_group", "history",
                     "history_chain"});
    CHECK(texts(file, "SELECT name FROM sqlite_schema WHERE type = 'table'") == expected);
}

TEST_CASE("the triggers of every kept table write every column of it") {
    const scratch::Folder folder;
    const File file = scratch::catalogue(folder / "c.db");
    std::size_t triggers = 0;
    for (const auto& table : store::kept_tables()) {
        CAPTURE(table);
        const std::string old_row = whole_row(file, table, "OLD") + " AS before";
        const std::string new_row = whole_row(file, table, "NEW") + " AS after";
        const auto on_insert = trigger(file, table + "_insert");
        CHECK(has(on_insert, "AFTER INSERT ON " + table + " "));
        CHECK(has(on_insert, "NULL AS before, " + new_row + ")"));
        const auto on_update = trigger(file, table + "_update");
        CHECK(has(on_update, "AFTER UPDATE ON " + table + " "));
        CHECK(has(on_update, old_row + ", " + new_row + ") WHERE before IS NOT after"));
        const auto on_delete = trigger(file, table + "_delete");
        CHECK(has(on_delete, "AFTER DELETE ON " + table + " "));
        CHECK(has(on_delete, old_row + ", NULL AS after)"));
        for (const auto& sql : {on_insert, on_update, on_delete}) {
            CHECK(has(sql, "'" + table + "' AS tbl"));
            CHECK(has(sql, "counterpart_digest(tbl, rowkey, before, after)"));
        }
        triggers += 3;
    }
    CHECK(texts(file, "SELECT name FROM sqlite_schema WHERE type = 'trigger'").size() == triggers);
}

TEST_CASE("a history row holds the change, the row before and the row after") {
    const scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    {
        Change change(file, "add body");
        store::add_body(change, noted(7, "say \"3/8\"\n"));
        change.commit();
    }
    {
        Change change(file, "change 7 --note new");
        store::update_body(change, noted(7, "new"));
        change.commit();
    }
    const auto rows = store::history(file, std::nullopt);
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].group == 1);
    CHECK(rows[0].words == "add body");
    CHECK(std::regex_match(rows[0].time, std::regex(R"(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ)")));
    CHECK(rows[0].table == "body");
    CHECK(rows[0].number == 7);
    CHECK(rows[0].before.empty());
    CHECK(has(rows[0].after, R"("note":"say \"3/8\"\u000a")"));
    CHECK(rows[1].group == 2);
    CHECK(rows[1].before == rows[0].after);
    CHECK(has(rows[1].after, R"("number":7,"tool_set":"","kind":"unknown","cut_dia":null)"));
    CHECK(has(rows[1].after, R"("note":"new")"));
    CHECK_FALSE(rows[1].undoes);
}

TEST_CASE("a tool's history holds its work and its trials, and no other tool's") {
    const scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    Change change(file, "add");
    trade::Body body = noted(1, "");
    body.work = {"clean the bore", "sharpen"};
    store::add_body(change, body);
    store::add_body(change, noted(2, ""));
    trade::Pilot pilot;
    pilot.number = 3;
    store::add_pilot(change, pilot);
    store::record_trial(change, {3, 1, trade::Tried::slides});
    store::record_trial(change, {3, 2, trade::Tried::binds});
    change.commit();
    const auto tables = [&file](std::int64_t number) {
        std::string joined;
        for (const auto& row : store::history(file, number))
            joined += row.table + " ";
        return joined;
    };
    CHECK(tables(1) == "body work work trial ");
    CHECK(tables(2) == "body trial ");
    CHECK(tables(3) == "pilot trial trial ");
    CHECK(tables(4).empty());
    CHECK(store::history(file, std::nullopt).size() == 7);
}

TEST_CASE("rows as the triggers write them are rows as they are read back") {
    const scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    RandomTools random(21);
    Change change(file, "add");
    for (int i = 0; i < 40; ++i) {
        store::add_body(change, random.body());
        store::add_pilot(change, random.pilot());
    }
    change.commit();
    SQLite::Statement rows(file.database(), "SELECT tbl, rowkey, after FROM history");
    int count = 0;
    while (rows.executeStep()) {
        const store::KeptTable table(file.database(), rows.getColumn(0).getString());
        CHECK(table.row(rows.getColumn(1).getString()) == rows.getColumn(2).getString());
        ++count;
    }
    CHECK(count >= 80);
    CHECK(scratch::number_from(file, "SELECT min(json_valid(after)) FROM history") == 1);
}

TEST_CASE("a digest is FNV-1a of 64 bits over marked parts") {
    // Reckoned by hand: the bytes 61 FF FE FF.
    store::Digest digest;
    digest.add("a");
    digest.add(std::nullopt);
    std::uint64_t expected = 14695981039346656037U;
    for (const unsigned byte : {0x61U, 0xFFU, 0xFEU, 0xFFU})
        expected = (expected ^ byte) * 1099511628211U;
    CHECK(digest.value() == expected);

    const scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    Change change(file, "add");
    store::add_body(change, noted(1, "x"));
    change.commit();
    SQLite::Statement row(file.database(), "SELECT rowkey, after, digest FROM history");
    REQUIRE(row.executeStep());
    store::Digest kept;
    kept.add("body");
    kept.add(row.getColumn(0).getString());
    kept.add(std::nullopt);
    kept.add(row.getColumn(1).getString());
    CHECK(row.getColumn(0).getString() == "[1]");
    CHECK(row.getColumn(2).getString() == fmt::format("{:016x}", kept.value()));
}
