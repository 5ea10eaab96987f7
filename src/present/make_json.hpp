// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The make-list as JSON, format 1; described in docs/json.md.
#pragma once

#include "make/list.hpp"
#include "make/stock.hpp"
#include "present/json.hpp"

namespace present {

// `specs` are those of the pieces, in order.
[[nodiscard]] Json make_json(const make::MakeList& list, const std::vector<make::Spec>& specs,
                             const std::vector<make::BarPlan>& bars);

} // namespace present
