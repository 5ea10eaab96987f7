// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A file that a stranger made: a catalogue by its header, with a schema and cells of its own. None
// of it is run, none of it takes memory.
#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>
#include <fmt/format.h>

#include "bench.hpp"

namespace {

using fault::Bench;
using fault::Words;

constexpr long k_most_kib = 80'000;

void alter(const fault::fs::path& file, const std::string& sql) {
    SQLite::Database database(file.string(), SQLite::OPEN_READWRITE);
    database.exec("PRAGMA writable_schema = ON");
    database.exec(sql);
}

// A table's trigger stands in the way of a change past the program.
std::string without_trigger(const fault::fs::path& file, const std::string& trigger,
                            const std::string& sql) {
    const auto made =
        fault::lines_from(file, "SELECT sql FROM sqlite_schema WHERE name = '" + trigger + "'");
    return "DROP TRIGGER " + trigger + "; " + sql + "; " + made;
}

constexpr auto k_endless = "WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n) ";

struct Trap {
    const char* name;
    std::string sql;
    bool is_read = false;    // the commands that only read go past it
    bool is_written = false; // and those that write
};

std::vector<Trap> traps() {
    return {
        {"a view", "CREATE VIEW tools AS SELECT 1 AS a", false},
        {"an endless view in a table's place",
         std::string("DROP TABLE house; CREATE VIEW house AS ") + k_endless +
             "SELECT i AS screw_key, i AS hole_key, i AS screw, i AS hole, i AS note FROM n",
         false},
        {"a view whose row says table",
         "CREATE VIEW tools AS SELECT 1 AS a; "
         "UPDATE sqlite_schema SET type = 'table' WHERE name = 'tools'",
         false},
        {"a table of another program's", "CREATE VIRTUAL TABLE words USING fts5 (a)", false},
        {"a trigger that takes all away",
         "CREATE TRIGGER mine AFTER INSERT ON body BEGIN DELETE FROM pilot; END", true},
        {"a trigger of ours that does more",
         "UPDATE sqlite_schema SET sql = replace(sql, 'BEGIN', 'BEGIN DELETE FROM pilot;') "
         "WHERE name = 'body_insert'",
         true},
        {"a table that is called almost as the library's own",
         "CREATE TABLE x (a); UPDATE sqlite_schema SET name = 'sqliteXstat1', "
         "tbl_name = 'sqliteXstat1', sql = 'CREATE TABLE sqliteXstat1 (a)' WHERE name = 'x'",
         true, true},
        {"a further table", "CREATE TABLE mine (a)", true, true},
    };
}

bool says(const fault::Outcome& outcome, const char* words) {
    return outcome.err.find(words) != std::string::npos;
}

} // namespace

TEST_SUITE_BEGIN("stranger");

TEST_CASE("a stranger's views and triggers are refused or passed over, and never run") {
    for (const Trap& trap : traps()) {
        const Bench bench;
        bench.fill();
        alter(bench.file(), trap.sql);
        const auto bytes = fault::contents(bench.file());
        CAPTURE(trap.name);
        for (const Words& words : {Words{"add", "body", "--cut-dia", "7/16"},
                                   {"undo"},
                                   {"change", "1", "--note", "x"}}) {
            if (trap.is_written)
                break;
            const auto outcome = bench.run(words);
            CAPTURE(words.front());
            CAPTURE(outcome.err);
            CHECK(outcome.code == 6);
            CHECK((says(outcome, "not as this program makes a catalogue") ||
                   says(outcome, "the catalogue is damaged"))); // as the library finds it
        }
        for (const Words& words : {Words{"list"},
                                   {"house", "list"},
                                   {"match", "M8 socket head cap"},
                                   {"export", "bodies"}}) {
            const auto outcome = bench.run(words);
            CAPTURE(words.front());
            CAPTURE(outcome.err);
            CHECK_FALSE(outcome.hung);
            CHECK((trap.is_read ? outcome.code < 2 : outcome.code == 6));
            CHECK(outcome.peak_kib < k_most_kib);
        }
        for (const Words& words : {Words{"check"}, {"backup", "copy.db"}}) {
            const auto outcome = bench.run(words);
            CAPTURE(words.front());
            CHECK_FALSE(outcome.hung);
            CHECK(outcome.code == 6);
        }
        CHECK((fault::contents(bench.file()) == bytes));
        CHECK(bench.names() == std::vector<std::string>{"catalogue.db"});
    }
}

TEST_CASE("a stranger's file is not put in a catalogue's place, and recovered without its traps") {
    for (const Trap& trap : traps()) {
        const Bench bench;
        bench.fill();
        bench.done({"backup", "theirs.db"});
        alter(bench / "theirs.db", trap.sql);
        const auto bytes = fault::contents(bench.file());
        CAPTURE(trap.name);
        const auto outcome = bench.run({"restore", "theirs.db"});
        CHECK_FALSE(outcome.hung);
        CHECK(outcome.code == 6);
        CHECK((fault::contents(bench.file()) == bytes));
        const auto recovered = bench.run({"--file", "theirs.db", "recover", "-o", "new.db"});
        CAPTURE(recovered.err);
        CHECK_FALSE(recovered.hung);
        REQUIRE(recovered.code == 0);
        for (const char* table : {"body", "pilot"})
            CHECK(fault::number_from(bench / "new.db",
                                     fmt::format("SELECT count(*) FROM {}", table)) ==
                  fault::number_from(bench.file(), fmt::format("SELECT count(*) FROM {}", table)));
        CHECK(bench.run({"--file", "new.db", "check"}).code == 0);
    }
}

TEST_CASE("a cell of hundreds of megabytes is not taken into memory") {
    const Bench bench;
    bench.fill();
    const auto good = fault::contents(bench.file());
    const std::string huge =
        fmt::format("replace(hex(zeroblob({})), '0', 'x')", fault::times(50, 250) * 1'000'000);
    const Trap cells[] = {
        {"a note",
         without_trigger(bench.file(), "body_update",
                         "UPDATE body SET note = " + huge + " WHERE number = 2"),
         false},
        {"words of a change", "UPDATE change_group SET words = " + huge + " WHERE id = 2", false},
        {"a row in the history", "UPDATE history SET after = " + huge + " WHERE id = 3", false},
        {"the unit", "PRAGMA ignore_check_constraints = ON; UPDATE setting SET unit = " + huge,
         false},
        {"the schema",
         "CREATE TABLE mine (a); UPDATE sqlite_schema SET sql = sql || '/*' || " + huge +
             " || '*/' WHERE name = 'mine'",
         false}};
    for (const Trap& cell : cells) {
        CAPTURE(cell.name);
        fault::write(bench.file(), good);
        alter(bench.file(), cell.sql);
        bool refused = false;
        for (const Words& words : {Words{"list"},
                                   {"list", "--json"},
                                   {"history"},
                                   {"show", "2"},
                                   {"export", "bodies"},
                                   {"match", "M8 socket head cap"},
                                   {"add", "body", "--cut-dia", "7/16"},
                                   {"undo"},
                                   {"check"},
                                   {"backup", "copy.db"},
                                   {"recover", "-o", "new.db"}}) {
            const auto outcome = bench.run(words);
            CAPTURE(words.front());
            CAPTURE(outcome.err);
            CHECK_FALSE(outcome.hung);
            CHECK((outcome.code == 0 || outcome.code == 1 || outcome.code == 6));
            CHECK(outcome.peak_kib < k_most_kib);
            refused = refused || says(outcome, "too long to be one");
        }
        CHECK(refused);
        fault::fs::remove(bench / "new.db");
    }
}

TEST_SUITE_END();
