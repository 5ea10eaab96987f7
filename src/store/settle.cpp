// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/settle.hpp"

#include "store/chain.hpp"

#include <algorithm>
#include <utility>

namespace store {

void Settler::take(Entry entry) {
    const std::int64_t next = entry.id;
    if (auto held = std::exchange(held_, std::move(entry)))
        settle(std::move(*held), next);
}

void Settler::finish() {
    if (auto held = std::exchange(held_, std::nullopt))
        settle(std::move(*held), std::nullopt);
}

std::int64_t Settler::last() const {
    return std::max(greatest_, chain_.empty() ? 0 : chain_.rbegin()->first);
}

// Empty: the chain does not say.
std::optional<bool> Settler::fits_at(Entry entry, std::int64_t id) const {
    const auto place = chain_.find(id);
    const auto former = chain_.find(id - 1);
    if (place == chain_.end() || (former == chain_.end() && place != chain_.begin()))
        return std::nullopt;
    entry.id = id;
    return place->second ==
           place_of(entry, former == chain_.end() ? std::nullopt : std::optional(former->second));
}

void Settler::settle(Entry entry, std::optional<std::int64_t> next) {
    const std::int64_t due = former_ + 1;
    std::optional<bool> fits = fits_at(entry, entry.id);
    if (entry.id != due && fits != true) {
        const auto fits_when_due = fits_at(entry, due);
        if (fits_when_due == true || (!fits_when_due && !fits && next == due + 1)) {
            entry.id = due;
            fits = fits_when_due;
        } else if (!fits && chain_whole_ && entry.id > chain_.begin()->first) {
            fits = false; // nothing was ever written there
        }
    }
    const bool sound = fits.value_or(true) && fits_its_sum(entry);
    former_ = sound ? entry.id : due;
    if (sound || chain_.contains(entry.id) || !chain_whole_) {
        greatest_ = std::max(greatest_, entry.id);
        put_(entry, sound);
    }
}

} // namespace store
