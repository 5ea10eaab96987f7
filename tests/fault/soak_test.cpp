// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Random commands, one process each, against a model in memory: the same after every few hundred.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <map>
#include <optional>
#include <random>

#include "bench.hpp"

namespace {

using fault::Bench;
using fault::Words;

struct Tool {
    bool body = true;
    std::string place;
    std::int64_t in_body = 0; // of a pilot
    bool operator==(const Tool&) const = default;
};

// What the catalogue should hold, and how it was before each change, for undo.
struct State {
    std::map<std::int64_t, Tool> tools;
    std::map<std::string, std::string> house; // screw to note
    bool operator==(const State&) const = default;
};

class Soak {
  public:
    Soak(const Bench& bench, unsigned seed) : bench_(bench), random_(seed) {
        bench_.done({"start"});
    }

    void step() {
        switch (below(10)) {
        case 0:
        case 1:
            return add(true);
        case 2:
        case 3:
            return add(false);
        case 4:
            return move();
        case 5:
            return pair();
        case 6:
            return unpair();
        case 7:
            return house();
        case 8:
            return undo();
        default:
            return refused();
        }
    }

    void compare() const {
        State there;
        const std::string rows =
            bench_.done({"export", "bodies"}) + bench_.done({"export", "pilots"});
        CHECK(fault::number_from(bench_.file(), "SELECT count(*) FROM body") == count(true));
        CHECK(fault::number_from(bench_.file(), "SELECT count(*) FROM pilot") == count(false));
        for (const auto& [number, tool] : state_.tools) {
            const std::string table = tool.body ? "body" : "pilot";
            CAPTURE(number);
            CHECK(fault::number_from(
                      bench_.file(),
                      fmt::format(
                          "SELECT place = '{}' AND {} FROM {} WHERE number = {}", tool.place,
                          tool.body ? "1" : fmt::format("coalesce(in_body, 0) = {}", tool.in_body),
                          table, number)) == 1);
        }
        CHECK(fault::number_from(bench_.file(), "SELECT count(*) FROM house") ==
              static_cast<std::int64_t>(state_.house.size()));
        for (const auto& [screw, note] : state_.house)
            CHECK(fault::number_from(bench_.file(),
                                     fmt::format("SELECT note = '{}' FROM house WHERE screw = '{}'",
                                                 note, screw)) == 1);
        CHECK(rows.size() > 0);
        bench_.is_whole();
    }

  private:
    std::int64_t below(std::int64_t count) {
        return std::uniform_int_distribution<std::int64_t>(0, count - 1)(random_);
    }
    [[nodiscard]] std::int64_t count(bool bodies) const {
        return std::count_if(state_.tools.begin(), state_.tools.end(),
                             [&](const auto& tool) { return tool.second.body == bodies; });
    }
    std::optional<std::int64_t> any(bool body) {
        std::vector<std::int64_t> all;
        for (const auto& [number, tool] : state_.tools)
            if (tool.body == body)
                all.push_back(number);
        if (all.empty())
            return std::nullopt;
        return all[static_cast<std::size_t>(below(static_cast<std::int64_t>(all.size())))];
    }
    std::string place() { return fmt::format("rack {}", below(50)); }
    // How it was goes on the pile if the change changes anything.
    void change(const Words& words, const State& next) {
        const auto outcome = bench_.run(words);
        CAPTURE(words.front());
        CAPTURE(outcome.err);
        CHECK(outcome.code == 0);
        if (next == state_)
            return;
        undo_.push_back(state_);
        state_ = next;
    }
    void add(bool body) {
        State next = state_;
        const std::string where = place();
        next.tools[++last_number_] = {body, where, 0};
        change(body ? Words{"add", "body", "--pilot-kind", "removable", "--place", where}
                    : Words{"add", "pilot", "--pilot-dia", "1/4", "--place", where},
               next);
    }
    void move() {
        const auto number = any(below(2) == 0);
        if (!number)
            return;
        State next = state_;
        next.tools[*number].place = place();
        change({"change", std::to_string(*number), "--place", next.tools[*number].place}, next);
    }
    void pair() {
        const auto pilot = any(false);
        const auto body = any(true);
        if (!pilot || !body)
            return;
        State next = state_;
        for (auto& [number, tool] : next.tools)
            if (!tool.body && tool.in_body == *body)
                tool.in_body = 0;
        next.tools[*pilot].in_body = *body;
        change({"pair", std::to_string(*pilot), std::to_string(*body)}, next);
    }
    void unpair() {
        const auto pilot = any(false);
        if (!pilot || state_.tools[*pilot].in_body == 0)
            return;
        State next = state_;
        next.tools[*pilot].in_body = 0;
        change({"unpair", std::to_string(*pilot)}, next);
    }
    void house() {
        const std::string screw = fmt::format("M{} socket head cap", 3 + below(4));
        State next = state_;
        if (next.house.erase(screw) == 1)
            return change({"house", "drop", screw}, next);
        next.house[screw] = fmt::format("note {}", below(9));
        change({"house", "add", screw, "--note", next.house[screw]}, next);
    }
    void undo() {
        const auto outcome = bench_.run({"undo"});
        CAPTURE(outcome.err);
        CHECK(outcome.code == (undo_.empty() ? 4 : 0));
        if (undo_.empty())
            return;
        state_ = undo_.back();
        undo_.pop_back();
    }
    void refused() {
        const std::string bytes = fault::contents(bench_.file());
        for (const Words& words : {Words{"add", "body", "--cut-dia", "1/0"},
                                   {"change", "999999", "--place", "x"},
                                   {"pair", "999999", "1"},
                                   {"house", "add", "M8 teapot"}}) {
            const int code = bench_.run(words).code;
            CHECK((code == 2 || code == 3 || code == 4));
        }
        CHECK(fault::contents(bench_.file()) == bytes);
    }

    const Bench& bench_;
    std::mt19937 random_;
    State state_;
    std::vector<State> undo_;
    std::int64_t last_number_ = 0; // spent, also by what was taken back
};

} // namespace

TEST_SUITE_BEGIN("soak");

TEST_CASE("random commands leave what a model in memory holds") {
    const Bench bench;
    Soak soak(bench, 6);
    const int steps = fault::times(300, 100'000);
    const int between = fault::times(100, 1000);
    for (int i = 1; i <= steps; ++i) {
        soak.step();
        if (i % between == 0)
            soak.compare();
    }
}

TEST_SUITE_END();
