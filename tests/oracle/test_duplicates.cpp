// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What can go, against taking it away and asking again, on random catalogues and several questions.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "cases.hpp"
#include "match/duplicates.hpp"
#include "oracle/random_catalogue.hpp"

using match::AnswerKind;
using Number = std::int64_t;

namespace {

struct Case {
    match::Shop shop;
    std::vector<match::Question> questions;
    std::size_t house = 0;
    oracle::Tools tools;
};

// Second ones of some tools, as a mixed lot has them.
void add_copies(oracle::Tools& tools, oracle::Dice& dice) {
    const auto bodies = tools.bodies;
    for (auto body : bodies) {
        if (!dice.chance(50))
            continue;
        body.number += 100;
        tools.bodies.push_back(std::move(body));
    }
    const auto pilots = tools.pilots;
    for (auto pilot : pilots) {
        if (!dice.chance(50))
            continue;
        pilot.number += 200;
        tools.pilots.push_back(std::move(pilot));
    }
}

// The tools of one random case, with copies, asked about its screw through several holes.
Case random_questions(std::uint64_t seed) {
    const auto random = oracle::random_case(seed);
    Case made;
    made.shop = random.shop;
    made.questions.push_back(random.question);
    oracle::Dice dice(seed + 1'000'000);
    const auto drills = oracle::every_drill();
    for (int i = 0; i < 4; ++i)
        made.questions.push_back(
            oracle::random_question(dice, random.question.screw, random.shop, drills));
    for (auto& question : made.questions)
        question.set.clear();
    made.house = seed % made.questions.size();
    made.tools = random.tools;
    add_copies(made.tools, dice);
    return made;
}

match::Tools tools_of(const Case& made) {
    return match::load_tools(oracle::ToolRack(made.tools));
}

oracle::Tools without(const oracle::Tools& tools, const std::set<Number>& gone) {
    auto rest = tools;
    std::erase_if(rest.bodies, [&](const auto& body) { return gone.count(body.number) > 0; });
    std::erase_if(rest.pilots, [&](const auto& pilot) { return gone.count(pilot.number) > 0; });
    return rest;
}

match::Report ask(const Case& made, std::size_t question, const oracle::Tools& tools, bool pairs) {
    const oracle::ToolRack rack(tools);
    const auto& asked = made.questions[question];
    return pairs ? match::match_pairs(asked, made.shop, match::load_tools(rack), length::Unit::inch,
                                      0)
                 : match::match(asked, made.shop, rack, length::Unit::inch, 0);
}

AnswerKind best(const match::Report& report) {
    return report.answers.empty() ? AnswerKind::closest : report.answers.front().kind;
}

// The tools that have a part in an answer of this kind or a better one.
std::set<Number> parts(const Case& made, std::size_t question, AnswerKind at_least) {
    std::set<Number> numbers;
    for (const bool pairs : {false, true}) {
        for (const auto& answer : ask(made, question, made.tools, pairs).answers) {
            if (answer.kind > at_least)
                continue;
            numbers.insert(answer.body);
            if (answer.pilot)
                numbers.insert(*answer.pilot);
        }
    }
    return numbers;
}

bool meets(const std::set<Number>& a, const std::set<Number>& b) {
    return std::any_of(a.begin(), a.end(), [&](Number number) { return b.count(number) > 0; });
}

bool stands_without(const Case& made, const std::set<Number>& gone) {
    const auto rest = without(made.tools, gone);
    for (std::size_t question = 0; question < made.questions.size(); ++question) {
        const auto before = best(ask(made, question, made.tools, false));
        if (before == AnswerKind::closest)
            continue;
        if (question >= made.house && before > AnswerKind::after_work)
            continue;
        if (before == AnswerKind::measure_first &&
            meets(gone, parts(made, question, AnswerKind::measure_first)))
            return false;
        if (best(ask(made, question, rest, false)) != before)
            return false;
    }
    return true;
}

std::set<Number> serving(const Case& made) {
    std::set<Number> numbers;
    for (std::size_t question = 0; question < made.questions.size(); ++question)
        numbers.merge(parts(made, question, AnswerKind::after_work));
    return numbers;
}

bool is_body(const Case& made, Number number) {
    return std::any_of(made.tools.bodies.begin(), made.tools.bodies.end(),
                       [&](const auto& body) { return body.number == number; });
}

std::vector<bool> served_by(const Case& made, Number number) {
    std::vector<bool> served;
    for (std::size_t question = 0; question < made.questions.size(); ++question)
        served.push_back(parts(made, question, AnswerKind::after_work).count(number) > 0);
    return served;
}

constexpr std::uint64_t k_cases = 1000;

} // namespace

TEST_CASE("what can go is what nobody misses when it is taken away") {
    std::size_t singles = 0;
    std::size_t together = 0;
    std::size_t fewer = 0;
    for (std::uint64_t seed = 1; seed <= cases::some(k_cases); ++seed) {
        CAPTURE(seed);
        const auto made = random_questions(seed);
        const match::Jobs jobs(made.questions, made.shop);
        const auto found = match::find_duplicates(jobs, made.house, tools_of(made));
        std::vector<Number> can_go;
        const auto candidates = serving(made);
        for (const auto number : candidates)
            if (stands_without(made, {number}))
                can_go.push_back(number);
        CHECK(found.each_can_go == can_go);
        const std::set<Number> gone(found.can_go_at_once.begin(), found.can_go_at_once.end());
        CHECK(stands_without(made, gone));
        for (const auto number : can_go) {
            if (gone.count(number) > 0)
                continue;
            auto more = gone;
            more.insert(number);
            CHECK_FALSE(stands_without(made, more)); // no further one can go with them
        }
        singles += can_go.size();
        together += gone.size();
        fewer += gone.size() < can_go.size() ? 1 : 0;
    }
    CHECK(singles > cases::some(300)); // the cases are worth something
    CHECK(together > cases::some(100));
    CHECK(fewer > cases::some(20));
}

TEST_CASE("tools are alike when and only when they serve the same questions") {
    std::size_t groups = 0;
    for (std::uint64_t seed = 1; seed <= cases::some(k_cases); seed += 3) {
        CAPTURE(seed);
        const auto made = random_questions(seed);
        const match::Jobs jobs(made.questions, made.shop);
        const auto found = match::find_duplicates(jobs, made.house, tools_of(made));
        std::set<Number> grouped;
        for (const auto& group : found.alike) {
            ++groups;
            REQUIRE(group.tools.size() > 1);
            for (const auto number : group.tools) {
                CHECK(grouped.insert(number).second);
                CHECK(served_by(made, number) == served_by(made, group.tools.front()));
                CHECK((!is_body(made, number)) == group.pilots);
            }
        }
        const auto candidates = serving(made);
        for (const auto a : candidates)
            for (const auto b : candidates)
                if (a < b && grouped.count(a) == 0)
                    CHECK_FALSE((is_body(made, a) == is_body(made, b) &&
                                 served_by(made, a) == served_by(made, b)));
    }
    CHECK(groups > cases::some(30));
}
