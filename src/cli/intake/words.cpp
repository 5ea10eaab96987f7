// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/intake/words.hpp"

#include <algorithm>

namespace cli::intake {

namespace {

constexpr Word k_words[] = {
    {"cut", Sense::size, "cut_dia"},
    {"cutter", Sense::size, "cut_dia"},
    {"c", Sense::size, "cut_dia"},
    {"long", Sense::size, "pilot_length"},
    {"l", Sense::size, "pilot_length"},
    {"bore", Sense::size, "bore"},
    {"b", Sense::size, "bore"},
    {"deep", Sense::size, "bore_depth"},
    {"depth", Sense::size, "bore_depth"},
    {"d", Sense::size, "bore_depth"},
    {"at", Sense::size, "set_screw_at"},
    {"reach", Sense::size, "reach"},
    {"r", Sense::size, "reach"},
    {"shank", Sense::size, "shank_dia"},
    {"s", Sense::size, "shank_dia"},
    {"flat", Sense::size, "flat_at"},
    {"no flat", Sense::value, "flat_at", "none"},

    {"flutes", Sense::count, "flutes"},
    {"flute", Sense::count, "flutes"},
    {"f", Sense::count, "flutes"},
    {"number", Sense::count, "number"},
    {"in", Sense::count, "in_body"},

    {"counterbore", Sense::value, "kind", "counterbore"},
    {"counterbores", Sense::value, "kind", "counterbore"},
    {"cb", Sense::value, "kind", "counterbore"},
    {"spotfacer", Sense::value, "kind", "spotfacer"},
    {"spotfacers", Sense::value, "kind", "spotfacer"},
    {"spotface", Sense::value, "kind", "spotfacer"},
    {"sf", Sense::value, "kind", "spotfacer"},
    {"back spotfacer", Sense::value, "kind", "back spotfacer"},
    {"back", Sense::value, "kind", "back spotfacer"},
    {"other", Sense::value, "kind", "other"},
    {"unknown", Sense::value, "kind", "unknown"},
    {"unknown kind", Sense::value, "kind", "unknown"},
    {"kind unknown", Sense::value, "kind", "unknown"},

    {"pilot", Sense::pilot, "pilot_dia"},
    {"pilots", Sense::pilot, "pilot_dia"},
    {"loose pilot", Sense::pilot, "pilot_dia"},
    {"integral", Sense::value, "pilot_kind", "integral"},
    {"solid", Sense::value, "pilot_kind", "integral"},
    {"removable", Sense::value, "pilot_kind", "removable"},
    {"no pilot", Sense::value, "pilot_kind", "none"},
    {"pilot unknown", Sense::value, "pilot_kind", "unknown"},
    {"unknown pilot", Sense::value, "pilot_kind", "unknown"},
    {"lost", Sense::lost, "pilot_kind", "removable"},
    {"pilot lost", Sense::lost, "pilot_kind", "removable"},
    {"lost pilot", Sense::lost, "pilot_kind", "removable"},
    {"fluted", Sense::value, "fluted", "yes"},
    {"plain", Sense::value, "fluted", "no"},
    {"fluted unknown", Sense::value, "fluted", ""},

    {"screw", Sense::screw, "set_screw"},
    {"set screw", Sense::screw, "set_screw"},
    {"grub screw", Sense::screw, "set_screw"},
    {"threaded", Sense::value, "retention", "threaded"},
    {"detent", Sense::value, "retention", "detent"},
    {"cross pin", Sense::value, "retention", "cross pin"},
    {"sleeve", Sense::value, "retention", "sleeve"},
    {"held other", Sense::value, "retention", "other"},
    {"held unknown", Sense::value, "retention", ""},

    {"holds", Sense::value, "tried", "slides and holds"},
    {"slides and holds", Sense::value, "tried", "slides and holds"},
    {"slides", Sense::value, "tried", "slides"},
    {"binds", Sense::value, "tried", "binds"},
    {"loose", Sense::value, "tried", "loose"},
    {"will not go", Sense::value, "tried", "will not go"},

    {"good", Sense::value, "condition", "good"},
    {"fair", Sense::value, "condition", "fair"},
    {"dull", Sense::value, "condition", "dull"},
    {"blunt", Sense::value, "condition", "dull"},
    {"dirty", Sense::value, "condition", "dirty"},
    {"rough", Sense::value, "condition", "rough"},
    {"broken", Sense::value, "condition", "broken"},
    {"condition unknown", Sense::value, "condition", ""},

    {"straight", Sense::value, "shank_kind", "straight"},
    {"morse", Sense::taper, "shank_kind", "Morse"},
    {"mt", Sense::taper, "shank_kind", "Morse"},
    {"hss", Sense::value, "material", "high-speed steel"},
    {"high speed steel", Sense::value, "material", "high-speed steel"},
    {"carbon steel", Sense::value, "material", "carbon steel"},
    {"silver steel", Sense::value, "material", "silver steel"},
    {"material", Sense::text, "material"},

    {"mark", Sense::how, "", "mark"},
    {"rule", Sense::how, "", "rule"},
    {"caliper", Sense::how, "", "caliper"},
    {"calipers", Sense::how, "", "caliper"},
    {"cal", Sense::how, "", "caliper"},
    {"micrometer", Sense::how, "", "micrometer"},
    {"mic", Sense::how, "", "micrometer"},
    {"pin gauge", Sense::how, "", "pin gauge"},
    {"pin", Sense::how, "", "pin gauge"},
    {"test hole", Sense::how, "", "test hole"},
    {"guess", Sense::how, "", "guess"},

    {"set", Sense::phrase, "set"},
    {"place", Sense::phrase, "place"},
    {"p", Sense::phrase, "place"},
    {"work", Sense::text, "work"},
    {"w", Sense::text, "work"},
    {"marked", Sense::text, "marking"},
    {"m", Sense::text, "marking"},
    {"note", Sense::rest, "note"},
    {"n", Sense::rest, "note"},
    {"photo", Sense::text, "photo"},

    {"mm", Sense::unit, "", "mm"},
    {"inch", Sense::unit, "", "in"},
    {"inches", Sense::unit, "", "in"},
    {"all", Sense::all, ""},
};

constexpr std::size_t k_shortest_cut = 3;

bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

bool is_gap(char c) {
    return c == ' ' || c == '\t' || c == '-';
}

// How much of `text` the word takes; 0 if it is not there.
std::size_t taken_by(const Word& word, std::string_view text) {
    std::size_t at = 0;
    for (const char c : word.text) {
        const std::size_t before = at;
        if (c == ' ') {
            while (at < text.size() && is_gap(text[at]))
                ++at;
            if (at == before)
                return 0;
        } else if (at == text.size() || lower(text[at++]) != c) {
            return 0;
        }
    }
    // A single letter is a short form only as it stands: `B 3/16` begins a place, not a bore.
    if (word.text.size() == 1 && text.front() != word.text.front())
        return 0;
    return at < text.size() && is_letter(text[at]) ? 0 : at;
}

bool same_meaning(const Word& a, const Word& b) {
    return a.sense == b.sense && a.column == b.column && a.value == b.value;
}

FoundWord find_cut_short(std::string_view text) {
    const auto end = std::find_if_not(text.begin(), text.end(), is_letter);
    const auto length = static_cast<std::size_t>(end - text.begin());
    if (length < k_shortest_cut)
        return {};
    FoundWord found;
    for (const Word& word : k_words) {
        const bool starts =
            word.text.size() > length && word.text.find(' ') == std::string_view::npos &&
            std::equal(text.begin(), end, word.text.begin(),
                       [](char typed, char known) { return lower(typed) == known; });
        if (!starts)
            continue;
        if (found.word != nullptr && !same_meaning(*found.word, word))
            return {};
        found = {&word, length};
    }
    return found;
}

} // namespace

FoundWord find_word(std::string_view text) {
    FoundWord longest;
    for (const Word& word : k_words) {
        const std::size_t length = taken_by(word, text);
        if (length > longest.length)
            longest = {&word, length};
    }
    return longest.word != nullptr ? longest : find_cut_short(text);
}

bool starts_with_word(std::string_view text) {
    return std::any_of(std::begin(k_words), std::end(k_words), [text](const Word& word) {
        return word.text.size() > 1 && taken_by(word, text) > 0;
    });
}

std::vector<std::string> word_list() {
    std::vector<std::string> words;
    for (const Word& word : k_words)
        words.emplace_back(word.text);
    return words;
}

} // namespace cli::intake
