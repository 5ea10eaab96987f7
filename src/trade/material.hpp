// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Finding the material that people name as they type it: `1018`, `6061-T6`, `grey iron class 30`.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "trade/practice.hpp"
#include "trade/tables.hpp"

namespace trade {

// `refused`, `fire`, `dwell`, `coolant`, `self-feed`, `heat`, `dust`.
[[nodiscard]] std::string_view matter_word(Matter matter);
// Throws std::out_of_range for any other word.
[[nodiscard]] Matter matter_of(std::string_view word);

// What an everyday name is taken as: `mild steel`, for one, as 1018.
struct EverydayMaterial {
    std::string word;     // `mild steel`
    std::string material; // a name of the table
    bool own = false;     // the shop's choice
};

// The rows of practice that say so, in their order. Their names are `material ` and the word.
[[nodiscard]] std::vector<EverydayMaterial>
everyday_materials(const std::vector<PracticeRow>& practice);

// The word of such a row's name, or nothing.
[[nodiscard]] std::optional<std::string_view> everyday_word(std::string_view practice_name);

// The one material whose name has every word of the text, in any order and case. Signs part words;
// three letters or more stand for the word that they begin; a number must be whole. The whole name
// means that material even where another has all its words, and an everyday name what it is taken
// as, which `asked_as` then says. Words such as AISI and type say nothing; British spellings, mild
// and nodular are known. Throws error::BadData: no words, several materials (it names them), none
// (the hint names near ones).
[[nodiscard]] Material find_material(std::string_view text, const std::vector<Material>& materials,
                                     const std::vector<EverydayMaterial>& everyday = {});

// Throws error::BadData with the reason for a material that is not to be cut here.
void check_cut_here(const Material& material);

} // namespace trade
