// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Emphasis on a terminal. Nothing may depend on it: the same words are there without.
#pragma once

#include <string>
#include <string_view>

namespace present {

struct Style {
    bool colour = false;

    [[nodiscard]] std::string strong(std::string_view text) const { return in("1", text); }
    [[nodiscard]] std::string good(std::string_view text) const { return in("32", text); }
    [[nodiscard]] std::string doubtful(std::string_view text) const { return in("33", text); }
    [[nodiscard]] std::string bad(std::string_view text) const { return in("31", text); }

  private:
    [[nodiscard]] std::string in(std::string_view code, std::string_view text) const {
        if (!colour)
            return std::string(text);
        return "\033[" + std::string(code) + "m" + std::string(text) + "\033[0m";
    }
};

} // namespace present
