// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// kill -9 at any moment: what was acknowledged is there, the change that was cut short is there
// whole or not at all.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <chrono>
#include <random>

#include "bench.hpp"
#include "older.hpp"

namespace {

using fault::Bench;
using fault::Hardship;
using std::chrono::microseconds;

microseconds time_of(const std::function<void()>& act) {
    const auto begin = std::chrono::steady_clock::now();
    act();
    return std::chrono::duration_cast<microseconds>(std::chrono::steady_clock::now() - begin);
}

// A moment up to `times` as long as a run takes when nothing disturbs it.
Hardship killed_within(int times, microseconds whole, std::mt19937& random) {
    std::uniform_int_distribution<long> any(1, whole.count() * times);
    Hardship hardship;
    hardship.kill_after = microseconds(any(random));
    return hardship;
}

} // namespace

TEST_SUITE_BEGIN("kill");

TEST_CASE("an add that was killed is there whole or not, and every add before it") {
    const Bench bench;
    bench.done({"start"});
    const auto whole = time_of([&] { bench.done({"add", "body", "--note", "first"}); });
    std::mt19937 random(1);
    std::int64_t there = 1;
    int killed = 0;
    int made = 0;
    for (int i = 0; i < fault::times(40, 1000); ++i) {
        const std::string note = fmt::format("note {}", i);
        const auto outcome =
            bench.run({"add", "body", "--cut-dia", "7/16", "--work", "sharpen", "--note", note},
                      killed_within(2, whole, random));
        const auto now = fault::number_from(bench.file(), "SELECT count(*) FROM body");
        const auto mine =
            fault::number_from(bench.file(), "SELECT count(*) FROM body JOIN work USING (number) "
                                             "WHERE task = 'sharpen' AND note = '" +
                                                 note + "'");
        CHECK(now == there + mine);
        CHECK((outcome.code == 0 ? mine == 1 : mine >= 0));
        there = now;
        killed += outcome.code == 128 + 9;
        made += outcome.code == 0;
        if (i % 10 == 0)
            bench.is_whole();
    }
    bench.is_whole();
    CHECK(killed > 0);
    CHECK(made > 0);
}

TEST_CASE("an import that was killed is there whole or not at all") {
    const Bench bench;
    bench.done({"start"});
    fault::write(bench / "bodies.csv", fault::many_bodies(10'000));
    const std::string empty = fault::contents(bench.file());
    const auto whole = time_of([&] { bench.done({"import", "bodies", "bodies.csv"}); });
    std::mt19937 random(2);
    for (int i = 0; i < fault::times(6, 200); ++i) {
        fault::write(bench.file(), empty);
        const auto outcome =
            bench.run({"import", "bodies", "bodies.csv"}, killed_within(1, whole, random));
        const auto rows = fault::number_from(bench.file(), "SELECT count(*) FROM body");
        CHECK((rows == 0 || rows == 10'000));
        CHECK((outcome.code != 0 || rows == 10'000));
        bench.is_whole();
    }
}

TEST_CASE("a catalogue whose bringing up to date was killed is old or new, with its rows") {
    const Bench bench;
    fault::make_older(bench.file(), 1, 2000);
    const std::string old = fault::contents(bench.file());
    const auto whole = time_of([&] { bench.done({"list"}); });
    const auto version = fault::number_from(bench.file(), "PRAGMA user_version");
    REQUIRE(version > 1);
    std::mt19937 random(3);
    int unfinished = 0;
    for (int i = 0; i < fault::times(5, 100); ++i) {
        for (const std::string& name : bench.names())
            fault::fs::remove(bench / name);
        fault::write(bench.file(), old);
        bench.run({"list"}, killed_within(1, whole, random));
        const auto now = fault::number_from(bench.file(), "PRAGMA user_version");
        CHECK((now == 1 || now == version));
        unfinished += now == 1;
        bench.done({"list"});
        CHECK(fault::number_from(bench.file(), "PRAGMA user_version") == version);
        CHECK(fault::number_from(bench.file(), "SELECT count(*) FROM body") == 2000);
        bench.is_whole();
        // The copy that was made before is whole too.
        CHECK(fault::number_from(bench / "catalogue.db.version-1", "SELECT count(*) FROM body") ==
              2000);
    }
    CHECK(unfinished > 0);
}

TEST_SUITE_END();
