// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Statements that are kept prepared: each use starts afresh, whatever became of the one before.
#include "store/statements.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>

#include "scratch.hpp"
#include "store/query.hpp"

namespace {

constexpr auto k_count_up = "SELECT value FROM json_each(?1) ORDER BY value";

struct Shop {
    scratch::Folder folder;
    store::File file = scratch::catalogue(folder / "catalogue.db");
};

} // namespace

TEST_CASE("a statement left in the middle of its rows starts again from the first") {
    Shop shop;
    for (int time = 0; time < 2; ++time) {
        store::Query query(shop.file.statements(), k_count_up);
        query.put("[1, 2, 3]");
        REQUIRE(query.step());
        CHECK(query.integer() == 1);
    }
}

TEST_CASE("two queries of one text at a time do not disturb each other") {
    Shop shop;
    store::Query outer(shop.file.statements(), k_count_up);
    outer.put("[1, 2]");
    REQUIRE(outer.step());
    for (int time = 0; time < 2; ++time) {
        store::Query inner(shop.file.statements(), k_count_up);
        inner.put("[7]");
        REQUIRE(inner.step());
        CHECK(inner.integer() == 7);
        CHECK_FALSE(inner.step());
    }
    CHECK(outer.integer() == 1);
    REQUIRE(outer.step());
    CHECK(outer.integer() == 2);
}

TEST_CASE("a statement that failed can be run again") {
    Shop shop;
    constexpr auto k_insert = "INSERT INTO tool_number (number, kind) VALUES (?1, 'body')";
    const auto insert = [&](std::int64_t number) {
        store::Query(shop.file.statements(), k_insert).put(number).run();
    };
    insert(1);
    CHECK(scratch::error_of([&] { insert(1); }));
    insert(2);
    CHECK(scratch::number_from(shop.file, "SELECT count(*) FROM tool_number") == 2);
}

TEST_CASE("a statement left in the middle holds no transaction open") {
    Shop shop;
    {
        store::Query query(shop.file.statements(), "SELECT number FROM tool_number");
        (void)query.step();
    }
    store::execute(shop.file.database(), "BEGIN EXCLUSIVE");
    store::execute(shop.file.database(), "COMMIT");
}
