// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The sizes of tools that can matter to a job. A tool outside fails a rule for certain; one inside
// is still to be judged.
#pragma once

#include "match/job.hpp"
#include "trade/rack.hpp"

namespace match {

struct Windows {
    trade::Window fitting_cut;   // cutters that may take the head
    trade::Window near_cut;      // or miss by no more than is listed as closest
    trade::Window running_pilot; // pilots that may run in one of the holes
    trade::Window near_pilot;    // or miss by no more than is listed as closest
};

[[nodiscard]] Windows windows_of(const Job& job);

} // namespace match
