// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The entries of a damaged history, each put at its place: by its number, by the chain, and by
// those that stand around it, lest one whose number was damaged be lost.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>

#include "store/replay.hpp"

namespace store {

class Settler {
  public:
    using Put = std::function<void(const Entry& entry, bool sound)>;

    explicit Settler(Put put) : put_(std::move(put)) {}

    // The chain's rows; all of them before the first entry. `whole`: there are no others.
    void add_place(std::int64_t entry, std::string sum) { chain_[entry] = std::move(sum); }
    void set_chain_whole(bool whole) { chain_whole_ = whole && !chain_.empty(); }

    // The next entry as it stands in the file, and after the last one.
    void take(Entry entry);
    void finish();

    [[nodiscard]] bool chain_whole() const { return chain_whole_; }
    [[nodiscard]] std::int64_t last() const;

  private:
    [[nodiscard]] std::optional<bool> fits_at(Entry entry, std::int64_t id) const;
    void settle(Entry entry, std::optional<std::int64_t> next);

    Put put_;
    std::map<std::int64_t, std::string> chain_;
    bool chain_whole_ = false;
    std::optional<Entry> held_;
    std::int64_t former_ = 0; // where the one before stands
    std::int64_t greatest_ = 0;
};

} // namespace store
