// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What is worth measuring, on random catalogues, against measuring it: the catalogue with the value
// entered is put to the matcher.
#include <doctest/doctest.h>

#include <algorithm>

#include "cases.hpp"
#include "match/to_measure.hpp"
#include "oracle/random_catalogue.hpp"

using length::Length;
using match::AnswerKind;
using match::Quantity;

namespace {

AnswerKind best(const match::Question& question, const match::Shop& shop,
                const oracle::Tools& tools) {
    const auto report =
        match::match(question, shop, oracle::ToolRack(tools), length::Unit::inch, 1);
    return report.answers.empty() ? AnswerKind::closest : report.answers.front().kind;
}

trade::Body& body_of(oracle::Tools& tools, std::int64_t number) {
    return *std::find_if(tools.bodies.begin(), tools.bodies.end(),
                         [&](const auto& body) { return body.number == number; });
}

trade::Dimension as_measured(Length value) {
    return {"", trade::How::micrometer, length::exactly(value)};
}

// Enters the value in a copy and asks again.
bool settled_by(const match::Question& question, const match::Shop& shop, oracle::Tools tools,
                const match::ToMeasure& one, Length value) {
    if (one.what == Quantity::cut_dia)
        body_of(tools, one.tool).cut_dia = as_measured(value);
    if (one.what == Quantity::bore)
        body_of(tools, one.tool).bore = as_measured(value);
    if (one.what == Quantity::reach)
        body_of(tools, one.tool).reach = as_measured(value);
    if (one.what == Quantity::pilot_dia) {
        const auto pilot = std::find_if(tools.pilots.begin(), tools.pilots.end(),
                                        [&](const auto& p) { return p.number == one.tool; });
        if (pilot != tools.pilots.end())
            pilot->pilot_dia = as_measured(value);
        else
            body_of(tools, one.tool).pilot_dia = as_measured(value);
    }
    return best(question, shop, tools) <= AnswerKind::after_work;
}

// The present limits in fine steps.
bool can_be_settled(const match::Question& question, const match::Shop& shop,
                    const oracle::Tools& tools, const match::ToMeasure& one) {
    constexpr std::int64_t k_steps = 40;
    for (std::int64_t i = 0; i <= k_steps; ++i)
        if (settled_by(question, shop, tools, one,
                       one.known->lo + (one.known->hi - one.known->lo) * i / k_steps))
            return true;
    return false;
}

} // namespace

TEST_CASE("what settles a screw does so when it is entered, and what only helps does not") {
    int settling = 0;
    int trials = 0;
    int helping = 0;
    int missed = 0;
    for (std::uint64_t seed = 1; seed <= cases::some(600U); ++seed) {
        CAPTURE(seed);
        auto random = oracle::random_case(seed);
        random.question.set.clear();
        const auto& tools = random.tools;
        const auto list = match::to_measure({{"", "", random.question}}, random.shop,
                                            match::load_tools(oracle::ToolRack(tools)));
        if (best(random.question, random.shop, tools) != AnswerKind::measure_first) {
            // Something serves already, or no measurement would.
            CHECK(list.empty());
            continue;
        }
        for (const auto& one : list) {
            CAPTURE(one.tool);
            CAPTURE(match::to_text(one.what));
            CHECK(one.settles.size() + one.helps.size() == 1);
            const bool settles = !one.settles.empty();
            if (one.what == Quantity::trial) {
                auto tried = tools;
                std::erase_if(tried.trials, [&](const trade::Trial& trial) {
                    return trial.pilot == one.tool && trial.body == one.body;
                });
                tried.trials.push_back({one.tool, one.body, trade::Tried::slides_and_holds});
                CHECK(settles ==
                      (best(random.question, random.shop, tried) <= AnswerKind::after_work));
                ++trials;
            } else if (one.known && one.what != Quantity::head) {
                const bool could = can_be_settled(random.question, random.shop, tools, one);
                if (settles)
                    CHECK(could);
                else
                    missed += could ? 1 : 0; // the coarse steps stepped over it
                settling += settles ? 1 : 0;
                helping += settles ? 0 : 1;
            }
        }
    }
    CHECK(settling > cases::some(60));
    CHECK(trials > 50);
    CHECK(helping > 50);
    CHECK(missed * 20 <= helping);
}
