// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The tools of a catalogue in memory, for one question or for many.
#pragma once

#include <cstdint>
#include <map>
#include <utility>
#include <vector>

#include "match/answer.hpp"
#include "trade/rack.hpp"

namespace match {

struct Tools {
    std::vector<trade::Body> bodies;                                     // by number
    std::vector<trade::Pilot> pilots;                                    // by number
    std::map<std::pair<std::int64_t, std::int64_t>, trade::Tried> tried; // by pilot, body

    // nullptr when there is none.
    [[nodiscard]] const trade::Body* body(std::int64_t number) const;
};

[[nodiscard]] Tools load_tools(const trade::Rack& rack);

// As match() over a rack, for tools that are loaded already.
[[nodiscard]] Report match(const Question& question, const Shop& shop, const Tools& tools,
                           length::Unit unit, std::size_t most, bool pairs);

} // namespace match
