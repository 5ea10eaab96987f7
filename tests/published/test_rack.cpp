// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One rack with every tool of handbook and standard, solid or with a pilot that comes out, asked
// for the screws they were made for: the tool of the screw's own size must be ready, and first.
#include <doctest/doctest.h>

#include "match/matcher.hpp"
#include "removable_tools.hpp"
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

match::Answer first_for(const Bench& bench, const trade::Rack& rack, const std::string& screw) {
    match::Question question;
    question.screw = trade::resolve_screw(screw, "", bench.tables, {});
    const auto report = match::match(question, bench.shop, rack, length::Unit::inch, 1);
    REQUIRE_FALSE(report.answers.empty());
    return report.answers.front();
}

// A pilot that comes out must be the size's own too.
void check_first(const Bench& bench, const trade::Rack& rack, const std::string& size,
                 const std::string& form) {
    const auto screw = size + " " + form;
    CAPTURE(screw);
    const auto first = first_for(bench, rack, screw);
    const auto said = match::next_step(first);
    const auto drill = first.drill ? first.drill->name : std::string("none");
    CAPTURE(said);
    CAPTURE(drill);
    CAPTURE(first.body);
    CAPTURE(first.place);
    CHECK(first.kind == AnswerKind::ready);
    CHECK(first.place == size);
    if (first.pilot)
        CHECK(first.pilot_place == size);
}

void check_first(const Bench& bench, const std::string& size, const std::string& form) {
    check_first(bench, bench.rack, size, form);
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

TEST_CASE(
    "in a rack of bodies with pilots that come out the body and pilot of the size come first") {
    for (const auto known : {published::Known::tried, published::Known::measured}) {
        CAPTURE(static_cast<int>(known));
        const Bench inch("fraction, number, letter");
        const published::RemovableTools rack(inch.tables, inch.practice, known);
        // No such bodies are listed under 3/16: #0 to #3.
        for (const auto* size : {"#4", "#5", "#6", "#8", "#10"})
            check_first(inch, rack, size, "socket head cap");
        for (const auto& size : k_inch)
            check_first(inch, rack, size, "socket head cap");
        const Bench metric("metric");
        for (const auto& size : {"M8", "M10", "M12", "M14", "M16", "M20", "M24", "M30", "M36"})
            check_first(metric, rack, size, "socket head cap");
    }
}

TEST_CASE("in a shop of metric drills the handbook's inch tool is ready and first") {
    const Bench bench("metric");
    for (const auto& size : k_number)
        check_first(bench, size, "socket head cap");
    for (const auto& size : k_inch)
        check_first(bench, size, "socket head cap");
}
