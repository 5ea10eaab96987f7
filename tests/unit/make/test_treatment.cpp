// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Soft or hardened: steels and temperatures against published tables, and only the cautions that a
// piece asks for.
#include <doctest/doctest.h>

#include <cstdlib>

#include "cases.hpp"
#include "make/spec_words.hpp"
#include "make/stock.hpp"
#include "random_piece.hpp"
#include "spec_bench.hpp"

using bench::tenths;
using length::Unit;
using spec_bench::plain_piece;
using spec_bench::says;

TEST_CASE("soft is the default: no heat, no grinding, and no cautions for them") {
    const auto spec = random_piece::specify(plain_piece(), Unit::inch);
    CHECK(spec.treatment == "Left soft, as bought: for a short run, no grinding.");
    CHECK(spec.centres.empty());
    for (const auto* word : {"Hot work", "Quench", "quench", "Solder", "compound", "Grinding"}) {
        CAPTURE(word);
        CHECK_FALSE(says(spec.cautions, word));
        CHECK_FALSE(says(spec.steps, word));
    }
}

TEST_CASE("a hardened pilot names its steel, its temperatures, the allowance, the centres") {
    make::Treatment treatment;
    treatment.hardened = true;
    const auto spec = make::specify(plain_piece(), bench::practice(), make::usual_bars(Unit::inch),
                                    Unit::inch, treatment);
    CHECK(spec.material == "Drill rod O1 (oil-hardening, 1.2510)");
    CHECK(
        spec.treatment ==
        ".005 to .010 in left on both diameters; heat to 1475 °F (800 °C), soak until even, quench "
        "in oil; draw at once at 500 °F (260 °C), an hour or more: 58 to 60 HRC. Grind to the "
        "limits.");
    CHECK(spec.centres == "Centres in both ends to grind on: ISO 6411 A0.5/1.06, left in");
    CHECK(says(spec.cautions, "Hot work"));
    CHECK(says(spec.cautions, "Quench oil"));
    CHECK_FALSE(says(spec.cautions, "Solder"));
    // The flat's place is known, so it is cut before the steel is hard.
    const auto place = [&spec](std::string_view words) {
        return std::find_if(spec.steps.begin(), spec.steps.end(),
                            [words](const std::string& step) { return step.find(words) == 0; });
    };
    CHECK(place("Mill the flat") < place("Harden and draw"));
    CHECK(place("Harden and draw") < place("In the same setting grind the nose"));
    CHECK(place("In the same setting grind the nose") < spec.steps.end());
}

// Public heat treating tables: O1 1450 to 1500 F, drawn 350 to 500 F, 60 HRC at 500 F and 57 at
// 600 F; W1 1400 to 1550 F, drawn 350 to 650 F (a furnace maker's guide, a metals dealer's data
// sheet). Silver steel 770 to 780 C in water (a workshop page on silver steel).
TEST_CASE("each steel is hardened and drawn within its published temperatures") {
    const auto* o1 = make::steel_named("o1");
    const auto* w1 = make::steel_named("W1");
    const auto* silver = make::steel_named("Silver");
    REQUIRE((o1 && w1 && silver));
    CHECK((o1->harden_f >= 1450 && o1->harden_f <= 1500));
    CHECK((o1->draw_f >= 350 && o1->draw_f <= 500));
    CHECK(o1->quench == "oil");
    CHECK((w1->harden_f >= 1400 && w1->harden_f <= 1550));
    CHECK((w1->draw_f >= 350 && w1->draw_f <= 650));
    CHECK((silver->harden_c >= 770 && silver->harden_c <= 780));
    CHECK(silver->quench == "water");
    for (const auto& steel : make::steels()) {
        CHECK(std::abs((steel.harden_f - 32) * 5 - steel.harden_c * 9) <= 5 * 9);
        CHECK(std::abs((steel.draw_f - 32) * 5 - steel.draw_c * 9) <= 5 * 9);
        CHECK_FALSE(steel.source.empty());
    }
    CHECK(make::steel_named("A2") == nullptr);
}

TEST_CASE("only a sleeve brings cautions for solder and retaining compound") {
    std::mt19937_64 random(30);
    make::Treatment treatment;
    treatment.hardened = true;
    for (int round = 0; round < cases::some(300); ++round) {
        const auto piece = random_piece::make(random);
        const auto spec = make::specify(piece, bench::practice(), make::usual_bars(Unit::inch),
                                        Unit::inch, treatment);
        CHECK(says(spec.cautions, "Solder") == (piece.kind == make::PieceKind::sleeve));
        CHECK(says(spec.cautions, "Hot work") == (piece.kind == make::PieceKind::pilot));
    }
}

TEST_CASE("limits closer than a lathe holds say so") {
    auto piece = plain_piece();
    CHECK_FALSE(says(random_piece::specify(piece, Unit::inch).steps, "grind, or lap"));
    piece.pilot = tenths(3250, 3259);
    CHECK(says(random_piece::specify(piece, Unit::inch).steps, "grind, or lap"));
}
