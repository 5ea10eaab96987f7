// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include <string>
#include <utility>

#include "present/figure_json.hpp"
#include "present/figure_text.hpp"

using job::Kind;
using job::Measure;
using length::Unit;
using namespace present;

namespace {

struct Printed {
    Kind kind;
    double lo;
    double hi;
    std::string inch;
    std::string metric;
};

} // namespace

TEST_CASE("a measure is printed in the shop's unit") {
    // 1 ft-lb = 1.355818 N m, 1 lbf = 4.448222 N, 1 psi = 6894.757 Pa: NIST SP 811, appendix B.
    const Printed rows[] = {
        {Kind::angle, 10, 10, "10 deg", "10 deg"},
        {Kind::angle, 9.87654, 10.126, "9.88 to 10.1 deg", "9.88 to 10.1 deg"},
        {Kind::area, 645.16, 645.16, "1 sq in", "645 mm2"},
        {Kind::area, 32.258, 64.516, "0.05 to 0.1 sq in", "32.3 to 64.5 mm2"},
        {Kind::surface_speed, 24.384, 24.384, "80 ft/min", "24.4 m/min"},
        {Kind::rotation, 611.154, 611.154, "611.2 rpm", "611.2 rpm"},
        {Kind::rotation, 1725, 1725, "1725 rpm", "1725 rpm"},
        {Kind::rotation, 12345.6, 12345.6, "12350 rpm", "12350 rpm"},
        {Kind::torque, 1.355818, 1.355818, "12 in-lb", "1.36 N m"},
        {Kind::torque, 13.558, 13.558, "120 in-lb", "13.6 N m"},
        {Kind::torque, 13.55819, 13.55819, "10 ft-lb", "13.6 N m"},
        {Kind::torque, 6.77909, 27.11636, "5 to 20 ft-lb", "6.78 to 27.1 N m"},
        {Kind::force, 4448.222, 4448.222, "1000 lbf", "4450 N"},
        {Kind::force, 44482.22, 44482.22, "10000 lbf", "44.5 kN"},
        {Kind::force, 8896, 10008, "2000 to 2250 lbf", "8.9 to 10 kN"},
        {Kind::pressure, 206.8427, 206.8427, "30000 psi", "207 MPa"},
        {Kind::time, 0.5, 45, "0.5 to 45 s", "0.5 to 45 s"},
        {Kind::time, 119.96, 120.4, "120 s to 2 min", "120 s to 2 min"},
        {Kind::time, 125, 125.2, "2 min 5 s", "2 min 5 s"},
        {Kind::time, 119.6, 119.6, "120 s", "120 s"},
        {Kind::number, 0.79999, 0.80001, "0.8", "0.8"},
        {Kind::number, 0, 1.1547005, "0 to 1.155", "0 to 1.155"},
        {Kind::number, -0.00012346, 0, "-0.0001235 to 0", "-0.0001235 to 0"},
    };
    for (const auto& row : rows) {
        const Measure measure{row.kind, row.lo, row.hi};
        CHECK(figure_value(measure, Unit::inch) == row.inch);
        CHECK(figure_value(measure, Unit::millimetre) == row.metric);
    }
}

TEST_CASE("lengths are printed as the shop writes them") {
    const length::Range known{length::inches_e5(49'996), length::inches_e5(50'021)};
    CHECK(figure_value(known, Unit::inch) == ".500 to .5002 in");
    CHECK(figure_value(known, Unit::millimetre) == "12.699 to 12.705 mm");
    CHECK(figure_value(length::exactly(length::sixty_fourths(1)), Unit::inch) == ".0156 in");
}

TEST_CASE("a sheet's figures are written as a machinist writes them") {
    const auto text = [](job::Value value, job::Grain grain, Unit unit) {
        return sheet_value({"x", std::move(value), "", {}, "", grain}, unit);
    };
    const length::Range stop = length::exactly(length::inches_e5(32'760));
    CHECK(text(stop, job::Grain::stop, Unit::inch) == ".328 in (21/64)");
    CHECK(text(stop, job::Grain::stop, Unit::millimetre) == "8.3 mm");
    const length::Range clearance{length::inches_e5(410), length::inches_e5(880)};
    CHECK(text(clearance, job::Grain::close, Unit::inch) == ".004 to .009 in");
    CHECK(text(clearance, job::Grain::close, Unit::millimetre) == "0.1 to 0.22 mm");
    const auto measure = [&](Kind kind, double lo, double hi, Unit unit = Unit::inch) {
        return text(Measure{kind, lo, hi}, job::Grain::usual, unit);
    };
    CHECK(measure(Kind::rotation, 358.8, 578.5) == "360 to 580 rpm");
    CHECK(measure(Kind::rotation, 1164, 1164) == "1200 rpm");
    CHECK(text(Measure{Kind::rotation, 1725, 1725}, job::Grain::set, Unit::inch) == "1725 rpm");
    CHECK(measure(Kind::time, 574, 1766) == "about 20 min");
    CHECK(measure(Kind::time, 300, 400) == "about 6 min");
    CHECK(measure(Kind::time, 8'000, 10'000) == "about 2-1/2 h");
    CHECK(measure(Kind::torque, 35 * 1.355818, 35 * 1.355818) == "35 ft-lb");
    CHECK(measure(Kind::torque, 203.4, 203.4, Unit::millimetre) == "203 N m");
    CHECK(measure(Kind::surface_speed, 53.34, 85.344) == "175 to 280 ft/min");
}

TEST_CASE("a range that prints alike is one number") {
    const auto half = length::sixty_fourths(32);
    CHECK(figure_value(length::Range{half, half + length::Length::from_nm(100)}, Unit::inch) ==
          ".500 in");
}

TEST_CASE("a figure is explained by its formula, inputs and source") {
    const job::Figure travel{
        "stop travel",
        length::exactly(length::thousandths(359)),
        "head height + below the surface",
        {{"head height", length::exactly(length::thousandths(343))},
         {"below the surface", length::exactly(length::thousandths(16))}},
        "a long source that has to go on to a second line",
    };
    CHECK(explain_figure(travel, Unit::inch, 44) == "stop travel: .359 in\n"
                                                    "  formula head height + below the surface\n"
                                                    "  with    head height: .343 in\n"
                                                    "          below the surface: .016 in\n"
                                                    "  source  a long source that has to go on to\n"
                                                    "          a second line\n");
    CHECK(figure_lines({travel, {"drill", std::string("21/64\x1b"), "", {}, ""}}, Unit::inch, 80) ==
          "stop travel  .359 in\n"
          "drill        21/64\\x1b\n");
    CHECK(explain_figure({"drill", std::string("21/64"), "", {}, "common practice"}, Unit::inch,
                         80) == "drill: 21/64\n"
                                "  source  common practice\n");
}

TEST_CASE("the key of a figure's value says its unit") {
    const std::pair<Kind, const char*> keys[] = {
        {Kind::angle, "value_deg"},
        {Kind::area, "value_mm2"},
        {Kind::surface_speed, "value_m_per_min"},
        {Kind::rotation, "value_rpm"},
        {Kind::torque, "value_n_m"},
        {Kind::force, "value_n"},
        {Kind::pressure, "value_mpa"},
        {Kind::time, "value_s"},
        {Kind::number, "value"},
    };
    for (const auto& [kind, key] : keys) {
        const Json json = figure_json({"x", Measure{kind, 1.5, 2}, "", {}, ""});
        CHECK(json.at(key).dump() == "[1.5,2.0]");
    }
}

TEST_CASE("a figure in JSON carries everything") {
    const job::Figure travel{
        "stop travel",
        length::Range{length::millimetres(8), length::millimetres(9)},
        "head height",
        {{"head height", length::exactly(length::millimetres(8))}, {"drill", std::string("21/64")}},
        "common practice"};
    CHECK(figure_json(travel).dump() ==
          R"({"name":"stop travel","value_mm":[8.0,9.0],"formula":"head height",)"
          R"("inputs":[{"name":"head height","value_mm":[8.0,8.0]},)"
          R"({"name":"drill","value":"21/64"}],"source":"common practice"})");
}
