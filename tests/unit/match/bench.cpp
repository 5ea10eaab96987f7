// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "bench.hpp"

namespace bench {

using length::sixty_fourths;

trade::Dimension known(Range range) {
    return {"", trade::How::micrometer, range};
}

trade::Practice practice() {
    trade::Practice p;
    p.head_clearance = tenths(50);
    p.tool_over_head_number = sixty_fourths(1);
    p.tool_over_head_fraction = sixty_fourths(2);
    p.published_over_head = sixty_fourths(4);
    p.published_over_head_inch = sixty_fourths(8);
    p.tool_size_under = tenths(30);
    p.recommended_over = tenths(100);
    p.large_over_published = sixty_fourths(8);
    p.large_share_of_head = 250;
    p.seat_share = 850;
    p.running_least = tenths(8);
    p.running_most = tenths(100);
    p.running_most_over_half = tenths(120);
    p.running_most_over_inch = tenths(150);
    p.size_on_size = tenths(20);
    p.reamed_over = tenths(5);
    p.pilot_under_least = tenths(20);
    p.pilot_under_most = tenths(40);
    p.good_to_eighth = {tenths(10), tenths(30)};
    p.good_to_quarter = {tenths(20), tenths(40)};
    p.good_to_half = {tenths(20), tenths(50)};
    p.good_over_half = {tenths(30), tenths(60)};
    p.loose_share = 125;
    p.loose_over = sixty_fourths(3);
    p.slip_least = tenths(2);
    p.slip_most = tenths(25);
    p.good_slip_least = tenths(3);
    p.good_slip_most = tenths(10);
    p.set_screw_point_share = 500;
    p.below_flush = sixty_fourths(1);
    p.spotface_depth = sixty_fourths(4);
    p.guidance_share = 500;
    p.ledge_usual = 1000;
    p.mark_cutter_under = tenths(30);
    p.mark_cutter_over = tenths(10);
    p.pilot_under_hole = {tenths(10), tenths(40)};
    p.closest_share = 250;
    return p;
}

trade::Screw newer() {
    trade::Screw screw;
    screw.name = "5/16-18 socket head cap";
    screw.form = "socket head cap";
    screw.series = "ASME B18.3 1960";
    screw.size = trade::ScrewSize{trade::SizeSystem::inch, "5/16", sixty_fourths(20)};
    screw.screw_dia = length::exactly(sixty_fourths(20));
    screw.head_dia = tenths(4570, 4690);
    screw.head_height = tenths(3060, 3125);
    screw.close = trade::Clearance::Hole{"21/64", sixty_fourths(21)};
    screw.normal = trade::Clearance::Hole{"11/32", sixty_fourths(22)};
    screw.loose = trade::Clearance::Hole{"23/64", sixty_fourths(23)};
    screw.counterbores = {{"ASME B18.3 1960",
                           "ASME B18.3 appendix",
                           "recommended",
                           sixty_fourths(34),
                           "17/32",
                           {},
                           {},
                           {}}};
    return screw;
}

trade::Screw older() {
    auto screw = newer();
    screw.series = "ASA B18.3 1936";
    screw.head_dia = tenths(4250, 4370);
    screw.counterbores.clear();
    return screw;
}

match::Shop shop() {
    match::Shop shop{practice(), {}, {}, {}};
    for (int n = 4; n <= 32; ++n)
        shop.drills.push_back(
            {std::to_string(n) + "/64", trade::DrillKind::fraction, sixty_fourths(n)});
    shop.oversize = {{sixty_fourths(4), tenths(20), tenths(30), tenths(40)},
                     {sixty_fourths(64), tenths(20), tenths(30), tenths(40)}};
    return shop;
}

match::Question question(const trade::Screw& screw) {
    match::Question question;
    question.screw = screw;
    question.below = sixty_fourths(1);
    return question;
}

trade::Body integral_body() {
    trade::Body body;
    body.number = 1;
    body.kind = trade::BodyKind::counterbore;
    body.cut_dia = known(tenths(4999, 5001));
    body.pilot_kind = trade::PilotKind::integral;
    body.pilot_dia = known(tenths(3270, 3272));
    body.pilot_length = known(tenths(3100, 3150));
    body.reach = known(tenths(9900, 10000));
    body.shank_dia = known(tenths(4990, 5000));
    body.place = "rack A, hole 1";
    return body;
}

trade::Body removable_body() {
    auto body = integral_body();
    body.number = 2;
    body.pilot_kind = trade::PilotKind::removable;
    body.pilot_dia.reset();
    body.pilot_length.reset();
    body.bore = known(tenths(1875, 1877));
    body.bore_depth = known(tenths(6200, 6300));
    body.retention = trade::Retention::set_screw;
    body.set_screw = "#8-32";
    body.set_screw_at = known(tenths(1990, 2010));
    return body;
}

trade::Pilot pilot() {
    trade::Pilot pilot;
    pilot.number = 3;
    pilot.pilot_dia = known(tenths(3270, 3272));
    pilot.pilot_length = known(tenths(3100, 3150));
    pilot.shank_dia = known(tenths(1867, 1869));
    pilot.shank_length = known(tenths(6000, 6010));
    pilot.has_flat = true;
    pilot.flat_at = known(tenths(2990, 3010));
    pilot.flat_length = known(tenths(1990, 2010));
    return pilot;
}

} // namespace bench
