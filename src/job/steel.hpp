// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the teeth of a cutter are made of, as far as its speed goes by it.
#pragma once

#include <string_view>

namespace job {

enum class Steel { high_speed, carbon, carbide, unknown };

// From the words that a body's material is recorded with: `high-speed steel`, `HSS-E`, `M2`;
// `carbon steel`, `silver steel`, `W1`; `carbide`. Anything else is unknown.
[[nodiscard]] Steel steel_of(std::string_view recorded);

} // namespace job
