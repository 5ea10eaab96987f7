// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "trade/material.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <string>
#include <utility>

#include "error/error.hpp"
#include "trade/text.hpp"

namespace trade {

namespace {

using Words = std::vector<std::string>;

constexpr std::array<std::string_view, 6> k_say_nothing{"aisi", "sae", "astm", "din", "en", "type"};

// What people write for what the table writes.
constexpr std::array<std::pair<std::string_view, std::string_view>, 4> k_other_words{
    {{"aluminium", "aluminum"}, {"grey", "gray"}, {"mild", "low carbon"}, {"nodular", "ductile"}}};

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

bool is_word_sign(char c) {
    return is_digit(c) || (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80;
}

Words words_of(std::string_view text) {
    std::string plain = folded(text);
    for (char& c : plain)
        c = is_word_sign(c) ? c : ' ';
    return split(plain, ' ');
}

Words typed_words(std::string_view text) {
    Words words;
    for (const auto& word : words_of(text)) {
        if (std::find(k_say_nothing.begin(), k_say_nothing.end(), word) != k_say_nothing.end())
            continue;
        const auto* other = std::find_if(k_other_words.begin(), k_other_words.end(),
                                         [&](const auto& pair) { return pair.first == word; });
        for (const auto& one : words_of(other == k_other_words.end() ? word : other->second))
            words.push_back(one);
    }
    return words;
}

bool stands_for(std::string_view typed, std::string_view word) {
    constexpr std::size_t k_least_letters = 3;
    return typed == word || (typed.size() >= k_least_letters && word.starts_with(typed) &&
                             std::none_of(typed.begin(), typed.end(), is_digit));
}

bool has_all(const Words& name, const Words& typed) {
    return std::all_of(typed.begin(), typed.end(), [&](const std::string& word) {
        return std::any_of(name.begin(), name.end(),
                           [&](const std::string& own) { return stands_for(word, own); });
    });
}

// How many signs the words have in common with those of a name, from the front of each.
std::size_t likeness(const Words& name, const Words& typed) {
    std::size_t sum = 0;
    for (const auto& word : typed) {
        std::size_t best = 0;
        for (const auto& own : name) {
            const auto end = std::mismatch(word.begin(), word.end(), own.begin(), own.end());
            best = std::max(best, static_cast<std::size_t>(end.first - word.begin()));
        }
        sum += best;
    }
    return sum;
}

// The materials most like the text, at most three; empty when none is like it.
Words near_names(const Words& typed, const std::vector<Material>& materials) {
    constexpr std::size_t k_least = 3; // signs: fewer are chance
    constexpr std::size_t k_most_names = 3;
    std::vector<std::pair<std::size_t, std::string>> near;
    for (const auto& material : materials)
        if (const auto like = likeness(words_of(material.name), typed); like >= k_least)
            near.emplace_back(like, material.name);
    std::stable_sort(near.begin(), near.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    Words names;
    for (const auto& [like, name] : near)
        if (like == near.front().first && names.size() < k_most_names)
            names.push_back(name);
    return names;
}

[[noreturn]] void refuse_none(std::string_view text, const Words& typed,
                              const std::vector<Material>& materials) {
    const auto near = near_names(typed, materials);
    const auto hint = near.empty() ? std::string("`counterpart material list` names them all")
                                   : fmt::format("near it: {}", fmt::join(near, "; "));
    throw error::BadData(fmt::format("no such material: '{}'", text), hint);
}

[[noreturn]] void refuse_several(std::string_view text, const std::vector<const Material*>& found) {
    constexpr std::size_t k_most_names = 8;
    Words names;
    for (const auto* material : found)
        if (names.size() < k_most_names)
            names.push_back(material->name);
    const auto more = found.size() - names.size();
    throw error::BadData(fmt::format("{} materials go by this: '{}'", found.size(), text),
                         fmt::format("say which: {}{}", fmt::join(names, "; "),
                                     more > 0 ? fmt::format("; and {} more", more) : ""));
}

} // namespace

Material find_material(std::string_view text, const std::vector<Material>& materials) {
    const auto typed = typed_words(text);
    if (typed.empty())
        throw error::BadData(fmt::format("no such material: '{}'", text),
                             "a name or a part of one: 1018, 6061, gray iron class 30");
    std::vector<const Material*> found;
    for (const auto& material : materials) {
        if (folded(material.name) == folded(text))
            return material;
        if (has_all(words_of(material.name), typed))
            found.push_back(&material);
    }
    if (found.empty())
        refuse_none(text, typed, materials);
    if (found.size() > 1)
        refuse_several(text, found);
    return *found.front();
}

} // namespace trade
