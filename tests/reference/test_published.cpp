// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Values that anyone can look up, held against the tables. Each group names where it is printed;
// the figures were written down here from there, not copied from the CSV files.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include "length/print.hpp"
#include "tables.hpp"

namespace doctest {
template <>
struct StringMaker<length::Length> {
    static String convert(length::Length value) {
        return fmt::format("{} in", length::to_text(value, length::Unit::inch)).c_str();
    }
};
} // namespace doctest

using tables::in;
using tables::mm;

namespace {

struct PublishedHead {
    const char* size;
    const char* diameter;
    const char* height;
    const char* key;
};

struct Figure {
    const char* name;
    const char* value;
};

void check_heads(const char* series, length::Length (*read)(std::string_view),
                 std::initializer_list<PublishedHead> heads) {
    for (const auto& wanted : heads) {
        CAPTURE(series);
        CAPTURE(wanted.size);
        const auto head = tables::head(series, wanted.size);
        const bool knurled = head.series == "ISO 4762" || head.series == "ISO 7379";
        if (knurled) // the plain head is in the middle of least and knurled
            CHECK(head.head_dia.lo + head.head_dia.hi == read(wanted.diameter) * 2);
        else
            CHECK(head.head_dia.hi == read(wanted.diameter));
        CHECK(head.head_height_max == read(wanted.height));
        CHECK(head.drive_size == wanted.key);
    }
}

} // namespace

TEST_CASE("socket heads of the 1960 series are those of ASME B18.3") {
    // Machinery's Handbook 29th ed., hexagon socket head cap screws (1960 series), maxima.
    check_heads("ASME B18.3 1960", in,
                {{"#4", ".183", ".112", "3/32"},
                 {"#10", ".312", ".190", "5/32"},
                 {"1/4", ".375", ".250", "3/16"},
                 {"5/16", ".469", ".312", "1/4"},
                 {"3/8", ".562", ".375", "5/16"},
                 {"7/16", ".656", ".438", "3/8"},
                 {"1/2", ".750", ".500", "3/8"},
                 {"5/8", ".938", ".625", "1/2"},
                 {"3/4", "1.125", ".750", "5/8"},
                 {"1", "1.500", "1.000", "3/4"}});
}

TEST_CASE("socket heads of the older patterns are those of BS 2470") {
    // BS 2470:1973, unified threads; the 1936 American pattern has the same heads and keys.
    for (const auto* series : {"BS 2470", "ASA B18.3 1936"})
        check_heads(series, in,
                    {{"#8", ".270", ".164", "1/8"},
                     {"1/4", ".375", ".250", "3/16"},
                     {"5/16", ".437", ".312", "7/32"},
                     {"3/8", ".562", ".375", "5/16"},
                     {"7/16", ".625", ".437", "5/16"},
                     {"1/2", ".750", ".500", "3/8"},
                     {"5/8", ".875", ".625", "1/2"},
                     {"3/4", "1.000", ".750", "9/16"},
                     {"1", "1.312", "1.000", "5/8"}});
}

TEST_CASE("the older and newer patterns differ at 5/16 and agree at 3/8") {
    CHECK(tables::head("ASA B18.3 1936", "5/16").head_dia.hi == in(".437"));
    CHECK(tables::head("ASME B18.3 1960", "5/16").head_dia.hi == in(".469"));
    CHECK(tables::head("ASA B18.3 1936", "3/8").head_dia.hi ==
          tables::head("ASME B18.3 1960", "3/8").head_dia.hi);
}

TEST_CASE("low, button and shoulder heads are those of ASME B18.3") {
    // Machinery's Handbook 29th ed., tables of ASME B18.3.
    check_heads("ASME B18.3 low head", in,
                {{"1/4", ".375", ".127", "1/8"}, {"3/8", ".562", ".192", "3/16"}});
    check_heads("ASME B18.3 button", in,
                {{"#10", ".361", ".101", "1/8"}, {"1/4", ".437", ".132", "5/32"}});
    check_heads("ASME B18.3 shoulder", in,
                {{"1/4", ".375", ".188", "1/8"}, {"1/2", ".750", ".312", "1/4"}});
    CHECK(tables::head("ASME B18.3 shoulder", "1/4").thread == "#10");
    CHECK(tables::head("ASME B18.3 shoulder", "1/4").screw_dia == length::exactly(in(".248")));
}

TEST_CASE("fillister heads are those of ASME B18.6.3 and B18.6.2") {
    // Machinery's Handbook 29th ed.; heights are over the oval top. Drive size is the slot.
    check_heads("ASME B18.6.3 fillister", in,
                {{"#8", ".270", ".156", ".054"}, {"1/4", ".414", ".237", ".075"}});
    check_heads("ASME B18.6.2 fillister cap", in,
                {{"1/4", ".375", ".216", ".075"}, {"3/8", ".562", ".314", ".094"}});
}

TEST_CASE("hexagon heads are those of ASME B18.2.1") {
    // Machinery's Handbook 29th ed., hex cap screws: corners, height, flats.
    check_heads("ASME B18.2.1 hex cap", in,
                {{"1/4", ".505", ".163", "7/16"},
                 {"5/16", ".577", ".211", "1/2"},
                 {"1/2", ".866", ".323", "3/4"},
                 {"1", "1.732", ".627", "1-1/2"}});
}

TEST_CASE("metric socket heads are those of ISO 4762") {
    // ISO 4762:2004 Table 1; the head's limit is that of knurled heads.
    check_heads("ISO 4762", mm,
                {{"M3", "5.5", "3", "2.5 mm"},
                 {"M4", "7", "4", "3 mm"},
                 {"M5", "8.5", "5", "4 mm"},
                 {"M6", "10", "6", "5 mm"},
                 {"M8", "13", "8", "6 mm"},
                 {"M10", "16", "10", "8 mm"},
                 {"M12", "18", "12", "10 mm"},
                 {"M16", "24", "16", "14 mm"},
                 {"M20", "30", "20", "17 mm"},
                 {"M24", "36", "24", "19 mm"}});
    CHECK(tables::head("ISO 4762", "M6").head_dia == length::Range{mm("9.78"), mm("10.22")});
    CHECK(tables::head("ISO 4762", "M8").head_dia == length::Range{mm("12.73"), mm("13.27")});
    CHECK(tables::head("ISO 4762", "M8").fillet_dia_max == mm("9.2"));
}

TEST_CASE("other metric heads are those of their standards") {
    check_heads("ISO 1207", mm, {{"M3", "5.5", "2", "0.8 mm"}, {"M5", "8.5", "3.3", "1.2 mm"}});
    check_heads("ISO 7380-1", mm, {{"M6", "10.5", "3.3", "4 mm"}, {"M8", "14", "4.4", "5 mm"}});
    check_heads("DIN 7984", mm, {{"M8", "13", "5", "5 mm"}, {"M12", "18", "7", "8 mm"}});
    check_heads("DIN 6912", mm, {{"M8", "13", "5", "6 mm"}, {"M12", "18", "7.5", "10 mm"}});
    check_heads("ISO 7045", mm, {{"M4", "8", "3.1", "2"}, {"M6", "12", "4.6", "3"}});
    check_heads("ISO 1580", mm, {{"M4", "8", "2.4", "1.2 mm"}, {"M6", "12", "3.6", "1.6 mm"}});
    // Across flats of ISO 272 and of DIN 931.
    for (const auto* series : {"ISO 4014", "ISO 4017"}) {
        CHECK(tables::head(series, "M8").drive_size == "13 mm");
        CHECK(tables::head(series, "M10").drive_size == "16 mm");
        CHECK(tables::head(series, "M12").drive_size == "18 mm");
    }
    CHECK(tables::head("DIN 931/933", "M10").drive_size == "17 mm");
    CHECK(tables::head("DIN 931/933", "M12").drive_size == "19 mm");
    // ISO 7379: an 8 mm shoulder has an M6 thread and a 13 mm head.
    const auto shoulder = tables::head("ISO 7379", "M8");
    CHECK(shoulder.thread == "M6");
    CHECK(shoulder.pitches == std::vector<std::string>{"1"});
    CHECK(shoulder.head_dia.hi == mm("13.27"));
}

TEST_CASE("clearance holes are those of ASME B18.2.8 and ISO 273") {
    struct Holes {
        const char* size;
        const char* close;
        const char* normal;
        const char* loose;
    };
    const auto check = [](const char* system, std::initializer_list<Holes> rows) {
        for (const auto& wanted : rows) {
            CAPTURE(wanted.size);
            const auto row = tables::clearance(system, wanted.size);
            CHECK(row.close->drill == wanted.close);
            CHECK(row.normal->drill == wanted.normal);
            CHECK(row.loose->drill == wanted.loose);
        }
    };
    // Machinery's Handbook 29th ed., clearance holes to ASME B18.2.8-1999.
    check("ASME B18.2.8", {{"#8", "#15", "#9", "#3"},
                           {"#10", "#5", "#2", "B"},
                           {"1/4", "17/64", "9/32", "19/64"},
                           {"5/16", "21/64", "11/32", "23/64"},
                           {"3/8", "25/64", "13/32", "27/64"},
                           {"1/2", "17/32", "9/16", "39/64"},
                           {"1", "1-1/32", "1-3/32", "1-5/32"}});
    // ISO 273:1979, fine, medium, coarse.
    check("ISO 273", {{"M3", "3.2 mm", "3.4 mm", "3.6 mm"},
                      {"M5", "5.3 mm", "5.5 mm", "5.8 mm"},
                      {"M6", "6.4 mm", "6.6 mm", "7 mm"},
                      {"M8", "8.4 mm", "9 mm", "10 mm"},
                      {"M12", "13 mm", "13.5 mm", "14.5 mm"},
                      {"M24", "25 mm", "26 mm", "28 mm"}});
    CHECK(tables::clearance("ISO 273", "M8").normal->diameter == mm("9"));
    // A chart that hangs in many shops: close and free fit.
    CHECK(tables::clearance("shop chart", "1/4").close->drill == "F");
    CHECK(tables::clearance("shop chart", "1/4").normal->drill == "H");
    CHECK(!tables::clearance("shop chart", "1/4").loose);
}

TEST_CASE("counterbores are those of the ASME B18.3 appendix and DIN 974-1") {
    // Machinery's Handbook 29th ed., drill and counterbore sizes, 1960 series.
    for (const auto& wanted : std::initializer_list<Figure>{{"#10", "3/8"},
                                                            {"1/4", "7/16"},
                                                            {"5/16", "17/32"},
                                                            {"3/8", "5/8"},
                                                            {"1/2", "13/16"},
                                                            {"1", "1-5/8"}}) {
        CAPTURE(wanted.name);
        const auto row = tables::counterbore("ASME B18.3 appendix", wanted.name);
        CHECK(row.diameter == in(wanted.value));
        CHECK(row.name == wanted.value);
        CHECK(row.series == "ASME B18.3 1960");
        CHECK(row.kind == "recommended");
        CHECK(row.origin.confidence == "one source");
    }
    // DIN 974-1:1991, series 1.
    for (const auto& wanted : std::initializer_list<Figure>{{"M3", "6.5"},
                                                            {"M4", "8"},
                                                            {"M5", "10"},
                                                            {"M6", "11"},
                                                            {"M8", "15"},
                                                            {"M10", "18"},
                                                            {"M12", "20"},
                                                            {"M16", "26"},
                                                            {"M20", "33"},
                                                            {"M24", "40"}}) {
        CAPTURE(wanted.name);
        const auto row = tables::counterbore("DIN 974-1 series 1", wanted.name);
        CHECK(row.diameter == mm(wanted.value));
        CHECK(row.kind == "recommended");
    }
    CHECK(tables::counterbore("DIN 974-1 series 1", "M8").depth_addition == mm("0.6"));
    CHECK(tables::counterbore("DIN 74 form K", "M3").diameter == mm("6")); // the older figure
}

TEST_CASE("tap drills are the usual ones") {
    // Machinery's Handbook, tap drills for about 75 % thread; ISO 2306.
    CHECK(tables::tap_drill("#10", "24").drill == "#25");
    CHECK(tables::tap_drill("#10", "32").drill == "#21");
    CHECK(tables::tap_drill("1/4", "20").drill == "#7");
    CHECK(tables::tap_drill("5/16", "18").drill == "F");
    CHECK(tables::tap_drill("3/8", "16").drill == "5/16");
    CHECK(tables::tap_drill("1/2", "13").drill == "27/64");
    CHECK(tables::tap_drill("M5", "0.8").diameter == mm("4.2"));
    CHECK(tables::tap_drill("M8", "1.25").diameter == mm("6.8"));
    CHECK(tables::tap_drill("M12", "1.75").diameter == mm("10.2"));
    CHECK(tables::tap_drill("2BA", "0.81").thread == "BA");
}

TEST_CASE("number and letter drills are those of the handbook") {
    // Machinery's Handbook, diameters of number and letter size drills.
    for (const auto& wanted : std::initializer_list<Figure>{
             {"#80", ".0135"}, {"#60", ".040"}, {"#50", ".070"},  {"#43", ".089"}, {"#36", ".1065"},
             {"#30", ".1285"}, {"#29", ".136"}, {"#25", ".1495"}, {"#21", ".159"}, {"#10", ".1935"},
             {"#7", ".201"},   {"#3", ".213"},  {"#1", ".228"},   {"A", ".234"},   {"E", ".250"},
             {"F", ".257"},    {"I", ".272"},   {"Q", ".332"},    {"U", ".368"},   {"Z", ".413"}}) {
        CAPTURE(wanted.name);
        CHECK(tables::drill(wanted.name).diameter == in(wanted.value));
    }
}

TEST_CASE("washers are those of their standards") {
    // ISO 7089:2000; SAE washers to ASME B18.21.1 with the plus tolerance outside.
    CHECK(tables::washer("ISO 7089", "M8").inside_dia == mm("8.4"));
    CHECK(tables::washer("ISO 7089", "M8").outside_dia_max == mm("16"));
    CHECK(tables::washer("ISO 7089", "M8").thickness_max == mm("1.8"));
    CHECK(tables::washer("plain-sae", "1/4").inside_dia == in("9/32"));
    CHECK(tables::washer("plain-sae", "1/4").outside_dia_max == in(".640"));
    CHECK(!tables::washer("lock-spring-regular", "1/4").thickness_max);
}

TEST_CASE("oversize is that of the handbook") {
    // Machinery's Handbook, oversize diameters in drilling: average minimum, mean, maximum.
    const auto rows = tables::reference().oversize();
    REQUIRE(rows.size() == 6);
    CHECK(rows.front().drill == in("1/16"));
    CHECK(rows.back().drill == in("1"));
    CHECK(rows[2].drill == in("1/4"));
    CHECK(rows[2].least == in(".0025"));
    CHECK(rows[2].mean == in(".004"));
    CHECK(rows[2].most == in(".0065"));
}

TEST_CASE("what is only known from memory says so") {
    CHECK(tables::head("ASA B18.3 1936", "5/16").origin.confidence == "memory");
    CHECK(tables::head("ASA B18.3 1936", "5/16").origin.source == "ASA B18.3-1947 and 1954");
    CHECK(tables::head("ASME B18.3 1960", "5/16").origin.confidence == "two sources");
    CHECK(tables::head("ISO 1207", "M5").origin.note == "least head and height from memory");
    CHECK(tables::tap_drill("5/8", "11").origin.confidence == "memory");
    CHECK(tables::clearance("shop chart", "1/4").origin.confidence == "chart");
}
