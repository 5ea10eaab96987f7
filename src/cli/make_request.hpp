// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The make-list as it is asked for at the command line: by `make-list`, and by `add pilot
// --from-list` which has to come to the same list.
#pragma once

#include <string>
#include <vector>

#include "cli/context.hpp"
#include "make/list.hpp"
#include "make/stock.hpp"

namespace cli {

struct MakeRequest {
    std::vector<std::string> screws; // empty: the house list
    std::string hole;                // for those screws; empty: as the house list has it, or any
    make::Options options;
};

// Throws error::BadData for a screw or hole that cannot be read, error::NoSuchRecord when there is
// neither a screw nor a house list.
[[nodiscard]] make::MakeList make_list_for(const MakeRequest& request, Context& context);

// How each piece is turned, and from which bar.
struct TurningPlan {
    std::vector<make::Spec> specs; // of the pieces, in order
    std::vector<make::BarPlan> bars;
};

[[nodiscard]] TurningPlan plan_for(const make::MakeList& list, const make::Treatment& treatment,
                                   Context& context);

} // namespace cli
