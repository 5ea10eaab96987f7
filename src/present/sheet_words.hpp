// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the operation sheet says in words, in every form it is printed in.
#pragma once

#include <string>
#include <vector>

#include "job/sheet.hpp"

namespace present {

// `bracket: 4 holes in low-carbon steel 1018`; a sheet without a part begins with the holes.
[[nodiscard]] std::string sheet_title(const job::Sheet& sheet);

// The lines of a job by part, or screw: `base (4), 5/16-18 socket head cap (2)`.
[[nodiscard]] std::string lines_named(const std::vector<std::size_t>& lines,
                                      const std::vector<job::Sheet>& sheets);

// `Ready`, `After work: sharpen`, `Not ready: make a pilot for body 12 first`, `Not ready: settle
// first ...`, `No counterbore on hand will do`.
[[nodiscard]] std::string sheet_state(const job::Sheet& sheet);

} // namespace present
