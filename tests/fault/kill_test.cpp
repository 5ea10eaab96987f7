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

// A moment in one of the equal parts of such a run.
Hardship killed_in_part(int part, int parts, microseconds whole, std::mt19937& random) {
    Hardship hardship = killed_within(1, whole / parts, random);
    hardship.kill_after += whole * part / parts;
    return hardship;
}

// Bodies with numbers that leave gaps for the others'.
std::string numbered_bodies(int count, int odd) {
    std::string text = "number,kind,cut_dia,place\n";
    for (int i = 1; i <= count; ++i)
        text += fmt::format("{},counterbore,{}/64,rack {}\n", 2 * i + odd, 20 + i % 60, i % 40);
    return text;
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
    const int rows = fault::times(3'000, 10'000);
    // Every other number, so that the import that is killed puts its rows in between: into pages
    // that hold what was acknowledged.
    fault::write(bench / "before.csv", numbered_bodies(rows, 0));
    fault::write(bench / "bodies.csv", numbered_bodies(rows, 1));
    bench.done({"import", "bodies", "before.csv"});
    const std::string before = fault::contents(bench.file());
    const auto whole = time_of([&] { bench.done({"import", "bodies", "bodies.csv"}); });
    std::mt19937 random(2);
    int amid = 0;
    const int kills = fault::times(6, 200);
    for (int i = 0; i < kills; ++i) {
        fault::fs::remove(bench / "catalogue.db-journal");
        fault::write(bench.file(), before);
        const auto outcome =
            bench.run({"import", "bodies", "bodies.csv"}, killed_in_part(i, kills, whole, random));
        amid += fault::fs::exists(bench / "catalogue.db-journal");
        const auto there = fault::number_from(bench.file(), "SELECT count(*) FROM body");
        CHECK((there == rows || there == 2 * rows));
        CHECK((outcome.code != 0 || there == 2 * rows));
        bench.is_whole();
    }
    CHECK(amid > 0);
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
    const int kills = fault::times(5, 100);
    for (int i = 0; i < kills; ++i) {
        for (const std::string& name : bench.names())
            fault::fs::remove(bench / name);
        fault::write(bench.file(), old);
        bench.run({"list"}, killed_in_part(i, kills, whole, random));
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
