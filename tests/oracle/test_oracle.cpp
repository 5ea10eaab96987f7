// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The matcher against the oracle over random catalogues. COUNTERPART_ORACLE_SEED and
// COUNTERPART_ORACLE_CASES choose others or more of them.
#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <string>

#include <fmt/format.h>

#include "match/shelf.hpp"
#include "match/tools.hpp"
#include "oracle/coverage.hpp"
#include "oracle/describe.hpp"
#include "oracle/met.hpp"
#include "oracle/oracle.hpp"
#include "oracle/random_catalogue.hpp"

namespace {

using match::AnswerKind;
using match::Verdict;
using oracle::Form;
using oracle::OracleAnswer;
using oracle::OracleReport;
using oracle::RandomCase;

constexpr std::uint64_t k_seed = 20'260'101;
constexpr std::uint64_t k_cases = 10'000;
constexpr std::uint64_t k_pair_cases = 1'000;
constexpr std::size_t k_few = 8;
constexpr std::size_t k_closest_of_few = 5;

std::uint64_t from_environment(const char* name, std::uint64_t otherwise) {
    const char* text = std::getenv(name);
    return text == nullptr ? otherwise : std::strtoull(text, nullptr, 10);
}

std::uint64_t first_seed() {
    return from_environment("COUNTERPART_ORACLE_SEED", k_seed);
}

OracleReport by_oracle(const RandomCase& one, Form form) {
    return oracle::judge(one.question, one.shop, one.tools.bodies, one.tools.pilots,
                         one.tools.trials, form);
}

// Of the closest, which come last, no more than these.
std::vector<OracleAnswer> first_few(const OracleReport& report) {
    std::vector<OracleAnswer> shown;
    std::size_t closest = 0;
    for (const OracleAnswer& answer : report.answers) {
        const bool one_too_many =
            answer.kind == AnswerKind::closest && ++closest > k_closest_of_few;
        if (shown.size() < k_few && !one_too_many) {
            shown.push_back(answer);
        }
    }
    return shown;
}

OracleAnswer plain(const match::Answer& answer) {
    OracleAnswer same;
    same.kind = answer.kind;
    same.body = answer.body;
    same.pilot = answer.pilot;
    same.other_pilots = answer.other_pilots;
    if (answer.drill) {
        same.drill = answer.drill->name;
    }
    same.size = answer.size;
    for (const match::Reason& reason : answer.rules) {
        same.rules.push_back({reason.rule, reason.result});
    }
    return same;
}

std::string tools_of(const RandomCase& one, const OracleAnswer& answer) {
    std::string text;
    for (const trade::Body& body : one.tools.bodies) {
        if (body.number == answer.body) {
            text += "\n  " + oracle::describe(body);
        }
    }
    for (const trade::Pilot& pilot : one.tools.pilots) {
        if (pilot.number == answer.pilot) {
            text += "\n  " + oracle::describe(pilot);
        }
    }
    for (const trade::Trial& trial : one.tools.trials) {
        if (trial.body == answer.body && trial.pilot == answer.pilot) {
            text += fmt::format("\n  tried: {}", trade::to_text(trial.how));
        }
    }
    return text;
}

std::string side(const RandomCase& one, const char* who, const std::vector<OracleAnswer>& answers,
                 std::size_t at) {
    if (at >= answers.size()) {
        return fmt::format("\n{}: nothing", who);
    }
    return fmt::format("\n{}: {}{}", who, oracle::describe(answers[at]),
                       tools_of(one, answers[at]));
}

// Empty when both matchers say the same; else what they first differ in.
std::string difference(const RandomCase& one, const OracleReport& expected,
                       const match::Report& found) {
    std::vector<OracleAnswer> answers;
    for (const match::Answer& answer : found.answers) {
        answers.push_back(plain(answer));
    }
    const std::vector<OracleAnswer>& shown = expected.answers;
    for (std::size_t i = 0; i < std::max(answers.size(), shown.size()); ++i) {
        if (i >= answers.size() || i >= shown.size() || !(answers[i] == shown[i])) {
            return fmt::format("answer {} of {}\n{}", i + 1, shown.size(),
                               oracle::describe(one.question)) +
                   side(one, "oracle", shown, i) + side(one, "match ", answers, i);
        }
    }
    return found.counts == expected.counts ? "" : "the counts differ";
}

match::Report by_match(const RandomCase& one, Form form) {
    const oracle::ToolRack rack(one.tools);
    if (form == Form::pairs)
        return match::match_pairs(one.question, one.shop, match::load_tools(rack), one.unit, 0);
    return match::match(one.question, one.shop, rack, one.unit, 0);
}

// From facts in the order of their sizes, of which only those in a window are seen.
match::Report from_shelf(const RandomCase& one) {
    const oracle::ToolRack rack(one.tools);
    const match::Shelf shelf(rack, trade::Detail::all);
    return match::match(one.question, one.shop, shelf, one.unit, 0);
}

// Only the first few are asked for: they are the first of all, and the counts are the same.
std::string difference_of_first(const RandomCase& one, const OracleReport& expected) {
    const oracle::ToolRack rack(one.tools);
    const auto few = match::match(one.question, one.shop, rack, one.unit, k_few);
    OracleReport first = expected;
    first.answers = first_few(expected);
    const std::string found = difference(one, first, few);
    return found.empty() ? "" : "of the first few, " + found;
}

void compare(std::uint64_t cases, Form form, oracle::Coverage& coverage) {
    const std::uint64_t seed = first_seed();
    std::uint64_t different = 0;
    for (std::uint64_t i = 0; i < cases; ++i) {
        const RandomCase one = oracle::random_case(seed + i);
        const OracleReport expected = by_oracle(one, form);
        coverage.add(expected);
        const match::Report all = by_match(one, form);
        std::string found = difference(one, expected, all);
        if (found.empty() && form == Form::bodies) {
            found = difference(one, expected, from_shelf(one)) + difference_of_first(one, expected);
        }
        if (!found.empty() && ++different <= 3) {
            FAIL_CHECK(fmt::format("seed {}: {}", seed + i, found));
        }
    }
    CHECK_MESSAGE(different == 0, different, " of ", cases, " cases differ");
}

// As a share of the cases, so that fewer may be run.
std::int64_t often(std::uint64_t cases) {
    return static_cast<std::int64_t>(cases / 50);
}

void check_answers_come_up(const oracle::Coverage& coverage, std::uint64_t cases) {
    for (const AnswerKind kind :
         {AnswerKind::ready, AnswerKind::after_work, AnswerKind::measure_first,
          AnswerKind::make_pilot, AnswerKind::closest}) {
        CHECK_MESSAGE(coverage.answers(kind) >= often(cases), std::string(oracle::word(kind)));
    }
    for (const match::SizeClass size : {match::SizeClass::recommended, match::SizeClass::tool_size,
                                        match::SizeClass::small, match::SizeClass::large}) {
        CHECK_MESSAGE(coverage.sizes(size) >= often(cases), std::string(oracle::word(size)));
    }
    CHECK(coverage.not_listed() >= often(cases));
    for (const std::string what : oracle::k_situations) {
        CHECK_MESSAGE(coverage.met(what) >= often(cases), what);
    }
}

void check_verdicts_come_up(const oracle::Coverage& coverage, std::uint64_t cases) {
    for (const std::string rule :
         {"head in the counterbore", "pilot in the hole", "drill", "pilot shank in the bore",
          "teeth reach the hole", "depth", "pilot has room and guidance", "shank in the spindle"}) {
        for (const Verdict verdict : {Verdict::pass, Verdict::fail, Verdict::unknown}) {
            CHECK_MESSAGE(coverage.verdicts(rule, verdict) >= often(cases), rule, ": ",
                          std::string(oracle::word(verdict)));
        }
    }
    // A flat never fails: it can be filed. What is in hand is never unknown.
    CHECK(coverage.verdicts("set screw on the flat", Verdict::pass) >= often(cases));
    CHECK(coverage.verdicts("set screw on the flat", Verdict::unknown) >= often(cases));
    CHECK(coverage.verdicts("set screw on the flat", Verdict::fail) == 0);
    CHECK(coverage.verdicts("in hand", Verdict::pass) >= often(cases));
    CHECK(coverage.verdicts("in hand", Verdict::fail) >= often(cases));
    CHECK(coverage.verdicts("in hand", Verdict::unknown) == 0);
}

} // namespace

TEST_CASE("the matcher gives the oracle's answers, in its order, with its counts") {
    const std::uint64_t cases = from_environment("COUNTERPART_ORACLE_CASES", k_cases);
    oracle::Coverage coverage;
    compare(cases, Form::bodies, coverage);
    MESSAGE("what came up in ", cases, " cases:\n", coverage.table());
    check_answers_come_up(coverage, cases);
}

// Only here do failures of one pilot show: a body alone would have a pilot made instead.
TEST_CASE("every body and pilot together is judged as the oracle judges them") {
    const std::uint64_t cases = from_environment("COUNTERPART_ORACLE_CASES", k_pair_cases);
    oracle::Coverage coverage;
    compare(cases, Form::pairs, coverage);
    MESSAGE("what came up in ", cases, " cases:\n", coverage.table());
    check_verdicts_come_up(coverage, cases);
}

TEST_CASE("a seed always makes the same case") {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const RandomCase one = oracle::random_case(seed);
        const RandomCase again = oracle::random_case(seed);
        CHECK(one.tools.bodies == again.tools.bodies);
        CHECK(one.tools.pilots == again.tools.pilots);
        CHECK(one.tools.trials == again.tools.trials);
        CHECK(oracle::describe(one.question) == oracle::describe(again.question));
    }
}
