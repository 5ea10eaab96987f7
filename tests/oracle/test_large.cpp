// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// In catalogues of hundreds of tools, where pilots are sought by classes: every body's answer is
// the best over every pilot, each tried, and the first few are the first of all.
#include <doctest/doctest.h>

#include <algorithm>

#include "cases.hpp"
#include "match/best.hpp"
#include "match/search.hpp"
#include "match/shelf.hpp"
#include "match/trials.hpp"
#include "oracle/random_catalogue.hpp"

namespace {

// Second ones, alike but for the cutter: what is known of one must not be taken for the other.
void add_other_cutters(oracle::Tools& tools, oracle::Dice& dice) {
    const auto bodies = tools.bodies;
    for (auto body : bodies) {
        if (!body.cut_dia)
            continue;
        const auto more = length::thousandths(dice.between(-12, 12));
        body.number += 500;
        body.cut_dia->range = body.cut_dia->range + more;
        tools.bodies.push_back(std::move(body));
    }
}

// Many random lots of tools for one question, side by side.
oracle::Tools many_tools(const oracle::RandomCase& one, std::uint64_t seed, int lots) {
    oracle::Tools all;
    for (int lot = 0; lot < lots; ++lot) {
        oracle::Dice dice(seed * 1000 + static_cast<std::uint64_t>(lot));
        auto tools = oracle::random_tools(dice, one.question, one.shop);
        add_other_cutters(tools, dice);
        const std::int64_t shift = 1000 * lot;
        for (auto& body : tools.bodies)
            body.number += shift;
        for (auto& pilot : tools.pilots) {
            pilot.number += shift;
            if (pilot.in_body)
                *pilot.in_body += shift;
        }
        for (auto& trial : tools.trials) {
            trial.pilot += shift;
            trial.body += shift;
        }
        all.bodies.insert(all.bodies.end(), tools.bodies.begin(), tools.bodies.end());
        all.pilots.insert(all.pilots.end(), tools.pilots.begin(), tools.pilots.end());
        all.trials.insert(all.trials.end(), tools.trials.begin(), tools.trials.end());
    }
    return all;
}

struct Plain {
    match::AnswerKind kind;
    std::int64_t body;
    std::int64_t pilot;
    std::int64_t drill;
    int other_pilots;

    bool operator==(const Plain&) const = default;
};

Plain plain(const match::Ranked& ranked, int other_pilots) {
    return {ranked.kind(), ranked.key.body, ranked.key.pilot, ranked.key.drill, other_pilots};
}

struct Expected {
    std::vector<Plain> all;     // in order
    std::vector<Plain> answers; // no more than five closest
    std::array<std::int64_t, match::k_answer_kinds> counts{};
};

Expected by_trying_each(const match::Job& job, const match::Tools& tools) {
    std::vector<match::BestOfBody> all;
    const auto pilots = match::all_pilots(tools);
    for (const auto& body : tools.body_facts)
        if (auto best = match::best_of(job, tools, pilots, body); best.best)
            all.push_back(best);
    std::sort(all.begin(), all.end(),
              [](const auto& a, const auto& b) { return a.best->key < b.best->key; });
    Expected expected;
    std::size_t closest = 0;
    for (const auto& one : all) {
        ++expected.counts[static_cast<std::size_t>(one.best->kind())];
        const bool is_closest = one.best->kind() == match::AnswerKind::closest;
        expected.all.push_back(plain(*one.best, one.other_pilots));
        if (!is_closest || closest++ < match::k_most_closest)
            expected.answers.push_back(expected.all.back());
    }
    return expected;
}

std::vector<Plain> plain(const match::Findings& findings) {
    std::vector<Plain> answers;
    for (const auto& found : findings.first)
        answers.push_back(plain(found.ranked, found.other_pilots));
    return answers;
}

// Whatever the tables say, some tools of any such catalogue were made for the screw.
match::Job job_with_made_tools(const oracle::RandomCase& one, const oracle::Tools& all,
                               std::uint64_t seed) {
    std::vector<std::int64_t> marked;
    for (const auto& body : all.bodies)
        if ((static_cast<std::uint64_t>(body.number) + seed) % 17 == 0)
            marked.push_back(body.number);
    auto job = match::make_job(one.question, one.shop, trade::NumberSet(std::move(marked)));
    if (!job.head || job.holes.empty())
        return job;
    const auto tool = job.sizes->tool;
    job.made.cutters = {{tool - length::thousandths(3), tool + length::thousandths(1)}};
    const auto pilot = job.holes[seed % job.holes.size()].size.lo - length::thousandths(2);
    job.made.tools = {{job.made.cutters.front(), {pilot - length::thousandths(1), pilot}}};
    return job;
}

} // namespace

TEST_CASE("among hundreds of tools the answers are those of trying every pilot in every body") {
    std::array<std::int64_t, match::k_answer_kinds> came_up{};
    for (std::uint64_t seed = 1; seed <= cases::some(600U); ++seed) {
        CAPTURE(seed);
        auto one = oracle::random_case(seed);
        one.question.set.clear();
        const auto all = many_tools(one, seed, seed % 10 == 0 ? 40 : 8);
        const oracle::ToolRack rack(all);
        const auto job = job_with_made_tools(one, all, seed);
        const auto expected = by_trying_each(job, match::load_tools(rack));
        const match::Shelf shelf(rack, trade::Detail::all);
        const match::Trials trials(all.trials);
        const auto found = match::search(job, shelf, trials, 0);
        CHECK(found.counts == expected.counts);
        REQUIRE(plain(found) == expected.all);
        for (const std::size_t most : {1U, 6U, 20U}) {
            CAPTURE(most);
            const auto few = match::search(job, shelf, trials, most);
            CHECK(few.counts == expected.counts);
            auto first = expected.answers;
            first.resize(std::min(most, first.size()), Plain{});
            REQUIRE(plain(few) == first);
        }
        for (std::size_t kind = 0; kind < came_up.size(); ++kind)
            came_up[kind] += expected.counts[kind];
    }
    for (const auto count : came_up)
        CHECK(count > cases::some(400));
}
