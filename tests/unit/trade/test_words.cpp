// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include <string>

#include "refusal.hpp"
#include "trade/words.hpp"

using refusal::hint_of;
using refusal::message_of;

namespace {

// Every word up to `last` is read back from its own spelling, in capitals and with wide blanks.
template <typename Enum, typename Parse>
void check_all(Enum last, const Parse& parse) {
    for (int i = 0; i <= static_cast<int>(last); ++i) {
        const auto value = static_cast<Enum>(i);
        const std::string text(trade::to_text(value));
        CAPTURE(text);
        CHECK(!text.empty());
        CHECK(parse(text) == value);
        std::string loud = "  ";
        for (const char c : text)
            loud += c == ' ' ? std::string("  ") : std::string(1, static_cast<char>(c - 'a' + 'A'));
        CHECK(parse(loud) == value);
    }
}

} // namespace

TEST_CASE("every word is read back as it is printed") {
    check_all(trade::BodyKind::unknown, trade::parse_body_kind);
    check_all(trade::PilotKind::unknown, trade::parse_pilot_kind);
    check_all(trade::Retention::other, trade::parse_retention);
    check_all(trade::Condition::broken, trade::parse_condition);
    check_all(trade::How::guess, trade::parse_how);
    check_all(trade::Tried::will_not_go, trade::parse_tried);
}

TEST_CASE("words are spelled as columns and answers spell them") {
    CHECK(trade::to_text(trade::BodyKind::back_spotfacer) == "back spotfacer");
    CHECK(trade::to_text(trade::Retention::set_screw) == "set screw");
    CHECK(trade::to_text(trade::How::pin_gauge) == "pin gauge");
    CHECK(trade::to_text(trade::Tried::slides_and_holds) == "slides and holds");
    CHECK(trade::to_text(trade::Tried::will_not_go) == "will not go");
}

TEST_CASE("common other spellings are read") {
    CHECK(trade::parse_body_kind("back-spotface") == trade::BodyKind::back_spotfacer);
    CHECK(trade::parse_retention("set_screw") == trade::Retention::set_screw);
    CHECK(trade::parse_how("") == trade::How::unstated);
    CHECK(trade::parse_how("steel rule") == trade::How::rule);
    CHECK(trade::parse_how("calipers") == trade::How::caliper);
    CHECK(trade::parse_tried("no") == trade::Tried::will_not_go);
    CHECK(trade::parse_tried("is loose") == trade::Tried::loose);
    CHECK(trade::parse_tried("holds") == trade::Tried::slides_and_holds);
}

TEST_CASE("an unknown word is refused with the words that would do") {
    const auto sharp = [] { (void)trade::parse_condition("sharp"); };
    CHECK(message_of(sharp) == "condition: not one of its words: 'sharp'");
    CHECK(hint_of(sharp) == "one of: good, fair, dull, dirty, rough, broken");
    CHECK(message_of([] { (void)trade::parse_body_kind(""); }) ==
          "kind of body: not one of its words: ''");
    CHECK(message_of([] { (void)trade::parse_tried("slide"); }) ==
          "how it went: not one of its words: 'slide'");
}
