// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What stands for alike bodies comes to what each of them comes to, with every pilot and hole.
#include <doctest/doctest.h>

#include "cases.hpp"
#include "match/alike.hpp"
#include "match/judge.hpp"
#include "match/runners.hpp"
#include "match/shelf.hpp"
#include "oracle/random_catalogue.hpp"

namespace {

using match::Triple;
using match::Weighed;

struct Compared {
    std::int64_t the_same = 0;
    std::int64_t closest = 0;
    std::int64_t changed = 0; // bodies for which another stands
};

bool come_to_the_same(const Weighed& real, const Weighed& standing, bool fails) {
    if (real.kind != standing.kind)
        return false;
    const bool falls_short = real.kind == match::AnswerKind::closest && !fails;
    return !falls_short ||
           (!(real.shortfall < standing.shortfall) && !(standing.shortfall < real.shortfall));
}

void compare_pilots(const match::Job& job, const match::Tools& tools, const trade::BodyFacts& body,
                    const match::Alike& same, Compared& compared) {
    for (const auto& pilot : tools.pilot_facts)
        for (const auto& hole : job.holes) {
            if (!hole.pilots.takes(pilot.pilot_dia))
                continue;
            const auto real = weigh(job, Triple{&body, &pilot, &hole, {}});
            REQUIRE(come_to_the_same(real, weigh(job, Triple{&same.body, &pilot, &hole, {}}),
                                     same.fails));
            ++compared.the_same;
            compared.closest += real.kind == match::AnswerKind::closest ? 1 : 0;
        }
}

void compare_alone(const match::Job& job, const trade::BodyFacts& body, const match::Alike& same) {
    for (const auto& hole : job.holes)
        REQUIRE(come_to_the_same(weigh(job, Triple{&body, nullptr, &hole, {}}),
                                 weigh(job, Triple{&same.body, nullptr, &hole, {}}), same.fails));
}

void compare(const match::Job& job, const match::Tools& tools, const match::Runners& runners,
             Compared& compared) {
    for (const auto& body : tools.body_facts) {
        CAPTURE(body.number);
        auto same = match::alike(job, body, {runners.most_clearance(), runners.longest_shank()});
        if (!same) {
            CHECK_FALSE(weigh(job, Triple{&body, nullptr, nullptr, {}}).kind);
            continue;
        }
        same->body.number = body.number; // a pilot may be in it
        compared.changed += same->body == body ? 0 : 1;
        if (trade::may_take_pilot(body) && !same->fails) // else no pilot makes up for it
            compare_pilots(job, tools, body, *same, compared);
        compare_alone(job, body, *same);
    }
}

} // namespace

TEST_CASE("what stands for alike bodies comes to what each of them comes to") {
    Compared compared;
    for (std::uint64_t seed = 1; seed <= cases::some(2000U); ++seed) {
        CAPTURE(seed);
        auto one = oracle::random_case(seed);
        one.question.set.clear();
        const oracle::ToolRack rack(one.tools);
        const match::Shelf shelf(rack, trade::Detail::all);
        const match::Trials none({});
        const auto job = match::make_job(one.question, one.shop);
        const match::Runners runners(match::Runners::Which::running, job, shelf, none,
                                     match::windows_of(job), trade::Detail::all);
        compare(job, match::load_tools(rack), runners, compared);
    }
    CHECK(compared.the_same > cases::some(10'000));
    CHECK(compared.closest > 1000);
    CHECK(compared.changed > cases::some(10'000));
}
