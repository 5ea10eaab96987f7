// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Many at once: every record once, readers see whole changes, and nobody waits for ever.
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <sqlite3.h>

#include <algorithm>
#include <atomic>
#include <optional>
#include <thread>

#include "bench.hpp"

namespace {

using fault::Bench;
using Clock = std::chrono::steady_clock;

// A lock on the catalogue, as another program holds it.
class Lock {
  public:
    Lock(const Bench& bench, const char* begin) {
        REQUIRE(sqlite3_open(bench.file().c_str(), &database_) == SQLITE_OK);
        REQUIRE(sqlite3_exec(database_, begin, nullptr, nullptr, nullptr) == SQLITE_OK);
    }
    ~Lock() { sqlite3_close(database_); }
    Lock(const Lock&) = delete;
    Lock& operator=(const Lock&) = delete;

  private:
    sqlite3* database_ = nullptr;
};

double seconds_since(Clock::time_point begin) {
    return std::chrono::duration<double>(Clock::now() - begin).count();
}

} // namespace

TEST_SUITE_BEGIN("writers");

TEST_CASE("eight writers at once: each record is there once, and readers see whole changes") {
    const Bench bench;
    bench.done({"start"});
    const int each = fault::times(15, 250);
    fault::write(bench / "pair.csv", "kind,cut_dia,place\ncounterbore,7/16,x\ncounterbore,1/2,x\n");
    std::atomic<int> acknowledged{0};
    std::atomic<int> strange{0};
    std::atomic<bool> over{false};
    std::vector<std::thread> threads;
    for (int writer = 0; writer < 8; ++writer)
        threads.emplace_back([&, writer] {
            for (int i = 0; i < each; ++i) {
                int code = 5;
                while (code == 5) // in use: try again, as a user would
                    code = bench
                               .run({"add", "body", "--cut-dia", "7/16", "--note",
                                     fmt::format("{} {}", writer, i)})
                               .code;
                (code == 0 ? acknowledged : strange)++;
            }
        });
    std::thread pairs([&] {
        while (!over) {
            const int code = bench.run({"import", "bodies", "pair.csv"}).code;
            strange += code != 0 && code != 5;
        }
    });
    std::int64_t last = 0;
    std::thread reader([&] {
        while (!over) {
            const auto outcome = bench.run({"export", "bodies"});
            strange += outcome.code != 0 && outcome.code != 5;
            std::int64_t halves = 0;
            for (auto at = outcome.out.find(",x,"); at != std::string::npos;
                 at = outcome.out.find(",x,", at + 1))
                ++halves;
            const auto rows =
                static_cast<std::int64_t>(std::count(outcome.out.begin(), outcome.out.end(), '\n'));
            strange += halves % 2 != 0;                  // an import seen by half
            strange += outcome.code == 0 && rows < last; // something that was there is gone
            if (outcome.code == 0)
                last = rows;
        }
    });
    for (std::thread& thread : threads)
        thread.join();
    over = true;
    pairs.join();
    reader.join();
    CHECK(strange == 0);
    CHECK(acknowledged == 8 * each);
    CHECK(fault::number_from(bench.file(), "SELECT count(DISTINCT note) FROM body "
                                           "WHERE place <> 'x'") == 8 * each);
    CHECK(fault::number_from(bench.file(), "SELECT count(*) FROM body WHERE place <> 'x'") ==
          8 * each);
    CHECK(last > 8);
    bench.is_whole();
}

TEST_CASE("changes of one tool at once: none takes back another's") {
    const Bench bench;
    bench.done({"start"});
    bench.done({"add", "body", "--pilot-kind", "removable"});
    const std::vector<std::string> columns = {"place", "note", "marking", "material", "shank_kind"};
    const int each = fault::times(10, 200);
    std::atomic<int> strange{0};
    std::vector<std::thread> threads;
    for (const std::string& column : columns)
        threads.emplace_back([&, column] {
            std::string option = "--" + column;
            std::replace(option.begin(), option.end(), '_', '-');
            for (int i = 0; i < each; ++i) {
                const std::string value = fmt::format("{} {}", column, i);
                int code = 5;
                while (code == 5)
                    code = bench.run({"change", "1", option, value}).code;
                strange += code != 0;
                // Nobody else writes this column.
                strange += fault::lines_from(bench.file(), "SELECT " + column + " FROM body") !=
                           value + '\n';
            }
        });
    threads.emplace_back([&] {
        for (int i = 0; i < each; ++i) {
            int code = 5;
            while (code == 5)
                code = bench.run({"work", "add", "1", fmt::format("task {}", i)}).code;
            strange += code != 0;
        }
    });
    for (std::thread& thread : threads)
        thread.join();
    CHECK(strange == 0);
    CHECK(fault::number_from(bench.file(), "SELECT count(*) FROM work") == each);
    bench.is_whole();
}

TEST_CASE("a lock that another program holds ends in exit code 5 after five seconds") {
    const Bench bench;
    bench.fill();
    const auto bytes = fault::contents(bench.file());
    const Lock lock(bench, "BEGIN EXCLUSIVE");
    const auto begin = Clock::now();
    std::vector<pid_t> children;
    for (const fault::Words& words : {fault::Words{"add", "body", "--cut-dia", "7/16"},
                                      {"list"},
                                      {"undo"},
                                      {"check"},
                                      {"backup"}})
        children.push_back(bench.start(words));
    for (const pid_t child : children) {
        const auto outcome = bench.wait(child);
        CAPTURE(outcome.err);
        CHECK(outcome.code == 5);
        CHECK(outcome.err.find("in use by another program") != std::string::npos);
    }
    const double took = seconds_since(begin);
    CHECK(took > 4.0);
    CHECK(took < 9.0);
    CHECK(fault::contents(bench.file()) == bytes);
}

TEST_CASE("a change waits for another that is going on, and is made after it") {
    const Bench bench;
    bench.fill();
    std::optional<Lock> lock(std::in_place, bench, "BEGIN IMMEDIATE");
    const pid_t add = bench.start({"add", "body", "--cut-dia", "7/16"});
    const pid_t change = bench.start({"change", "1", "--place", "rack 3"});
    std::this_thread::sleep_for(std::chrono::milliseconds(500));
    lock.reset();
    CHECK(bench.wait(add).code == 0);
    CHECK(bench.wait(change).code == 0);
    bench.is_whole();
}

TEST_CASE("readers do not wait for a change that is going on") {
    const Bench bench;
    bench.fill();
    const Lock lock(bench, "BEGIN IMMEDIATE; DELETE FROM loan");
    const auto begin = Clock::now();
    CHECK(bench.run({"list"}).code == 0);
    CHECK(bench.run({"check"}).code == 0);
    CHECK(seconds_since(begin) < 4.0);
}

TEST_SUITE_END();
