// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Changes: all or nothing, one at a time, and never past the history.
#include "store/change.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>

#include <chrono>

#include "random_tools.hpp"
#include "scratch.hpp"
#include "store/lists.hpp"
#include "store/tools.hpp"

using error::ExitCode;
using scratch::error_of;
using scratch::number_from;
using std::chrono::milliseconds;
using std::chrono::steady_clock;
using store::Access;
using store::Change;
using store::File;

TEST_CASE("a second change waits for the first and then says that the catalogue is in use") {
    const scratch::Folder folder;
    File first = scratch::catalogue(folder / "c.db");
    File second = File::open(folder / "c.db", Access::write, milliseconds(60));
    Change change(first, "first");
    const auto start = steady_clock::now();
    const auto error = error_of([&] { const Change late(second, "second"); });
    const auto waited = steady_clock::now() - start;
    REQUIRE(error);
    CHECK(error->code() == ExitCode::busy);
    CHECK(waited >= milliseconds(50));
    CHECK(waited < milliseconds(4000));
    store::set_practice(change, "head clearance", ".006 in");
    change.commit();
    CHECK_FALSE(error_of([&] { const Change next(second, "third"); }));
    CHECK(store::own_practice(second).size() == 1);
}

TEST_CASE("opening the catalogue again does not let go of the lock of a change") {
    const scratch::Folder folder;
    File first = scratch::catalogue(folder / "c.db");
    const Change change(first, "first");
    File second = File::open(folder / "c.db", Access::write, milliseconds(0));
    { const File third = File::open(folder / "c.db", Access::read, milliseconds(0)); }
    CHECK(error_of([&] { const Change late(second, "second"); })->code() == ExitCode::busy);
}

TEST_CASE("a change can be read before it is there for others") {
    const scratch::Folder folder;
    File first = scratch::catalogue(folder / "c.db");
    const File other = File::open(folder / "c.db", Access::read);
    Change change(first, "add");
    store::add_body(change, {});
    CHECK(store::bodies(first).size() == 1);
    CHECK(store::bodies(other).empty());
    change.commit();
    CHECK(store::bodies(other).size() == 1);
}

TEST_CASE("a change that is not committed leaves the file as it was, byte for byte") {
    const scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    const std::string before = scratch::contents(folder / "c.db");
    RandomTools random(11);
    error_of([&] {
        Change change(file, "import");
        for (int i = 0; i < 20; ++i)
            store::add_body(change, random.body());
        trade::Body twice = random.body();
        twice.number = 1;
        store::add_body(change, twice);
    });
    CHECK(store::bodies(file).empty());
    CHECK(scratch::contents(folder / "c.db") == before);
    CHECK(folder.names() == "c.db");
    // The numbers were nobody's.
    Change change(file, "add");
    CHECK(store::add_body(change, {}) == 1);
}

TEST_CASE("a change that changes nothing writes nothing") {
    const scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    RandomTools random(12);
    trade::Body body = random.body();
    body.retired.reset();
    body.pilot_kind = trade::PilotKind::removable;
    {
        Change change(file, "add");
        body.number = store::add_body(change, body);
        store::set_practice(change, "head clearance", ".006 in");
        store::put_house(change, {"M8 socket head cap", "", ""});
        trade::Pilot pilot;
        pilot.number = store::add_pilot(change, pilot);
        store::put_in_body(change, pilot.number, body.number);
        store::record_trial(change, {pilot.number, body.number, trade::Tried::slides});
        change.commit();
    }
    const auto rows = number_from(file, "SELECT count(*) FROM history");
    const auto groups = number_from(file, "SELECT count(*) FROM change_group");
    {
        Change change(file, "the same again");
        store::update_body(change, body);
        store::set_practice(change, "head clearance", ".006 in");
        store::put_house(change, {"M8 socket head cap", "", ""});
        store::put_in_body(change, body.number + 1, body.number);
        store::record_trial(change, {body.number + 1, body.number, trade::Tried::slides});
        change.commit();
    }
    CHECK(number_from(file, "SELECT count(*) FROM history") == rows);
    CHECK(number_from(file, "SELECT count(*) FROM change_group") == groups);
    const std::string before = scratch::contents(folder / "c.db");
    Change(file, "nothing at all").commit();
    CHECK(scratch::contents(folder / "c.db") == before);
}

TEST_CASE("a kept table cannot be changed outside a change, nor without the program") {
    const scratch::Folder folder;
    const File file = scratch::catalogue(folder / "c.db");
    constexpr auto k_insert = "INSERT INTO practice (name, value) VALUES ('a', 'b')";
    CHECK_THROWS_WITH(file.database().exec(k_insert), "no change is going on");
    SQLite::Database bare(folder / "c.db", SQLite::OPEN_READWRITE);
    CHECK_THROWS_WITH(bare.exec(k_insert), "no such function: counterpart_key");
    CHECK(number_from(file, "SELECT count(*) FROM practice") == 0);
}
