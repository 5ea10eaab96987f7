// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Every screw of every table, put to the tools of handbook and standard and to random tools: what
// no toolmaker would say must never be said.
#include <doctest/doctest.h>

#include <map>

#include "match/matcher.hpp"
#include "solid_tools.hpp"
#include "toolmaker.hpp"

using match::AnswerKind;
using published::Dice;
using published::Said;

namespace {

// That a walk came past enough of each to see a fault.
struct Seen {
    std::map<std::string, int> kinds;
    int drills = 0;
    int pilots_put_in = 0; // in answers that are ready
};

// A rack's records by their numbers.
class Records {
  public:
    explicit Records(const trade::Rack& rack) {
        for (auto& body : rack.bodies())
            bodies_.emplace(body.number, std::move(body));
        for (auto& pilot : rack.pilots())
            pilots_.emplace(pilot.number, std::move(pilot));
        for (const auto& trial : rack.trials())
            tried_[{trial.pilot, trial.body}] = trial.how;
    }
    [[nodiscard]] Said of(const match::Answer& answer, const match::Question& question) const {
        Said said{answer, question, bodies_.at(answer.body), nullptr, {}};
        if (!answer.pilot)
            return said;
        said.pilot = &pilots_.at(*answer.pilot);
        const auto trial = tried_.find({*answer.pilot, answer.body});
        if (trial != tried_.end())
            said.tried = trial->second;
        return said;
    }

  private:
    std::map<std::int64_t, trade::Body> bodies_;
    std::map<std::int64_t, trade::Pilot> pilots_;
    std::map<std::pair<std::int64_t, std::int64_t>, trade::Tried> tried_;
};

void walk(const match::Question& question, const match::Shop& shop, const trade::Rack& rack,
          Dice& dice, Seen& seen) {
    const Records records(rack);
    for (const auto& answer : match::match(question, shop, rack, length::Unit::inch, 0).answers) {
        const auto kind = std::string(match::to_text(answer.kind));
        ++seen.kinds[kind];
        seen.drills += answer.drill ? 1 : 0;
        seen.pilots_put_in += answer.kind == AnswerKind::ready && answer.pilot ? 1 : 0;
        CAPTURE(answer.body);
        CAPTURE(kind);
        CHECK(published::objection(records.of(answer, question), dice) == "");
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
            match::Question plain;
            plain.screw = screw;
            walk(plain, shop, solid, dice, seen);
            walk(published::random_question(screw, dice), shop, published::RandomRack(screw, dice),
                 dice, seen);
        }
    }
    CHECK(seen.drills > 5000);
    CHECK(seen.kinds["ready"] > 500);
    CHECK(seen.kinds["after work"] > 500);
    CHECK(seen.kinds["measure first"] > 500);
    CHECK(seen.kinds["make pilot"] > 500);
    CHECK(seen.pilots_put_in > 20);
}
