// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Many screws or many tools at once: the chart, duplicates and what is worth measuring.
#include <doctest/doctest.h>

#include "bench.hpp"
#include "match/chart.hpp"
#include "match/duplicates.hpp"
#include "match/to_measure.hpp"

using match::AnswerKind;
using match::Quantity;

namespace {

match::Tools tools_of(std::vector<trade::Body> bodies, std::vector<trade::Pilot> pilots = {}) {
    for (std::size_t i = 0; i < bodies.size(); ++i)
        bodies[i].number = static_cast<std::int64_t>(i + 1);
    for (std::size_t i = 0; i < pilots.size(); ++i)
        pilots[i].number = static_cast<std::int64_t>(bodies.size() + i + 1);
    return match::make_tools(std::move(bodies), std::move(pilots), {});
}

std::vector<match::Asked> both_patterns() {
    return {{"newer", "", bench::question(bench::newer())},
            {"older", "", bench::question(bench::older())}};
}

match::Duplicates duplicates_of(const match::Tools& tools, const match::Shop& shop) {
    const match::Jobs jobs({bench::question(bench::newer())}, shop);
    return match::find_duplicates(jobs, 1, tools);
}

trade::Body in(trade::Condition condition) {
    auto body = bench::integral_body();
    body.condition = condition;
    return body;
}

} // namespace

TEST_CASE("a chart has one entry a screw, with its best body, and none where nothing comes near") {
    const auto shop = bench::shop();
    auto asked = both_patterns();
    asked.push_back(asked[0]);
    asked[2].question.screw.head_dia = bench::tenths(9000, 9100);
    bench::ListRack rack;
    rack.body_list = {bench::integral_body()};
    const auto entries = match::chart(asked, shop, rack, length::Unit::inch);
    REQUIRE(entries.size() == 3);
    REQUIRE(entries[0].best);
    CHECK(entries[0].best->kind == AnswerKind::ready);
    CHECK(entries[0].series == "ASME B18.3 1960");
    CHECK(entries[1].best->body == 1);
    CHECK(!entries[2].best);
}

TEST_CASE("of alike tools the one in the best condition, then the best known, is to be kept") {
    const auto shop = bench::shop();
    auto unmeasured = in(trade::Condition::good);
    unmeasured.shank_dia.reset();
    auto rough_limits = in(trade::Condition::good);
    rough_limits.cut_dia = bench::known(bench::tenths(4980, 5020));
    auto noted = in(trade::Condition::good);
    noted.work = {"stone the edge"};
    const auto tools = tools_of({in(trade::Condition::dull), unmeasured, noted, rough_limits,
                                 in(trade::Condition::good), in(trade::Condition::fair)});
    const auto found = duplicates_of(tools, shop);
    REQUIRE(found.alike.size() == 1);
    CHECK(found.alike[0].tools == std::vector<std::int64_t>{5, 4, 2, 3, 6, 1});
    CHECK(found.each_can_go == std::vector<std::int64_t>{1, 2, 3, 4, 5, 6});
    CHECK(found.can_go_at_once == std::vector<std::int64_t>{1, 2, 3, 4, 6});
}

TEST_CASE("a pilot can go while another does its work, and a body that needs work is no match") {
    const auto shop = bench::shop();
    auto free_pilot = bench::pilot();
    const auto tools =
        tools_of({bench::removable_body(), in(trade::Condition::dull)}, {free_pilot, free_pilot});
    const auto found = duplicates_of(tools, shop);
    REQUIRE(found.alike.size() == 2); // the bodies, the pilots
    CHECK(found.alike[1].pilots);
    // Body 1 is ready, body 2 only after work: without 1 the screw would be served worse.
    CHECK(found.each_can_go == std::vector<std::int64_t>{2, 3, 4});
    CHECK(found.can_go_at_once == std::vector<std::int64_t>{2, 4});
}

TEST_CASE("while nobody knows which tool will do, none can go, nor one that serves nothing") {
    const auto shop = bench::shop();
    auto doubtful = bench::integral_body();
    doubtful.cut_dia = bench::known(bench::tenths(4700, 5000)); // the newer head asks for .4740
    const auto twins = tools_of({doubtful, doubtful});
    const match::Jobs jobs({bench::question(bench::newer()), bench::question(bench::older())},
                           shop);
    CHECK(match::find_duplicates(jobs, 2, twins).each_can_go.empty());
    // Both are ready for the older one; where only that is on the house list either can go.
    const match::Jobs listed({bench::question(bench::older()), bench::question(bench::newer())},
                             shop);
    CHECK(match::find_duplicates(listed, 1, twins).each_can_go.size() == 2);
    auto unknown = bench::integral_body();
    unknown.cut_dia.reset();
    const auto found = duplicates_of(tools_of({bench::integral_body(), unknown}), shop);
    CHECK(found.each_can_go.empty());
    CHECK(found.alike.empty());
}

TEST_CASE("a cutter whose limits leave the head open is to be measured, and settles that screw") {
    const auto shop = bench::shop();
    auto doubtful = bench::integral_body();
    doubtful.cut_dia = bench::known(bench::tenths(4700, 5000));
    const auto list = match::to_measure(both_patterns(), shop, tools_of({doubtful}));
    REQUIRE(!list.empty());
    CHECK(list[0].tool == 1);
    CHECK(list[0].what == Quantity::cut_dia);
    CHECK(list[0].settles == std::vector<std::size_t>{0}); // the older head clears it already
    CHECK(list[0].known == length::MaybeRange(bench::tenths(4700, 5000)));
}

TEST_CASE("a pilot whose slip is open is to be tried, and two open things only help") {
    const auto shop = bench::shop();
    auto pilot = bench::pilot();
    pilot.shank_dia = bench::known(bench::tenths(1860, 1880));
    const auto asked = std::vector<match::Asked>{{"newer", "", bench::question(bench::newer())}};
    auto list = match::to_measure(asked, shop, tools_of({bench::removable_body()}, {pilot}));
    REQUIRE(list.size() == 1);
    CHECK(list[0].what == Quantity::trial);
    CHECK(list[0].tool == 2);
    CHECK(list[0].body == 1);
    CHECK(list[0].settles == std::vector<std::size_t>{0});
    pilot.pilot_dia.reset();
    list = match::to_measure(asked, shop, tools_of({bench::removable_body()}, {pilot}));
    REQUIRE(list.size() == 2);
    for (const auto& one : list) {
        CHECK(one.settles.empty());
        CHECK(one.helps == std::vector<std::size_t>{0});
    }
}

TEST_CASE("nothing is to be measured for a screw that is served") {
    const auto shop = bench::shop();
    auto unknown = bench::integral_body();
    unknown.cut_dia.reset();
    CHECK(match::to_measure(both_patterns(), shop, tools_of({bench::integral_body(), unknown}))
              .empty());
}
