// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Each list is one table, in the order of its enumeration: the spelling that is printed, and other
// spellings that are read.
#include "trade/words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstddef>
#include <string>

#include "error/error.hpp"
#include "trade/text.hpp"

namespace trade {

namespace {

struct Word {
    std::string_view text;
    std::array<std::string_view, 3> also{};
};

constexpr std::array<Word, 5> k_body_kinds{{
    {"counterbore", {}},
    {"spotfacer", {"spotface"}},
    {"back spotfacer", {"back spotface"}},
    {"other", {}},
    {"unknown", {}},
}};

constexpr std::array<Word, 4> k_pilot_kinds{{
    {"integral", {"solid"}},
    {"removable", {}},
    {"none", {}},
    {"unknown", {}},
}};

constexpr std::array<Word, 6> k_retentions{{
    {"set screw", {"setscrew", "grub screw"}},
    {"threaded", {"thread"}},
    {"detent", {}},
    {"cross pin", {}},
    {"sleeve", {}},
    {"other", {}},
}};

constexpr std::array<Word, 6> k_conditions{{
    {"good", {}},
    {"fair", {}},
    {"dull", {"blunt"}},
    {"dirty", {}},
    {"rough", {}},
    {"broken", {}},
}};

constexpr std::array<Word, 8> k_hows{{
    {"unstated", {}},
    {"mark", {"marked", "marking"}},
    {"rule", {"steel rule"}},
    {"caliper", {"calipers", "calliper", "callipers"}},
    {"micrometer", {"micrometre"}},
    {"pin gauge", {"pin gage", "gauge pin"}},
    {"test hole", {}},
    {"guess", {"guessed"}},
}};

constexpr std::array<Word, 5> k_tried{{
    {"slides and holds", {"holds"}},
    {"slides", {}},
    {"binds", {}},
    {"loose", {"is loose"}},
    {"will not go", {"no", "will not"}},
}};

// Underscores and hyphens stand for blanks.
std::string spaced(std::string_view text) {
    std::string result(text);
    std::replace(result.begin(), result.end(), '_', ' ');
    std::replace(result.begin(), result.end(), '-', ' ');
    return folded(result);
}

template <typename Enum, std::size_t Count>
std::string_view text_of(const std::array<Word, Count>& words, Enum value) {
    return words.at(static_cast<std::size_t>(value)).text;
}

template <typename Enum, std::size_t Count>
Enum parse_word(const std::array<Word, Count>& words, std::string_view what,
                std::string_view text) {
    const auto wanted = spaced(text);
    std::string choices;
    for (std::size_t i = 0; i < Count; ++i) {
        const auto& word = words.at(i);
        const auto& also = word.also;
        if (!wanted.empty() &&
            (wanted == word.text || std::find(also.begin(), also.end(), wanted) != also.end()))
            return static_cast<Enum>(i);
        choices += (i == 0 ? "" : ", ") + std::string(word.text);
    }
    throw error::BadData(fmt::format("{}: not one of its words: '{}'", what, text),
                         "one of: " + choices);
}

} // namespace

std::string_view to_text(BodyKind value) {
    return text_of(k_body_kinds, value);
}
std::string_view to_text(PilotKind value) {
    return text_of(k_pilot_kinds, value);
}
std::string_view to_text(Retention value) {
    return text_of(k_retentions, value);
}
std::string_view to_text(Condition value) {
    return text_of(k_conditions, value);
}
std::string_view to_text(How value) {
    return text_of(k_hows, value);
}
std::string_view to_text(Tried value) {
    return text_of(k_tried, value);
}

BodyKind parse_body_kind(std::string_view text) {
    return parse_word<BodyKind>(k_body_kinds, "kind of body", text);
}
PilotKind parse_pilot_kind(std::string_view text) {
    return parse_word<PilotKind>(k_pilot_kinds, "kind of pilot", text);
}
Retention parse_retention(std::string_view text) {
    return parse_word<Retention>(k_retentions, "how a pilot is held", text);
}
Condition parse_condition(std::string_view text) {
    return parse_word<Condition>(k_conditions, "condition", text);
}
How parse_how(std::string_view text) {
    if (trimmed(text).empty())
        return How::unstated;
    return parse_word<How>(k_hows, "how a size is known", text);
}
Tried parse_tried(std::string_view text) {
    return parse_word<Tried>(k_tried, "how it went", text);
}

} // namespace trade
