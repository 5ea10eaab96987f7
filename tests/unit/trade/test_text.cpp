// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include "trade/text.hpp"

TEST_CASE("folding lowers letters and joins blanks") {
    CHECK(trade::folded("  Socket\t HEAD \r\n Cap ") == "socket head cap");
    CHECK(trade::folded("") == "");
    CHECK(trade::folded(" \t ") == "");
    CHECK(trade::folded("\xC3\x84"
                        "B") == "\xC3\x84"
                                "b"); // ASCII only
}

TEST_CASE("trimming leaves blanks within") {
    CHECK(trade::trimmed(" \t a  b \n") == "a  b");
    CHECK(trade::trimmed("   ").empty());
}

TEST_CASE("splitting trims the parts and drops empty ones") {
    CHECK(trade::split(" clean the bore ;; sharpen; ", ';') ==
          std::vector<std::string>{"clean the bore", "sharpen"});
    CHECK(trade::split("one", ';') == std::vector<std::string>{"one"});
    CHECK(trade::split("", ';').empty());
    CHECK(trade::split(" ; ", ';').empty());
}
