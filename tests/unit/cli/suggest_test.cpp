// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/suggest.hpp"

#include <doctest/doctest.h>

#include "cli/span.hpp"
#include "error/error.hpp"

using namespace cli;

TEST_CASE("a slip of the fingers is one edit") {
    CHECK(edits("match", "match") == 0);
    CHECK(edits("macth", "match") == 1);  // swapped
    CHECK(edits("mach", "match") == 1);   // left out
    CHECK(edits("matchh", "match") == 1); // put in
    CHECK(edits("metch", "match") == 1);  // changed
    CHECK(edits("", "list") == 4);
    CHECK(edits("chart", "match") == 5);
}

TEST_CASE("the nearest word is meant, if it is near") {
    const std::vector<std::string> known = {"list", "show", "machine", "match"};
    CHECK(nearest("lsit", known) == "list");
    CHECK(nearest("machin", known) == "machine");
    CHECK(nearest("mat", known).empty());
    CHECK(nearest("frobnicate", known).empty());
    CHECK(nearest("", known).empty());
    CHECK(nearest(std::string(1000, 'x'), known).empty());
    CHECK(did_you_mean("shwo", known, "none") == "did you mean 'show'?");
    CHECK(did_you_mean("zzz", known, "none") == "none");
}

TEST_CASE("a span is one size or two, in one unit or two") {
    using length::Unit;
    CHECK(read_span("3/8", Unit::inch) == length::exactly(length::sixty_fourths(24)));
    CHECK(read_span("3/8 to 1/2", Unit::inch) ==
          length::Range{length::sixty_fourths(24), length::sixty_fourths(32)});
    CHECK(read_span("10 to 12 mm", Unit::inch) ==
          length::Range{length::millimetres(10), length::millimetres(12)});
    CHECK(read_span("10 mm..1/2", Unit::inch) ==
          length::Range{length::millimetres(10), length::sixty_fourths(32)});
    CHECK(read_span("10..12", Unit::millimetre) ==
          length::Range{length::millimetres(10), length::millimetres(12)});
    CHECK_THROWS_AS(static_cast<void>(read_span("1/2 to 3/8", Unit::inch)), error::BadData);
    CHECK_THROWS_AS(static_cast<void>(read_span("to 3/8", Unit::inch)), error::BadData);
    CHECK_THROWS_AS(static_cast<void>(read_span("3/8 to", Unit::inch)), error::BadData);
    CHECK_THROWS_AS(static_cast<void>(read_span("", Unit::inch)), error::BadData);
}
