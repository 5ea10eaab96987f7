// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Mechanical checks over every row that the interface gives: what must hold of any screw, hole,
// drill or washer. The build checks the tables in SQL (schema/reference/check.sql); these go the
// way that the program goes.
#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>
#include <set>
#include <string>

#include "length/parse.hpp"
#include "length/print.hpp"
#include "tables.hpp"
#include "trade/size.hpp"
#include "trade/text.hpp"

using length::Length;
using tables::in;
using tables::mm;

namespace {

constexpr Length k_rounding = length::inches_e5(60); // thousandths as printed

bool near(Length a, Length b, Length within) {
    return std::abs((a - b).nm()) <= within.nm();
}

template <typename See>
void each_head(See see) {
    for (const auto& size : tables::sizes())
        for (const auto& head : tables::reference().heads(size.text)) {
            CAPTURE(head.series);
            CAPTURE(size.text);
            see(head);
        }
}

// What a row of this series and the one before it, by size, have to say to each other.
template <typename See>
void each_pair(See see) {
    std::map<std::string, trade::Head> before;
    each_head([&](const trade::Head& head) {
        const auto found = before.find(head.series);
        if (found != before.end())
            see(found->second, head);
        before[head.series] = head;
    });
}

bool is_inch(const trade::Head& head) {
    return head.drive_size.find("mm") == std::string::npos &&
           head.size.system != trade::SizeSystem::metric;
}

// Across flats or slot of a head whose drive is a length.
std::optional<Length> drive_of(const trade::Head& head) {
    if (head.drive == "cross recess" || head.drive == "hexalobular")
        return std::nullopt;
    return length::parse_length(head.drive_size, length::Unit::inch).value;
}

std::vector<trade::Drill> drills_of_all_kinds() {
    using trade::DrillKind;
    std::vector<trade::Drill> all;
    for (const auto kind :
         {DrillKind::fraction, DrillKind::number, DrillKind::letter, DrillKind::metric}) {
        const auto some = tables::reference().drills(kind);
        all.insert(all.end(), some.begin(), some.end());
    }
    return all;
}

} // namespace

TEST_CASE("every size reads back as the tables have it") {
    for (const auto& size : tables::sizes()) {
        CAPTURE(size.text);
        const bool inch = size.system == trade::SizeSystem::inch; // a bare 1 is a number size
        CHECK(trade::parse_size(size.text + (inch ? " in" : "")) == size);
    }
}

TEST_CASE("a head's limits are in order and larger than its screw and key") {
    each_head([](const trade::Head& head) {
        CHECK(head.head_dia.lo < head.head_dia.hi);
        CHECK(head.head_dia.lo > head.screw_dia.hi);
        CHECK(head.head_height_max > Length());
        if (head.head_height_min)
            CHECK(*head.head_height_min < head.head_height_max);
        if (const auto drive = drive_of(head))
            CHECK(*drive < head.head_dia.lo);
        if (head.fillet_dia_max) {
            CHECK(*head.fillet_dia_max > head.screw_dia.hi);
            CHECK(*head.fillet_dia_max < head.head_dia.hi);
        }
        CHECK(near(head.screw_dia.hi, head.size.diameter, length::inches_e5(250)));
        CHECK(head.screw_dia.hi <= head.size.diameter);
    });
}

TEST_CASE("every head says form, pitch, drive and origin") {
    each_head([](const trade::Head& head) {
        CHECK(!head.form.empty());
        CHECK(!head.pitches.empty());
        CHECK(!head.drive.empty());
        CHECK(!head.origin.source.empty());
        CHECK(!head.origin.confidence.empty());
        CHECK((head.form == "shoulder") == !head.thread.empty());
    });
}

TEST_CASE("heads of a series grow with the screw") {
    each_pair([](const trade::Head& smaller, const trade::Head& larger) {
        CHECK(larger.head_dia.hi > smaller.head_dia.hi);
        CHECK(larger.head_height_max >= smaller.head_height_max);
        const auto a = drive_of(smaller);
        const auto b = drive_of(larger);
        if (a && b)
            CHECK(*b >= *a);
    });
}

TEST_CASE("least heads grow with the screw but for one fillister head, so printed in both copies") {
    each_pair([](const trade::Head& smaller, const trade::Head& larger) {
        const bool known = larger.series == "ASME B18.6.3 fillister" && larger.size.text == "7/16";
        CHECK((larger.head_dia.lo > smaller.head_dia.lo) != known);
    });
}

TEST_CASE("hexagon corners are the flats over cos 30") {
    int seen = 0;
    each_head([&](const trade::Head& head) {
        if (head.form != "hex cap")
            return;
        const double flats = static_cast<double>(drive_of(head)->nm());
        const double corners = flats / std::sqrt(0.75);
        const double within = is_inch(head) ? 15'240 : 6'000;
        CHECK(std::abs(static_cast<double>(head.head_dia.hi.nm()) - corners) <= within);
        CHECK(head.head_dia.lo > *drive_of(head));
        ++seen;
    });
    CHECK(seen == 18 + 29 + 29 + 4 + 16);
}

TEST_CASE("a socket head cap screw's head is as high as the screw is thick") {
    each_head([](const trade::Head& head) {
        if (head.form == "socket head cap")
            CHECK(near(head.head_height_max, head.size.diameter, k_rounding));
        if (head.series == "ISO 4762" || head.series == "DIN 912")
            CHECK(head.head_height_max == head.size.diameter);
    });
}

TEST_CASE("low heads are lower than socket heads of the same size") {
    for (const auto& [low, full] :
         {std::pair{"ASME B18.3 low head", "ASME B18.3 1960"}, {"DIN 7984", "ISO 4762"}})
        for (const auto* size : {"1/4", "3/8", "M6", "M10"}) {
            const bool metric = size[0] == 'M';
            if (metric == (std::string(low) == "DIN 7984"))
                CHECK(tables::head(low, size).head_height_max <
                      tables::head(full, size).head_height_max);
        }
}

TEST_CASE("clearance holes grow from close to loose, all over the screw") {
    for (const auto& size : tables::sizes())
        for (const auto& row : tables::reference().clearances(size.text)) {
            CAPTURE(row.system);
            CAPTURE(size.text);
            if (row.close)
                CHECK(row.close->diameter > size.diameter);
            if (row.close && row.normal)
                CHECK(row.close->diameter < row.normal->diameter);
            if (row.normal && row.loose)
                CHECK(row.normal->diameter < row.loose->diameter);
            CHECK(!row.origin.source.empty());
        }
}

TEST_CASE("a screw goes through its clearance hole") {
    for (const auto* system : {"ASME B18.2.8", "ISO 273", "shop chart"})
        for (const auto& size : tables::sizes())
            for (const auto& row : tables::reference().clearances(size.text))
                if (row.system == system)
                    for (const auto& head : tables::reference().heads(size.text)) {
                        CAPTURE(head.series);
                        CAPTURE(size.text);
                        CHECK(head.screw_dia.hi < row.close->diameter);
                        CHECK(row.normal->diameter < head.head_dia.lo);
                    }
}

TEST_CASE("drills ascend within their kind") {
    using trade::DrillKind;
    for (const auto kind :
         {DrillKind::fraction, DrillKind::number, DrillKind::letter, DrillKind::metric}) {
        const auto drills = tables::reference().drills(kind);
        REQUIRE(drills.size() > 20);
        for (std::size_t at = 1; at < drills.size(); ++at) {
            CAPTURE(drills[at].name);
            CHECK(drills[at - 1].diameter < drills[at].diameter);
            CHECK(drills[at].kind == kind);
        }
    }
}

TEST_CASE("fraction and metric drills are what they are called, and names are canonical") {
    for (const auto& drill : drills_of_all_kinds()) {
        CAPTURE(drill.name);
        const bool whole_inch = drill.name == "1";
        CHECK(trade::canonical_drill_name(drill.name + (whole_inch ? " in" : "")) == drill.name);
        if (drill.kind == trade::DrillKind::fraction)
            CHECK(drill.diameter == in(drill.name));
        if (drill.kind == trade::DrillKind::metric)
            CHECK(length::with_unit(drill.diameter, length::Unit::millimetre) == drill.name);
    }
}

TEST_CASE("number drills run from 80 down to 1, letter drills from A to Z") {
    const auto numbers = tables::reference().drills(trade::DrillKind::number);
    for (std::size_t at = 0; at < numbers.size(); ++at)
        CHECK(numbers[at].name == "#" + std::to_string(80 - at));
    const auto letters = tables::reference().drills(trade::DrillKind::letter);
    for (std::size_t at = 0; at < letters.size(); ++at)
        CHECK(letters[at].name == std::string(1, static_cast<char>('A' + at)));
    CHECK(numbers.back().diameter < letters.front().diameter);
}

TEST_CASE("a tap drill leaves a thread") {
    for (const auto& size : tables::sizes())
        for (const auto& tap : tables::reference().tap_drills(size.text)) {
            CAPTURE(size.text);
            CAPTURE(tap.thread);
            CHECK(tap.diameter < size.diameter);
            CHECK(tap.diameter.nm() * 10 > size.diameter.nm() * 7);
        }
}

TEST_CASE("a counterbore takes the largest head that it is for") {
    int seen = 0;
    for (const auto& size : tables::sizes())
        for (const auto& row : tables::reference().counterbores(size.text))
            for (const auto& head : tables::reference().heads(size.text))
                if (head.series == row.series) {
                    CAPTURE(row.rule);
                    CAPTURE(size.text);
                    CHECK(row.diameter > head.head_dia.hi);
                    ++seen;
                }
    CHECK(seen > 400);
}

TEST_CASE("the first counterbore of a metric screw is the one of DIN 974") {
    for (const auto* size : {"M3", "M5", "M8", "M12", "M20"}) {
        const auto rows = tables::reference().counterbores(size);
        REQUIRE(!rows.empty());
        CHECK(rows.front().rule == "DIN 974-1 series 1");
    }
}

TEST_CASE("a head has no more than one recommended counterbore or spotface") {
    for (const auto& size : tables::sizes()) {
        std::map<std::string, int> seen;
        for (const auto& row : tables::reference().counterbores(size.text))
            if (row.kind == "recommended" || row.kind == "spotface")
                CHECK(++seen[row.series] == 1);
    }
}

TEST_CASE("every series has a published counterbore but those that go by the rule of thumb") {
    // docs/tables.md, "What a counterbore is taken from".
    const std::set<std::string> by_thumb{"ASA B18.3 1936",
                                         "BS 2470",
                                         "BSW/BSF socket",
                                         "BA socket",
                                         "ASME B18.3 low head",
                                         "ASME B18.3 button",
                                         "ISO 7380-1",
                                         "ISO 7380-2",
                                         "ASME B18.6.3 pan slotted",
                                         "ASME B18.6.3 pan recessed",
                                         "ASME B18.3 shoulder",
                                         "ISO 7379",
                                         "trade shoulder",
                                         "BS 1083 BSW/BSF",
                                         "EN 1665",
                                         "EN 1662",
                                         "ASME B18.2.1 hex flange"};
    std::set<std::string> published;
    for (const auto& size : tables::sizes())
        for (const auto& row : tables::reference().counterbores(size.text))
            if (row.kind == "recommended" || row.kind == "spotface" || row.kind == "tool")
                published.insert(row.series);
    for (const auto& series : tables::reference().series()) {
        CAPTURE(series.name);
        CHECK(published.contains(series.name) != by_thumb.contains(series.name));
    }
}

TEST_CASE("washers go over their screw") {
    for (const auto& size : tables::sizes())
        for (const auto& washer : tables::reference().washers(size.text)) {
            CAPTURE(washer.series);
            CAPTURE(size.text);
            CHECK(washer.inside_dia >= size.diameter);
            CHECK(washer.outside_dia_max > washer.inside_dia);
            if (washer.thickness_max)
                CHECK(*washer.thickness_max < washer.outside_dia_max - washer.inside_dia);
        }
}

TEST_CASE("high collar lock washers clear the 1960 head but not every older one") {
    for (const auto* size : {"1/4", "5/16", "3/8", "1/2", "5/8"}) {
        CAPTURE(size);
        const auto outside = tables::washer("lock-spring-high-collar", size).outside_dia_max;
        CHECK(outside < tables::head("ASME B18.3 1960", size).head_dia.hi);
        const bool larger = size == std::string("5/16") || size == std::string("5/8");
        CHECK((outside > tables::head("ASA B18.3 1936", size).head_dia.hi) == larger);
    }
}

TEST_CASE("what a table prints rounds to what is stored") {
    SQLite::Statement query(tables::reference().database(), R"(
        SELECT printed, 'diameter', diameter_nm FROM counterbore
        UNION ALL SELECT c.printed, 'close', d.diameter_nm FROM counterbore AS c JOIN drill AS d ON d.name = c.close
        UNION ALL SELECT c.printed, 'normal', d.diameter_nm FROM counterbore AS c JOIN drill AS d ON d.name = c.normal
        UNION ALL SELECT c.printed, 'close', d.diameter_nm FROM clearance AS c JOIN drill AS d ON d.name = c.close
        UNION ALL SELECT c.printed, 'normal', d.diameter_nm FROM clearance AS c JOIN drill AS d ON d.name = c.normal
        UNION ALL SELECT c.printed, 'loose', d.diameter_nm FROM clearance AS c JOIN drill AS d ON d.name = c.loose
        UNION ALL SELECT printed, 'major', major_nm FROM thread
        UNION ALL SELECT t.printed, 'drill', d.diameter_nm FROM thread AS t JOIN drill AS d ON d.name = t.drill
        UNION ALL SELECT printed, 'drive_size', drive_size_nm FROM head)");
    int seen = 0;
    while (query.executeStep()) {
        const std::string wanted = query.getColumn(1).getString() + " ";
        for (const auto& part : trade::split(query.getColumn(0).getString(), ';'))
            if (part.starts_with(wanted)) {
                CAPTURE(part);
                const auto figure = part.substr(wanted.size());
                const bool three_places = figure.size() - figure.find('.') == 4;
                CHECK(near(in(figure), Length::from_nm(query.getColumn(2).getInt64()),
                           length::inches_e5(three_places ? 50 : 5)));
                ++seen;
            }
    }
    CHECK(seen > 200);
}
