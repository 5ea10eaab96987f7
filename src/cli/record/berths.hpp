// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Which bodies can take a pilot, and which have one.
#pragma once

#include <map>
#include <optional>

#include "cli/record/records.hpp"
#include "store/file.hpp"

namespace cli::record {

class Berths {
  public:
    explicit Berths(const store::File& file);

    // Puts the pilot in the body it names, here only. What is wrong with that, if anything is: no
    // such body, one that takes no pilot, one that holds another.
    std::optional<Problem> take(const PilotRecord& pilot);

  private:
    enum class Kind { takes_pilots, takes_none, retired };
    std::map<std::int64_t, Kind> bodies_;          // by number
    std::map<std::int64_t, std::int64_t> holding_; // body to pilot; 0: one without a number yet
};

} // namespace cli::record
