// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// How sure a row of the tables is, in words for people.
#pragma once

#include <string_view>

namespace trade {

// The table's own word, but for a row that is known from memory.
[[nodiscard]] inline std::string_view how_sure(std::string_view confidence) {
    return confidence == "memory" ? "not checked against the standard" : confidence;
}

// The same where a column is narrow.
[[nodiscard]] inline std::string_view how_sure_shortly(std::string_view confidence) {
    return confidence == "memory" ? "not checked" : confidence;
}

// By the note of its row: a head that nobody could corroborate answers by name, or where there is
// no other.
[[nodiscard]] inline bool doubtful(std::string_view note) {
    return note.find("doubtful") != std::string_view::npos;
}

// Whether the note of a head bears on there being such a screw, so that its answer says it.
[[nodiscard]] inline bool to_be_said(std::string_view note) {
    return doubtful(note) || note.find("not in the tables") != std::string_view::npos;
}

} // namespace trade
