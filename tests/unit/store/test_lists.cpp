// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The small tables: own screws, the house list, practice, machines and bar stock.
#include "store/lists.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "random_tools.hpp"
#include "scratch.hpp"
#include "trade/text.hpp"

using error::ExitCode;
using scratch::error_of;
using store::Change;
using store::File;

TEST_CASE("own screws read back as they were put, by name") {
    const scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    RandomTools random(31);
    std::vector<trade::OwnScrew> screws;
    Change change(file, "add screw");
    for (int i = 0; i < 50; ++i) {
        screws.push_back(random.screw());
        screws.back().name = "screw " + std::to_string(100 + i);
        store::put_own_screw(change, screws.back());
    }
    change.commit();
    CHECK(store::own_screws(file) == screws);
}

TEST_CASE("an own screw is found whatever its capitals and blanks, and keeps its last spelling") {
    const scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    Change change(file, "add screw");
    trade::OwnScrew screw;
    screw.name = "5/16-18 Guard  screw";
    store::put_own_screw(change, screw);
    screw.name = "5/16-18 guard screw";
    screw.note = "from the works";
    store::put_own_screw(change, screw);
    CHECK(store::own_screws(file) == std::vector<trade::OwnScrew>{screw});
    CHECK(error_of([&] { store::drop_own_screw(change, "1/4 guard screw"); })->code() ==
          ExitCode::no_such_record);
    store::drop_own_screw(change, " 5/16-18 GUARD screw");
    CHECK(store::own_screws(file).empty());
    screw.name = "  ";
    CHECK(error_of([&] { store::put_own_screw(change, screw); })->code() == ExitCode::bad_data);
}

TEST_CASE("the house list keeps its order and one row a screw and hole") {
    const scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    Change change(file, "house add");
    store::put_house(change, {"M8 socket head cap", "", "common"});
    store::put_house(change, {"1/4-20 fillister", "close", ""});
    store::put_house(change, {"M8 socket head cap", "9 mm", ""});
    store::put_house(change, {"m8  Socket head cap", "", "less common"});
    const auto screws = store::house(file);
    REQUIRE(screws.size() == 3);
    CHECK(screws[0].screw == "m8  Socket head cap");
    CHECK(screws[0].note == "less common");
    CHECK(screws[1].hole == "close");
    CHECK(screws[2].hole == "9 mm");
    store::drop_house(change, "M8 socket head cap", "");
    CHECK(store::house(file).size() == 2);
    const auto error = error_of([&] { store::drop_house(change, "M8 socket head cap", "tap"); });
    REQUIRE(error);
    CHECK(error->code() == ExitCode::no_such_record);
    CHECK(error->what() == std::string("not on the house list: M8 socket head cap, hole tap"));
}

TEST_CASE("the shop's own practice is set, marked and taken away") {
    const scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    Change change(file, "practice set");
    store::set_practice(change, "Head clearance", ".006 in");
    store::set_practice(change, "head clearance", ".007 in");
    store::set_practice(change, "below flush", "1/32");
    const auto rows = store::own_practice(file);
    REQUIRE(rows.size() == 2);
    CHECK(rows[0].name == "below flush");
    CHECK(rows[1].name == "head clearance");
    CHECK(rows[1].value == ".007 in");
    CHECK(rows[1].own);
    store::reset_practice(change, "head clearance");
    CHECK(store::own_practice(file).size() == 1);
    CHECK(error_of([&] { store::reset_practice(change, "head clearance"); })->code() ==
          ExitCode::no_such_record);
}

TEST_CASE("machines read back with what is known of them") {
    const scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    Change change(file, "machine add");
    const length::Range chuck{length::millimetres(1), length::millimetres(13)};
    store::put_machine(change, {"Pillar drill", chuck, 2});
    store::put_machine(change, {"bench drill", chuck, std::nullopt});
    store::put_machine(change, {"Radial", std::nullopt, 4});
    store::put_machine(change, {"PILLAR drill", std::nullopt, 3});
    const auto machines = store::machines(file);
    REQUIRE(machines.size() == 3);
    CHECK(machines[0].name == "bench drill");
    CHECK(machines[0].chuck == chuck);
    CHECK_FALSE(machines[0].morse);
    CHECK(machines[1].name == "PILLAR drill");
    CHECK_FALSE(machines[1].chuck);
    CHECK(machines[1].morse == 3);
    CHECK(machines[2].morse == 4);
    CHECK(machines[2].speeds.empty());
    CHECK_FALSE(machines[2].travel);
    store::drop_machine(change, "radial");
    CHECK(store::machines(file).size() == 2);
    CHECK(error_of([&] { store::drop_machine(change, "radial"); })->code() ==
          ExitCode::no_such_record);
}

TEST_CASE("speeds and travel of a machine read back, and are taken away again") {
    const scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    Change change(file, "machine add");
    trade::Machine stepped{"bench drill", std::nullopt, std::nullopt};
    stepped.speeds = {250, 500, 1000, 100'000};
    stepped.travel = length::millimetres(80);
    trade::Machine variable{"mill", std::nullopt, 3};
    variable.speeds = {150, 3000};
    variable.variable = true;
    store::put_machine(change, stepped);
    store::put_machine(change, variable);
    auto machines = store::machines(file);
    REQUIRE(machines.size() == 2);
    CHECK(machines[0].speeds == stepped.speeds);
    CHECK_FALSE(machines[0].variable);
    CHECK(machines[0].travel == length::millimetres(80));
    CHECK(machines[1].speeds == variable.speeds);
    CHECK(machines[1].variable);
    CHECK_FALSE(machines[1].travel);
    CHECK(machines[1].morse == 3);
    variable.speeds.clear();
    store::put_machine(change, variable);
    machines = store::machines(file);
    CHECK(machines[1].speeds.empty());
    CHECK_FALSE(machines[1].variable);
}

TEST_CASE("bars read back by diameter, one a diameter") {
    const scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
    Change change(file, "stock add");
    const auto half = length::sixty_fourths(32);
    for (const auto bar : {length::millimetres(13), half, half})
        store::put_stock_bar(change, bar);
    CHECK(store::stock_bars(file) == std::vector{half, length::millimetres(13)});
    store::drop_stock_bar(change, half, "1/2");
    CHECK(store::stock_bars(file) == std::vector{length::millimetres(13)});
    const auto error = error_of([&] { store::drop_stock_bar(change, half, "1/2"); });
    REQUIRE(error);
    CHECK(error->code() == ExitCode::no_such_record);
    CHECK(std::string(error->what()) == "the shop's list has no such bar: 1/2");
}
