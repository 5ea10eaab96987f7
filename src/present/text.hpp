// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Text on its way to a terminal: what it may hold, how wide it is, where it breaks. Input is
// UTF-8; bytes that are not are shown as escapes.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace present {

// Stored text made safe to print in one line: control characters, line and paragraph separators,
// bidi controls and bytes that are not UTF-8 become visible escapes (`\n`, `\x1b`, `\u202e`).
[[nodiscard]] std::string safe(std::string_view text);

// The same, but line ends stay: for messages of our own that quote what was given.
[[nodiscard]] std::string safe_lines(std::string_view text);

// Columns that the text takes: combining marks none, East Asian wide characters two.
[[nodiscard]] std::size_t display_width(std::string_view text);

// Cut to at most `columns`, ending in `~` where something was cut off.
[[nodiscard]] std::string cut(std::string_view text, std::size_t columns);

// Broken into lines of at most `columns` at spaces; a longer word is broken anywhere. Line ends in
// the text stand. Empty text gives no lines.
[[nodiscard]] std::vector<std::string> wrapped(std::string_view text, std::size_t columns);

// Filled up with spaces to `columns`.
[[nodiscard]] std::string padded(std::string_view text, std::size_t columns, bool right);

} // namespace present
