// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Every tool and pilot that the tables list, put to identification as it would be found.
#include <doctest/doctest.h>

#include <algorithm>

#include "match/identify_tool.hpp"
#include "store/reference.hpp"
#include "trade/dimension.hpp"

using length::MaybeRange;
using length::Range;
using match::Surety;
using trade::Feature;
using trade::How;
using trade::PublishedSize;

namespace {

struct Bench {
    store::Reference tables;
    trade::Practice practice = trade::read_practice(tables.practice());
    match::Identifier identifier{tables, practice};

    [[nodiscard]] match::ToolIdentity identify(const match::ToolFigures& figures) const {
        return identifier.identify(figures, length::Unit::inch);
    }
};

// The ways in which a tool of a listed size may be found.
enum class Found { marked, at_its_limits, by_micrometer };

MaybeRange as_found(const PublishedSize& size, Found found, Feature feature, length::Unit unit,
                    const trade::Practice& practice) {
    if (!size.listed || size.listed->lo != size.listed->hi)
        return std::nullopt;
    if (found == Found::at_its_limits && size.limits)
        return size.limits;
    const bool inch = unit == length::Unit::inch;
    const auto marked =
        trade::limits_of({size.listed->lo, unit, inch}, How::mark, feature, practice);
    if (found != Found::by_micrometer)
        return marked;
    // A pilot is listed by its hole and measures under it.
    const auto value =
        feature == Feature::pilot_dia ? (marked.lo + marked.hi) / 2 : size.listed->lo;
    return trade::limits_of({value, unit, false}, How::micrometer, feature, practice);
}

constexpr Found k_ways[] = {Found::marked, Found::at_its_limits, Found::by_micrometer};

bool names(const match::ToolIdentity& identity, const std::string& series) {
    for (std::size_t i = 0; i < identity.best; ++i)
        if (identity.uses[i].series == series)
            return true;
    return false;
}

// Both of two series of one form whose heads are the same, or neither.
void check_like_heads(const match::ToolIdentity& identity, const std::vector<trade::Head>& heads) {
    for (const auto& a : heads)
        for (const auto& b : heads)
            if (a.form == b.form && a.head_dia == b.head_dia) {
                CAPTURE(a.series);
                CAPTURE(b.series);
                CHECK(names(identity, a.series) == names(identity, b.series));
            }
}

void check_is_for(const match::ToolIdentity& identity, const std::string& size,
                  const std::string& hole) {
    REQUIRE(!identity.uses.empty());
    CHECK(identity.uses.front().surety == Surety::made_for);
    CHECK(match::likely_sizes(identity) == std::vector<std::string>{size});
    for (std::size_t i = 0; i < identity.best; ++i)
        CHECK((identity.uses[i].hole == "tap") == (hole == "tapping"));
}

// A pilot of 21 mm is listed for the fine hole of M20 and the tapping hole of M24: loose, it is
// both.
std::vector<std::string> same_pilots(const trade::PublishedPilot& row,
                                     const store::Reference& tables) {
    std::vector<std::string> sizes;
    for (const auto& other : tables.published_pilots())
        if (other.pilot_dia.listed == row.pilot_dia.listed &&
            other.shank_dia.listed == row.shank_dia.listed && !other.size.empty())
            sizes.push_back(other.size);
    return sizes;
}

void check_is_for_one_of(const match::ToolIdentity& identity, std::vector<std::string> sizes) {
    REQUIRE(!identity.uses.empty());
    CHECK(identity.uses.front().surety == Surety::made_for);
    auto likely = match::likely_sizes(identity);
    std::sort(likely.begin(), likely.end());
    std::sort(sizes.begin(), sizes.end());
    CHECK(likely == sizes);
}

bool looks_like(const match::ToolIdentity& identity, const std::string& name, bool for_sure) {
    return std::any_of(identity.published.begin(), identity.published.end(), [&](const auto& row) {
        return row.name == name && (!for_sure || row.result == match::Verdict::pass);
    });
}

// The drill for #0 `+1/64`, #48, is .076 and may cut .004 over: .080. 85 % of the least head, .091,
// is .0774.
bool leaves_little_seat(const trade::PublishedTool& row) {
    return row.size == "#0" && row.hole == "+1/64";
}

std::string name_of(const trade::PublishedTool& row) {
    return row.standard + (row.edition.empty() ? "" : " (" + row.edition + ")");
}

} // namespace

TEST_CASE("every listed tool with a screw size is found to be for that screw") {
    const Bench bench;
    int tried = 0;
    for (const auto& row : bench.tables.published_tools()) {
        if (row.size.empty())
            continue;
        const auto heads = bench.tables.heads(row.size);
        for (const auto way : k_ways) {
            CAPTURE(row.standard);
            CAPTURE(row.size);
            CAPTURE(row.hole);
            CAPTURE(static_cast<int>(way));
            match::ToolFigures figures;
            figures.cut_dia =
                as_found(row.cut_dia, way, Feature::cut_dia, row.unit, bench.practice);
            figures.pilot_dia =
                as_found(row.pilot_dia, way, Feature::pilot_dia, row.unit, bench.practice);
            REQUIRE((figures.cut_dia && figures.pilot_dia));
            const auto identity = bench.identify(figures);
            if (leaves_little_seat(row) && way == Found::by_micrometer)
                CHECK(identity.uses.front().surety == Surety::may_serve);
            else
                check_is_for(identity, row.size, row.hole);
            CHECK(looks_like(identity, name_of(row), way != Found::by_micrometer));
            check_like_heads(identity, heads);
            ++tried;
        }
    }
    CHECK(tried == 3 * (35 + 8 + 21 + 3)); // handbook, pattern of DIN 373, DIN 373 of two years
}

TEST_CASE("every listed tool without a screw size is found by its figures") {
    const Bench bench;
    int tried = 0;
    for (const auto& row : bench.tables.published_tools()) {
        if (!row.size.empty())
            continue;
        CAPTURE(row.standard);
        match::ToolFigures figures;
        const auto middle = (row.cut_dia.listed->lo + row.cut_dia.listed->hi) / 2;
        figures.cut_dia = length::exactly(middle);
        if (row.bore.listed)
            figures.bore = *row.bore.listed;
        const auto identity = bench.identify(figures);
        CAPTURE(middle.nm());
        CHECK(looks_like(identity, name_of(row), true));
        ++tried;
    }
    CHECK(tried == 5 + 4 + 6 + 7 + 9 + 13);
}

TEST_CASE("every listed pilot is found to be for its screw, loose or in its body") {
    const Bench bench;
    int tried = 0;
    for (const auto& row : bench.tables.published_pilots()) {
        if (row.size.empty())
            continue;
        for (const auto way : k_ways) {
            CAPTURE(row.size);
            CAPTURE(row.hole);
            CAPTURE(static_cast<int>(way));
            match::ToolFigures loose;
            loose.pilot_dia =
                as_found(row.pilot_dia, way, Feature::pilot_dia, row.unit, bench.practice);
            loose.shank_dia =
                as_found(row.shank_dia, way, Feature::pilot_shank_dia, row.unit, bench.practice);
            check_is_for_one_of(bench.identify(loose), same_pilots(row, bench.tables));
            match::ToolFigures in_body = loose;
            in_body.shank_dia.reset();
            in_body.cut_dia =
                as_found(row.cut_dia, way, Feature::cut_dia, row.unit, bench.practice);
            in_body.bore = loose.shank_dia;
            check_is_for(bench.identify(in_body), row.size, row.hole);
            ++tried;
        }
    }
    CHECK(tried == 3 * (3 * 13 + 3)); // DIN 1868
}

// Heads of 3/8: ASME B18.3 (1960 series), BS 2470, ASA B18.3 1936 (from memory) all .5625.
TEST_CASE("a 3/8 counterbore is for both patterns, a 5/16 one as well, and both are named") {
    const Bench bench;
    for (const auto* figures : {"3/8 19/32 25/64", "5/16 1/2 21/64"}) {
        const std::string text = figures;
        const auto cut = text.substr(text.find(' ') + 1, text.rfind(' ') - text.find(' ') - 1);
        const auto pilot = text.substr(text.rfind(' ') + 1);
        match::ToolFigures tool;
        tool.cut_dia = trade::read_dimension(cut, How::mark, Feature::cut_dia, length::Unit::inch,
                                             bench.practice)
                           .range;
        tool.pilot_dia = trade::read_dimension(pilot, How::mark, Feature::pilot_dia,
                                               length::Unit::inch, bench.practice)
                             .range;
        const auto identity = bench.identify(tool);
        check_is_for(identity, text.substr(0, text.find(' ')), "");
        CHECK(identity.uses.front().hole == "close");
        CHECK(names(identity, "ASME B18.3 1960"));
        CHECK(names(identity, "ASA B18.3 1936"));
        CHECK(names(identity, "BS 2470"));
    }
}

TEST_CASE("a cutter alone gives no hole, and no tool is claimed that a figure speaks against") {
    const Bench bench;
    match::ToolFigures figures;
    figures.cut_dia = length::exactly(length::thousandths(594));
    const auto identity = bench.identify(figures);
    REQUIRE(!identity.uses.empty());
    for (const auto& use : identity.uses) {
        CHECK(use.hole.empty());
        CHECK(!use.drill);
    }
    figures.pilot_dia = length::exactly(length::thousandths(450)); // of no listed tool
    for (const auto& row : bench.identify(figures).published)
        CHECK(row.size.empty());
}

// Usable running clearance is .001 to .010 in by default: nothing else may be said of a pilot.
TEST_CASE("a loose pilot is said to be for holes that it runs in, and for no other") {
    const Bench bench;
    match::ToolFigures figures;
    figures.pilot_dia = Range{length::inches_e5(26'400), length::inches_e5(26'440)};
    figures.shank_dia = Range{length::inches_e5(12'440), length::inches_e5(12'480)};
    const auto identity = bench.identify(figures);
    REQUIRE(!identity.uses.empty());
    CHECK(match::likely_sizes(identity).front() == "1/4");
    for (const auto& use : identity.uses) {
        CAPTURE(use.screw);
        REQUIRE(use.drill);
        CHECK(use.drill->diameter > length::thousandths(259));
        CHECK(use.drill->diameter < length::thousandths(274));
        CHECK(use.reasons.front().rule == "pilot in the hole");
    }
}
