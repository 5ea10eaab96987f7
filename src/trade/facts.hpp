// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the fit rules look at of a body and of a pilot: no texts, and small enough to hold a million
// of each in memory.
#pragma once

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string_view>

#include "length/range.hpp"
#include "trade/body.hpp"
#include "trade/pilot.hpp"

namespace trade {

// The limits of a dimension, or unknown, in eight bytes: lengths up to 2.1 m, longer ones count as
// that; no tool is.
class Limits {
  public:
    constexpr Limits() = default;
    constexpr Limits(const length::Range& range) : lo_(small(range.lo)), hi_(small(range.hi)) {}
    constexpr Limits(const length::MaybeRange& range) {
        if (range)
            *this = Limits(*range);
    }
    // Whole nanometres, lo <= hi.
    [[nodiscard]] static constexpr Limits of_nm(std::int64_t lo, std::int64_t hi) {
        return length::Range{length::Length::from_nm(lo), length::Length::from_nm(hi)};
    }

    constexpr explicit operator bool() const { return lo_ <= hi_; }
    // The range; only where it is known.
    constexpr length::Range operator*() const {
        return {length::Length::from_nm(lo_), length::Length::from_nm(hi_)};
    }
    constexpr operator length::MaybeRange() const {
        return *this ? length::MaybeRange(**this) : std::nullopt;
    }
    constexpr bool operator==(const Limits&) const = default;

  private:
    static constexpr std::int32_t small(length::Length value) {
        constexpr std::int64_t most = INT32_MAX;
        return static_cast<std::int32_t>(std::clamp(value.nm(), -most, most));
    }
    std::int32_t lo_ = 1; // above hi_: unknown
    std::int32_t hi_ = 0;
};

// A shank as the spindle takes it: straight, a numbered Morse taper, or another.
class Shank {
  public:
    constexpr Shank() = default;
    // `` or `straight`; `Morse 2`, `MT2`; anything else is another.
    explicit Shank(std::string_view recorded);
    [[nodiscard]] constexpr bool straight() const { return code_ == k_straight; }
    [[nodiscard]] constexpr std::optional<int> morse() const {
        return code_ >= 0 ? std::optional<int>(code_) : std::nullopt;
    }
    constexpr bool operator==(const Shank&) const = default;

  private:
    static constexpr std::int8_t k_straight = -1;
    static constexpr std::int8_t k_other = -2;
    std::int8_t code_ = k_straight;
};

struct BodyFacts {
    std::int32_t number = 0;
    BodyKind kind = BodyKind::unknown;
    PilotKind pilot_kind = PilotKind::unknown;
    std::optional<Retention> retention;
    std::optional<Condition> condition;
    bool gone = false;        // retired or on loan
    bool work_listed = false; // a list of work before use
    Shank shank;
    Limits set_screw; // major diameter; unknown: none recorded
    Limits cut_dia;
    Limits pilot_dia;
    Limits pilot_length;
    Limits bore;
    Limits bore_depth;
    Limits set_screw_at;
    Limits reach;
    Limits shank_dia;

    bool operator==(const BodyFacts&) const = default;
};

struct PilotFacts {
    std::int32_t number = 0;
    std::int32_t in_body = 0; // the body it is in; 0: none
    std::optional<Condition> condition;
    std::optional<bool> has_flat;
    bool gone = false;        // retired or on loan
    bool home_gone = false;   // the body it is in is
    bool work_listed = false; // a list of work before use
    Limits pilot_dia;
    Limits pilot_length;
    Limits shank_dia;
    Limits shank_length;
    Limits flat_at;
    Limits flat_length;

    bool operator==(const PilotFacts&) const = default;
};

// Throws error::BadData for a set screw that is no size.
[[nodiscard]] BodyFacts facts_of(const Body& body);
// `home`: the body it is in, if that is among those at hand.
[[nodiscard]] PilotFacts facts_of(const Pilot& pilot, const Body* home);

[[nodiscard]] inline bool taken_as_integral(const BodyFacts& body) {
    return body.pilot_kind == PilotKind::integral ||
           (body.pilot_kind == PilotKind::unknown && body.pilot_dia);
}
[[nodiscard]] inline bool may_take_pilot(const BodyFacts& body) {
    return body.pilot_kind == PilotKind::removable ||
           (body.pilot_kind == PilotKind::unknown && !body.pilot_dia);
}

// How the body holds a pilot: as recorded, or by the set screw that is recorded.
[[nodiscard]] inline std::optional<Retention> holds_by(const BodyFacts& body) {
    if (!body.retention && (body.set_screw || body.set_screw_at))
        return Retention::set_screw;
    return body.retention;
}

} // namespace trade
