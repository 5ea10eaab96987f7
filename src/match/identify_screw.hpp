// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a screw is: its measurements against every head of the tables.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "match/answer.hpp"

namespace match {

// What was measured of a screw.
struct ScrewFigures {
    length::MaybeRange head_dia; // of a hexagon, across corners
    length::MaybeRange head_height;
    length::MaybeRange key;       // of the socket; of a hexagon, across flats
    length::MaybeRange screw_dia; // over the thread, or of the shoulder
    std::optional<trade::Thread> thread;
};

// A row of the tables held against the figures.
struct HeadMatch {
    trade::Head head;
    bool withdrawn = false;
    std::vector<Reason> figures; // those that were compared, in the order above

    // Fail if any fails, unknown if any overlaps in part.
    [[nodiscard]] Verdict result() const;
};

// What one measurement would say of the heads that are left.
struct Decider {
    std::string what;                // head, height, key, thread, drive
    std::size_t apart = 0;           // pairs of heads that it tells apart for certain
    std::size_t pairs = 0;           // of so many
    std::vector<std::string> values; // what it is for each head left, in their order
};

struct ScrewIdentity {
    std::vector<HeadMatch> left;     // surely alike first, then table order
    std::vector<HeadMatch> conflict; // same size as one left, or nearest: what speaks against them
    // The measurement that tells most of those left apart, the first of head, height, key, thread,
    // drive among equals; absent: fewer than two are left, or nothing tells any of them apart.
    std::optional<Decider> decider;
    // Heads that no measurement tells from another that is left, by their place in `left`.
    std::vector<std::vector<std::size_t>> alike;
};

// Limits beyond the tables, all common practice, no source: a height without a printed least goes
// down to 6 % under its most; a key or hexagon may measure 3 % off its listed size; a thread
// measures up to 7 % under its basic diameter.
// At most `most_conflicts` conflicts are listed.
[[nodiscard]] ScrewIdentity identify_screw(const ScrewFigures& figures, const trade::Tables& tables,
                                           length::Unit unit, std::size_t most_conflicts);

} // namespace match
