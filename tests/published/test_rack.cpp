// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One rack with every solid tool of handbook and standard, asked for the screws they were made for:
// the tool of the screw's own size must be ready, and first.
#include <doctest/doctest.h>

#include "match/matcher.hpp"
#include "solid_tools.hpp"

using match::AnswerKind;

namespace {

struct Bench {
    explicit Bench(const std::string& indexes = "fraction, number, letter, metric") {
        practice.drill_indexes = indexes;
        shop = match::make_shop(tables, practice, length::Unit::inch);
    }

    store::Reference tables;
    trade::Practice practice = trade::read_practice(tables.practice());
    match::Shop shop;
    published::SolidTools rack{tables, practice};
};

match::Report ask(const Bench& bench, const std::string& screw) {
    match::Question question;
    question.screw = trade::resolve_screw(screw, "", bench.tables, {});
    return match::match(question, bench.shop, bench.rack, length::Unit::inch, 3);
}

void check_first(const Bench& bench, const std::string& size, const std::string& form) {
    const auto screw = size + " " + form;
    CAPTURE(screw);
    const auto report = ask(bench, screw);
    REQUIRE_FALSE(report.answers.empty());
    const auto& first = report.answers.front();
    const auto said = match::next_step(first);
    CAPTURE(said);
    CAPTURE(first.place);
    CHECK(first.kind == AnswerKind::ready);
    CHECK(first.place == size);
}

const std::vector<std::string> k_number{"#0", "#1", "#2", "#3", "#4", "#5", "#6", "#8", "#10"};
const std::vector<std::string> k_inch{"1/4", "5/16", "3/8", "7/16", "1/2"};
const std::vector<std::string> k_metric{"M3", "M4", "M5", "M6", "M8", "M10", "M12"};

} // namespace

TEST_CASE(
    "in a rack of all of them the handbook's tool comes first for its socket head cap screw") {
    for (const auto* indexes : {"fraction, number, letter", "fraction, number, letter, metric"}) {
        CAPTURE(indexes);
        const Bench bench(indexes);
        for (const auto& size : k_number)
            check_first(bench, size, "socket head cap");
        for (const auto& size : k_inch)
            check_first(bench, size, "socket head cap");
    }
}

TEST_CASE("in a rack of all of them the handbook's tool comes first for its fillister screw") {
    const Bench bench("fraction, number, letter");
    for (const auto& size : k_number)
        check_first(bench, size, "fillister");
    check_first(bench, "#12", "fillister");
    // Of 1/4 to 1/2 the cap screw's head is the one the tools are made for (head and 1/32).
    for (const auto& size : k_inch)
        check_first(bench, size, "fillister cap");
}

TEST_CASE("in a rack of all of them the standard's tool comes first for its metric screw") {
    for (const auto* indexes : {"metric", "fraction, number, letter, metric"}) {
        CAPTURE(indexes);
        const Bench bench(indexes);
        for (const auto& size : k_metric)
            check_first(bench, size, "socket head cap");
    }
}
