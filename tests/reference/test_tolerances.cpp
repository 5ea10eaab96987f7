// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Limits of metric tools and pilots, worked out again from ISO 286: tolerance grades of ISO 286-1
// Table 1, fundamental deviations z, e and f (micrometres), written down here from there.
#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>

#include <cstdint>
#include <string>
#include <vector>

#include "tables.hpp"

namespace {

struct Step {
    double to; // mm, included
    std::int64_t micrometres;
};

std::int64_t at(double mm, const std::vector<Step>& steps) {
    for (const auto& step : steps)
        if (mm <= step.to)
            return step.micrometres;
    return 0;
}

const std::vector<Step> k_it7{{3, 10}, {6, 12}, {10, 15}, {18, 18}, {30, 21}, {50, 25}, {80, 30}};
const std::vector<Step> k_it8{{3, 14}, {6, 18}, {10, 22}, {18, 27}, {30, 33}, {50, 39}, {80, 46}};
const std::vector<Step> k_it9{{3, 25}, {6, 30}, {10, 36}, {18, 43}, {30, 52}, {50, 62}, {80, 74}};
const std::vector<Step> k_z{{3, 26},  {6, 35},   {10, 42},  {14, 50},  {18, 60}, {24, 73},
                            {30, 88}, {40, 112}, {50, 136}, {65, 172}, {80, 210}};
const std::vector<Step> k_e{{3, 14}, {6, 20}, {10, 25}, {18, 32}, {30, 40}, {50, 50}, {80, 60}};
const std::vector<Step> k_f{{3, 6}, {6, 10}, {10, 13}, {18, 16}, {30, 20}, {50, 25}, {80, 30}};

// Nominal, least and most in nanometres, of rows that have all three.
template <typename Check>
int each_row(const std::string& columns, const std::string& table, Check check) {
    SQLite::Statement query(tables::reference().database(), "SELECT " + columns + " FROM " + table);
    int seen = 0;
    while (query.executeStep()) {
        if (query.isColumnNull(0) || query.isColumnNull(1) || query.isColumnNull(2))
            continue;
        const auto nominal = query.getColumn(0).getInt64();
        CAPTURE(nominal);
        check(nominal, query.getColumn(1).getInt64(), query.getColumn(2).getInt64());
        ++seen;
    }
    return seen;
}

double in_mm(std::int64_t nm) {
    return static_cast<double>(nm) / 1e6;
}

void check_e8(std::int64_t nominal, std::int64_t least, std::int64_t most) {
    CHECK(most == nominal - 1000 * at(in_mm(nominal), k_e));
    CHECK(least == most - 1000 * at(in_mm(nominal), k_it8));
}

} // namespace

TEST_CASE("metric cutters are z9") {
    const int seen = each_row("cut_dia_nm, cut_min_nm, cut_max_nm", "tool",
                              [](std::int64_t nominal, std::int64_t least, std::int64_t most) {
                                  CHECK(least == nominal + 1000 * at(in_mm(nominal), k_z));
                                  CHECK(most == least + 1000 * at(in_mm(nominal), k_it9));
                              });
    CHECK(seen == 9 + 24 + 13);
}

TEST_CASE("metric pilots are e8 in the hole") {
    CHECK(each_row("pilot_dia_nm, pilot_min_nm, pilot_max_nm", "tool", check_e8) == 24);
    CHECK(each_row("pilot_dia_nm, pilot_min_nm, pilot_max_nm", "pilot", check_e8) == 42);
}

TEST_CASE("metric pilot shanks are f7") {
    const int seen = each_row("shank_dia_nm, shank_min_nm, shank_max_nm", "pilot",
                              [](std::int64_t nominal, std::int64_t least, std::int64_t most) {
                                  CHECK(most == nominal - 1000 * at(in_mm(nominal), k_f));
                                  CHECK(least == most - 1000 * at(in_mm(nominal), k_it7));
                              });
    CHECK(seen == 49);
}

TEST_CASE("detachable pilots fit the bore of the cutter they are for") {
    SQLite::Statement query(tables::reference().database(), R"(
        SELECT count(*), sum(pilot.shank_dia_nm = tool.bore_nm AND pilot.set_screw = tool.set_screw
                             AND pilot.pilot_dia_nm BETWEEN tool.pilot_from_nm AND tool.pilot_to_nm)
        FROM pilot JOIN tool ON tool.standard = 'DIN 375' AND tool.cut_dia_nm = pilot.cut_dia_nm
        WHERE pilot.standard = 'DIN 1868')");
    REQUIRE(query.executeStep());
    CHECK(query.getColumn(0).getInt() == 42);
    CHECK(query.getColumn(1).getInt() == 42);
}
