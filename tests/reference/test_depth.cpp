// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The depth that DIN 974-1 adds to the height of the head. No public copy of its depth table was
// found: the totals below are from memory, and what charts print beside the standard's diameters is
// held against them so that each difference is known.
#include <doctest/doctest.h>

#include <initializer_list>

#include "tables.hpp"

using tables::mm;

namespace {

struct Depth {
    const char* size;
    const char* total;
};

// Height of an ISO 4762 head and what DIN 974-1 series 1 adds to it.
length::Length depth(const char* size) {
    return tables::head("ISO 4762", size).head_height_max +
           *tables::counterbore("DIN 974-1 series 1", size).depth_addition;
}

} // namespace

TEST_CASE("a counterbore to DIN 974-1 for ISO 4762 is as deep as its table says") {
    // DIN 974-1:1991, addition to head height .4 to M6, .6 to M20, .8 to M27, 1 above; from memory.
    for (const auto& row : std::initializer_list<Depth>{{"M3", "3.4"},
                                                        {"M4", "4.4"},
                                                        {"M5", "5.4"},
                                                        {"M6", "6.4"},
                                                        {"M8", "8.6"},
                                                        {"M10", "10.6"},
                                                        {"M12", "12.6"},
                                                        {"M16", "16.6"},
                                                        {"M20", "20.6"},
                                                        {"M24", "24.8"},
                                                        {"M30", "31"},
                                                        {"M36", "37"}}) {
        CAPTURE(row.size);
        CHECK(depth(row.size) == mm(row.total));
    }
}

TEST_CASE("a public chart for socket heads is at least as deep as DIN 974-1") {
    // "Countersink & counterbore chart", socket head cap screw DIN 912 / ISO 4762, diameters as DIN
    // 974-1 from M3 up. It names no rule for its depths: .4 at M3, then .6 to 1.5.
    CHECK(depth("M3") == mm("3.4"));
    for (const auto& row : std::initializer_list<Depth>{{"M4", "4.6"},
                                                        {"M5", "5.7"},
                                                        {"M6", "6.8"},
                                                        {"M8", "9"},
                                                        {"M10", "11"},
                                                        {"M12", "13"},
                                                        {"M16", "17.5"},
                                                        {"M20", "21.5"},
                                                        {"M24", "25.5"}}) {
        CAPTURE(row.size);
        CHECK(depth(row.size) < mm(row.total));
        CHECK(mm(row.total) - depth(row.size) <= mm("0.9"));
    }
}

TEST_CASE("a public chart for cheese heads is deeper than DIN 974-1 by .1 to .4") {
    // "Counterbore hole size chart for cheese head fasteners (DIN)": the same diameters; depths
    // worked out to .8 over the head of ISO 1207 but at M4.
    for (const auto& row : std::initializer_list<Depth>{
             {"M4", "3.1"}, {"M5", "4.1"}, {"M6", "4.7"}, {"M8", "5.8"}, {"M10", "6.8"}}) {
        CAPTURE(row.size);
        const auto by_rule = tables::head("ISO 1207", row.size).head_height_max +
                             *tables::counterbore("DIN 974-1 series 1", row.size).depth_addition;
        CHECK(mm(row.total) - by_rule >= mm("0.1"));
        CHECK(mm(row.total) - by_rule <= mm("0.4"));
    }
}
