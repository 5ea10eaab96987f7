// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Over many pieces of every look: no text on a drawing meets other text, a line or the frame.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include "bench.hpp"
#include "cases.hpp"
#include "drawing/lettering.hpp"
#include "make/drawing.hpp"
#include "make/stock.hpp"
#include "random_piece.hpp"

using drawing::Box;
using drawing::Drawing;
using drawing::Point;
using length::Unit;

namespace {

bool meet(const Box& a, const Box& b) {
    return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

// Clips the segment to the box; the part left over, if any, is inside.
bool meets(const Box& box, Point from, Point to) {
    double start = 0, end = 1;
    const auto clip = [&](double delta, double room) {
        // delta * t <= room
        if (delta == 0) // exactly along the side
            return room > 0;
        const double t = room / delta;
        if (delta > 0)
            end = std::min(end, t);
        else
            start = std::max(start, t);
        return start < end;
    };
    const double dx = to.x - from.x, dy = to.y - from.y;
    return clip(-dx, from.x - box.left) && clip(dx, box.right - from.x) &&
           clip(-dy, from.y - box.top) && clip(dy, box.bottom - from.y);
}

bool meets(const Box& box, const drawing::Arc& arc) {
    const auto at = [&arc](double degrees) {
        const double a = degrees * std::numbers::pi / 180;
        return Point{arc.centre.x + arc.radius * std::cos(a),
                     arc.centre.y + arc.radius * std::sin(a)};
    };
    for (double d = arc.start; d < arc.end; d += 3)
        if (meets(box, at(d), at(std::min(d + 3, arc.end))))
            return true;
    return false;
}

Box box_of(const drawing::Arrow& arrow) {
    const double back = (arrow.direction + 180) * std::numbers::pi / 180;
    const Point tail{arrow.tip.x + drawing::k_arrow_length * std::cos(back),
                     arrow.tip.y + drawing::k_arrow_length * std::sin(back)};
    const double half = drawing::k_arrow_width / 2;
    return {std::min(arrow.tip.x, tail.x) - half, std::min(arrow.tip.y, tail.y) - half,
            std::max(arrow.tip.x, tail.x) + half, std::max(arrow.tip.y, tail.y) + half};
}

// What the text meets, if anything.
std::optional<std::string> met_by(const Drawing& drawing, std::size_t index) {
    const auto box = drawing::box_of(drawing.texts[index]);
    if (box.left < 0.4 || box.top < 0.4 || box.right > drawing.width - 0.4 ||
        box.bottom > drawing.height - 0.4)
        return "the frame";
    for (std::size_t i = index + 1; i < drawing.texts.size(); ++i)
        if (meet(box, drawing::box_of(drawing.texts[i])))
            return "the text " + drawing.texts[i].words;
    for (const auto& line : drawing.lines)
        if (meets(box, line.from, line.to))
            return "a line";
    for (const auto& arc : drawing.arcs)
        if (meets(box, arc))
            return "an arc";
    for (const auto& arrow : drawing.arrows)
        if (meet(box, box_of(arrow)))
            return "an arrow";
    return std::nullopt;
}

std::size_t count_texts(const Drawing& drawing, std::string_view words) {
    return static_cast<std::size_t>(std::count_if(
        drawing.texts.begin(), drawing.texts.end(), [words](const drawing::Text& text) {
            return text.words.find(words) != std::string::npos;
        }));
}

std::size_t count_equal(const Drawing& drawing, std::string_view words) {
    return static_cast<std::size_t>(
        std::count_if(drawing.texts.begin(), drawing.texts.end(),
                      [words](const drawing::Text& text) { return text.words == words; }));
}

Drawing drawing_of(const make::Piece& piece, const drawing::Lettering& lettering) {
    return make::draw(piece, random_piece::specify(piece, lettering.unit), lettering, "2026-11-28");
}

} // namespace

TEST_CASE("the test of overlap sees overlaps") {
    CHECK(meet({0, 0, 2, 2}, {1, 1, 3, 3}));
    CHECK_FALSE(meet({0, 0, 2, 2}, {2, 0, 3, 3}));
    CHECK(meets({0, 0, 2, 2}, Point{-1, 1}, Point{3, 1}));
    CHECK(meets({0, 0, 2, 2}, Point{1, -5}, Point{1, 0.5}));
    CHECK(meets({0, 0, 2, 2}, Point{-1, 2.5}, Point{2.5, -1}));
    CHECK_FALSE(meets({0, 0, 2, 2}, Point{-1, 2}, Point{3, 2}));
    CHECK_FALSE(meets({0, 0, 2, 2}, Point{0, 3}, Point{3, 0.999999 + 1}));
    CHECK(meets({0, 0, 2, 2}, drawing::Arc{{0, 0}, 1, 0, 90, drawing::Pen::outline}));
    CHECK_FALSE(meets({0, 0, 2, 2}, drawing::Arc{{-0.1, 0}, 1, 90, 180, drawing::Pen::outline}));
}

TEST_CASE("no text meets another, a line, an arc, an arrow or the frame") {
    std::mt19937_64 random(31);
    for (int round = 0; round < cases::some(600); ++round) {
        const auto piece = random_piece::make(random);
        for (const auto& lettering :
             {drawing::Lettering{Unit::inch, false}, drawing::Lettering{Unit::inch, true},
              drawing::Lettering{Unit::millimetre, round % 2 == 0}}) {
            const auto drawing = drawing_of(piece, lettering);
            for (std::size_t i = 0; i < drawing.texts.size(); ++i) {
                const auto met = met_by(drawing, i);
                if (!met)
                    continue;
                CAPTURE(round);
                CAPTURE(lettering.both_units);
                CAPTURE(drawing.texts[i].words);
                FAIL_CHECK(*met);
            }
        }
    }
}

TEST_CASE("everything is on the paper, and most of a page is enough") {
    std::mt19937_64 random(32);
    for (int round = 0; round < cases::some(300); ++round) {
        const auto drawing = drawing_of(random_piece::make(random), {Unit::inch, true});
        CHECK(drawing.height < 255); // Letter upright less 12 mm of margin
        for (const auto& line : drawing.lines)
            for (const Point& point : {line.from, line.to}) {
                CHECK(point.x >= 0);
                CHECK(point.x <= drawing.width);
                CHECK(point.y >= 0);
                CHECK(point.y <= drawing.height);
            }
    }
}

TEST_CASE("the view is to the scale that the title block names") {
    make::Piece piece;
    piece.item = 1;
    piece.pilot = bench::tenths(3250, 3260);
    piece.shank = bench::tenths(1863, 1868);
    piece.bodies = {bench::removable_body()};
    const auto drawing = drawing_of(piece, {Unit::inch, false});
    CHECK(count_texts(drawing, "2:1") == 1);
    // The end face of the nose is an outline as long as its diameter less the chamfers, twice.
    const double face = 2 * 25.4 * (0.3255 - 2 * 0.025);
    double right = 0;
    for (const auto& line : drawing.lines)
        if (line.pen == drawing::Pen::outline)
            right = std::max(right, line.from.x);
    double length = 0;
    for (const auto& line : drawing.lines)
        if (line.pen == drawing::Pen::outline && line.from.x == right && line.to.x == right)
            length += std::abs(line.to.y - line.from.y);
    CHECK(length == doctest::Approx(face).epsilon(1e-6));
}

TEST_CASE("a drawing names every dimension, the bodies, the drills and the screws") {
    make::Piece piece;
    piece.item = 7;
    piece.pilot = bench::tenths(3250, 3260);
    piece.shank = bench::tenths(1863, 1868);
    auto body = bench::removable_body();
    body.number = 12;
    piece.bodies = {body};
    piece.serves = {{"5/16-18 socket head cap", 12,
                     trade::Drill{"21/64", trade::DrillKind::fraction, length::sixty_fourths(21)},
                     bench::tenths(3301, 3321), match::SizeClass::recommended}};
    const auto inch = drawing_of(piece, {Unit::inch, false});
    for (const auto* words :
         {"Ø.3250-.3260", "Ø.1863-.1868", ".575-.585", ".334-.353", ".290-.300", ".165-.185",
          ".020-.025", ".020-.030 x 45°", ".010-.020 x 45°",
          "DIN 509 - F 0.4 x 0.2: .079 to .086 wide, .008 to .011 deep, R .012", "20261128-07",
          "5/16-18 socket head cap: drill 21/64 (hole .3301 to .3321 in), in body 12, recommended",
          "12 (rack A, hole 1)", "within .001 in TIR", "32 microinch", "Section A-A",
          "ASME Y14.5"}) {
        CAPTURE(words);
        CHECK(count_texts(inch, words) == 1);
    }
    CHECK(count_equal(inch, "A") == 2); // both ends of the cutting plane
    CHECK(count_equal(inch, "B") == 3); // the datum, and in both frames
    CHECK(count_equal(inch, ".001") == 1);
    CHECK(count_equal(inch, ".0005") == 1);
    CHECK(count_equal(inch, "2026-11-28") == 1);
    const auto both = drawing_of(piece, {Unit::inch, true});
    CHECK(count_texts(both, "[8.255-8.280]") == 1);
    const auto metric = drawing_of(piece, {Unit::millimetre, true});
    CHECK(count_texts(metric, "Ø8.255-8.280") == 1);
    CHECK(count_texts(metric, "[.3250-.3259]") == 1); // rounded inward
}

// ISO 5456-2: the circles stand on the side that the cone is seen from in third angle, beyond it in
// first; its small end, which shows both circles, is to the left.
TEST_CASE("inches are drawn in third angle, millimetres in first") {
    make::Piece piece;
    piece.item = 1;
    piece.pilot = bench::tenths(3250, 3260);
    piece.shank = bench::tenths(1863, 1868);
    piece.bodies = {bench::removable_body()};
    for (const auto unit : {Unit::inch, Unit::millimetre}) {
        const auto drawing = drawing_of(piece, {unit, false});
        const auto circle =
            std::find_if(drawing.arcs.begin(), drawing.arcs.end(), [](const drawing::Arc& arc) {
                return arc.pen == drawing::Pen::frame && arc.radius > 2;
            });
        REQUIRE(circle != drawing.arcs.end());
        double small_end = 0, large_end = 0;
        for (const auto& line : drawing.lines) {
            if (line.pen != drawing::Pen::frame || line.from.x != line.to.x)
                continue;
            const double height = std::abs(line.to.y - line.from.y);
            if (std::abs(height - 2.2) < 0.001)
                small_end = line.from.x;
            else if (std::abs(height - 4.4) < 0.001)
                large_end = line.from.x;
        }
        CHECK(small_end < large_end);
        CHECK((circle->centre.x < small_end) == (unit == Unit::inch));
    }
}

TEST_CASE("a hardened pilot's drawing keeps all its cautions") {
    std::mt19937_64 random(33);
    make::Treatment treatment;
    treatment.hardened = true;
    for (int round = 0; round < cases::some(100); ++round) {
        const auto piece = random_piece::make(random);
        const auto spec = make::specify(piece, bench::practice(), make::usual_bars(Unit::inch),
                                        Unit::inch, treatment);
        const auto drawing = make::draw(piece, spec, {Unit::inch, true}, "2026-11-28");
        CHECK(drawing.height < 255);
        if (piece.kind != make::PieceKind::pilot)
            continue;
        CHECK(count_texts(drawing, "Hot work") == 1);
        CHECK(count_texts(drawing, "Grinding") == 1);
        CHECK(count_texts(drawing, "to grind on") == 1);
    }
}

TEST_CASE("what is to suit is said at its place and in a note") {
    make::Piece piece;
    piece.item = 2;
    piece.pilot = bench::tenths(3250, 3260);
    auto body = bench::removable_body();
    body.bore_depth.reset();
    piece.bodies = {body};
    const auto drawing = drawing_of(piece, {Unit::inch, false});
    CHECK(count_texts(drawing, "Ø to suit, note 1") == 1);
    CHECK(count_texts(drawing, "to suit, note 2") == 1);
    CHECK(count_texts(drawing, "flat to suit, note 3") == 1);
    CHECK(count_texts(drawing, "2:1, about") == 1);
    CHECK(count_texts(drawing, "Shank diameter: to slip in body 2") == 1);
}

TEST_CASE("text is broken at spaces, and anywhere when a word is too long") {
    const auto lines =
        drawing::wrap("a pilot for the bore", 3, drawing::width_of("a pilot for", 3) + 0.01);
    CHECK(lines == drawing::Stack{"a pilot for", "the bore"});
    const auto cut = drawing::wrap("éééééééé", 3, 9.1);
    CHECK(cut == drawing::Stack{"ééé", "ééé", "éé"});
    CHECK(drawing::wrap("", 3, 10).empty());
    CHECK(drawing::wrap("xx", 3, 0.1) == drawing::Stack{"x", "x"});
}

TEST_CASE("a bar is called by the system it is of") {
    CHECK(drawing::size_text(length::sixty_fourths(24), Unit::inch) == "3/8 in (.375)");
    CHECK(drawing::size_text(length::sixty_fourths(24), Unit::millimetre) == "3/8 in (9.525 mm)");
    CHECK(drawing::size_text(length::millimetres(10), Unit::inch) == "10 mm (.3937)");
    CHECK(drawing::size_text(length::millimetres(10), Unit::millimetre) == "10 mm");
    CHECK(drawing::size_text(length::thousandths(123), Unit::inch) == ".123 in");
}

TEST_CASE("limits have the same number of decimals") {
    CHECK(drawing::limits_text(bench::tenths(3250, 3260), Unit::inch) == ".3250-.3260");
    CHECK(drawing::limits_text(bench::tenths(5750, 5850), Unit::inch) == ".575-.585");
    CHECK(drawing::limits_text({length::millimetres(10), length::micrometres(10020)},
                               Unit::millimetre) == "10.000-10.020");
    CHECK(drawing::limits_text({length::millimetres(9), length::micrometres(10500)},
                               Unit::millimetre) == "9.00-10.50");
    CHECK(drawing::limits_text(length::exactly(bench::tenths(10000)), Unit::inch) == "1.0000");
}
