// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The words of a line of quick entry: one table, from which the line is read and the help printed.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace cli::intake {

enum class Sense {
    size,   // sizes follow, with x between them
    count,  // a whole number follows
    value,  // the word itself is the value
    how,    // tells how the sizes before it are known
    phrase, // a set or a place: some words follow
    text,   // text follows, to a semicolon or the end of the line
    rest,   // text follows, to the end of the line
    screw,  // held by a set screw; its size may follow
    taper,  // a Morse taper; its number follows
    unit,   // bare numbers are in this
    pilot,  // first in a line: the tool is a loose pilot; else sizes of the pilot of a body follow
    lost,   // a removable pilot that is not there
    all,    // what follows holds for the tools after this one too
};

struct Word {
    std::string_view text; // lower case, one blank between words
    Sense sense;
    std::string_view column;     // that it speaks of
    std::string_view value = {}; // that it stands for; empty: not known
};

// A word found in a line, and how much of the line it takes.
struct FoundWord {
    const Word* word = nullptr;
    std::size_t length = 0;
};

// The longest word at the start of `text`, in either case; blanks and hyphens are the same. With
// three letters or more a single word may be cut short, if it can be only one. Null when none is.
[[nodiscard]] FoundWord find_word(std::string_view text);

// Whether the text starts with a word in full, or a short form of two letters or more: ends a
// place.
[[nodiscard]] bool starts_with_word(std::string_view text);

// All spellings, for 'did you mean'.
[[nodiscard]] std::vector<std::string> word_list();

} // namespace cli::intake
