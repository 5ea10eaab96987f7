// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "random_piece.hpp"

#include "bench.hpp"
#include "make/stock.hpp"

namespace random_piece {

using bench::known;
using bench::tenths;
using length::Length;
using length::Range;

namespace {

// Tenths of thousandths of an inch, within [lo, hi].
Length between(std::mt19937_64& random, int lo, int hi) {
    return tenths(lo + pick(random, hi - lo + 1));
}

bool chance(std::mt19937_64& random, int percent) {
    return pick(random, 100) < percent;
}

trade::Body random_body(std::mt19937_64& random, std::int64_t number, Length bore) {
    trade::Body body;
    body.number = number;
    body.kind = trade::BodyKind::counterbore;
    body.pilot_kind = trade::PilotKind::removable;
    body.bore = known({bore, bore + tenths(2)});
    if (chance(random, 80))
        body.cut_dia = known({bore * 2, bore * 2 + tenths(4)});
    if (chance(random, 85)) {
        const Length depth = between(random, 300, 20000);
        body.bore_depth = known({depth, depth + tenths(100)});
        const Length at = between(random, 200, static_cast<int>(depth.nm() / 2540));
        if (chance(random, 90))
            body.set_screw_at = known({at, at + tenths(20)});
    }
    static const std::vector<std::string> screws{"#4-40", "#6-32", "#8-32", "#10-32", "M4", ""};
    body.set_screw = screws[static_cast<std::size_t>(pick(random, 6))];
    if (chance(random, 80))
        body.retention = trade::Retention::set_screw;
    else if (chance(random, 60))
        body.retention = static_cast<trade::Retention>(pick(random, 6));
    if (chance(random, 50))
        body.place = "drawer <" + std::to_string(number) + "> & \"rack\"";
    return body;
}

void add_holes(std::mt19937_64& random, make::Piece& piece) {
    const auto practice = bench::practice();
    Length lo = piece.pilot.lo, hi = piece.pilot.hi;
    const int holes = 1 + pick(random, 3) * pick(random, 6);
    for (int i = 0; i < holes; ++i) {
        const Length least = hi + tenths(2) + practice.running_least;
        const Length most = lo - tenths(2) + practice.running_most;
        make::Served served;
        served.screw = i % 2 == 0 ? "5/16-18 socket head cap ASA B18.3 1936, hole close"
                                  : "M8 socket head cap";
        served.body = piece.bodies[static_cast<std::size_t>(i) % piece.bodies.size()].number;
        served.hole = {least, most};
        if (chance(random, 70))
            served.drill = trade::Drill{"21/64", trade::DrillKind::fraction, least};
        served.size = match::SizeClass::recommended;
        piece.serves.push_back(served);
    }
}

void add_owned(std::mt19937_64& random, make::Piece& piece, Length bore) {
    auto owned = bench::pilot();
    owned.number = 77;
    const bool sleeve = piece.kind == make::PieceKind::sleeve;
    const Length wall = length::sixty_fourths(2) + between(random, 0, 2000);
    const Length dia =
        sleeve ? std::max(piece.pilot.lo - wall * 2 - length::thousandths(2), tenths(200))
               : piece.pilot.hi + between(random, 1, 1500);
    piece.pilot = sleeve ? Range{dia + length::thousandths(2) + wall * 2,
                                 dia + length::thousandths(3) + wall * 2}
                         : piece.pilot;
    owned.pilot_dia = chance(random, 80) ? known({dia, dia}) : known({dia - tenths(30), dia});
    owned.shank_dia = known({bore - tenths(8), bore - tenths(6)});
    if (chance(random, 40))
        owned.shank_length.reset();
    if (chance(random, 40))
        owned.pilot_length.reset();
    if (chance(random, 50))
        owned.material.clear();
    piece.owned = owned;
    piece.shank.reset();
}

} // namespace

int pick(std::mt19937_64& random, int below) {
    return static_cast<int>(random() % static_cast<unsigned>(below));
}

make::Piece make(std::mt19937_64& random) {
    make::Piece piece;
    piece.item = 1 + pick(random, 40);
    const Length bore = between(random, 400, 5000);
    const int bodies = 1 + pick(random, 3);
    for (int i = 0; i < bodies; ++i)
        piece.bodies.push_back(random_body(random, 10 + i * 7, bore + tenths(pick(random, 4))));
    const Length nose = between(random, 200, chance(random, 50) ? 14000 : 3000);
    piece.pilot = {nose, nose + tenths(10)};
    if (chance(random, 75)) {
        const Length most = bore - tenths(4);
        piece.shank = Range{most - tenths(5), most};
    }
    if (chance(random, 15)) // nose and shank alike
        piece.pilot = {bore, bore + tenths(10)};
    if (chance(random, 25)) {
        piece.kind = chance(random, 50) ? make::PieceKind::sleeve : make::PieceKind::turn_down;
        add_owned(random, piece, bore);
    }
    add_holes(random, piece);
    return piece;
}

make::Spec specify(const make::Piece& piece, length::Unit unit) {
    return make::specify(piece, bench::practice(), make::usual_bars(unit), unit);
}

} // namespace random_piece
