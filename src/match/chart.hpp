// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Many screws at a glance: the best answer for each.
#pragma once

#include <string>
#include <vector>

#include "match/tools.hpp"

namespace match {

// A screw to be asked for, as it stands in a list.
struct Asked {
    std::string screw; // as listed
    std::string hole;  // as listed; empty: any
    Question question;
};

struct ChartEntry {
    std::string screw;
    std::string hole;
    std::string form;                     // empty: the shop's own, in no table
    std::string series;                   // of the head that answers; empty: measured
    std::optional<trade::ScrewSize> size; // absent: in no table
    std::string pitch;
    std::optional<Answer> best; // absent: no body comes into question
};

// One entry for each of `asked`, in order. Closest is no answer here.
[[nodiscard]] std::vector<ChartEntry> chart(const std::vector<Asked>& asked, const Shop& shop,
                                            const trade::Rack& rack, length::Unit unit);

} // namespace match
