// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The flat for the set screw. Positions are from the free end of the shank, since the shank is
// measured from there: the screw's axis is at shank length less its distance from the mouth.
#include <algorithm>

#include "length/grid.hpp"
#include "make/spec_dimensions.hpp"
#include "trade/size.hpp"

namespace make {

using length::Length;
using length::Range;
using length::sixty_fourths;
using length::thousandths;
using length::Unit;

namespace {

constexpr Length k_beyond = sixty_fourths(2);    // flat past the point on each side
constexpr Length k_least_lip = sixty_fourths(2); // round left at the free end, so that it stays in
constexpr Length k_at_tolerance = thousandths(10);
constexpr Length k_length_tolerance = thousandths(20);
constexpr auto k_source = "common practice";

struct FlatRow {
    Length shank_below;
    Length depth_least, depth_most;
    Length length; // least usual
};

// Rows 3/32, 1/8, 3/16, 1/4, 5/16 and up of the removable straight pins; a shank takes the nearest.
constexpr FlatRow k_rows[]{
    {sixty_fourths(7), thousandths(10), thousandths(15), sixty_fourths(8)},
    {sixty_fourths(10), thousandths(15), thousandths(20), sixty_fourths(12)},
    {sixty_fourths(14), thousandths(20), thousandths(25), sixty_fourths(16)},
    {sixty_fourths(18), thousandths(25), thousandths(30), sixty_fourths(20)},
    {sixty_fourths(640), thousandths(30), thousandths(35), sixty_fourths(24)},
};

const FlatRow& row_for(Length shank) {
    return *std::find_if(std::begin(k_rows), std::end(k_rows) - 1,
                         [shank](const FlatRow& row) { return shank < row.shank_below; });
}

// A set screw holds it, or nobody has looked.
bool may_be_screwed(const trade::Body& body) {
    return !body.retention || *body.retention == trade::Retention::set_screw;
}

// Where the points of all the screws may bear. Absent: some body's screw is not known.
std::optional<Range> points(const Piece& piece, const trade::Practice& practice,
                            const Range& shank) {
    std::optional<Range> all;
    for (const auto& body : piece.bodies) {
        if (!may_be_screwed(body))
            continue;
        if (!body.retention || body.set_screw.empty() || !body.set_screw_at)
            return std::nullopt;
        const Range axis = shank - body.set_screw_at->range;
        const auto major = trade::parse_set_screw(body.set_screw);
        const auto half = Length::from_nm(major.nm() * practice.set_screw_point_share / 2000 + 1);
        const Range point{axis.lo - half, axis.hi + half};
        all = all ? Range{std::min(all->lo, point.lo), std::max(all->hi, point.hi)} : point;
    }
    return all;
}

struct Extent {
    Range at;
    Range length;
};

// From before the first point to after the last, inside [0, `end`]. Absent: it does not fit.
std::optional<Extent> extent(const Range& point, Length end, Unit unit) {
    const Length step = in_unit(unit, thousandths(5), length::micrometres(100));
    if (point.lo < Length() || point.hi > end)
        return std::nullopt;
    Range at{};
    if (point.lo >= k_beyond + k_at_tolerance + k_least_lip) {
        at.hi = round_down(point.lo - k_beyond, step);
        at.lo = at.hi - in_unit(unit, k_at_tolerance, length::micrometres(250));
    }
    const Length tolerance = in_unit(unit, k_length_tolerance, length::micrometres(500));
    Range length{round_up(point.hi + k_beyond - at.lo, step), Length()};
    length.hi = length.lo + tolerance;
    if (at.hi + length.hi > end) {
        length.hi = round_down(end - at.hi, step);
        length.lo = round_up(point.hi - at.lo, coarse_step(unit));
        length.lo = std::max(length.lo, length.hi - tolerance);
        if (length.hi - length.lo < in_unit(unit, thousandths(5), length::micrometres(100)))
            return std::nullopt;
    }
    return Extent{at, length};
}

// Where the round of the shank ends at the nose.
Length end_of_round(const Piece& piece, const Range& shank_length, const Range& shank, Unit unit) {
    if (form_of(piece) != Form::shoulder)
        return shank_length.lo;
    return shank_length.lo - undercut_for(shank, piece.pilot, unit).width.limits->hi;
}

Dimension depth_of(const FlatRow& row, Length shank, Unit unit) {
    const Range limits{std::min(row.depth_least, shank / 8), std::min(row.depth_most, shank / 6)};
    return {"flat depth", inward(limits, coarse_step(unit)), {}, k_source};
}

Flat marked_out(const Piece& piece, const FlatRow& row, const Dimension& depth, Unit unit) {
    const bool several = piece.bodies.size() > 1;
    const bool sure =
        std::all_of(piece.bodies.begin(), piece.bodies.end(),
                    [](const trade::Body& body) { return body.retention.has_value(); });
    Flat flat{{"flat from the end", {}, {}, k_source}, std::nullopt, depth};
    flat.at.to_suit = std::string(sure ? "" : "where a set screw holds it: ") +
                      "blue the shank, push it home in " + in_bodies(piece) +
                      (several ? " in turn" : "") + ", nip the set screw, withdraw, file at the " +
                      (several ? "marks" : "mark");
    if (several)
        flat.length =
            Dimension{"flat length",
                      {},
                      "over all the marks, " + thirty_second(unit) + " beyond the outer ones",
                      k_source};
    else
        flat.length =
            Dimension{"flat length",
                      inward(Range{row.length, row.length + k_length_tolerance}, coarse_step(unit)),
                      {},
                      k_source};
    return flat;
}

} // namespace

std::optional<Flat> flat_of(const Piece& piece, const trade::Practice& practice,
                            const Dimension& shank_length, Unit unit) {
    if (piece.kind != PieceKind::pilot ||
        std::none_of(piece.bodies.begin(), piece.bodies.end(), may_be_screwed))
        return std::nullopt;
    const auto known = shank_as_known(piece);
    const Length shank = known ? middle(*known) : k_rows[2].shank_below;
    const auto& row = row_for(shank);
    const auto depth = depth_of(row, shank, unit);
    if (!shank_length.limits)
        return marked_out(piece, row, depth, unit);
    const auto point = points(piece, practice, *shank_length.limits);
    const Length end =
        end_of_round(piece, *shank_length.limits, known.value_or(length::exactly(shank)), unit);
    const auto fits = point ? extent(*point, end, unit) : std::nullopt;
    if (!fits)
        return marked_out(piece, row, depth, unit);
    const std::string source = "the set screw of " + in_bodies(piece) + " (common practice)";
    return Flat{{"flat from the end", fits->at, {}, source},
                Dimension{"flat length", fits->length, {}, source},
                depth};
}

} // namespace make
