// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Operation sheets for other programs, format 1.
#pragma once

#include <vector>

#include "job/plan.hpp"
#include "present/json.hpp"

namespace present {

[[nodiscard]] Json sheet_json(const job::Sheet& sheet);
// {"format": 1, "plan": {..}, "sheets": [..]}.
[[nodiscard]] Json job_json(const job::Plan& plan, const std::vector<job::Sheet>& sheets);

} // namespace present
