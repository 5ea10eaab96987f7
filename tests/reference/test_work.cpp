// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The tables of the work: materials, feeds, torques, nut factors and grades of screws, as the
// interface gives them and against what is published.
#include <doctest/doctest.h>

#include <algorithm>
#include <stdexcept>
#include <string>

#include "tables.hpp"
#include "trade/material.hpp"

using tables::in;
using tables::mm;

namespace {

const store::Reference& shop() {
    return tables::reference();
}

std::vector<trade::Material> cut_here() {
    auto materials = shop().materials();
    std::erase_if(materials, [](const auto& row) {
        return row.restriction(trade::Matter::refused) != nullptr;
    });
    return materials;
}

// The proof stress of a screw of one grade and diameter, in MPa.
double proof(std::string_view name, length::Length diameter) {
    for (const auto& grade : shop().grades())
        if (grade.name == name && (!grade.above || diameter > *grade.above) &&
            (!grade.upto || diameter <= *grade.upto))
            return grade.proof_mpa;
    throw std::out_of_range("no grade");
}

doctest::Approx about(double value) {
    return doctest::Approx(value).epsilon(1e-6);
}

} // namespace

TEST_CASE("materials come in the order of the table, whole") {
    const auto materials = shop().materials();
    REQUIRE(materials.size() == 59);
    CHECK(materials.front().name == "free-machining steel 12L14");
    CHECK(materials[55].name == "hardwood"); // those that are refused follow
    const auto& mild = materials[2];
    CHECK(mild.name == "low-carbon steel 1018/1020/A36 (S235)");
    CHECK(mild.condition == "100-125 HB");
    CHECK(mild.drill_speed == 100);
    CHECK(mild.speed_low == 50);
    CHECK(mild.speed_high == 80);
    CHECK(mild.feed_class == "general");
    CHECK(mild.coolant == "sulfurized cutting oil or soluble oil");
    CHECK(mild.pressure_low_mpa == 260);
    CHECK(mild.pressure_high_mpa == 490);
    CHECK(mild.pressure_basis.starts_with("VDI 2230 in MPa: (2003) 490"));
    CHECK(mild.restrictions.empty());
    CHECK(mild.origin.confidence == "one source");
    for (const auto& material : cut_here()) {
        CAPTURE(material.name);
        CHECK(material.speed_low < material.speed_high);
        CHECK(material.speed_high < material.drill_speed);
        CHECK(!material.origin.source.empty());
        CHECK(!material.pressure_basis.empty());
    }
}

TEST_CASE("drill speeds lie in published bands for high-speed steel") {
    // "Machine tool fundamentals quick reference", a course's student material: cutting speeds in
    // ft/min. Its 200 to 300 for wrought aluminum and 50 to 80 for gray iron are slower than the
    // rows here for 6061 (350) and class 20 (100), whose sources stand in the table.
    struct Band {
        const char* name;
        int low;
        int high;
    };
    for (const auto& band : std::initializer_list<Band>{{"1018", 80, 100},
                                                        {"1045 C45", 70, 90},
                                                        {"4140 annealed", 60, 80},
                                                        {"304", 40, 60},
                                                        {"316", 40, 60},
                                                        {"tool steel O1", 40, 60},
                                                        {"tool steel A2", 40, 60},
                                                        {"brass C360", 150, 250},
                                                        {"bronze C932", 100, 150},
                                                        {"gray iron class 30", 50, 80}}) {
        CAPTURE(band.name);
        const auto material = trade::find_material(band.name, shop().materials());
        CHECK(material.drill_speed >= band.low);
        CHECK(material.drill_speed <= band.high);
    }
}

TEST_CASE("a counterbore runs no faster than 85 % of a drill") {
    // A tool maker's user guide, cap screw counterbores: about 80 to 85 % of the drill's speed.
    for (const auto& material : cut_here()) {
        CAPTURE(material.name);
        CHECK(material.speed_high * 100 <= material.drill_speed * 85);
    }
}

TEST_CASE("feeds come by class and diameter and grow with both ends of the cutter's band") {
    const auto feeds = shop().feeds();
    REQUIRE(feeds.size() == 12);
    const auto& quarter_to_half = feeds[5];
    CHECK(quarter_to_half.feed_class == "general");
    CHECK(quarter_to_half.above == in("1/4"));
    CHECK(quarter_to_half.upto == in("1/2"));
    // TC 9-524, chapter 4, counterboring: .002 to .005 in a turn.
    CHECK(quarter_to_half.least == in(".002"));
    CHECK(quarter_to_half.most == in(".005"));
    for (std::size_t at = 1; at < feeds.size(); ++at) {
        if (feeds[at].feed_class != feeds[at - 1].feed_class)
            continue;
        CAPTURE(at);
        CHECK(feeds[at].above == feeds[at - 1].upto);
        CHECK(feeds[at].least > feeds[at - 1].least);
        CHECK(feeds[at].most > feeds[at - 1].most);
    }
    CHECK(!feeds.front().above);
    CHECK(!feeds.back().upto);
}

TEST_CASE("a chart that says what it was printed for names that surface") {
    const auto quarter = shop().torques("1/4");
    REQUIRE(quarter.size() == 2);
    CHECK(quarter[0].surface == "zinc plated");
    CHECK(quarter[1].surface.empty());
}

TEST_CASE("torques are in newton metres beside the figure as printed") {
    // NIST SP 811, appendix B.8: 1 lbf ft is 1.355818 N m, 1 lbf in is .1129848 N m.
    const auto number_four = shop().torques("#4");
    REQUIRE(number_four.size() == 1);
    CHECK(number_four[0].chart == "ASTM A574");
    CHECK(number_four[0].printed == "16 in-lb");
    CHECK(number_four[0].newton_metres == about(16 * .1129848));
    CHECK(number_four[0].about == "75 % of yield, plated, dry");
    const auto three_eighths = shop().torques("3/8");
    REQUIRE(three_eighths.size() == 2);
    CHECK(three_eighths[0].printed == "62 ft-lb");
    CHECK(three_eighths[0].newton_metres == about(62 * 1.355818));
    CHECK(three_eighths[1].chart == "second chart");
    CHECK(three_eighths[1].newton_metres == about(54 * 1.355818));
    CHECK(shop().torques("M8").empty());
}

TEST_CASE("nut factors are ordered and within what was seen") {
    const auto factors = shop().nut_factors();
    REQUIRE(factors.size() == 6);
    const auto dry = std::find_if(factors.begin(), factors.end(),
                                  [](const auto& row) { return row.surface == "dry steel"; });
    REQUIRE(dry != factors.end());
    CHECK(dry->usual_low == 200); // .2: Shigley's figure when nothing is said; from memory
    CHECK(dry->usual_high == 200);
    for (const auto& row : factors) {
        CAPTURE(row.surface);
        CHECK(row.seen_low <= row.usual_low);
        CHECK(row.usual_low <= row.usual_high);
        CHECK(row.usual_high <= row.seen_high);
    }
}

TEST_CASE("grades are those of their standards") {
    const auto grades = shop().grades();
    REQUIRE(grades.size() == 30);
    CHECK(grades.front().name == "ASTM A574");
    CHECK(grades.front().standard == "ASTM A574");
    CHECK(grades.back().name == "ASTM F593 CW");
    // NIST SP 811, appendix B.8: 1 ksi is 6.894757 MPa.
    CHECK(proof("ASTM A574", in("1/2")) == about(140 * 6.894757));
    CHECK(proof("ASTM A574", in("5/8")) == about(135 * 6.894757));
    // Mechanical Engineering Design, 5th ed., p. 341 (Shigley and Mischke), after SAE J429.
    CHECK(proof("SAE J429 grade 2", in("3/4")) == about(55 * 6.894757));
    CHECK(proof("SAE J429 grade 2", in("7/8")) == about(33 * 6.894757));
    CHECK(proof("SAE J429 grade 5", in("1")) == about(85 * 6.894757));
    CHECK(proof("SAE J429 grade 5", in("1-1/8")) == about(74 * 6.894757));
    CHECK(proof("SAE J429 grade 8", in("1/4")) == about(120 * 6.894757));
    // A training table after ISO 898-1:1999, sections 3 to 7 (MEM 50212 bolts), and for the
    // smaller 8.8 a supplier's bolt grade chart.
    CHECK(proof("ISO 898-1 4.6", mm("8")) == 225);
    CHECK(proof("ISO 898-1 5.8", mm("8")) == 380);
    CHECK(proof("ISO 898-1 8.8", mm("16")) == 580);
    CHECK(proof("ISO 898-1 8.8", mm("20")) == 600);
    CHECK(proof("ISO 898-1 10.9", mm("8")) == 830);
    CHECK(proof("ISO 898-1 12.9", mm("8")) == 970);
    // A supplier's chart of stainless metric classes: least yield stress.
    CHECK(proof("ISO 3506-1 A2-50", mm("8")) == 210);
    CHECK(proof("ISO 3506-1 A2-70", mm("8")) == 450);
    CHECK(proof("ISO 3506-1 A4-80", mm("8")) == 600);
    // A maker's page of A2 bolts: class 80, 600 MPa.
    CHECK(proof("ISO 3506-1 A2-80", mm("8")) == 600);
    CHECK_THROWS(proof("SAE J429 grade 8", in("2")));
}

TEST_CASE("the proof stress of ASTM A574 gives the proof loads that are printed for it") {
    // ASTM A574 technical data as a fastener supplier prints it: coarse thread, stress area in
    // square inches, proof load in pounds, rounded to three figures.
    struct Printed {
        const char* size;
        double area;
        double load;
    };
    for (const auto& row : std::initializer_list<Printed>{{".112", .00604, 846},
                                                          {".138", .00909, 1270},
                                                          {".190", .0175, 2450},
                                                          {"1/4", .0318, 4450},
                                                          {"3/8", .0775, 10800},
                                                          {"1/2", .1419, 19900},
                                                          {"5/8", .226, 30500},
                                                          {"3/4", .334, 45100},
                                                          {"1", .606, 81800}}) {
        CAPTURE(row.size);
        const double psi = proof("ASTM A574", in(row.size)) / 6.894757 * 1000;
        CHECK(psi * row.area == doctest::Approx(row.load).epsilon(.005));
    }
}
