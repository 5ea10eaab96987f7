// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A practice table for tests, row by row: the usual limits.
#pragma once

#include <utility>
#include <vector>

#include "trade/practice.hpp"

namespace default_practice {

inline std::vector<trade::PracticeRow> rows() {
    const std::vector<std::pair<const char*, const char*>> values{
        {"head clearance", ".005 in"},
        {"tool over head number", "1/64 in"},
        {"tool over head fraction", "1/32 in"},
        {"published over head", "1/16 in"},
        {"published over head inch", "1/8 in"},
        {"tool size under", ".003 in"},
        {"recommended over", ".010 in"},
        {"large over published", "1/8 in"},
        {"large share of head", "25 %"},
        {"seat share", "85 %"},
        {"running least", "0.02 mm"},
        {"running most", ".010 in"},
        {"running most over half", ".012 in"},
        {"running most over inch", ".015 in"},
        {"pilot under least", ".002 in"},
        {"pilot under most", ".004 in"},
        {"good to eighth", ".001 to .003 in"},
        {"good to quarter", ".002 to .004 in"},
        {"good to half", ".002 to .005 in"},
        {"good over half", ".003 to .006 in"},
        {"loose share", "12.5 %"},
        {"loose over", "3/64 in"},
        {"size on size", ".002 in"},
        {"reamed over", ".0005 in"},
        {"drill indexes", ""},
        {"slip least", ".0002 in"},
        {"slip most", ".0025 in"},
        {"good slip least", ".0003 in"},
        {"good slip most", ".001 in"},
        {"set screw point share", "50 %"},
        {"below flush", "1/64 in"},
        {"spotface depth", "1/16 in"},
        {"guidance share", "50 %"},
        {"closest share", "25 %"},
        {"counterbore over", ".005 in"},
        {"stop within", ".005 in"},
        {"ledge least", "33.3 %"},
        {"ledge usual", "100 %"},
        {"wall share", "25 %"},
        {"wall least", "1/16 in"},
        {"mark cutter under", ".003 in"},
        {"mark cutter over", ".001 in"},
        {"mark metric cutter wear", "0.08 mm"},
        {"mark pilot under", ".003 in"},
        {"mark pilot over", "0 in"},
        {"pilot under its hole", ".001 to .004 in"},
        {"mark metric pilot wear", "0.02 mm"},
        {"mark shank under", ".003 in"},
        {"mark shank over", "0 in"},
        {"mark bore under", "0 in"},
        {"mark bore over", ".003 in"},
        {"rule within", "1/64 in"},
        {"caliper within", ".001 in"},
        {"micrometer within", ".0002 in"},
        {"pin gauge within", ".0002 in"},
        {"test hole within", ".002 in"},
        {"guess within", "1/16 in"},
        {"unstated decimal within", ".002 in"},
        {"unstated fraction within", "1/64 in"},
    };
    std::vector<trade::PracticeRow> rows;
    for (const auto& [name, value] : values)
        rows.push_back({name, value, "for tests", "common practice", false});
    return rows;
}

inline trade::Practice practice() {
    return trade::read_practice(rows());
}

} // namespace default_practice
