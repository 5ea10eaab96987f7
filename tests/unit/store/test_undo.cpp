// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Taking changes back: every kept table comes back as it was, and numbers stay spent.
#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>

#include <map>
#include <set>
#include <vector>

#include "cases.hpp"
#include "random_tools.hpp"
#include "scratch.hpp"
#include "store/column_maps.hpp"
#include "store/history.hpp"
#include "store/kept_table.hpp"
#include "store/lists.hpp"
#include "store/tools.hpp"

using error::ExitCode;
using scratch::error_of;
using store::Change;
using store::File;

namespace {

// A random run of changes to one catalogue, with every number that was given out.
class Run {
  public:
    Run(File& file, std::uint32_t seed) : file_(file), random_(seed) {}

    // One change of one to four steps; steps that the store refuses count as nothing.
    void change() {
        Change change(file_, random_.text());
        for (auto left = random_.between(1, 4); left > 0; --left)
            error_of([&] { step(change); });
        change.commit();
    }

    [[nodiscard]] bool number_came_twice() const { return number_came_twice_; }

  private:
    void step(Change& change) {
        switch (random_.between(0, 11)) {
        case 0:
        case 1:
            return spend(store::add_body(change, body()));
        case 2:
        case 3:
            return spend(store::add_pilot(change, random_.pilot()));
        case 4:
            return update_body(change);
        case 5:
            return update_pilot(change);
        case 6:
            return store::put_in_body(change, any_pilot(), any_body());
        case 7:
            return store::take_out(change, any_pilot());
        case 8:
            return store::record_trial(change, {any_pilot(), any_body(),
                                                static_cast<trade::Tried>(random_.between(0, 4))});
        case 9:
            return lists(change);
        case 10:
            return store::put_own_screw(change, random_.screw());
        default:
            return drop(change);
        }
    }

    void lists(Change& change) {
        const auto which = std::to_string(random_.between(1, 4));
        store::put_house(change, {"M" + which, random_.chance(50) ? "close" : "", random_.text()});
        store::set_practice(change, "rule " + which, random_.text());
        const auto chuck = random_.dimension();
        trade::Machine machine{"Drill " + which, trade::range_of(chuck), std::nullopt};
        if (random_.chance(50)) {
            machine.speeds = {static_cast<int>(random_.between(1, 500)),
                              static_cast<int>(random_.between(501, 5000))};
            machine.variable = random_.chance(50);
        }
        if (random_.chance(50))
            machine.travel = length::millimetres(random_.between(1, 200));
        store::put_machine(change, machine);
        store::put_stock_bar(change, length::millimetres(random_.between(1, 9)));
        store::put_column_map(change, "bodies", "header " + which, random_.text());
    }

    void drop(Change& change) {
        const auto which = std::to_string(random_.between(1, 4));
        const auto own = store::own_screws(file_);
        if (!own.empty())
            store::drop_own_screw(change, own.front().name);
        error_of([&] { store::drop_house(change, "M" + which, ""); });
        error_of([&] { store::reset_practice(change, "rule " + which); });
        error_of([&] { store::drop_machine(change, "drill " + which); });
        for (const auto bar : store::stock_bars(file_))
            store::drop_stock_bar(change, bar, which);
    }

    trade::Body body() {
        trade::Body body = random_.body();
        body.pilot_kind = trade::PilotKind::removable;
        return body;
    }
    void update_body(Change& change) {
        trade::Body changed = body();
        changed.number = any_body();
        store::update_body(change, changed);
    }
    void update_pilot(Change& change) {
        trade::Pilot changed = random_.pilot();
        changed.number = any_pilot();
        store::update_pilot(change, changed);
    }
    std::int64_t any_body() {
        const auto all = store::bodies(file_);
        return all.empty() ? 1 : all[pick(all.size())].number;
    }
    std::int64_t any_pilot() {
        const auto all = store::pilots(file_);
        return all.empty() ? 1 : all[pick(all.size())].number;
    }
    std::size_t pick(std::size_t size) {
        return static_cast<std::size_t>(random_.between(0, static_cast<std::int64_t>(size) - 1));
    }
    void spend(std::int64_t number) {
        number_came_twice_ = number_came_twice_ || !spent_.insert(number).second;
    }

    File& file_;
    RandomTools random_;
    std::set<std::int64_t> spent_;
    bool number_came_twice_ = false;
};

} // namespace

TEST_CASE("any run of changes, all taken back, leaves the tables as they were") {
    std::map<std::string, int> changed; // rows by table, lest a table is never tried
    for (std::uint32_t seed = 1; seed <= cases::some(200U); ++seed) {
        CAPTURE(seed);
        const scratch::Folder folder;
        File file = scratch::catalogue(folder / "c.db");
        file.database().exec("PRAGMA synchronous = OFF"); // no power fails here
        Run run(file, seed);
        const auto groups = [&file] {
            return scratch::number_from(file, "SELECT count(*) FROM change_group");
        };
        std::vector<std::string> before; // of each change that is a group
        for (int i = 0; i < 10; ++i) {
            const auto then = groups();
            const auto dump = scratch::dump(file);
            run.change();
            if (groups() != then)
                before.push_back(dump);
        }
        for (const auto& row : store::history(file, std::nullopt))
            ++changed[row.table];
        for (; !before.empty(); before.pop_back()) {
            store::undo(file);
            CHECK(scratch::dump(file) == before.back());
        }
        CHECK(error_of([&] { store::undo(file); })->code() == ExitCode::no_such_record);
        for (int i = 0; i < 4; ++i)
            run.change();
        CHECK_FALSE(run.number_came_twice());
        CHECK(scratch::number_from(file, "SELECT count(*) FROM pragma_foreign_key_check") == 0);
    }
    for (const auto& table : store::kept_tables()) {
        CAPTURE(table);
        CHECK(changed[table] > cases::some(100));
    }
}

TEST_CASE("an import of bodies with their pilots is taken back at once") {
    const scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    {
        Change change(file, "import pilots set-a.csv");
        for (int i = 0; i < 10; ++i) {
            trade::Body body;
            body.pilot_kind = trade::PilotKind::removable;
            trade::Pilot pilot;
            pilot.in_body = store::add_body(change, body);
            pilot.number = store::add_pilot(change, pilot);
            store::record_trial(change, {pilot.number, *pilot.in_body, trade::Tried::slides});
        }
        change.commit();
    }
    const store::Undone undone = store::undo(file);
    CHECK(undone.words == "import pilots set-a.csv");
    CHECK(undone.rows == 30);
    CHECK(store::bodies(file).empty());
    CHECK(store::pilots(file).empty());
    CHECK(store::trials(file).empty());
    const auto history = store::history(file, std::nullopt);
    REQUIRE(history.size() == 60);
    CHECK(history.back().words == "undo import pilots set-a.csv");
    CHECK(history.back().undoes == 1);
}

TEST_CASE("undo goes back step by step and is never itself taken back") {
    const scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    CHECK(error_of([&] { store::undo(file); })->code() == ExitCode::no_such_record);
    for (const auto* value : {".001 in", ".002 in", ".003 in"}) {
        Change change(file, value);
        store::set_practice(change, "head clearance", value);
        change.commit();
    }
    CHECK(store::undo(file).words == ".003 in");
    CHECK(store::own_practice(file)[0].value == ".002 in");
    CHECK(store::undo(file).words == ".002 in");
    {
        Change change(file, "another");
        store::set_practice(change, "head clearance", ".009 in");
        change.commit();
    }
    CHECK(store::undo(file).words == "another");
    CHECK(store::undo(file).words == ".001 in");
    CHECK(store::own_practice(file).empty());
    CHECK(error_of([&] { store::undo(file); })->code() == ExitCode::no_such_record);
}

TEST_CASE("a number stays spent after its tool was taken back") {
    const scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    const auto add = [&file](std::int64_t number) {
        Change change(file, "add body");
        trade::Body body;
        body.number = number;
        const auto given = store::add_body(change, body);
        change.commit();
        return given;
    };
    CHECK(add(0) == 1);
    CHECK(add(20) == 20);
    store::undo(file);
    store::undo(file);
    const auto error = error_of([&] { add(20); });
    REQUIRE(error);
    CHECK(error->code() == ExitCode::bad_data);
    CHECK(error->what() == std::string("the number was given to a body before: 20"));
    CHECK(add(0) == 21);
    CHECK(error_of([&] {
              Change change(file, "change");
              trade::Body body;
              body.number = 20;
              store::update_body(change, body);
          })->hint() ==
          "the number was given out, but its tool was taken back or left behind by restore");
}

TEST_CASE("a row that was changed past the history is not taken back, and nothing else is") {
    const scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    {
        Change change(file, "two values");
        store::set_practice(change, "first", "1 in");
        store::set_practice(change, "second", "2 in");
        change.commit();
    }
    file.database().exec("DROP TRIGGER practice_update");
    file.database().exec("UPDATE practice SET value = '3 in' WHERE name = 'first'");
    const std::string before = scratch::contents(folder / "c.db");
    const auto error = error_of([&] { store::undo(file); });
    REQUIRE(error);
    CHECK(error->code() == ExitCode::damaged_file);
    CHECK(error->what() ==
          "the catalogue is damaged (practice [\"first\"] is not as it was written): " +
              (folder / "c.db").string());
    CHECK(scratch::contents(folder / "c.db") == before);
    CHECK(store::own_practice(file).size() == 2);
}
