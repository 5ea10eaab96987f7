// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/text.hpp"

#include <doctest/doctest.h>

#include "present/utf8.hpp"

using namespace present;

TEST_CASE("stored text cannot steer a terminal") {
    CHECK(safe("plain 3/8\"") == "plain 3/8\"");
    CHECK(safe("\x1b[2J") == "\\x1b[2J");
    CHECK(safe("a\nb\tc\rd") == "a\\nb\\tc\\rd");
    CHECK(safe(std::string_view("a\0b", 3)) == "a\\x00b");
    CHECK(safe("\x7f") == "\\x7f");
    CHECK(safe("\xC2\x9B") == "\\x9b"); // a control sequence introducer in one character
    CHECK(safe("\xE2\x80\xAE"
               "drawer") == "\\u202edrawer");
    CHECK(safe("\xE2\x81\xA6") == "\\u2066");
    CHECK(safe("\xE2\x80\xA8") == "\\u2028");
    CHECK(safe("\xEF\xBB\xBF") == "\\ufeff");
}

TEST_CASE("letters of any language stay as they are") {
    CHECK(safe("Schublade f\xC3\xBCr \xC3\x98 10") == "Schublade f\xC3\xBCr \xC3\x98 10");
    CHECK(safe("\xE6\xA3\x9A") == "\xE6\xA3\x9A");
}

TEST_CASE("bytes that are not UTF-8 are shown as escapes") {
    CHECK(safe("a\xFFz") == "a\\xffz");
    CHECK(safe("\xC3") == "\\xc3");
    CHECK(safe("\xC0\xAF") == "\\xc0\\xaf"); // an overlong slash
}

TEST_CASE("lines of a message stay lines, and nothing else gets through") {
    CHECK(safe_lines("one\ntwo\x1b") == "one\ntwo\\x1b");
}

TEST_CASE("the first byte that is not UTF-8 is found") {
    CHECK(find_invalid("") == std::string_view::npos);
    CHECK(find_invalid("\xC3\xBC\xE2\x82\xAC\xF0\x9F\x94\xA7") == std::string_view::npos);
    CHECK(find_invalid("ab\xFF") == 2);
    CHECK(find_invalid("a\xED\xA0\x80") == 1);     // a surrogate
    CHECK(find_invalid("a\xE0\x80\x80") == 1);     // overlong
    CHECK(find_invalid("a\xF4\x90\x80\x80") == 1); // beyond Unicode
    CHECK(find_invalid("\xC3\xBC\xE2\x82") == 2);  // cut off
}

TEST_CASE("width counts columns, not bytes") {
    CHECK(display_width("abc") == 3);
    CHECK(display_width("f\xC3\xBCr") == 3);
    CHECK(display_width("e\xCC\x81") == 1);
    CHECK(display_width("\xE6\xA3\x9A") == 2);
}

TEST_CASE("text is cut within its columns and never within a character") {
    CHECK(cut("drawer", 6) == "drawer");
    CHECK(cut("drawer", 4) == "dra~");
    CHECK(cut("\xC3\xBC\xC3\xBC\xC3\xBC", 2) == "\xC3\xBC~");
    CHECK(cut("\xE6\xA3\x9A\xE6\xA3\x9A", 3) == "\xE6\xA3\x9A~");
    CHECK(cut("drawer", 0).empty());
}

TEST_CASE("text wraps at spaces, and a long word anywhere") {
    using Lines = std::vector<std::string>;
    CHECK(wrapped("", 10).empty());
    CHECK(wrapped("one two three", 7) == Lines{"one two", "three"});
    CHECK(wrapped("one two three", 100) == Lines{"one two three"});
    CHECK(wrapped("counterbore", 4) == Lines{"coun", "terb", "ore"});
    CHECK(wrapped("a  b", 2) == Lines{"a", "b"});
    CHECK(wrapped("one\n\ntwo", 9) == Lines{"one", "", "two"});
    CHECK(wrapped("\xE6\xA3\x9A\xE6\xA3\x9A", 1) == Lines{"\xE6\xA3\x9A", "\xE6\xA3\x9A"});
}

TEST_CASE("padding fills up to the column on either side") {
    CHECK(padded("\xC3\xBC", 3, false) == "\xC3\xBC  ");
    CHECK(padded("12", 4, true) == "  12");
    CHECK(padded("12345", 4, true) == "12345");
}
