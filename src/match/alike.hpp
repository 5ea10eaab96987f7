// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Bodies that a job cannot tell apart. Many tools differ only in what no rule of the job looks at,
// or in sizes that pass, or fail, one as well as the other: such sizes are put at one value, so
// that alike bodies become the same and are judged once.
#pragma once

#include <optional>

#include "match/finding.hpp"
#include "match/triple.hpp"

namespace match {

struct Alike {
    trade::BodyFacts body; // judged as the body itself, but for how far it falls short
    Shortfall shortfall;   // of the body by itself, whatever its pilot
    bool fails = false;    // it does fall short
};

struct AlikeHash {
    std::size_t operator()(const trade::BodyFacts& body) const;
};

// Of the pilots that come into question.
struct Extremes {
    length::Length clearance;    // that the head may need over it with one of them, the most
    length::Length shank_length; // that one surely has, the most
};

// Absent: the body falls short twice, or by too much to be listed, whatever its pilot.
[[nodiscard]] std::optional<Alike> alike(const Job& job, const trade::BodyFacts& body,
                                         const Extremes& pilots);

} // namespace match
