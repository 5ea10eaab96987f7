// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Alike tools, and those that can go, for people and for programs.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "match/duplicates.hpp"
#include "present/json.hpp"
#include "present/style.hpp"

namespace present {

// What the numbers and places of an answer stand for.
struct DuplicatesNames {
    std::vector<std::string> house;                // the first questions, as listed
    std::vector<std::string> listed;               // the screw of each of the others
    std::function<std::string(std::int64_t)> tool; // `12: counterbore 7/16, ...; rack 2`
};

[[nodiscard]] std::string duplicates_text(const match::Duplicates& duplicates,
                                          const DuplicatesNames& names, const Style& style,
                                          std::size_t width);
[[nodiscard]] Json duplicates_json(const match::Duplicates& duplicates,
                                   const DuplicatesNames& names);

} // namespace present
