// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A length in whole nanometres. 1/64 in, 0.00001 in and 0.000001 mm are exact, so nothing that a
// shop writes is ever rounded on the way in.
#pragma once

#include <compare>
#include <cstdint>

namespace length {

enum class Unit { inch, millimetre };

class Length {
  public:
    constexpr Length() = default;

    [[nodiscard]] static constexpr Length from_nm(std::int64_t nanometres) {
        return Length(nanometres);
    }
    [[nodiscard]] constexpr std::int64_t nm() const { return nm_; }

    constexpr auto operator<=>(const Length&) const = default;

    constexpr Length operator-() const { return Length(-nm_); }
    friend constexpr Length operator+(Length a, Length b) { return Length(a.nm_ + b.nm_); }
    friend constexpr Length operator-(Length a, Length b) { return Length(a.nm_ - b.nm_); }
    friend constexpr Length operator*(Length a, std::int64_t times) {
        return Length(a.nm_ * times);
    }
    // Toward zero; for halves and quarters of a size, where a nanometre does not matter.
    friend constexpr Length operator/(Length a, std::int64_t parts) {
        return Length(a.nm_ / parts);
    }

  private:
    constexpr explicit Length(std::int64_t nanometres) : nm_(nanometres) {}
    std::int64_t nm_ = 0;
};

inline constexpr std::int64_t k_nm_per_inch = 25'400'000;
inline constexpr std::int64_t k_nm_per_mm = 1'000'000;

// Whole sixty-fourths, hundred-thousandths and thousandths of an inch, micrometres and millimetres.
constexpr Length sixty_fourths(std::int64_t n) {
    return Length::from_nm(n * (k_nm_per_inch / 64));
}
constexpr Length inches_e5(std::int64_t n) {
    return Length::from_nm(n * (k_nm_per_inch / 100'000));
}
constexpr Length thousandths(std::int64_t n) {
    return Length::from_nm(n * (k_nm_per_inch / 1'000));
}
constexpr Length micrometres(std::int64_t n) {
    return Length::from_nm(n * 1'000);
}
constexpr Length millimetres(std::int64_t n) {
    return Length::from_nm(n * k_nm_per_mm);
}

} // namespace length
