// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Least heads that no table prints, worked out here a second time from what is printed.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>
#include <string>

#include "tables.hpp"

using length::Length;
using tables::in;
using tables::mm;

namespace {

const std::map<std::string, std::string> k_sisters{{"ASA B18.3 1936", "BS 2470"},
                                                   {"BSW/BSF socket", "BS 2470"},
                                                   {"DIN 84", "ISO 1207"},
                                                   {"ISO 14583", "ISO 7045"}};

// Without a published minimum and without a sister; of ISO 7380-2 only M16.
const std::set<std::string> k_alone{"BA socket", "BS 1083 BSW/BSF", "ASME B18.2.1 hex flange",
                                    "EN 1665",   "EN 1662",         "ISO 7380-2"};

const trade::Head* row_of(const std::vector<trade::Head>& heads, const std::string& series) {
    const auto found = std::find_if(heads.begin(), heads.end(),
                                    [&](const auto& head) { return head.series == series; });
    return found == heads.end() ? nullptr : &*found;
}

// 94 % of the largest, down to .0001 in or .001 mm.
Length less_six_percent(const trade::Head& head) {
    const bool inch = head.head_dia.hi.nm() % 2540 == 0;
    const std::int64_t step = inch ? 2540 : 1000;
    std::int64_t steps = 0;
    while ((steps + 1) * step * 100 <= head.head_dia.hi.nm() * 94)
        ++steps;
    return Length::from_nm(steps * step);
}

} // namespace

TEST_CASE("a missing least head takes the spread of the sister series, else 6 percent") {
    int from_sister = 0;
    int by_share = 0;
    for (const auto& size : tables::sizes()) {
        const auto heads = tables::reference().heads(size.text);
        for (const auto& head : heads) {
            if (head.head_min_note.empty())
                continue;
            CAPTURE(head.series);
            CAPTURE(size.text);
            const auto sister = k_sisters.find(head.series);
            const auto* other = sister == k_sisters.end() ? nullptr : row_of(heads, sister->second);
            if (other) {
                const Length spread = other->head_dia.hi - other->head_dia.lo;
                CHECK(head.head_dia.lo == head.head_dia.hi - spread);
                CHECK(head.head_min_note ==
                      "derived: maximum less the spread of the " + sister->second + " head");
                ++from_sister;
            } else {
                CHECK(head.head_dia.lo == less_six_percent(head));
                CHECK(head.head_min_note == "derived: maximum less 6 %");
                ++by_share;
            }
        }
    }
    // 1936: 16 of 22 sizes are in BS 2470; Whitworth: 9 of 10; DIN 84: 10 of 14; ISO 14583: all 9.
    CHECK(from_sister == 16 + 9 + 10 + 9);
    // and BS 1083 16, flanges 7 + 8 + 7, ISO 7380-2 1
    CHECK(by_share == 6 + 1 + 4 + 1 + 16 + 7 + 8 + 7 + 1);
}

TEST_CASE("only series without published minima have derived ones") {
    for (const auto& size : tables::sizes())
        for (const auto& head : tables::reference().heads(size.text))
            if (!head.head_min_note.empty()) {
                CAPTURE(head.series);
                CHECK((k_sisters.contains(head.series) || k_alone.contains(head.series)));
            }
}

TEST_CASE("derived least heads worked by hand") {
    CHECK(tables::head("ASA B18.3 1936", "5/16").head_dia.lo == in(".425")); // .437 - (.437 - .425)
    CHECK(tables::head("ASA B18.3 1936", "3/8").head_dia.lo == in(".550"));
    CHECK(tables::head("ASA B18.3 1936", "#12").head_dia.lo == in(".3233"));  // .344 x .94 = .32336
    CHECK(tables::head("BSW/BSF socket", "3/16").head_dia.lo == in(".2932")); // .312 x .94 = .29328
    CHECK(tables::head("BA socket", "2BA").head_dia.lo == in(".2932"));
    CHECK(tables::head("DIN 84", "M1").head_dia.lo == mm("1.88"));
    CHECK(tables::head("DIN 84", "M1.2").head_dia.lo == mm("2.162")); // 2.3 x .94
    CHECK(tables::head("ISO 14583", "M3").head_dia.lo == mm("5.3"));  // 5.6 - (5.6 - 5.3)
    CHECK(tables::head("EN 1665", "M8").head_dia.lo == mm("16.92"));  // 18 x .94
}
