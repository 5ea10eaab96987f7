// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/likeness.hpp"

#include <algorithm>
#include <tuple>

#include "match/finding.hpp"
#include "match/say.hpp"
#include "trade/dimension.hpp"

namespace match {

using length::MaybeRange;
using length::Range;
using trade::Feature;
using trade::PublishedSize;

namespace {

// What a tool of this listed size may measure: as a mark, new or worn, or within printed limits.
Range allowed(const PublishedSize& size, Feature feature, length::Unit unit,
              const trade::Practice& practice) {
    const auto marked = [&](length::Length value) {
        const bool fraction = unit == length::Unit::inch;
        return trade::limits_of({value, unit, fraction}, trade::How::mark, feature, practice);
    };
    Range range{marked(size.listed->lo).lo, marked(size.listed->hi).hi};
    if (feature == Feature::pilot_dia) // named after its hole, or after itself
        range.hi = std::max(range.hi, size.listed->hi);
    if (size.limits) {
        range.lo = std::min(range.lo, size.limits->lo);
        range.hi = std::max(range.hi, size.limits->hi);
    }
    return range;
}

// Collects the figures of one listed row.
struct Comparison {
    length::Unit listed_in;
    length::Unit said_in;
    const trade::Practice& practice;
    Verdict result = Verdict::pass;
    std::vector<Reason> figures{};

    // False if the figure was not compared, since one side does not give it.
    bool compare(const MaybeRange& measured, const PublishedSize& listed, Feature feature) {
        if (!measured || !listed.listed)
            return false;
        const auto range = allowed(listed, feature, listed_in, practice);
        const auto found = within(*measured, range.lo, range.hi);
        result = worse(result, found);
        figures.push_back(
            {std::string(trade::to_text(feature)), found,
             "listed " + say(*listed.listed, said_in) + ", may measure " + say(range, said_in),
             say(*measured, said_in)});
        return true;
    }
};

bool is_band(const Likeness& likeness) {
    const auto& size = likeness.cut_dia ? likeness.cut_dia : likeness.pilot_dia;
    return size && size->lo != size->hi;
}

void put_in_order(std::vector<Likeness>& found) {
    std::stable_sort(found.begin(), found.end(), [](const Likeness& a, const Likeness& b) {
        const auto key = [](const Likeness& l) {
            return std::tuple(l.result, -static_cast<int>(l.figures.size()), is_band(l));
        };
        return key(a) < key(b);
    });
}

std::vector<Likeness> like_tools(const ToolFigures& figures, const trade::Tables& tables,
                                 const trade::Practice& practice, length::Unit unit) {
    std::vector<Likeness> found;
    for (const auto& row : tables.published_tools()) {
        Comparison with{row.unit, unit, practice};
        const bool cutter = with.compare(figures.cut_dia, row.cut_dia, Feature::cut_dia);
        with.compare(figures.pilot_dia, row.pilot_dia, Feature::pilot_dia);
        const bool bore = with.compare(figures.bore, row.bore, Feature::bore);
        with.compare(figures.shank_dia, row.shank_dia, Feature::shank_dia);
        const bool own_pilot = row.pilot_kind == "integral";
        if (!(cutter || (bore && !figures.cut_dia)) || with.result == Verdict::fail ||
            (figures.bore && own_pilot))
            continue;
        found.push_back({row.standard + (row.edition.empty() ? "" : " (" + row.edition + ")"),
                         row.size, row.hole, row.cut_dia.listed, row.pilot_dia.listed, with.result,
                         std::move(with.figures), row.origin});
    }
    return found;
}

std::vector<Likeness> like_pilots(const ToolFigures& figures, const trade::Tables& tables,
                                  const trade::Practice& practice, length::Unit unit) {
    std::vector<Likeness> found;
    for (const auto& row : tables.published_pilots()) {
        Comparison with{row.unit, unit, practice};
        const bool pilot = with.compare(figures.pilot_dia, row.pilot_dia, Feature::pilot_dia);
        with.compare(figures.cut_dia, row.cut_dia, Feature::cut_dia);
        if (figures.loose_pilot())
            with.compare(figures.shank_dia, row.shank_dia, Feature::pilot_shank_dia);
        if (!pilot || with.result == Verdict::fail)
            continue;
        found.push_back({row.standard, row.size, row.hole, row.cut_dia.listed, row.pilot_dia.listed,
                         with.result, std::move(with.figures), row.origin});
    }
    return found;
}

} // namespace

std::vector<Likeness> likenesses(const ToolFigures& figures, const trade::Tables& tables,
                                 const trade::Practice& practice, length::Unit unit) {
    std::vector<Likeness> found;
    if (!figures.loose_pilot())
        found = like_tools(figures, tables, practice, unit);
    if (figures.loose_pilot() || figures.bore)
        for (auto& pilot : like_pilots(figures, tables, practice, unit))
            found.push_back(std::move(pilot));
    put_in_order(found);
    return found;
}

} // namespace match
