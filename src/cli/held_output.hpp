// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a command prints is held back until it is done, so that one that fails has printed nothing.
// No more than a mebibyte is: of a long list the rest goes out as it comes.
#pragma once

#include <ostream>
#include <streambuf>
#include <string>

namespace cli {

class HeldOutput : public std::streambuf {
  public:
    explicit HeldOutput(std::ostream& to) : to_(to) {}

    // Writes what is held; false if that fails.
    bool release() {
        to_ << held_;
        held_.clear();
        return to_.good();
    }

  private:
    static constexpr std::size_t k_most = 1 << 20;

    std::streamsize xsputn(const char* text, std::streamsize size) override {
        held_.append(text, static_cast<std::size_t>(size));
        return held_.size() <= k_most || release() ? size : 0;
    }
    int_type overflow(int_type byte) override {
        const char text = traits_type::to_char_type(byte);
        return xsputn(&text, 1) == 1 ? byte : traits_type::eof();
    }

    std::ostream& to_;
    std::string held_;
};

} // namespace cli
