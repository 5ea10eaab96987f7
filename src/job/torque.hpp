// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Torques as people write them.
#pragma once

#include <string_view>

#include "job/figure.hpp"

namespace job {

// Reads `17 ft-lb`, `204 in-lb`, `23 N m` (also `23 Nm`), or a range of them: `15 to 17 ft-lb`. The
// unit must be said. Throws error::BadData.
[[nodiscard]] Measure read_torque(std::string_view text);

} // namespace job
