// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The corner of shank and shoulder, and when there is a shoulder at all.
#include <doctest/doctest.h>

#include "cases.hpp"
#include "make/spec_dimensions.hpp"
#include "random_piece.hpp"
#include "spec_bench.hpp"

using bench::tenths;
using length::Length;
using length::Range;
using length::Unit;
using spec_bench::plain_piece;
using spec_bench::says;

// DIN 509:1998, as extracted in a public copy (usual stress, series 1): to 3 mm R0.2 x 0.1, to 18
// mm R0.4 x 0.2, to 80 mm R0.8 x 0.3; width 1, 2, 2.5 +0.2, depth +0.1, radius +-0.1, into the face
// 0.1, 0.1, 0.2 +0.05.
TEST_CASE("the undercut is that of DIN 509 for the shank") {
    struct Row {
        Length shank;
        const char* name;
        std::int64_t width, depth, radius, face;
    };
    for (const auto& row : {Row{tenths(937), "DIN 509 - F 0.2 x 0.1", 1000, 100, 200, 100},
                            Row{tenths(1875), "DIN 509 - F 0.4 x 0.2", 2000, 200, 400, 100},
                            Row{tenths(5000), "DIN 509 - F 0.4 x 0.2", 2000, 200, 400, 100},
                            Row{tenths(7500), "DIN 509 - F 0.8 x 0.3", 2500, 300, 800, 200}}) {
        const Range shank{row.shank - tenths(5), row.shank};
        const Range nose{row.shank + tenths(3000), row.shank + tenths(3010)};
        const auto undercut = make::undercut_for(shank, nose, Unit::millimetre);
        using length::micrometres;
        CHECK(undercut.name == row.name);
        CHECK(undercut.width.limits == Range{micrometres(row.width), micrometres(row.width + 200)});
        CHECK(undercut.depth.limits->lo == micrometres(row.depth));
        CHECK(undercut.depth.limits->hi <= micrometres(row.depth + 100));
        CHECK(undercut.radius.limits ==
              Range{micrometres(row.radius - 100), micrometres(row.radius + 100)});
        CHECK(undercut.face_depth->limits ==
              Range{micrometres(row.face), micrometres(row.face + 50)});
    }
}

TEST_CASE("the undercut spares a narrow shoulder and nine tenths of the shank") {
    std::mt19937_64 random(29);
    int spared = 0, relieved = 0;
    for (int round = 0; round < cases::some(2000); ++round) {
        const auto piece = random_piece::make(random);
        for (const auto unit : {Unit::inch, Unit::millimetre}) {
            const auto spec = random_piece::specify(piece, unit);
            if (!spec.undercut)
                continue;
            const auto shank = *make::shank_as_known(piece);
            CHECK(spec.undercut->depth.limits->hi * 10 <= shank.lo);
            const auto shoulder = (piece.pilot.lo - shank.hi) / 2;
            CHECK(shoulder >= tenths(150));
            CHECK(shoulder - spec.undercut->face_height >= tenths(150));
            CHECK(spec.undercut->face_depth.has_value() ==
                  (spec.undercut->name.find(" F ") != std::string::npos));
            ++(spec.undercut->face_depth ? relieved : spared);
        }
    }
    CHECK(spared > cases::some(50));
    CHECK(relieved > cases::some(500));
}

TEST_CASE("a shoulder under .015 in a side is called none") {
    auto piece = plain_piece(); // shank .1863 to .1868
    piece.pilot = tenths(2168, 2178);
    CHECK(random_piece::specify(piece, Unit::inch).form == make::Form::shoulder);
    piece.pilot = tenths(2167, 2177);
    auto spec = random_piece::specify(piece, Unit::inch);
    CHECK(spec.form == make::Form::plain);
    CHECK_FALSE(spec.undercut);
    CHECK_FALSE(spec.squareness);
    CHECK(says(spec.cautions, "Under .015 in of shoulder is left a side"));
    piece.pilot = tenths(1553, 1563); // .1863 - .1563 = .0300
    CHECK(random_piece::specify(piece, Unit::inch).form == make::Form::neck);
    piece.pilot = tenths(1554, 1564);
    CHECK(random_piece::specify(piece, Unit::inch).form == make::Form::plain);
}
