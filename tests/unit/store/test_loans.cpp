// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Loans: all or none, outside the history, and forgotten for good.
#include "store/loans.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>

#include "scratch.hpp"
#include "store/history.hpp"
#include "store/tools.hpp"

using scratch::error_of;
using store::Change;
using store::File;

namespace {

// Bodies 1, 2 and 3.
struct Shop {
    Shop() {
        Change change(file, "add");
        for (int i = 0; i < 3; ++i)
            store::add_body(change, {});
        change.commit();
    }
    scratch::Folder folder;
    File file = scratch::catalogue(folder / "c.db");
};

} // namespace

TEST_CASE("what is lent is out until it comes back, and then known until purged") {
    Shop shop;
    store::lend(shop.file, {1, 3}, "night class", "2026-12-24");
    auto open = store::open_loans(shop.file);
    REQUIRE(open.size() == 2);
    CHECK(open[1].number == 3);
    CHECK(open[1].name == "night class");
    CHECK(open[1].due == "2026-12-24");
    CHECK_FALSE(open[1].back);
    CHECK(store::closed_loans(shop.file).empty());
    CHECK(store::newest_loan_time(shop.file) == open[0].since);

    store::take_back(shop.file, {3});
    CHECK(store::open_loans(shop.file).size() == 1);
    const auto closed = store::closed_loans(shop.file);
    REQUIRE(closed.size() == 1);
    CHECK(closed[0].number == 3);
    CHECK(closed[0].name == "night class");
    CHECK(closed[0].since == open[1].since);
    REQUIRE(closed[0].back);
    CHECK(*closed[0].back >= closed[0].since);

    CHECK(store::purge_closed_loans(shop.file) == 1);
    CHECK(store::closed_loans(shop.file).empty());
    CHECK(store::open_loans(shop.file).size() == 1);
    CHECK(store::purge_closed_loans(shop.file) == 0);
}

TEST_CASE("one that cannot be lent or taken back stops the rest") {
    Shop shop;
    store::lend(shop.file, {2}, "Jo", std::nullopt);
    CHECK(error_of([&] {
              store::lend(shop.file, {1, 2}, "Al", std::nullopt);
          })->code() == error::ExitCode::bad_data);
    CHECK(error_of([&] {
              store::take_back(shop.file, {2, 3});
          })->code() == error::ExitCode::bad_data);
    CHECK(error_of([&] { store::lend(shop.file, {99}, "Al", std::nullopt); })->code() ==
          error::ExitCode::bad_data);
    const auto open = store::open_loans(shop.file);
    REQUIRE(open.size() == 1);
    CHECK(open[0].name == "Jo");
    CHECK(store::closed_loans(shop.file).empty());
}

TEST_CASE("a purged name is nowhere in the file") {
    Shop shop;
    store::lend(shop.file, {1, 2, 3}, "a name like no other", std::nullopt);
    store::take_back(shop.file, {1, 2, 3});
    CHECK(scratch::contents(shop.folder / "c.db").find("a name like no other") !=
          std::string::npos);
    store::purge_closed_loans(shop.file);
    CHECK(scratch::contents(shop.folder / "c.db").find("a name like no other") ==
          std::string::npos);
    CHECK(shop.folder.names() == "c.db");
}

TEST_CASE("undo leaves loans alone, also of a tool whose entry it took back") {
    Shop shop;
    store::lend(shop.file, {1}, "Jo", std::nullopt);
    CHECK(store::history(shop.file, std::nullopt).size() == 3);
    CHECK(store::undo(shop.file).rows == 3);
    CHECK(store::open_loans(shop.file).size() == 1);
    store::take_back(shop.file, {1});
    CHECK(store::open_loans(shop.file).empty());
}
