// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Random commands, one process each, against a model in memory: the same after every few hundred.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <future>
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

// Rows, and what each should be; empty: not there.
struct Rows {
    std::map<std::int64_t, std::optional<Tool>> tools;
    std::map<std::string, std::optional<std::string>> house; // screw to note
    bool operator==(const Rows&) const = default;
};

// Puts `wanted` in; it has then what was there.
template <class Key, class Value>
void swap_in(std::map<Key, Value>& there, std::map<Key, std::optional<Value>>& wanted) {
    for (auto& [key, value] : wanted) {
        const auto at = there.find(key);
        const auto before = at == there.end() ? std::nullopt : std::optional(at->second);
        if (value)
            there.insert_or_assign(key, *value);
        else
            there.erase(key);
        value = before;
    }
}

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
        same("SELECT number || ', ' || place FROM body ORDER BY number",
             lines_of(true, [](const Tool& tool) { return tool.place; }));
        same("SELECT number || ', ' || place || ', ' || coalesce(in_body, 0) FROM pilot "
             "ORDER BY number",
             lines_of(false, [](const Tool& tool) {
                 return fmt::format("{}, {}", tool.place, tool.in_body);
             }));
        std::string house;
        for (const auto& [screw, note] : house_)
            house += fmt::format("{}, {}\n", screw, note);
        same("SELECT screw || ', ' || note FROM house ORDER BY screw", house);
        const std::string rows =
            bench_.done({"export", "bodies"}) + bench_.done({"export", "pilots"});
        CHECK(std::count(rows.begin(), rows.end(), '\n') ==
              2 + static_cast<std::int64_t>(tools_.size()));
        bench_.is_whole();
    }

  private:
    static constexpr std::size_t k_most_tools = 2000; // what a large shop has

    std::int64_t below(std::int64_t count) {
        return std::uniform_int_distribution<std::int64_t>(0, count - 1)(random_);
    }
    void same(const std::string& sql, const std::string& expected) const {
        const std::string found = fault::lines_from(bench_.file(), sql);
        const auto [a, b] =
            std::mismatch(found.begin(), found.end(), expected.begin(), expected.end());
        CAPTURE(sql);
        CAPTURE(std::string(a, std::min(a + 80, found.end())));
        CAPTURE(std::string(b, std::min(b + 80, expected.end())));
        CHECK((found == expected));
    }
    [[nodiscard]] std::string lines_of(bool bodies,
                                       const std::function<std::string(const Tool&)>& text) const {
        std::string lines;
        for (const auto& [number, tool] : tools_)
            if (tool.body == bodies)
                lines += fmt::format("{}, {}\n", number, text(tool));
        return lines;
    }
    std::optional<std::int64_t> any(bool body) {
        std::vector<std::int64_t> all;
        for (const auto& [number, tool] : tools_)
            if (tool.body == body)
                all.push_back(number);
        if (all.empty())
            return std::nullopt;
        return all[static_cast<std::size_t>(below(static_cast<std::int64_t>(all.size())))];
    }
    std::string place() { return fmt::format("rack {}", below(50)); }
    // How it was goes on the pile if the change changes anything.
    void change(const Words& words, Rows rows) {
        const auto outcome = bench_.run(words);
        CAPTURE(words.front());
        CAPTURE(outcome.err);
        CHECK(outcome.code == 0);
        const Rows wanted = rows;
        put(rows);
        if (rows != wanted)
            undo_.push_back(rows);
    }
    void put(Rows& rows) {
        swap_in(tools_, rows.tools);
        swap_in(house_, rows.house);
    }
    void add(bool body) {
        if (tools_.size() >= k_most_tools)
            return move();
        const std::string where = place();
        Rows rows;
        rows.tools[++last_number_] = {body, where, 0};
        change(body ? Words{"add", "body", "--pilot-kind", "removable", "--place", where}
                    : Words{"add", "pilot", "--pilot-dia", "1/4", "--place", where},
               rows);
    }
    void move() {
        const auto number = any(below(2) == 0);
        if (!number)
            return;
        Tool tool = tools_.at(*number);
        tool.place = place();
        change({"change", std::to_string(*number), "--place", tool.place}, {{{*number, tool}}, {}});
    }
    void pair() {
        const auto pilot = any(false);
        const auto body = any(true);
        if (!pilot || !body)
            return;
        Rows rows;
        for (const auto& [number, tool] : tools_)
            if (!tool.body && tool.in_body == *body)
                rows.tools[number] = {false, tool.place, 0};
        rows.tools[*pilot] = {false, tools_.at(*pilot).place, *body};
        change({"pair", std::to_string(*pilot), std::to_string(*body)}, rows);
    }
    void unpair() {
        const auto pilot = any(false);
        if (!pilot || tools_.at(*pilot).in_body == 0)
            return;
        const Tool alone{false, tools_.at(*pilot).place, 0};
        change({"unpair", std::to_string(*pilot)}, {{{*pilot, alone}}, {}});
    }
    void house() {
        const std::string screw = fmt::format("M{} socket head cap", 3 + below(4));
        if (house_.contains(screw))
            return change({"house", "drop", screw}, {{}, {{screw, std::nullopt}}});
        const std::string note = fmt::format("note {}", below(9));
        change({"house", "add", screw, "--note", note}, {{}, {{screw, note}}});
    }
    void undo() {
        const auto outcome = bench_.run({"undo"});
        CAPTURE(outcome.err);
        CHECK(outcome.code == (undo_.empty() ? 4 : 0));
        if (undo_.empty())
            return;
        put(undo_.back());
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
    // What the catalogue should hold, and how it was before each change.
    std::map<std::int64_t, Tool> tools_;
    std::map<std::string, std::string> house_;
    std::vector<Rows> undo_;
    std::int64_t last_number_ = 0; // spent, also by what was taken back
};

} // namespace

TEST_SUITE_BEGIN("soak");

TEST_CASE("random commands leave what a model in memory holds") {
    // In full, four catalogues side by side.
    const auto soak = [](unsigned seed) {
        const Bench bench;
        Soak catalogue(bench, seed);
        const int steps = fault::times(300, 25'000);
        const int between = fault::times(100, 1000);
        for (int i = 1; i <= steps; ++i) {
            catalogue.step();
            if (i % between == 0)
                catalogue.compare();
        }
    };
    std::vector<std::future<void>> soaks;
    for (int i = 0; i < fault::times(1, 4); ++i)
        soaks.push_back(std::async(std::launch::async, soak, 6U + static_cast<unsigned>(i)));
    for (auto& done : soaks)
        done.get();
}

TEST_SUITE_END();
