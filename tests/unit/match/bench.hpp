// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Tools, screws and shops for the tests of the rules: each with everything in order, so that a test
// changes the one thing it is about.
#pragma once

#include "match/job.hpp"
#include "match/triple.hpp"

namespace bench {

using length::Length;
using length::Range;

// Ten-thousandths of an inch.
constexpr Length tenths(std::int64_t n) {
    return length::inches_e5(n * 10);
}
constexpr Range tenths(std::int64_t lo, std::int64_t hi) {
    return {tenths(lo), tenths(hi)};
}

trade::Dimension known(Range range);

// Design defaults of the practice table.
trade::Practice practice();

// 5/16 socket head cap screw of the 1960 series: head .457 to .469, .3125 high (ASME B18.3);
// close 21/64, normal 11/32, loose 23/64 (ASME B18.2.8); published counterbore 17/32.
trade::Screw newer();
// 5/16 of the 1936 pattern: head .425 to .437 (BS 2470 and common practice).
trade::Screw older();

// Fraction drills to 1/2 by 64ths; oversize .002 to .004, mean .003, for every drill.
match::Shop shop();

match::Question question(const trade::Screw& screw);

// 1/2 counterbore with an integral 21/64 pilot, reach 1 in.
trade::Body integral_body();
// 1/2 counterbore with a 3/16 bore and a #8 set screw .2 from its mouth.
trade::Body removable_body();
// Pilot to suit it, with a flat under the set screw.
trade::Pilot pilot();

class ListRack : public trade::Rack {
  public:
    std::vector<trade::Body> body_list;
    std::vector<trade::Pilot> pilot_list;
    std::vector<trade::Trial> trial_list;

    [[nodiscard]] std::vector<trade::Body> bodies() const override { return body_list; }
    [[nodiscard]] std::vector<trade::Pilot> pilots() const override { return pilot_list; }
    [[nodiscard]] std::vector<trade::Trial> trials() const override { return trial_list; }
};

} // namespace bench
