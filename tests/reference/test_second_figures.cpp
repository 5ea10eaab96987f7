// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Rows held against figures from another place than the one they were taken from: another table,
// an older edition, or a rule that the standard follows.
#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>

#include <cstdlib>
#include <initializer_list>
#include <string>
#include <vector>

#include "length/parse.hpp"
#include "tables.hpp"

using length::Length;
using tables::in;
using tables::mm;

namespace {

struct Figure {
    const char* size;
    const char* value;
};

// Grade IT13 of ISO 286-1 Table 1, by the size it is taken of.
Length it13(Length size) {
    if (size <= mm("3"))
        return mm("0.14");
    if (size <= mm("6"))
        return mm("0.18");
    if (size <= mm("10"))
        return mm("0.22");
    return size <= mm("18") ? mm("0.27") : mm("0.33");
}

Length flats(const trade::Head& head) {
    return length::parse_length(head.drive_size, length::Unit::inch).value;
}

std::vector<trade::Head> of_series(const std::string& series) {
    auto heads = tables::reference().every_head();
    std::erase_if(heads, [&](const auto& head) { return head.series != series; });
    return heads;
}

} // namespace

TEST_CASE("a DIN 7985 head is as high as its nominal, and as much over it as under") {
    // Nominal heights of DIN 7985:1990 as a public bolt library has them, its name not noted; the
    // limits are from suppliers' pages.
    for (const auto& [size, nominal] : std::initializer_list<Figure>{{"M1.6", "1.3"},
                                                                     {"M2", "1.6"},
                                                                     {"M2.5", "2"},
                                                                     {"M3", "2.4"},
                                                                     {"M3.5", "2.7"},
                                                                     {"M4", "3.1"},
                                                                     {"M5", "3.8"},
                                                                     {"M6", "4.6"},
                                                                     {"M8", "6"},
                                                                     {"M10", "7.5"}}) {
        CAPTURE(size);
        const auto head = tables::head("DIN 7985", size);
        CHECK(head.head_height_max + *head.head_height_min == mm(nominal) * 2);
        CHECK(head.head_height_max > mm(nominal));
    }
}

TEST_CASE("least heights of DIN 6912 are IT13 under the largest") {
    // ISO 286-1 Table 1; the heights are from a gear toolkit's page.
    for (const auto& head : of_series("DIN 6912")) {
        CAPTURE(head.size.text);
        CHECK(*head.head_height_min == head.head_height_max - it13(head.head_height_max));
    }
}

TEST_CASE("Whitworth bolts have the hexagon of the next smaller bolt of Whitworth's own table") {
    // "Sizes of Whitworth nuts and bolt-heads", a cyclopaedia of about 1880: flats of the nut of
    // the next smaller bolt. BS 1083 kept those hexagons, a size down.
    for (const auto& [size, older] : std::initializer_list<Figure>{{"9/16", ".9191"},
                                                                   {"5/8", "1.011"},
                                                                   {"3/4", "1.2011"},
                                                                   {"7/8", "1.3012"},
                                                                   {"1", "1.4788"},
                                                                   {"1-1/8", "1.6701"},
                                                                   {"1-1/4", "1.8605"},
                                                                   {"1-3/8", "2.0483"},
                                                                   {"1-1/2", "2.2146"},
                                                                   {"1-3/4", "2.5763"},
                                                                   {"2", "2.7578"}}) {
        CAPTURE(size);
        const auto apart = flats(tables::head("BS 1083 BSW/BSF", size)) - in(older);
        CHECK(std::abs(apart.nm()) <= in(".006").nm());
    }
}

TEST_CASE("Whitworth corners are no smaller than printed") {
    // BS 1083:1965 Table 1, width across corners C, to .01 in.
    for (const auto& [size, printed] : std::initializer_list<Figure>{
             {"1/4", ".51"}, {"3/8", ".69"}, {"1/2", ".95"}, {"3/4", "1.39"}, {"1", "1.71"}}) {
        CAPTURE(size);
        const auto apart = tables::head("BS 1083 BSW/BSF", size).head_dia.hi - in(printed);
        CHECK(std::abs(apart.nm()) <= in(".005").nm());
    }
}

TEST_CASE("a collar under a button head is as a stainless supplier lists it") {
    // Page "cabeza abombada con hexágono interior y collar" of a supplier: collar e, height k.
    struct Collar {
        const char* size;
        const char* dia;
        const char* height;
    };
    for (const auto& row : std::initializer_list<Collar>{{"M3", "6.9", "1.65"},
                                                         {"M4", "9.4", "2.2"},
                                                         {"M5", "11.8", "2.75"},
                                                         {"M6", "13.6", "3.3"},
                                                         {"M8", "17.8", "4.4"},
                                                         {"M10", "21.9", "5.5"}}) {
        CAPTURE(row.size);
        const auto head = tables::head("ISO 7380-2", row.size);
        CHECK(head.head_dia.hi == mm(row.dia));
        CHECK(head.head_height_max == mm(row.height));
        CHECK(head.head_dia.hi > tables::head("ISO 7380-1", row.size).head_dia.hi);
        CHECK(head.head_height_max == tables::head("ISO 7380-1", row.size).head_height_max);
    }
}

TEST_CASE("hexalobular heads are those of the screws with the other drive") {
    // ISO 14583 has the heads of ISO 7045, ISO 14579 those of ISO 4762.
    for (const auto& head : of_series("ISO 14583")) {
        const auto other = tables::head("ISO 7045", head.size.text);
        CHECK(head.head_dia == other.head_dia);
        CHECK(head.head_height_max == other.head_height_max);
    }
    for (const auto* size : {"M2", "M3", "M5", "M8", "M12", "M14", "M20"})
        CHECK(tables::head("ISO 14579", size).head_dia == tables::head("ISO 4762", size).head_dia);
    CHECK(tables::head("ISO 14579", "M6").drive_size == "30");
}

TEST_CASE("metric socket heads between the sizes of ISO 4762 are those of a supplier's table") {
    // "Socket head cap screws (ISO 4762 / DIN 912)", a hardware site: head, key.
    struct Socket {
        const char* size;
        const char* dia;
        const char* key;
    };
    for (const auto& row : std::initializer_list<Socket>{
             {"M18", "27", "14 mm"}, {"M22", "33", "17 mm"}, {"M27", "40", "19 mm"}}) {
        CAPTURE(row.size);
        const auto head = tables::head("JIS B 1176", row.size);
        CHECK(head.head_dia.lo + head.head_dia.hi == mm(row.dia) * 2);
        CHECK(head.drive_size == row.key);
    }
    // Above, the head is one and a half times the screw, to half a millimetre.
    for (const auto* size : {"M39", "M45", "M52"}) {
        const auto head = tables::head("JIS B 1176", size);
        const auto apart = head.size.diameter * 3 - (head.head_dia.lo + head.head_dia.hi);
        CHECK(std::abs(apart.nm()) <= mm("1").nm());
    }
}

TEST_CASE("flanges are over their hexagon, the heavy ones over the small ones") {
    for (const auto* series : {"EN 1665", "EN 1662", "ASME B18.2.1 hex flange"})
        for (const auto& head : of_series(series))
            CHECK(head.head_dia.hi.nm() * 1000 > flats(head).nm() * 1155);
    for (const auto& head : of_series("EN 1662"))
        CHECK(head.head_dia.hi < tables::head("EN 1665", head.size.text).head_dia.hi);
    // Foreword of DIN EN 1665:1998: M10 has 16 mm across flats, where ISO has 15.
    CHECK(tables::head("EN 1665", "M10").drive_size == "16 mm");
    // From 5/16 up an inch flange screw has the hexagon of a cap screw (ASME B18.2.1).
    for (const auto* size : {"5/16", "3/8", "7/16", "1/2", "5/8", "3/4"})
        CHECK(tables::head("ASME B18.2.1 hex flange", size).drive_size ==
              tables::head("ASME B18.2.1 hex cap", size).drive_size);
}

TEST_CASE("shoulder screws of the trade are as high as a supplier lists them") {
    // "Hex socket head shoulder bolts, ISO 7379" of a Swedish supplier: shoulder and k max; 6 and
    // 12 are marked there as not to the standard.
    for (const auto& [size, height] :
         std::initializer_list<Figure>{{"M6", "4.5"}, {"M12", "9"}, {"M24", "16"}}) {
        CAPTURE(size);
        CHECK(tables::head("trade shoulder", size).head_height_max == mm(height));
    }
    CHECK(tables::head("trade shoulder", "M12").thread == "M10");
}

TEST_CASE("a fine tap drill is over the minor diameter of its thread") {
    // Basic minor diameters, a tap maker's catalogue 2016 to 2017, page 795 (ISO 724).
    struct Minor {
        const char* size;
        const char* pitch;
        const char* minor;
    };
    for (const auto& row : std::initializer_list<Minor>{{"M5", "0.5", "4.459"},
                                                        {"M6", "0.75", "5.188"},
                                                        {"M8", "1", "6.917"},
                                                        {"M8", "0.75", "7.188"},
                                                        {"M10", "1.25", "8.647"},
                                                        {"M10", "1", "8.917"}}) {
        CAPTURE(row.size);
        CAPTURE(row.pitch);
        const auto tap = tables::tap_drill(row.size, row.pitch);
        CHECK(tap.thread == "ISO metric fine");
        CHECK(tap.diameter > mm(row.minor));
        CHECK(tap.diameter <= mm(row.minor) + mm("0.2"));
    }
}

TEST_CASE("drilled holes have limits from 1/16 to 2 in, as AND10387 has them") {
    // "Machinist drilled hole tolerance capabilities chart per AND10387", an engineering site.
    struct Band {
        const char* above;
        const char* upto;
        const char* plus;
    };
    const std::initializer_list<Band> bands{{".0135", ".125", ".004"}, {".125", ".250", ".005"},
                                            {".250", ".500", ".006"},  {".500", ".750", ".008"},
                                            {".750", "1", ".010"},     {"1", "2", ".012"}};
    SQLite::Statement query(tables::reference().database(), R"(
        SELECT above_nm, upto_nm, plus_nm, minus_nm FROM drill_limit
        WHERE kind = 'drilled hole' ORDER BY upto_nm)");
    for (const auto& band : bands) {
        CAPTURE(band.upto);
        REQUIRE(query.executeStep());
        CHECK(query.getColumn(0).getInt64() == in(band.above).nm());
        CHECK(query.getColumn(1).getInt64() == in(band.upto).nm());
        CHECK(query.getColumn(2).getInt64() == in(band.plus).nm());
        CHECK(query.getColumn(3).getInt64() == in(".001").nm());
    }
    CHECK(!query.executeStep());
}

TEST_CASE("the appendix goes on above 1-1/2 as it does below") {
    // From 1 in up its counterbore is 1/8 over the head, its holes 1/32 and 1/16 over the screw
    // (1/64 and 1/32 at 1 in).
    for (const auto* size : {"1-1/4", "1-1/2", "1-3/4", "2"}) {
        CAPTURE(size);
        const auto row = tables::counterbore("ASME B18.3 appendix", size);
        CHECK(row.diameter == tables::head("ASME B18.3 1960", size).head_dia.hi + in(".125"));
    }
}

TEST_CASE("the handbook's tool is found for every fillister head that it is made for") {
    struct Tool {
        const char* series;
        const char* size;
    };
    for (const auto& [series, size] :
         std::initializer_list<Tool>{{"ASME B18.6.3 fillister", "#0"},
                                     {"ASME B18.6.3 fillister", "#8"},
                                     {"ASME B18.6.3 fillister", "#12"},
                                     {"ASME B18.6.2 fillister cap", "1/4"},
                                     {"ASME B18.6.2 fillister cap", "3/8"},
                                     {"ASME B18.6.2 fillister cap", "1/2"}}) {
        CAPTURE(size);
        SQLite::Statement query(tables::reference().database(), R"(
            SELECT count(*) FROM counterbore
            JOIN counterbore_rule ON counterbore_rule.name = counterbore.rule
            JOIN counterbore_head ON counterbore_head.rule = counterbore.rule
            JOIN tool ON tool.size = counterbore.size AND cut_dia_nm = counterbore.diameter_nm
            WHERE counterbore_rule.kind = 'tool' AND counterbore_head.series = ?
              AND counterbore.size = ? AND tool.hole = 'nominal')");
        query.bind(1, series);
        query.bind(2, size);
        REQUIRE(query.executeStep());
        CHECK(query.getColumn(0).getInt() == 1);
    }
}
