// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// How many rows each series, rule and standard has: none is lost or doubled unnoticed. The numbers
// are those of the published tables and charts as they were gathered.
#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>

#include <map>
#include <string>

#include "tables.hpp"

namespace {

using Counts = std::map<std::string, int>;

Counts counted(const std::string& query_text) {
    SQLite::Statement query(tables::reference().database(), query_text);
    Counts counts;
    while (query.executeStep())
        counts[query.getColumn(0)] = query.getColumn(1);
    return counts;
}

} // namespace

TEST_CASE("every head of every series is there") {
    const Counts wanted{
        {"ASME B18.3 1960", 34},
        {"ASA B18.3 1936", 22},
        {"BS 2470", 18},
        {"BSW/BSF socket", 10},
        {"BA socket", 1},
        {"ASME B18.6.3 fillister", 18},
        {"ASME B18.6.2 fillister cap", 10},
        {"ASME B18.3 low head", 11},
        {"ASME B18.3 button", 16},
        {"ASME B18.3 shoulder", 14},
        {"ASME B18.6.3 pan slotted", 18},
        {"ASME B18.6.3 pan recessed", 15},
        {"ASME B18.2.1 hex cap", 18},
        {"ISO 4762", 20},
        {"DIN 912", 4},
        {"DIN 7984", 13},
        {"DIN 6912", 16},
        {"ISO 14580", 9},
        {"ISO 1207", 10},
        {"DIN 84", 14},
        {"ISO 1580", 10},
        {"ISO 7045", 10},
        {"DIN 7985", 10},
        {"ISO 7380-1", 8},
        {"ISO 4014", 29},
        {"ISO 4017", 29},
        {"DIN 931/933", 4},
        {"ISO 7379", 7},
        {"JIS B 1176", 7},
        {"ISO 14579", 13},
        {"ISO 14583", 9},
        {"ISO 7380-2", 8},
        {"EN 1665", 8},
        {"EN 1662", 7},
        {"ASME B18.2.1 hex flange", 7},
        {"BS 1083 BSW/BSF", 16},
        {"trade shoulder", 3},
    };
    CHECK(counted("SELECT series, count(*) FROM head GROUP BY series") == wanted);
}

TEST_CASE("every washer is there") {
    const Counts wanted{
        {"plain-type-a", 8},
        {"plain-type-a-narrow", 14},
        {"plain-type-a-wide", 16},
        {"plain-sae", 20},
        {"lock-spring-regular", 24},
        {"lock-spring-high-collar", 19},
        {"ISO 7089", 29},
        {"ISO 7090", 23},
        {"ISO 7092", 21},
        {"DIN 433", 22},
    };
    CHECK(counted("SELECT series, count(*) FROM washer GROUP BY series") == wanted);
}

TEST_CASE("every clearance hole is there") {
    const Counts wanted{
        {"ASME B18.2.8", 22}, {"ISO 273", 35}, {"shop chart", 23}, {"DIN 69 old medium", 3}};
    CHECK(counted("SELECT system, count(*) FROM clearance GROUP BY system") == wanted);
}

TEST_CASE("every counterbore of every rule is there") {
    const Counts wanted{
        {"ASME B18.3 appendix", 22},
        {"head and 1/64 or 1/32", 22},
        {"Machinery's Handbook integral pilot", 10},
        {"Machinery's Handbook, cap heads", 3},
        {"head and 1/64, to 1/32", 8},
        {"head and 1/32", 10},
        {"corners and 1/16", 14},
        {"socket wrench and 1/16", 14},
        {"narrow washer and 1/32", 14},
        {"wide washer and 1/32", 14},
        {"DIN 974-1 series 1", 29},
        {"DIN 974-1 series 2", 10},
        {"DIN 974-1 series 3", 22},
        {"DIN 974-1 series 4", 23},
        {"DIN 974-1 series 5", 24},
        {"DIN 974-1 series 6", 18},
        {"DIN 974-2 series 1", 20},
        {"DIN 974-2 series 2", 20},
        {"DIN 974-2 series 3", 20},
        {"DIN 74 form H", 21},
        {"DIN 74 form J", 4},
        {"DIN 74 form K", 15},
        {"ASME B18.3.1M", 18},
        {"GB/T 152.3", 16},
        {"JIS practice", 15},
    };
    CHECK(counted("SELECT rule, count(*) FROM counterbore GROUP BY rule") == wanted);
    CHECK(counted("SELECT rule, count(*) FROM depth_addition GROUP BY rule") ==
          Counts{{"DIN 974-1", 5}, {"machine builder's chart", 6}});
}

TEST_CASE("every thread is there") {
    const Counts wanted{{"UNC", 23},
                        {"UNF", 24},
                        {"UNS", 1},
                        {"UNEF", 19},
                        {"BSW", 20},
                        {"BSF", 18},
                        {"BA", 17},
                        {"ISO metric coarse", 35},
                        {"ISO metric fine", 31}};
    CHECK(counted("SELECT thread, count(*) FROM thread GROUP BY thread") == wanted);
}

TEST_CASE("every drill of the indexes is there") {
    const Counts wanted{{"fraction", 96}, {"number", 80}, {"letter", 26}, {"metric", 207}};
    CHECK(counted("SELECT kind, count(*) FROM drill WHERE in_index GROUP BY kind") == wanted);
}

TEST_CASE("every published tool is there, a row for each of its pilots") {
    const Counts wanted{
        {"Machinery's Handbook integral pilot", 35}, // 15 tools; the +1/32 pilot from 1/4 up
        {"removable pilot, straight shank", 5},
        {"interchangeable cutter and guide, holder no. 1", 1},
        {"interchangeable cutter and guide, holder no. 2", 1},
        {"interchangeable cutter and guide, holder no. 3", 1},
        {"interchangeable cutter and guide, holder no. 4", 1},
        {"DIN 373 pattern", 8},
        {"ISO 4206", 6},
        {"ISO 4207", 7},
        {"GOST 26258", 9},
        {"DIN 373", 24},
        {"DIN 375", 13},
        {"DIN 1866", 1},
        {"DIN 1867", 1},
    };
    CHECK(counted("SELECT standard, count(*) FROM tool GROUP BY standard") == wanted);
}

TEST_CASE("every published pilot is there") {
    const Counts wanted{
        {"removable, straight pin", 6},
        {"removable, ball or spring detent", 1},
        {"removable, cross pin", 1},
        {"removable, threaded shank", 1},
        {"sleeve pilots on a fixed pin", 1},
        {"through draw rod", 1},
        {"interchangeable cutter and guide, holder no. 1", 1},
        {"interchangeable cutter and guide, holder no. 2", 1},
        {"interchangeable cutter and guide, holder no. 3", 1},
        {"interchangeable cutter and guide, holder no. 4", 1},
        {"geometry: pilot larger than shank", 1},
        {"geometry: pilot smaller than shank", 1},
        {"geometry: body wall over the pilot bore", 1},
        {"ISO 4208", 7},
        {"DIN 1868", 42},
    };
    CHECK(counted("SELECT standard, count(*) FROM pilot GROUP BY standard") == wanted);
}

TEST_CASE("every material, feed, oversize, drill limit, torque, grade and set screw is there") {
    CHECK(counted("SELECT 'material', count(*) FROM material") == Counts{{"material", 59}});
    CHECK(counted("SELECT 'restriction', count(*) FROM restriction") ==
          Counts{{"restriction", 27}});
    CHECK(counted("SELECT class, count(*) FROM feed GROUP BY class") ==
          Counts{{"free", 4}, {"general", 4}, {"tough", 4}});
    CHECK(counted("SELECT 'oversize', count(*) FROM oversize") == Counts{{"oversize", 6}});
    CHECK(counted("SELECT kind, count(*) FROM drill_limit GROUP BY kind") ==
          Counts{{"drilled hole", 6}, {"new drill", 5}});
    CHECK(counted("SELECT chart, count(*) FROM torque GROUP BY chart") ==
          Counts{{"ASTM A574", 13}, {"second chart", 9}});
    CHECK(counted("SELECT 'factors', count(*) FROM nut_factor") == Counts{{"factors", 6}});
    CHECK(counted("SELECT unit, count(*) FROM set_screw GROUP BY unit") ==
          Counts{{"in", 14}, {"mm", 12}});
    CHECK(counted("SELECT standard, count(*) FROM grade GROUP BY standard") ==
          Counts{{"ASTM A574", 2},
                 {"SAE J429", 5},
                 {"ISO 898-1", 7},
                 {"ISO 3506-1", 14},
                 {"ASTM F593", 2}});
}

TEST_CASE("the interface gives every row of the tables that it shows") {
    int heads = 0;
    int washers = 0;
    int clearances = 0;
    int tap_drills = 0;
    for (const auto& size : tables::sizes()) {
        heads += static_cast<int>(tables::reference().heads(size.text).size());
        washers += static_cast<int>(tables::reference().washers(size.text).size());
        clearances += static_cast<int>(tables::reference().clearances(size.text).size());
        tap_drills += static_cast<int>(tables::reference().tap_drills(size.text).size());
    }
    CHECK(heads == 476);
    CHECK(washers == 196);
    CHECK(clearances == 83);
    CHECK(tap_drills == 188);
}
