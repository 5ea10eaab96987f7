// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The steps give the schema as it stands; a step that fails gives nothing.
#include "store/migrate.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>

#include "scratch.hpp"
#include "store/history.hpp"
#include "store/tools.hpp"

namespace embedded {
extern const std::string_view k_schema;
extern const std::string_view k_awkward;
} // namespace embedded

using error::ExitCode;
using scratch::error_of;
using store::Change;
using store::File;
using store::Migration;

namespace {

std::string rows(SQLite::Database& database, const std::string& sql) {
    std::string text;
    SQLite::Statement statement(database, sql);
    while (statement.executeStep()) {
        for (int i = 0; i < statement.getColumnCount(); ++i)
            text += (statement.isColumnNull(i) ? "NULL" : statement.getColumn(i).getString()) + "|";
        text += "\n";
    }
    return text;
}

// Tables, columns, indexes, foreign keys and statements, in order.
std::string shape(SQLite::Database& database) {
    return rows(database, "SELECT * FROM pragma_table_list WHERE schema = 'main' ORDER BY name") +
           rows(database, "SELECT t.name, x.* FROM sqlite_schema t, pragma_table_xinfo(t.name) x "
                          "WHERE t.type = 'table' ORDER BY t.name, x.cid") +
           rows(database, "SELECT t.name, l.name, l.\"unique\", l.origin, l.partial, x.* "
                          "FROM sqlite_schema t, pragma_index_list(t.name) l, "
                          "pragma_index_xinfo(l.name) x "
                          "WHERE t.type = 'table' ORDER BY t.name, l.name, x.seqno") +
           rows(database, "SELECT t.name, k.* FROM sqlite_schema t, "
                          "pragma_foreign_key_list(t.name) k "
                          "WHERE t.type = 'table' ORDER BY t.name, k.id, k.seq") +
           rows(database, "SELECT type, name, tbl_name, sql FROM sqlite_schema "
                          "WHERE type <> 'table' ORDER BY type, name");
}

std::vector<Migration> with(std::vector<Migration> more) {
    std::vector<Migration> steps = store::migrations();
    steps.insert(steps.end(), more.begin(), more.end());
    return steps;
}

// A catalogue with a pilot in a body, and its bytes.
struct Shop {
    Shop() {
        Change change(file, "add");
        trade::Body body;
        body.pilot_kind = trade::PilotKind::removable;
        body.work = {"sharpen"};
        trade::Pilot pilot;
        pilot.in_body = store::add_body(change, body);
        store::add_pilot(change, pilot);
        change.commit();
        before = scratch::contents(folder / "c.db");
    }
    void bring_up(const std::vector<Migration>& steps) {
        store::bring_up_to_date(file.database(), file.session(), folder / "c.db", steps);
    }
    [[nodiscard]] std::int64_t version() const {
        return scratch::number_from(file, "PRAGMA user_version");
    }

    scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    std::string before;
};

} // namespace

TEST_CASE("a file is embedded byte for byte") {
    CHECK(embedded::k_awkward == scratch::contents(STORE_TEST_AWKWARD_FILE));
    CHECK(embedded::k_awkward.find("@NAME@ ${x} ; [[ ]] \\n \r\n") != std::string_view::npos);
}

TEST_CASE("the steps, from nothing, give the schema as it stands") {
    SQLite::Database stands(":memory:", SQLite::OPEN_READWRITE);
    stands.exec(std::string(embedded::k_schema));
    const scratch::Folder folder;
    const File file = scratch::catalogue(folder / "c.db");
    CHECK(shape(file.database()) == shape(stands));
    CHECK(shape(stands).size() > 10'000);
}

TEST_CASE("the steps are numbered in order") {
    int number = 1;
    for (const Migration& step : store::migrations()) {
        CHECK(std::stoi(std::string(step.name.substr(0, 4))) == number++);
        CHECK(step.name[4] == '-');
    }
}

TEST_CASE("an older catalogue is copied beside itself and brought up to date with a snapshot") {
    Shop shop;
    const auto bodies = store::bodies(shop.file);
    const auto pilots = store::pilots(shop.file);
    const auto steps = with({{"0002-second", "CREATE TABLE second (id INTEGER) STRICT;"},
                             {"0003-third", "ALTER TABLE second ADD COLUMN name TEXT;"}});
    shop.bring_up(steps);
    CHECK(shop.version() == 3);
    CHECK(shop.folder.names() == "c.db c.db.version-1");
    CHECK(scratch::number_from(shop.file, "SELECT count(*) FROM pragma_table_xinfo('second')") ==
          2);
    CHECK(scratch::number_from(shop.file, "PRAGMA foreign_keys") == 1);
    CHECK(store::bodies(shop.file) == bodies);

    const File copy = File::open(shop.folder / "c.db.version-1", store::Access::write);
    CHECK(store::bodies(copy) == bodies);
    CHECK(store::pilots(copy) == pilots);

    // One row of each table that holds one, as it is.
    SQLite::Statement snapshot(
        shop.file.database(),
        "SELECT group_concat(tbl || rowkey || coalesce(number, '-'), ' '), min(before IS NULL), "
        "min(schema_version) FROM history JOIN change_group ON grp = change_group.id "
        "WHERE snapshot = 1");
    REQUIRE(snapshot.executeStep());
    CHECK(snapshot.getColumn(0).getString() == "body[1]1 pilot[2]2 work[1,1]1");
    CHECK(snapshot.getColumn(1).getInt() == 1);
    CHECK(snapshot.getColumn(2).getInt() == 3);
    CHECK(store::history(shop.file, std::nullopt).size() == 3);
    CHECK(error_of([&] { store::undo(shop.file); })->code() == ExitCode::no_such_record);

    const std::string after = scratch::contents(shop.folder / "c.db");
    shop.bring_up(steps);
    CHECK(scratch::contents(shop.folder / "c.db") == after);
    CHECK(shop.folder.names() == "c.db c.db.version-1");
}

TEST_CASE("a copy before a migration goes over no other file") {
    Shop shop;
    scratch::write(shop.folder / "c.db.version-1", "a letter");
    shop.bring_up(with({{"0002-second", "CREATE TABLE second (id INTEGER) STRICT;"}}));
    CHECK(shop.folder.names() == "c.db c.db.version-1 c.db.version-1.2");
    CHECK(scratch::contents(shop.folder / "c.db.version-1") == "a letter");
}

TEST_CASE("a broken step changes nothing") {
    const std::vector<std::string_view> broken = {
        "CREATE TABLE second (id INTEGER) STRICT; CREATE TABEL third;",
        "CREATE TABLE second (id INTEGER) STRICT; DROP TABLE no_such_table;",
        // Rows that point nowhere.
        "DROP TRIGGER body_delete; DELETE FROM body;",
        // A kept row changed past the history.
        "UPDATE body SET note = 'changed';",
    };
    for (const auto sql : broken) {
        CAPTURE(sql);
        Shop shop;
        const auto error = error_of([&] { shop.bring_up(with({{"0002-broken", sql}})); });
        REQUIRE(error);
        CHECK(error->code() == ExitCode::damaged_file);
        CHECK(std::string(error->what()).find("cannot be brought up to date") != std::string::npos);
        CHECK(shop.version() == 1);
        CHECK(scratch::contents(shop.folder / "c.db") == shop.before);
        CHECK(scratch::number_from(shop.file, "PRAGMA foreign_keys") == 1);
        CHECK(shop.folder.names() == "c.db c.db.version-1");
    }
}
