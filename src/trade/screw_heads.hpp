// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Choosing among the heads of the tables. Only src/trade includes this.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "trade/screw_words.hpp"
#include "trade/tables.hpp"

namespace trade {

// The tap drills of the threads that a head is made with, in table order: of the size, or of a
// shoulder screw's thread. A series named after a thread (BSW, BA) has that thread;
// the others have those that no series is named after.
[[nodiscard]] std::vector<TapDrill> tap_drills_for(const Head& head, const Tables& tables);

// The tap drill of this pitch; without one, the first, coarse first, that the head is listed with.
// `pitch` in canonical spelling.
[[nodiscard]] std::optional<TapDrill> tap_drill_for(const Head& head, const std::string& pitch,
                                                    const Tables& tables);

// `pitch` in canonical spelling.
[[nodiscard]] bool has_pitch(const Head& head, const std::string& pitch);
// Listed with it, or of a thread that has it; an empty pitch is any.
[[nodiscard]] bool may_have_pitch(const Head& head, const std::string& pitch, const Tables& tables);

// Each once, in the order of the rows; pitches: those listed, then the others of the threads.
[[nodiscard]] std::vector<std::string> series_of(const std::vector<Head>& heads);
[[nodiscard]] std::vector<std::string> pitches_of(const std::vector<Head>& heads,
                                                  const Tables& tables);

// What was asked with nothing left open but whether there is such a row: a form, at most one
// series, a pitch told from a length. Throws error::BadData, also for a bare number that may be a
// number size or something else.
[[nodiscard]] AskedScrew settled(AskedScrew asked, const ScrewWords& words, const Tables& tables);

// The heads of the form at this size and pitch, the one that answers first: the series that was
// named, else the larger of the standing ones (by diameter, then height, then table order). The
// other standing ones follow; withdrawn ones only come by name, doubtful ones so or
// where there is no other. A pitch drops a head only where no
// thread of that head's kind has it, whether or not the head is listed with it: a head goes by
// size. Throws error::NoSuchRecord (no such size), error::BadData (a pitch that no row has).
[[nodiscard]] std::vector<Head> choose_heads(const AskedScrew& asked, const ScrewWords& words,
                                             const Tables& tables);

} // namespace trade
