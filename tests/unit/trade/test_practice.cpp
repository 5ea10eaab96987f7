// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "default_practice.hpp"
#include "refusal.hpp"
#include "trade/practice.hpp"

using length::Length;
using length::thousandths;
using refusal::hint_of;
using refusal::message_of;
using trade::check_practice_value;
using trade::PracticeRow;

namespace {

PracticeRow own_row(std::string name, std::string value) {
    return {std::move(name), std::move(value), "", "the shop", true};
}

std::string refused(const std::string& name, const std::string& value) {
    return message_of([&] { check_practice_value(name, value); });
}

} // namespace

TEST_CASE("rows fill the members they are named after") {
    const auto practice = default_practice::practice();
    CHECK(practice.head_clearance == thousandths(5));
    CHECK(practice.tool_over_head_number == length::sixty_fourths(1));
    CHECK(practice.tool_over_head_fraction == length::sixty_fourths(2));
    CHECK(practice.large_share_of_head == 250);
    CHECK(practice.seat_share == 850);
    CHECK(practice.loose_share == 125);
    CHECK(practice.good_to_eighth.least == thousandths(1));
    CHECK(practice.good_over_half.most == thousandths(6));
    CHECK(practice.slip_least == length::inches_e5(20));
    CHECK(practice.mark_metric_cutter_wear == length::micrometres(80));
    CHECK(practice.mark_pilot_over == Length{});
    CHECK(practice.drill_indexes.empty());
    CHECK(practice.unstated_fraction_within == length::sixty_fourths(1));
}

TEST_CASE("every row is needed, and each fills a member of its own") {
    const auto rows = default_practice::rows();
    for (std::size_t i = 0; i < rows.size(); ++i) {
        auto fewer = rows;
        fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
        CHECK(message_of([&] { (void)trade::read_practice(fewer); }) ==
              "practice: a rule is missing: '" + rows[i].name + "'");
    }
}

TEST_CASE("a shop's own row counts wherever it stands") {
    auto rows = default_practice::rows();
    rows.push_back(own_row("head clearance", ".010 in"));
    CHECK(trade::read_practice(rows).head_clearance == thousandths(10));
    std::rotate(rows.begin(), rows.end() - 1, rows.end());
    CHECK(trade::read_practice(rows).head_clearance == thousandths(10));
}

TEST_CASE("values have one spelling, which reads back as itself") {
    const std::vector<std::vector<std::string>> cases{
        {"head clearance", ".005 in", ".005 in"},
        {"head clearance", "0.0050\"", ".005 in"},
        {"head clearance", "1/64", "1/64 in"},
        {"head clearance", "2/64 in", ".03125 in"},
        {"head clearance", "0 in", "0 in"},
        {"head clearance", "0.10mm", "0.1 mm"},
        {"Head  Clearance", ".005 in", ".005 in"},
        {"seat share", "95%", "95 %"},
        {"seat share", " 95.0 % ", "95 %"},
        {"seat share", "12.5%", "12.5 %"},
        {"seat share", "0 %", "0 %"},
        {"seat share", "100 %", "100 %"},
        {"good to half", ".002 to .005 in", ".002 to .005 in"},
        {"good to half", ".002 in to .005 in", ".002 to .005 in"},
        {"good to half", "0 TO 1/64 in", "0 to 1/64 in"},
        {"good to half", "0.05 to 0.1 mm", "0.05 to 0.1 mm"},
        {"drill indexes", "Letter,number", "number, letter"},
        {"drill indexes", "metric", "metric"},
        {"drill indexes", " ", ""},
    };
    for (const auto& row : cases) {
        CAPTURE(row[1]);
        CHECK(check_practice_value(row[0], row[1]) == row[2]);
        CHECK(check_practice_value(row[0], row[2]) == row[2]);
    }
    for (const auto& row : default_practice::rows()) {
        const auto shown = check_practice_value(row.name, row.value);
        CHECK(check_practice_value(row.name, shown) == shown);
    }
}

TEST_CASE("values of the wrong kind are refused") {
    CHECK(refused("head clearance", ".005") ==
          "practice: head clearance: a length without its unit: '.005'");
    CHECK(refused("head clearance", "-.005 in") ==
          "practice: head clearance: length: less than zero: '-.005 in'");
    CHECK(refused("head clearance", "2 in") == "practice: head clearance: over 1 in: '2 in'");
    CHECK(refused("head clearance", "95 %") ==
          "practice: head clearance: length: not understood after the number: end it there: "
          "'95 %'");
    for (const auto* value : {"95", "101 %", "100.1 %", "-5 %", "5.25 %", "5. %", ".5 %", "%", ""})
        CHECK(refused("seat share", value) ==
              "practice: seat share: not a share: '" + std::string(value) + "'");
    CHECK(refused("good to half", ".002 in") == "practice: good to half: not a range: '.002 in'");
    CHECK(refused("good to half", ".005 to .002 in") ==
          "practice: good to half: the first is the larger: '.005 to .002 in'");
    CHECK(refused("good to half", ".001 in to .1 mm") ==
          "practice: good to half: two units: '.001 in to .1 mm'");
    CHECK(refused("good to half", ".001 to .002") ==
          "practice: good to half: a length without its unit: '.002'");
    CHECK(refused("drill indexes", "number, wire") ==
          "practice: drill indexes: no drill index: 'wire'");
    CHECK(refused("head room", ".005 in") == "practice: no such rule: 'head room'");
    CHECK(hint_of([] { check_practice_value("head clearance", "5"); }) ==
          "a length with its unit: .005 in, 1/64 in, 0.1 mm, or 0 in");
}

TEST_CASE("a bad row is refused by name though another would hide it") {
    auto rows = default_practice::rows();
    rows.front().value = "much";
    rows.push_back(own_row("head clearance", ".010 in"));
    CHECK(message_of([&] { (void)trade::read_practice(rows); }) ==
          "practice: head clearance: length: no number where one is expected: 'much'");
    rows = default_practice::rows();
    rows.push_back(own_row("head room", ".010 in"));
    CHECK(message_of([&] { (void)trade::read_practice(rows); }) ==
          "practice: no such rule: 'head room'");
}

TEST_CASE("least and most cannot cross") {
    for (const std::string name : {"running", "pilot under", "slip", "good slip"}) {
        auto rows = default_practice::rows();
        rows.push_back(own_row(name + " least", ".020 in"));
        CHECK(message_of([&] {
                  (void)trade::read_practice(rows);
              }).find("practice: " + name + ": least is over most: '.020 in to .0") == 0);
    }
}

TEST_CASE("what a work material is taken as is kept as it is, beside the limits") {
    CHECK(check_practice_value("material mild steel", " cold drawn ") == "cold drawn");
    auto rows = default_practice::rows();
    rows.push_back(own_row("material mild steel", "cold drawn"));
    CHECK_NOTHROW((void)trade::read_practice(rows));
    CHECK(refused("materials", "cold drawn") == "practice: no such rule: 'materials'");
}
