// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Every screw of every table, put to the tools of handbook and standard and to random tools: what
// no toolmaker would say must never be said. Nothing here goes by the program's own rules: a drill
// is held against the screw, a pilot against its drill, and what is called ready is put together
// with sizes taken at random from what the tools, the hole and the screw may measure.
#include <doctest/doctest.h>

#include <random>

#include "match/matcher.hpp"
#include "solid_tools.hpp"

using length::Length;
using length::Range;
using match::Answer;
using match::AnswerKind;

namespace {

class Dice {
  public:
    explicit Dice(std::uint64_t seed) : engine_(seed) {}
    std::int64_t between(std::int64_t lo, std::int64_t hi) {
        return std::uniform_int_distribution<std::int64_t>(lo, hi)(engine_);
    }
    Length within(const Range& range) {
        return Length::from_nm(between(range.lo.nm(), range.hi.nm()));
    }
    template <typename List>
    const auto& of(const List& list) {
        return list[static_cast<std::size_t>(
            between(0, static_cast<std::int64_t>(list.size()) - 1))];
    }

  private:
    std::mt19937_64 engine_;
};

// Bodies near the heads and holes of one screw, with a pilot of their own or one that goes in.
struct RandomRack : trade::Rack {
    RandomRack(const trade::Screw& screw, Dice& dice) : screw_(screw), dice_(dice) {
        for (std::int64_t number = 1; number <= 12; ++number)
            add(number);
    }
    [[nodiscard]] std::vector<trade::Body> bodies() const override { return bodies_; }
    [[nodiscard]] std::vector<trade::Pilot> pilots() const override { return pilots_; }
    [[nodiscard]] std::vector<trade::Trial> trials() const override { return {}; }

  private:
    // Some sizes are well known, some less, some not at all.
    trade::MaybeDimension around(Length middle, std::int64_t off) {
        if (dice_.between(1, 12) == 1)
            return std::nullopt;
        const auto size = middle + Length::from_nm(dice_.between(-off, off));
        const auto half = Length::from_nm(dice_.of(std::vector<std::int64_t>{0, 5'000, 40'000}));
        return trade::Dimension{"", trade::How::unstated, {size - half, size + half}};
    }
    void add(std::int64_t number) {
        trade::Body body;
        body.number = number;
        body.kind = trade::BodyKind::counterbore;
        body.cut_dia = around(screw_.head_dia->hi + length::thousandths(30), 1'200'000);
        const Length hole = screw_.screw_dia->hi + length::thousandths(8);
        if (number % 3 != 0) {
            body.pilot_kind = trade::PilotKind::integral;
            body.pilot_dia = around(hole, 400'000);
        } else {
            const Length bore = Length::from_nm(hole.nm() / 2);
            body.pilot_kind = trade::PilotKind::removable;
            body.bore = around(bore, 10'000);
            body.retention = trade::Retention::set_screw;
            trade::Pilot pilot;
            pilot.number = 100 + number;
            pilot.pilot_dia = around(hole, 300'000);
            pilot.shank_dia = around(bore - length::inches_e5(80), 30'000);
            pilot.has_flat = false;
            pilots_.push_back(pilot);
        }
        bodies_.push_back(body);
    }

    const trade::Screw& screw_;
    Dice& dice_;
    std::vector<trade::Body> bodies_;
    std::vector<trade::Pilot> pilots_;
};

struct Seen {
    int drills = 0;
    int ready = 0;
};

void check_drill(const Answer& answer, const trade::Screw& screw, Seen& seen) {
    if (!answer.drill)
        return;
    ++seen.drills;
    CHECK(answer.drill->diameter >= screw.screw_dia->hi);
    if (!answer.pilot_dia || answer.kind == AnswerKind::closest)
        return;
    CHECK(answer.pilot_dia->lo < answer.drill->diameter);
    if (answer.kind == AnswerKind::ready)
        CHECK(answer.pilot_dia->hi < answer.drill->diameter);
}

// The pilot goes in the hole with the screw's own body through it, and the head goes down: the
// cutter sits off by the pilot's play at most, and the screw may be pushed after it by its own.
void check_goes_together(const Answer& answer, const trade::Screw& screw, Dice& dice) {
    for (int i = 0; i < 20; ++i) {
        const Length hole = dice.within(*answer.hole);
        const Length pilot = dice.within(*answer.pilot_dia);
        const Length body = dice.within(*screw.screw_dia);
        const Length head = dice.within(*screw.head_dia);
        const Length cut = dice.within(*answer.counterbore);
        CHECK(pilot < hole);
        CHECK(body <= hole);
        CHECK(cut - head > (hole - pilot) - (hole - body)); // both sides twice the radius
        CHECK(head > hole);
    }
}

void walk(const trade::Screw& screw, const match::Shop& shop, const trade::Rack& rack, Dice& dice,
          Seen& seen) {
    match::Question question;
    question.screw = screw;
    for (const auto& answer : match::match(question, shop, rack, length::Unit::inch, 0).answers) {
        CAPTURE(answer.body);
        check_drill(answer, screw, seen);
        if (answer.kind != AnswerKind::ready)
            continue;
        ++seen.ready;
        REQUIRE(answer.pilot_dia);
        REQUIRE(answer.hole);
        check_goes_together(answer, screw, dice);
    }
}

} // namespace

TEST_CASE(
    "no screw of any table is sent to a drill, a pilot or a cutter that does not go with it") {
    const store::Reference tables;
    const auto practice = trade::read_practice(tables.practice());
    const published::SolidTools solid(tables, practice);
    Dice dice(20261128);
    Seen seen;
    for (const std::string indexes :
         {"fraction, number, letter", "metric", "fraction, number, letter, metric"}) {
        CAPTURE(indexes);
        auto owned = practice;
        owned.drill_indexes = indexes;
        const auto shop = match::make_shop(tables, owned, length::Unit::inch);
        for (const auto& head : tables.every_head()) {
            const auto screw = trade::listed_screw(head, tables);
            CAPTURE(screw.name);
            CAPTURE(screw.series);
            walk(screw, shop, solid, dice, seen);
            walk(screw, shop, RandomRack(screw, dice), dice, seen);
        }
    }
    CHECK(seen.drills > 5000);
    CHECK(seen.ready > 500);
}
