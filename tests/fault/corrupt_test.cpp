// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A file that a bad disk has changed: no command crashes or hangs, `check` reports every change of
// a stored value, and `recover` brings back what is left.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <random>

#include "bench.hpp"

namespace {

using fault::Bench;
using fault::Outcome;

bool ended(const Outcome& outcome) {
    return !outcome.hung && outcome.code >= 0 && outcome.code <= 7;
}

class Damage {
  public:
    Damage(const Bench& bench, unsigned seed)
        : bench_(bench), random_(seed), good_(fault::contents(bench.file())),
          rows_(fault::rows_of(bench.file())) {}

    [[nodiscard]] std::string flip_bits(int count) {
        std::string bytes = good_;
        for (int i = 0; i < count; ++i)
            bytes[at(bytes.size())] ^= static_cast<char>(1U << at(8));
        return bytes;
    }
    [[nodiscard]] std::string cut_short() { return good_.substr(0, at(good_.size())); }
    [[nodiscard]] std::string zero_page() {
        std::string bytes = good_;
        const std::size_t page = at(bytes.size() / k_page) * k_page;
        bytes.replace(page, k_page, k_page, '\0');
        return bytes;
    }

    // Puts the damaged bytes in place and asks everything of them.
    void try_out(const std::string& bytes) {
        fault::write(bench_.file(), bytes);
        // The test's own reading may play with the file, so the program comes first.
        const Outcome check = bench_.run({"check"});
        const Outcome list = bench_.run({"list"});
        const Outcome match = bench_.run({"match", "1/4-20 socket head cap", "--json"});
        CAPTURE(check.out);
        CAPTURE(check.err);
        CHECK(ended(check));
        CHECK(ended(list));
        CHECK(ended(match));
        CHECK(fault::contents(bench_.file()) == bytes);
        const bool same = fault::rows_of(bench_.file()) == rows_;
        if (!same)
            CHECK(check.code != 0);
        changed_ += !same;
        found_ += !same && check.code == 6;
        ++tried_;
        clean();
    }

    void recover(const std::string& bytes) {
        fault::write(bench_.file(), bytes);
        const Outcome outcome = bench_.run({"recover", "-o", "new.db"});
        CAPTURE(outcome.out);
        CAPTURE(outcome.err);
        CHECK(ended(outcome));
        CHECK(fault::contents(bench_.file()) == bytes);
        if (outcome.code == 0) {
            ++recovered_;
            const Outcome check = bench_.run({"--file", "new.db", "check"});
            CHECK(check.code == 0);
            // What was read is right, or its loss is said.
            const bool bodies = bodies_of(bench_ / "new.db") == bodies_of_good();
            if (!bodies)
                CHECK(outcome.out.find("    ") != std::string::npos);
            whole_ += bodies;
        } else {
            CHECK(outcome.code == 6);
            CHECK_FALSE(fault::fs::exists(bench_ / "new.db"));
        }
        clean();
    }

    [[nodiscard]] int changed() const { return changed_; }
    [[nodiscard]] int found() const { return found_; }
    [[nodiscard]] int recovered() const { return recovered_; }
    [[nodiscard]] int whole() const { return whole_; }

  private:
    static constexpr std::size_t k_page = 4096;

    std::size_t at(std::size_t size) {
        return std::uniform_int_distribution<std::size_t>(0, size - 1)(random_);
    }
    static std::string bodies_of(const fault::fs::path& file) {
        const std::string rows = fault::rows_of(file);
        const auto begin = rows.find("[body]");
        return begin == std::string::npos ? rows
                                          : rows.substr(begin, rows.find("\n[", begin) - begin);
    }
    std::string bodies_of_good() const {
        const auto begin = rows_.find("[body]");
        return rows_.substr(begin, rows_.find("\n[", begin) - begin);
    }
    void clean() const {
        for (const std::string& name : bench_.names())
            fault::fs::remove(bench_ / name);
    }

    const Bench& bench_;
    std::mt19937 random_;
    std::string good_;
    std::string rows_;
    int tried_ = 0;
    int changed_ = 0;
    int found_ = 0;
    int recovered_ = 0;
    int whole_ = 0;
};

} // namespace

TEST_SUITE_BEGIN("corrupt");

TEST_CASE("damage makes no command crash or hang, and no changed value goes unreported") {
    const Bench bench;
    bench.fill();
    Damage damage(bench, 4);
    for (int i = 0; i < fault::times(150, 2000); ++i)
        damage.try_out(damage.flip_bits(1 + i % 3));
    for (int i = 0; i < fault::times(20, 300); ++i)
        damage.try_out(damage.cut_short());
    for (int i = 0; i < fault::times(20, 300); ++i)
        damage.try_out(damage.zero_page());
    MESSAGE("changed " << damage.changed() << ", reported as damage " << damage.found());
    CHECK(damage.changed() > 50);
}

TEST_CASE("what is left of a damaged file is recovered into a whole one") {
    const Bench bench;
    bench.fill();
    Damage damage(bench, 5);
    for (int i = 0; i < fault::times(40, 600); ++i)
        damage.recover(damage.flip_bits(1 + i % 3));
    for (int i = 0; i < fault::times(40, 600); ++i)
        damage.recover(damage.zero_page());
    MESSAGE("recovered " << damage.recovered() << ", every body as it was " << damage.whole());
    CHECK(damage.recovered() > fault::times(60, 900));
}

TEST_SUITE_END();
