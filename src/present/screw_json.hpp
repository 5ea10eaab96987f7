// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A resolved screw as JSON.
#pragma once

#include "present/json.hpp"
#include "trade/screw.hpp"

namespace present {

[[nodiscard]] Json screw_json(const trade::Screw& screw);

} // namespace present
