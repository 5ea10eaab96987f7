// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Choosing among the heads of the tables. Only src/trade includes this.
#pragma once

#include <string>
#include <vector>

#include "trade/screw_words.hpp"
#include "trade/tables.hpp"

namespace trade {

// `pitch` in canonical spelling.
[[nodiscard]] bool has_pitch(const Head& head, const std::string& pitch);

// What was asked with nothing left open but whether there is such a row: a bare number means a
// number size or inches, a form is said, and at most one series. Throws error::BadData.
[[nodiscard]] AskedScrew settled(AskedScrew asked, const ScrewWords& words, const Tables& tables);

// The heads of the form at this size and pitch, the one that answers first: the series that was
// named, else the larger of the standing ones (by diameter, then height, then table order). The
// other standing ones follow; withdrawn ones only come by name.
// Throws error::NoSuchRecord (no such size), error::BadData (a pitch that no row has).
[[nodiscard]] std::vector<Head> choose_heads(const AskedScrew& asked, const ScrewWords& words,
                                             const Tables& tables);

} // namespace trade
