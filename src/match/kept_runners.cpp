// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/kept_runners.hpp"

#include <algorithm>

namespace match {

namespace {

// Those of the same holes with its misfits, and those of one that is given.
constexpr std::size_t k_kept = 3;

} // namespace

std::shared_ptr<const Runners> KeptRunners::of(Runners::Which which, const Job& job,
                                               const Windows& windows, trade::Detail detail) {
    const auto found = std::find_if(last_.begin(), last_.end(), [&](const auto& runners) {
        return runners->serve(which, job, detail);
    });
    if (found != last_.end()) {
        std::rotate(last_.begin(), found, found + 1);
        return last_.front();
    }
    if (last_.size() == k_kept)
        last_.pop_back(); // before the new ones are made, which may be many
    last_.insert(last_.begin(),
                 std::make_shared<const Runners>(which, job, rack_, trials_, windows, detail));
    return last_.front();
}

} // namespace match
