// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The closed lists of words of the trade, and their spelling in cells, options and output.
// `to_text` gives the spelling that `parse` reads back; `parse` ignores case and extra spaces and
// throws error::BadData naming the words that would do.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace trade {

enum class BodyKind : std::uint8_t { counterbore, spotfacer, back_spotfacer, other, unknown };
enum class PilotKind : std::uint8_t { integral, removable, none, unknown };
enum class Retention : std::uint8_t { set_screw, threaded, detent, cross_pin, sleeve, other };
enum class Condition : std::uint8_t { good, fair, dull, dirty, rough, broken }; // best first
enum class How : std::uint8_t {
    unstated,
    mark,
    rule,
    caliper,
    micrometer,
    pin_gauge,
    test_hole,
    guess
};
enum class Tried : std::uint8_t { slides_and_holds, slides, binds, loose, will_not_go };

[[nodiscard]] std::string_view to_text(BodyKind);
[[nodiscard]] std::string_view to_text(PilotKind);
[[nodiscard]] std::string_view to_text(Retention);
[[nodiscard]] std::string_view to_text(Condition);
[[nodiscard]] std::string_view to_text(How);
[[nodiscard]] std::string_view to_text(Tried);

[[nodiscard]] BodyKind parse_body_kind(std::string_view text);
[[nodiscard]] PilotKind parse_pilot_kind(std::string_view text);
[[nodiscard]] Retention parse_retention(std::string_view text);
[[nodiscard]] Condition parse_condition(std::string_view text);
[[nodiscard]] How parse_how(std::string_view text);     // empty is How::unstated
[[nodiscard]] Tried parse_tried(std::string_view text); // also `no`, `is loose`, `holds`

} // namespace trade
