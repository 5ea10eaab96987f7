// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Every call that writes, syncs, names or takes away a file fails once, one after the other: the
// command does all of its work or none, and says which.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <cerrno>
#include <regex>

#include "bench.hpp"

namespace {

using fault::Bench;
using fault::Outcome;

// And without the sums, which are over the times too.
std::string without_times(const std::string& text) {
    static const std::regex k_time(R"(\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}Z|3:[0-9a-f]{16}\|)");
    return std::regex_replace(text, k_time, "<time>");
}

struct Work {
    const char* name;
    fault::Words words;
    bool changes; // the catalogue
    int step;     // from call to call after the first, in the short form
};

constexpr int k_most_calls = 2000;

struct Failing {
    const char* name;
    int error;
    bool stays;
};

constexpr Failing k_failings[] = {{"EIO once", EIO, false},
                                  {"ENOSPC from then on", ENOSPC, true},
                                  {"EIO from then on", EIO, true}};

// What a run left: the catalogue as it was or as it should be by its exit code.
class Trial {
  public:
    Trial(const Bench& bench, const Work& work) : bench_(bench), work_(work) {
        before_ = fault::rows_of(bench_.file());
        bytes_ = fault::contents(bench_.file());
        bench_.done(work_.words);
        after_ = without_times(fault::rows_of(bench_.file()));
        before_ = without_times(before_);
        reset();
    }

    // False once no call is left to fail.
    bool fail_call(int at, const Failing& failing) {
        fault::Hardship hardship;
        const std::string mark = bench_ / "mark";
        hardship.variables = {"LD_PRELOAD=" FAULT_CALLS, fmt::format("FAULT_AT={}", at),
                              fmt::format("FAULT_ERROR={}", failing.error), "FAULT_MARK=" + mark};
        if (failing.stays)
            hardship.variables.push_back("FAULT_STAYS=1");
        const Outcome outcome = bench_.run(work_.words, hardship);
        const std::string call = fault::contents(mark);
        fault::fs::remove(mark);
        CAPTURE(work_.name);
        CAPTURE(failing.name);
        CAPTURE(at);
        CAPTURE(call);
        CAPTURE(outcome.err);
        CHECK_FALSE(outcome.hung);
        judge(outcome, failing);
        bench_.is_whole();
        reset();
        return !call.empty();
    }

  private:
    void judge(const Outcome& outcome, const Failing& failing) const {
        const bool left_journal = fault::fs::exists(bench_ / "catalogue.db-journal");
        const bool same_bytes = fault::contents(bench_.file()) == bytes_;
        const std::string rows = without_times(fault::rows_of(bench_.file()));
        if (outcome.code == 0) {
            CHECK((rows == after_));
        } else if (outcome.err.find("may have been made") != std::string::npos) {
            CHECK((rows == before_ || rows == after_)); // the last sync: nobody can know
        } else {
            CHECK((outcome.code == 7 || outcome.code == 6));
            CHECK((rows == before_));
            CHECK((same_bytes || left_journal));
            // One that is whole may stay where nothing can be taken away any more.
            CHECK(copies() <= (failing.stays ? 1 : 0));
        }
        if (outcome.code == 0 && !work_.changes)
            CHECK(copies() == 1);
    }

    [[nodiscard]] int copies() const {
        int count = 0;
        for (const std::string& name : bench_.names())
            if (name.rfind("catalogue.db.", 0) == 0) {
                CHECK((without_times(fault::rows_of(bench_ / name)) == before_));
                ++count;
            }
        return count;
    }

    // As it was before, with nothing lying about.
    void reset() const {
        for (const std::string& name : bench_.names())
            if (name.find("catalogue.db") != std::string::npos)
                fault::fs::remove(bench_ / name);
        fault::write(bench_.file(), bytes_);
    }

    const Bench& bench_;
    const Work& work_;
    std::string before_;
    std::string bytes_;
    std::string after_;
};

// Those that name, sync and take away: the last of all are between two of which the second is none.
void fail_last_calls(Trial& trial, const Failing& failing, int within, int past) {
    constexpr int k_last = 10;
    if (past - within == 1)
        return; // each was tried
    while (past - within > 1) {
        const int between = (within + past) / 2;
        (trial.fail_call(between, failing) ? within : past) = between;
    }
    for (int at = std::max(within - k_last, 1); at < past; ++at)
        CHECK(trial.fail_call(at, failing));
}

} // namespace

TEST_SUITE_BEGIN("calls");

TEST_CASE("a call of the system that fails leaves the catalogue as it was, or the work done") {
    const Bench bench;
    bench.fill();
    bench.done({"backup", "copy.db"});
    bench.done({"add", "pilot", "--pilot-dia", "1/4"});
    fault::write(bench / "more.csv", fault::many_bodies(fault::times(40, 2000)));
    const Work works[] = {{"add", {"add", "body", "--cut-dia", "7/16"}, true, 7},
                          {"import", {"import", "bodies", "more.csv"}, true, 7},
                          {"undo", {"undo"}, true, 7},
                          {"restore", {"restore", "copy.db"}, true, 31},
                          {"recover", {"recover", "--in-place"}, true, 31},
                          {"backup", {"backup"}, false, 7}};
    for (const Work& work : works)
        for (const Failing& failing : k_failings) {
            Trial trial(bench, work);
            int at = 1;
            // A copy is many writes that are alike.
            const auto step = [&] { return fault::is_long() || at < 20 ? 1 : work.step; };
            while (at < k_most_calls && trial.fail_call(at, failing))
                at += step();
            CHECK(at > 4); // the library was loaded and calls failed
            CHECK(at < k_most_calls);
            fail_last_calls(trial, failing, std::max(at - step(), 1), at);
        }
}

TEST_SUITE_END();
