// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Which bodies can take a pilot, and which have one. Asked of the file body by body, so that one
// pilot costs the same in a catalogue of any size.
#pragma once

#include <map>
#include <optional>

#include "cli/record/records.hpp"
#include "store/file.hpp"

namespace cli::record {

class Berths {
  public:
    // `file` must outlive it.
    explicit Berths(const store::File& file) : file_(file) {}

    // Puts the pilot in the body it names, here only. What is wrong with that, if anything is: no
    // such body, one that takes no pilot, one that holds another.
    std::optional<Problem> take(const PilotRecord& pilot);

  private:
    const store::File& file_;
    std::map<std::int64_t, std::int64_t> taken_; // body to pilot; 0: one without a number yet
};

} // namespace cli::record
