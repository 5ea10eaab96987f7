// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The steps give the schema as it stands; a step that fails gives nothing.
#include "store/migrate.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>

#include "scratch.hpp"
#include "store/check.hpp"
#include "store/connection.hpp"
#include "store/history.hpp"
#include "store/lists.hpp"
#include "store/loans.hpp"
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

std::int64_t released() {
    return static_cast<std::int64_t>(store::migrations().size());
}

// The copy that is laid beside a catalogue of the program before a further step.
std::string copy_name() {
    return "c.db.version-" + std::to_string(released());
}

// A catalogue as the first step left it, with one screw on its house list.
void make_first_version(const std::filesystem::path& path) {
    scratch::write(path, "");
    const auto connection = store::connect_empty(path);
    auto& database = *connection.database;
    database.exec("PRAGMA application_id = " + std::to_string(store::k_application_id));
    store::migrate(database, *connection.session, {store::migrations().front()});
    database.exec("INSERT INTO setting (id, unit) VALUES (1, 'mm')");
    connection.session->group = 1;
    database.exec("INSERT INTO change_group (id, at, schema_version, words) "
                  "VALUES (1, '2026-01-02T03:04:05Z', 1, 'house add M8')");
    database.exec("INSERT INTO house (screw_key, hole_key, screw, hole, note) "
                  "VALUES ('m8', 'close', 'M8', 'close', 'gate')");
}

// A catalogue as the first `steps` steps left it, with one machine.
void make_version(const std::filesystem::path& path, std::size_t steps) {
    scratch::write(path, "");
    const auto connection = store::connect_empty(path);
    auto& database = *connection.database;
    const auto& all = store::migrations();
    database.exec("PRAGMA application_id = " + std::to_string(store::k_application_id));
    store::migrate(database, *connection.session,
                   {all.begin(), all.begin() + static_cast<std::ptrdiff_t>(steps)});
    database.exec("INSERT INTO setting (id, unit) VALUES (1, 'in')");
    connection.session->group = 1;
    database.exec("INSERT INTO change_group (id, at, schema_version, words) "
                  "VALUES (1, '2026-01-02T03:04:05Z', 1, 'machine add')");
    database.exec("INSERT INTO machine (name_key, name, chuck_lo, chuck_hi, morse) "
                  "VALUES ('mill', 'Mill', 3175000, 19050000, 4)");
}

// A catalogue of the sixth version with pilots as it took their marks: .003 in under to the mark.
void make_with_pilots(const std::filesystem::path& path, std::string_view unit) {
    scratch::write(path, "");
    const auto connection = store::connect_empty(path);
    auto& database = *connection.database;
    const auto& all = store::migrations();
    database.exec("PRAGMA application_id = " + std::to_string(store::k_application_id));
    store::migrate(database, *connection.session, {all.begin(), all.begin() + 6});
    database.exec("INSERT INTO setting (id, unit) VALUES (1, '" + std::string(unit) + "')");
    connection.session->group = 1;
    database.exec("INSERT INTO change_group (id, at, schema_version, words) "
                  "VALUES (1, '2026-01-02T03:04:05Z', 6, 'add pilot')");
    int number = 0;
    for (const std::string pilot :
         {"'17/64', 'mark', 6670675, 6746875", "'17/64', 'unstated', 6670675, 6746875",
          "'.264', 'mark', 6629400, 6705600", "'9 mm', 'mark', 8923800, 9000000",
          "'9', 'mark', 8923800, 9000000", "'17/64', 'caliper', 6721475, 6772275",
          "'17/64 +0 -.003', 'mark', 6670675, 6746875"}) {
        const auto id = std::to_string(++number);
        database.exec("INSERT INTO tool_number (number, kind) VALUES (" + id + ", 'pilot')");
        database.exec("INSERT INTO pilot (number, tool_set, pilot_dia, pilot_dia_how, "
                      "pilot_dia_lo, pilot_dia_hi, material, place, note) VALUES (" +
                      id + ", '', " + pilot + ", '', '', '')");
    }
}

std::string pilot_limits(const File& file) {
    std::string text;
    for (const auto& pilot : store::pilots(file))
        text += std::to_string(pilot.pilot_dia->range.lo.nm()) + " " +
                std::to_string(pilot.pilot_dia->range.hi.nm()) + "\n";
    return text;
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
    // Steps beyond those of the program.
    [[nodiscard]] std::int64_t steps_beyond() const {
        return scratch::number_from(file, "PRAGMA user_version") - released();
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

TEST_CASE("what an older catalogue has on loan is on loan still") {
    const scratch::Folder folder;
    make_version(folder / "c.db", 3);
    SQLite::Database(folder / "c.db", SQLite::OPEN_READWRITE)
        .exec("INSERT INTO tool_number (number, kind) VALUES (7, 'body');"
              "INSERT INTO loan (number, name, since) VALUES (7, 'Jo', '2026-01-02T03:04:05Z')");
    File file = File::open(folder / "c.db", store::Access::write);
    REQUIRE(store::open_loans(file).size() == 1);
    CHECK(store::open_loans(file)[0].name == "Jo");
    store::take_back(file, {7});
    CHECK(store::closed_loans(file)[0].since == "2026-01-02T03:04:05Z");
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
    const auto steps = with({{"second", "CREATE TABLE second (id INTEGER) STRICT;"},
                             {"third", "ALTER TABLE second ADD COLUMN name TEXT;"}});
    shop.bring_up(steps);
    CHECK(shop.steps_beyond() == 2);
    CHECK(shop.folder.names() == "c.db " + copy_name());
    CHECK(scratch::number_from(shop.file, "SELECT count(*) FROM pragma_table_xinfo('second')") ==
          2);
    CHECK(scratch::number_from(shop.file, "PRAGMA foreign_keys") == 1);
    CHECK(store::bodies(shop.file) == bodies);

    const File copy = File::open(shop.folder / copy_name(), store::Access::write);
    CHECK(store::bodies(copy) == bodies);
    CHECK(store::pilots(copy) == pilots);

    // One row of each table that holds one, as it is.
    SQLite::Statement snapshot(
        shop.file.database(),
        "SELECT group_concat(tbl || rowkey || coalesce(number, '-'), ' '), min(before IS NULL), "
        "min(schema_version) FROM history JOIN change_group ON grp = change_group.id "
        "WHERE snapshot = 1 AND tbl <> 'change_group'");
    REQUIRE(snapshot.executeStep());
    CHECK(snapshot.getColumn(0).getString() == "body[1]1 pilot[2]2 work[1,1]1");
    CHECK(snapshot.getColumn(1).getInt() == 1);
    CHECK(snapshot.getColumn(2).getInt64() == released() + 2);
    CHECK(store::history(shop.file, std::nullopt).size() == 3);
    CHECK(error_of([&] { store::undo(shop.file); })->code() == ExitCode::no_such_record);

    const std::string after = scratch::contents(shop.folder / "c.db");
    shop.bring_up(steps);
    CHECK(scratch::contents(shop.folder / "c.db") == after);
    CHECK(shop.folder.names() == "c.db " + copy_name());
}

TEST_CASE("a catalogue of the first version comes up with its rows, and can take the new ones") {
    const scratch::Folder folder;
    make_first_version(folder / "c.db");
    File file = File::open(folder / "c.db", store::Access::write);
    CHECK(scratch::number_from(file, "PRAGMA user_version") == released());
    CHECK(folder.names() == "c.db c.db.version-1");
    CHECK(file.unit() == length::Unit::millimetre);
    const auto house = store::house(file);
    REQUIRE(house.size() == 1);
    CHECK(house[0].screw == "M8");
    CHECK(house[0].note == "gate");
    Change change(file, "stock add");
    store::put_stock_bar(change, length::millimetres(10));
    change.commit();
    CHECK(store::stock_bars(file).size() == 1);
}

TEST_CASE("an older catalogue with a write-ahead log comes up, also when it is only read") {
    for (const auto access : {store::Access::read, store::Access::write}) {
        const scratch::Folder folder;
        make_first_version(folder / "c.db");
        SQLite::Database(folder / "c.db", SQLite::OPEN_READWRITE).exec("PRAGMA journal_mode = WAL");
        CHECK(store::house(File::open(folder / "c.db", access)).size() == 1);
        CHECK(folder.names() == "c.db c.db.version-1");
        for (const std::string name : {"c.db", "c.db.version-1"})
            CHECK(scratch::contents(folder / name).substr(18, 2) == "\x01\x01");
    }
}

TEST_CASE("an older catalogue that is refused is not brought up to date before that") {
    for (const std::string damage :
         {"DELETE FROM setting",
          "DROP TRIGGER house_insert; INSERT INTO house "
          "(screw_key, hole_key, screw, hole, note) VALUES ('m6', '', 'M6', '', '')"}) {
        CAPTURE(damage);
        const scratch::Folder folder;
        make_first_version(folder / "c.db");
        SQLite::Database(folder / "c.db", SQLite::OPEN_READWRITE)
            .exec(damage + "; PRAGMA journal_mode = WAL");
        const std::string before = scratch::contents(folder / "c.db");
        for (const auto access : {store::Access::read, store::Access::write}) {
            const auto error = error_of([&] { File::open(folder / "c.db", access); });
            REQUIRE(error);
            CHECK(error->code() == ExitCode::damaged_file);
        }
        CHECK(scratch::contents(folder / "c.db") == before);
        CHECK(folder.names() == "c.db");
    }
}

TEST_CASE("a machine of any earlier version keeps its figures, and can take speeds") {
    for (std::size_t steps = 1; steps < store::migrations().size(); ++steps) {
        CAPTURE(steps);
        const scratch::Folder folder;
        make_version(folder / "c.db", steps);
        File file = File::open(folder / "c.db", store::Access::write);
        const auto before = store::machines(file);
        REQUIRE(before.size() == 1);
        CHECK(before[0].name == "Mill");
        CHECK(before[0].chuck ==
              length::Range{length::sixty_fourths(8), length::sixty_fourths(48)});
        CHECK(before[0].morse == 4);
        CHECK(before[0].speeds.empty());
        CHECK_FALSE(before[0].travel);
        auto faster = before[0];
        faster.speeds = {150, 3000};
        faster.variable = true;
        Change change(file, "machine add");
        store::put_machine(change, faster);
        change.commit();
        CHECK(store::machines(file)[0].speeds == faster.speeds);
        store::undo(file);
        const auto after = store::machines(file);
        REQUIRE(after.size() == 1);
        CHECK(after[0].speeds.empty());
        CHECK(after[0].morse == 4);
    }
}

// A 17/64 pilot (6.746875 mm) is .001 to .004 under its hole; 9 e8 is 8.953 to 8.975 mm (ISO
// 286-2), less .02 mm for wear.
TEST_CASE("pilots marked after their holes come up with the limits of that") {
    for (const auto* unit : {"in", "mm"}) {
        CAPTURE(unit);
        const scratch::Folder folder;
        make_with_pilots(folder / "c.db", unit);
        const File file = File::open(folder / "c.db", store::Access::write);
        const std::string bare = std::string(unit) == "mm" ? "8933000 8975000\n"  // 9 mm
                                                           : "8923800 9000000\n"; // no such size
        CHECK(pilot_limits(file) == "6645275 6721475\n6645275 6721475\n6629400 6705600\n"
                                    "8933000 8975000\n" +
                                        bare + "6721475 6772275\n6670675 6746875\n");
        CHECK(store::check(file).whole());
    }
}

TEST_CASE("a copy before a migration goes over no other file") {
    Shop shop;
    scratch::write(shop.folder / copy_name(), "a letter");
    shop.bring_up(with({{"second", "CREATE TABLE second (id INTEGER) STRICT;"}}));
    CHECK(shop.folder.names() == "c.db " + copy_name() + " " + copy_name() + ".2");
    CHECK(scratch::contents(shop.folder / copy_name()) == "a letter");
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
        const auto error = error_of([&] { shop.bring_up(with({{"broken", sql}})); });
        REQUIRE(error);
        CHECK(error->code() == ExitCode::damaged_file);
        CHECK(std::string(error->what()).find("cannot be brought up to date") != std::string::npos);
        CHECK(shop.steps_beyond() == 0);
        CHECK(scratch::contents(shop.folder / "c.db") == shop.before);
        CHECK(scratch::number_from(shop.file, "PRAGMA foreign_keys") == 1);
        CHECK(shop.folder.names() == "c.db " + copy_name());
    }
}
