// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "trade/material.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <optional>
#include <stdexcept>
#include <string>
#include <utility>

#include "error/error.hpp"
#include "trade/text.hpp"

namespace trade {

namespace {

using Words = std::vector<std::string>;

constexpr std::array<std::string_view, 6> k_say_nothing{"aisi", "sae", "astm", "din", "en", "type"};

// In the order of Matter.
constexpr std::array<std::string_view, 7> k_matters{"refused",   "fire", "dwell", "coolant",
                                                    "self-feed", "heat", "dust"};

// What people write for what the table writes.
constexpr std::array<std::pair<std::string_view, std::string_view>, 6> k_other_words{
    {{"aluminium", "aluminum"},
     {"grey", "gray"},
     {"mild", "low carbon"},
     {"nodular", "ductile"},
     {"becu", "beryllium copper"},
     {"cad", "cadmium"}}};

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

const Material* named(std::string_view name, const std::vector<Material>& materials) {
    const auto found = std::find_if(materials.begin(), materials.end(), [&](const Material& row) {
        return folded(row.name) == folded(name);
    });
    return found == materials.end() ? nullptr : &*found;
}

// In order, without `steel` where there is more: `stainless steel` is `stainless`.
Words everyday_words(Words words) {
    std::sort(words.begin(), words.end());
    if (words.size() > 1)
        words.erase(std::remove(words.begin(), words.end(), "steel"), words.end());
    return words;
}

// What the everyday name stands for, marked with it; the shop's own come last and count.
std::optional<Material> usual_material(const Words& typed, const std::vector<Material>& materials,
                                       const std::vector<EverydayMaterial>& everyday) {
    const auto asked = everyday_words(typed);
    const auto found = std::find_if(everyday.rbegin(), everyday.rend(), [&](const auto& usual) {
        return everyday_words(typed_words(usual.word)) == asked;
    });
    if (found == everyday.rend())
        return std::nullopt;
    const auto* row = named(found->material, materials);
    if (!row)
        throw error::BadData(
            fmt::format("practice: material {}: no such material: '{}'", found->word,
                        found->material),
            fmt::format("`practice set \"material {}\" NAME`, a name of `material list`",
                        found->word));
    Material material = *row;
    material.asked_as = found->word;
    return material;
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

std::string_view matter_word(Matter matter) {
    return k_matters.at(static_cast<std::size_t>(matter));
}

Matter matter_of(std::string_view word) {
    for (std::size_t at = 0; at < k_matters.size(); ++at)
        if (k_matters[at] == word)
            return static_cast<Matter>(at);
    throw std::out_of_range("no such matter of a material: " + std::string(word));
}

const Restriction* Material::restriction(Matter about) const {
    const auto found = std::find_if(restrictions.begin(), restrictions.end(),
                                    [&](const Restriction& one) { return one.about == about; });
    return found == restrictions.end() ? nullptr : &*found;
}

std::optional<std::string_view> everyday_word(std::string_view practice_name) {
    constexpr std::string_view k_before = "material ";
    if (!practice_name.starts_with(k_before))
        return std::nullopt;
    return trimmed(practice_name.substr(k_before.size()));
}

std::vector<EverydayMaterial> everyday_materials(const std::vector<PracticeRow>& practice) {
    std::vector<EverydayMaterial> everyday;
    for (const auto& row : practice)
        if (const auto word = everyday_word(row.name))
            everyday.push_back({std::string(*word), row.value, row.own});
    return everyday;
}

void check_cut_here(const Material& material) {
    if (const auto* refused = material.restriction(Matter::refused))
        throw error::BadData(
            fmt::format("no cutting steps for this material: '{}'", material.name),
            fmt::format("{} ({}); local rules come first", refused->words, refused->origin.source));
}

Material find_material(std::string_view text, const std::vector<Material>& materials,
                       const std::vector<EverydayMaterial>& everyday) {
    const auto typed = typed_words(text);
    if (typed.empty())
        throw error::BadData(fmt::format("no such material: '{}'", text),
                             "a name or a part of one: 1018, 6061, gray iron class 30");
    if (const auto* row = named(text, materials))
        return *row;
    if (auto usual = usual_material(typed, materials, everyday))
        return *usual;
    std::vector<const Material*> found;
    for (const auto& material : materials)
        if (has_all(words_of(material.name), typed))
            found.push_back(&material);
    if (found.empty())
        refuse_none(text, typed, materials);
    if (found.size() > 1)
        refuse_several(text, found);
    return *found.front();
}

} // namespace trade
