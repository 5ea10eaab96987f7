// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The fold, the choice of pilot and drill, the order and the counts.
#include <doctest/doctest.h>

#include <algorithm>

#include "bench.hpp"
#include "match/markings.hpp"
#include "match/tools.hpp"

using namespace bench;
using match::AnswerKind;

namespace {

match::Report ask(const match::Question& question, const ListRack& rack, bool pairs = false) {
    const auto the_shop = shop();
    return pairs ? match::match_pairs(question, the_shop, match::load_tools(rack),
                                      length::Unit::inch, 0)
                 : match::match(question, the_shop, rack, length::Unit::inch, 0);
}

ListRack rack_of(std::vector<trade::Body> bodies, std::vector<trade::Pilot> pilots = {}) {
    ListRack rack;
    rack.body_list = std::move(bodies);
    rack.pilot_list = std::move(pilots);
    return rack;
}

const match::Reason& rule(const match::Answer& answer, std::string_view name) {
    for (const auto& reason : answer.rules)
        if (reason.rule == name)
            return reason;
    FAIL("no such rule: " << name);
    return answer.rules.front();
}

trade::Body numbered(trade::Body body, std::int64_t number) {
    body.number = number;
    return body;
}

} // namespace

TEST_CASE("a 15/32 cutter is ready for the older 5/16 head and to be measured for the newer") {
    auto body = integral_body();
    body.cut_dia = known(tenths(4685, 4689)); // .4687 by micrometer
    const auto rack = rack_of({body});

    const auto for_older = ask(question(older()), rack);
    REQUIRE(for_older.answers.size() == 1);
    CHECK(for_older.answers[0].kind == AnswerKind::ready);

    const auto for_newer = ask(question(newer()), rack);
    REQUIRE(for_newer.answers.size() == 1);
    CHECK(for_newer.answers[0].kind == AnswerKind::measure_first);
    CHECK(rule(for_newer.answers[0], "head in the counterbore").need ==
          "heads of this series run .457 to .469 in; this cutter needs .4635 in or less: measure "
          "yours");

    auto measured = question(newer());
    measured.screw.head_dia = tenths(4615, 4625);
    measured.screw.head_measured = true;
    CHECK(ask(measured, rack).answers[0].kind == AnswerKind::ready);
}

TEST_CASE("nothing is ready on an unknown dimension, one at a time") {
    const auto blank = [](auto member) {
        auto body = integral_body();
        (body.*member).reset();
        return ask(question(newer()), rack_of({body})).answers.at(0).kind;
    };
    CHECK(blank(&trade::Body::cut_dia) == AnswerKind::measure_first);
    CHECK(blank(&trade::Body::pilot_dia) == AnswerKind::measure_first);
    const auto blank_pilot = [](auto member) {
        auto part = pilot();
        (part.*member).reset();
        return ask(question(newer()), rack_of({removable_body()}, {part})).answers.at(0).kind;
    };
    for (const auto member : {&trade::Pilot::pilot_dia, &trade::Pilot::shank_dia,
                              &trade::Pilot::flat_at, &trade::Pilot::shank_length})
        CHECK(blank_pilot(member) == AnswerKind::measure_first);
}

TEST_CASE("work on either part makes it after work, and is listed") {
    auto part = pilot();
    part.condition = trade::Condition::rough;
    auto body = removable_body();
    body.work = {"replace the set screw"};
    const auto answer = ask(question(newer()), rack_of({body}, {part})).answers.at(0);
    CHECK(answer.kind == AnswerKind::after_work);
    CHECK(answer.work == std::vector<std::string>{"replace the set screw", "smooth the pilot"});
}

TEST_CASE("a body without a fitting pilot asks for one to be made") {
    auto wrong = pilot();
    wrong.shank_dia = known(tenths(2500, 2501));
    const auto report = ask(question(newer()), rack_of({removable_body()}, {wrong}));
    REQUIRE(report.answers.size() == 1);
    CHECK(report.answers[0].kind == AnswerKind::make_pilot);
    CHECK_FALSE(report.answers[0].pilot);
    CHECK(report.answers[0].drill->name == "21/64");
    CHECK(report.counts[static_cast<std::size_t>(AnswerKind::make_pilot)] == 1);
}

TEST_CASE("a body whose bore is larger than every hole is closest, without a pilot") {
    auto body = removable_body();
    body.bore = known(tenths(3750, 3752));
    const auto report = ask(question(newer()), rack_of({body}));
    REQUIRE(report.answers.size() == 1);
    CHECK(report.answers[0].kind == AnswerKind::closest);
    CHECK_FALSE(report.answers[0].pilot);
    CHECK(report.answers[0].drill->name == "23/64");
}

TEST_CASE("two failures are not listed, nor one that is far off") {
    auto body = integral_body();
    body.reach = known(tenths(2300, 2310)); // about 30 % short of .328
    CHECK(ask(question(newer()), rack_of({body})).answers.empty());
    body.reach = known(tenths(2600, 2610));
    CHECK(ask(question(newer()), rack_of({body})).answers.at(0).kind == AnswerKind::closest);
    body.condition = trade::Condition::broken;
    CHECK(ask(question(newer()), rack_of({body})).answers.empty());
}

TEST_CASE("a pilot that suits no drill on hand fails the running clearance alone") {
    auto body = integral_body();
    body.pilot_dia = known(tenths(3000, 3002));
    const auto answer = ask(question(newer()), rack_of({body})).answers.at(0);
    CHECK(answer.kind == AnswerKind::closest);
    CHECK_FALSE(answer.drill);
    CHECK(rule(answer, "pilot in the hole").result == match::Verdict::fail);
}

TEST_CASE("a pilot already in the body comes before a free one, and that before another body's") {
    auto here = pilot();
    here.number = 30;
    here.in_body = 2;
    auto free = pilot();
    free.number = 20;
    auto elsewhere = pilot();
    elsewhere.number = 10;
    elsewhere.in_body = 5;
    auto other = numbered(removable_body(), 5);
    other.cut_dia = known(tenths(9000, 9001));
    auto rack = rack_of({removable_body(), other}, {elsewhere, free, here});
    const auto best = ask(question(newer()), rack).answers.at(0);
    CHECK(best.pilot == 30);
    CHECK(best.other_pilots == 2);
    const auto pairs = ask(question(newer()), rack, true);
    REQUIRE(pairs.answers.size() == 3);
    CHECK(pairs.answers[1].pilot == 20);
    CHECK(pairs.answers[2].pilot == 10);
    CHECK(pairs.answers[2].notes.at(0) == "pilot 10 is in body 5: move it");
}

TEST_CASE("recommended comes before tool size, before small, before large") {
    std::vector<trade::Body> bodies;
    std::int64_t number = 0;
    for (const auto cut : {6000, 4800, 5000, 5312}) {
        auto body = numbered(integral_body(), ++number);
        body.cut_dia = known(tenths(cut, cut));
        bodies.push_back(body);
    }
    const auto report = ask(question(newer()), rack_of(bodies));
    REQUIRE(report.answers.size() == 4);
    CHECK(report.answers[0].size == match::SizeClass::recommended);
    CHECK(report.answers[1].size == match::SizeClass::tool_size);
    CHECK(report.answers[2].size == match::SizeClass::small);
    CHECK(report.answers[3].size == match::SizeClass::large);
    CHECK(report.answers[3].body == 1);
}

TEST_CASE("the tool made for the screw comes first, then the published hole, then the size") {
    const auto tool = [](std::int64_t number, int cut, int pilot) {
        auto body = numbered(integral_body(), number);
        body.cut_dia = known(tenths(cut, cut));
        body.pilot_dia = known(tenths(pilot, pilot));
        return body;
    };
    auto marked = tool(4, 6000, 3400); // large, normal hole, but its marking names the screw
    marked.marking = "5/16 SHCS";
    const std::vector<trade::Body> bodies = {
        tool(1, 5000, 3270), // tool size, close hole
        tool(2, 5000, 3550), // tool size, loose hole
        tool(3, 5900, 3400), // large, normal hole
        marked,
        tool(5, 5312, 3550),  // the published counterbore, loose hole
        tool(6, 4990, 3110)}; // the listed tool, size on size
    auto screw = newer();
    screw.form_words = {"shcs"};
    trade::PublishedTool handbook;
    handbook.cut_dia.listed = length::exactly(length::sixty_fourths(32));
    handbook.pilot_dia.listed = length::exactly(length::sixty_fourths(20));
    screw.tools = {handbook};
    const auto report = ask(question(screw), rack_of(bodies));
    std::string order;
    for (const auto& answer : report.answers)
        order += std::to_string(answer.body) + " ";
    CHECK(order == "4 6 1 5 2 3 ");
}

TEST_CASE("a marking names a screw by its size with the form, or in metric or with a pitch alone") {
    auto screw = newer();
    screw.form_words = {"shcs", "socket head cap", "socket"};
    for (const auto* marking :
         {"5/16 shcs", "for 5/16 socket head cap", "5/16-18", "17/32 5/16-24"})
        CHECK_MESSAGE(match::names(marking, screw), marking);
    for (const auto* marking : {"5/16", "15/16 shcs", "1-5/16 shcs", "5/16-18 fillister", "21/64"})
        CHECK_MESSAGE(!match::names(marking, screw), marking);
    screw.size = trade::ScrewSize{trade::SizeSystem::metric, "M8", length::millimetres(8)};
    CHECK(match::names("m8", screw));
    CHECK(match::names("m8x1.25", screw));
    CHECK_FALSE(match::names("m80", screw));
    CHECK_FALSE(match::names("m8 hex", screw));
}

TEST_CASE("size on size comes last, with its words") {
    auto tight = numbered(integral_body(), 1);
    tight.pilot_dia = known(tenths(3110, 3110)); // runs in 5/16 only, which is the screw's size
    auto easy = numbered(integral_body(), 2);
    easy.cut_dia = known(tenths(6000, 6000));
    easy.pilot_dia = known(tenths(3500, 3500)); // loose hole, large
    const auto report = ask(question(newer()), rack_of({tight, easy}));
    REQUIRE(report.answers.size() == 2);
    CHECK(report.answers[1].body == 1);
    CHECK(report.answers[1].kind == AnswerKind::ready);
    CHECK(report.answers[1].drill->name == "20/64");
    CHECK(report.answers[1].notes.at(0) == "size on size, no play: one screw, or ream");
}

TEST_CASE("a shoulder screw's hole is reamed, and no drill is named") {
    auto screw = newer();
    screw.shoulder = true;
    screw.screw_dia = tenths(3095, 3105);
    screw.close.reset();
    screw.normal.reset();
    screw.loose.reset();
    auto body = integral_body();
    body.pilot_dia = known(tenths(3100, 3110)); // hole .3125 to .3130
    const auto answer = ask(question(screw), rack_of({body})).answers.at(0);
    CHECK(answer.kind == AnswerKind::ready);
    CHECK_FALSE(answer.drill);
    CHECK(answer.reamed);
}

TEST_CASE("what is taken for a size that nobody recorded is said") {
    auto body = integral_body();
    body.reach.reset();
    body.pilot_length.reset();
    auto asked = question(newer());
    asked.thick = length::exactly(tenths(20000));
    const auto answer = ask(asked, rack_of({body})).answers.at(0);
    CHECK(answer.kind == AnswerKind::ready);
    CHECK(answer.assumed ==
          std::vector<std::string>{"reach not recorded: taken as its cutting diameter",
                                   "pilot length not recorded: taken as one pilot diameter"});
}

TEST_CASE(
    "counts are complete while the answers are cut off, and closest shows five unless all are "
    "asked for") {
    std::vector<trade::Body> bodies;
    for (int i = 1; i <= 30; ++i) {
        auto body = numbered(integral_body(), i);
        if (i > 20)
            body.retired = "worn out";
        bodies.push_back(body);
    }
    const auto rack = rack_of(bodies);
    const auto some = match::match(question(newer()), shop(), rack, length::Unit::inch, 12);
    CHECK(some.answers.size() == 12);
    CHECK(some.counts[0] == 20);
    CHECK(some.counts[4] == 10);
    CHECK(match::match(question(newer()), shop(), rack, length::Unit::inch, 100).answers.size() ==
          25);
    CHECK(ask(question(newer()), rack).answers.size() == 30);
}

TEST_CASE("only tools of the set that was asked for are looked at") {
    auto mine = integral_body();
    mine.set = "Works Store";
    auto rack = rack_of({mine, numbered(integral_body(), 7)});
    auto asked = question(newer());
    asked.set = "works store";
    const auto report = ask(asked, rack);
    REQUIRE(report.answers.size() == 1);
    CHECK(report.answers[0].body == 1);
}

TEST_CASE("every answer is unchanged by the order of the tools in the catalogue") {
    std::vector<trade::Body> bodies;
    for (int i = 1; i <= 6; ++i)
        bodies.push_back(numbered(removable_body(), i));
    std::vector<trade::Pilot> pilots;
    for (int i = 11; i <= 16; ++i) {
        auto part = pilot();
        part.number = i;
        pilots.push_back(part);
    }
    std::reverse(bodies.begin(), bodies.end());
    std::rotate(pilots.begin(), pilots.begin() + 2, pilots.end());
    const auto report = ask(question(newer()), rack_of(bodies, pilots));
    for (std::size_t i = 0; i < report.answers.size(); ++i) {
        CHECK(report.answers[i].body == static_cast<std::int64_t>(i) + 1);
        CHECK(report.answers[i].pilot == 11);
        CHECK(report.answers[i].other_pilots == 5);
    }
}
