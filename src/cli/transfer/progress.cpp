// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Written straight to the terminal, since what a command prints is kept until it ends.
#include "cli/transfer/progress.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <string_view>

namespace cli::transfer {

namespace {

using Clock = std::chrono::steady_clock;
constexpr std::chrono::milliseconds k_between{200};
constexpr std::string_view k_blank = "\r                    \r";

void write_line(std::string_view text) {
    // A terminal that is gone is no reason to stop.
    [[maybe_unused]] const ssize_t wrote = ::write(STDERR_FILENO, text.data(), text.size());
}

} // namespace

Progress::Progress() : terminal_(isatty(STDERR_FILENO) != 0), next_(Clock::now() + k_between) {}

void Progress::at(std::size_t row) {
    if (!terminal_ || Clock::now() < next_)
        return;
    write_line(fmt::format("\rrow {}", row));
    shown_ = true;
    next_ = Clock::now() + k_between;
}

void Progress::done() {
    if (shown_)
        write_line(k_blank);
    shown_ = false;
}

} // namespace cli::transfer
