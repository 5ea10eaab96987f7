// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a toolmaker would say against an answer. It does not go by the program's own rules: it looks
// at the records, takes sizes at random from what the tools, the drill and the screw may measure,
// and puts them together.
#pragma once

#include <optional>
#include <string>

#include "match/answer.hpp"
#include "random_rack.hpp"

namespace published {

// An answer, and the records of the tools in it.
struct Said {
    const match::Answer& answer;
    const match::Question& question;
    const trade::Body& body;
    const trade::Pilot* pilot = nullptr; // absent: integral, to be made, or none
    std::optional<trade::Tried> tried;
};

// Empty if there is nothing against it.
[[nodiscard]] std::string objection(const Said& said, Dice& dice);

} // namespace published
