// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Finding the material that people name as they type it: `1018`, `6061-T6`, `grey iron class 30`.
#pragma once

#include <string_view>
#include <vector>

#include "trade/tables.hpp"

namespace trade {

// The one material whose name has every word of the text, in any order and case. Signs part words;
// three letters or more stand for the word that they begin; a number must be whole. The whole name
// means that material even where another has all its words. Words such as AISI and type say
// nothing; British spellings, mild and nodular are known. Throws error::BadData: no words, several
// materials (it names them), none (the hint names near ones).
[[nodiscard]] Material find_material(std::string_view text, const std::vector<Material>& materials);

} // namespace trade
