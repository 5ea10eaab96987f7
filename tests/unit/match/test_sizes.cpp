// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The sizes that a job wants: of a screw of the shop's own, and under a washer.
#include <doctest/doctest.h>

#include "bench.hpp"
#include "match/size_class.hpp"
#include "match/wanted.hpp"

using bench::tenths;
using length::sixty_fourths;

namespace {

trade::Screw own_screw(length::MaybeRange diameter) {
    trade::Screw screw;
    screw.name = "pump cover screw";
    screw.screw_dia = diameter;
    screw.head_dia = tenths(14800, 15000);
    screw.head_height = tenths(9900, 10000);
    screw.head_measured = true;
    return screw;
}

} // namespace

TEST_CASE("a screw of the shop's own from 1 in up takes 1/8 over its head, a smaller one 1/16") {
    const auto published = [](std::int64_t diameter) {
        return match::size_targets(own_screw(length::exactly(tenths(diameter))), tenths(15000),
                                   nullptr, bench::practice())
            .published;
    };
    CHECK(published(9999) == tenths(15000) + sixty_fourths(4));
    CHECK(published(10000) == tenths(15000) + sixty_fourths(8));
    CHECK(published(12500) == tenths(15000) + sixty_fourths(8));
}

TEST_CASE("a washer that a counterbore is published for is held against that one") {
    trade::Counterbore row;
    row.rule = "DIN 974-1 series 5";
    row.kind = "with washer";
    row.diameter = length::millimetres(18);
    match::Washer washer{
        "ISO 7089", {length::micrometres(15040), length::millimetres(16)}, {}, row};
    const auto with =
        match::size_targets(bench::newer(), length::millimetres(16), &washer, bench::practice());
    CHECK(with.published == length::millimetres(18));
    CHECK(with.source == "DIN 974-1 series 5");
    washer.counterbore.reset();
    const auto without =
        match::size_targets(bench::newer(), length::millimetres(16), &washer, bench::practice());
    CHECK(without.published == length::millimetres(16) + sixty_fourths(4));
}

TEST_CASE("nothing is wanted of pilot and drill where nobody knows the screw's diameter") {
    const auto shop = bench::shop();
    const auto unknown = bench::question(own_screw({}));
    const auto wanted = match::wanted_for(match::make_job(unknown, shop, {}), length::Unit::inch);
    CHECK(wanted.cutter.has_value());
    CHECK_FALSE(wanted.drill.has_value());
    CHECK_FALSE(wanted.pilot.has_value());

    auto given = unknown;
    given.hole = {match::HoleKind::measured, "", {}, length::exactly(tenths(3400)), false};
    CHECK(
        match::wanted_for(match::make_job(given, shop, {}), length::Unit::inch).pilot.has_value());

    const auto known = bench::question(own_screw(length::exactly(tenths(3125))));
    CHECK(
        match::wanted_for(match::make_job(known, shop, {}), length::Unit::inch).drill.has_value());
}
