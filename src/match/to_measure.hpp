// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What is worth measuring or trying: which single thing, once known, could make a screw ready that
// is to be measured first now.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "match/chart.hpp"

namespace match {

enum class Quantity { cut_dia, pilot_dia, bore, reach, trial, head };
[[nodiscard]] std::string_view to_text(Quantity); // `cut_dia`, ..., `trial`, `head`

struct ToMeasure {
    std::int64_t tool = 0; // the pilot of a trial; 0: the head of the screw
    std::int64_t body = 0; // of a trial: try the pilot in it; else 0
    Quantity what = Quantity::trial;
    length::MaybeRange known;         // so far
    std::vector<std::size_t> settles; // places in the list asked: alone it could settle these
    std::vector<std::size_t> helps;   // together with others; none that it settles
};

// Of the screws asked for, those whose best answer is measure first. A measurement settles one if
// for some value that the present limits leave open (or, where nothing is known, for the value that
// the job wants) some pair with it is ready or after work by the rules. Most settled first, then
// most helped, then by tool, body and quantity.
[[nodiscard]] std::vector<ToMeasure> to_measure(const std::vector<Asked>& asked, const Shop& shop,
                                                const Tools& tools);

} // namespace match
