// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// How far a long file has been read, on the terminal where errors go. Nothing anywhere else.
#pragma once

#include <chrono>
#include <cstddef>

namespace cli::transfer {

class Progress {
  public:
    Progress();
    ~Progress() { done(); }
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;

    void at(std::size_t row);
    void done(); // takes the line away

  private:
    bool terminal_;
    bool shown_ = false;
    std::chrono::steady_clock::time_point next_;
};

} // namespace cli::transfer
