// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/json.hpp"

#include <doctest/doctest.h>

using namespace present;

TEST_CASE("keys keep the order they were written in") {
    const Json json = {{"zebra", 1}, {"apple", 2}};
    CHECK(json_text(json) == "{\n  \"zebra\": 1,\n  \"apple\": 2\n}\n");
}

TEST_CASE("lengths are millimetres under a key that says so") {
    const trade::Dimension half{
        ".5", trade::How::caliper, {length::thousandths(499), length::thousandths(501)}};
    const Json json = dimension_json(half);
    CHECK(json.dump() == R"({"text":".5","how":"caliper","range_mm":[12.6746,12.7254]})");
}

TEST_CASE("what is not known is null") {
    CHECK(dimension_json(std::nullopt).is_null());
    CHECK(range_mm(std::nullopt).is_null());
    CHECK(text_json("").is_null());
    CHECK(text_json("rack") == "rack");
}

TEST_CASE("nothing but ASCII is printed") {
    const Json json = {{"note", "\xE2\x80\xAE\x1b\xC3\xBC\x7f"}};
    CHECK(json_text(json) == "{\n  \"note\": \"\\u202e\\u001b\\u00fc\\u007f\"\n}\n");
}
