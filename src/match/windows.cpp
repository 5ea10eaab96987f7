// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/windows.hpp"

#include <algorithm>

namespace match {

using length::Length;
using length::Range;

namespace {

// `range` and what misses it by a share of the size needed, rounded outward.
Range widened(const Range& range, std::int64_t thousandths) {
    const auto scaled = [](Length size, std::int64_t by) { return size.nm() / 1000 * by; };
    return {Length::from_nm(scaled(range.lo, 1000 - thousandths) - 1000),
            Length::from_nm(scaled(range.hi, 1000 + thousandths) + 3000)};
}

// No pilot runs where there is no hole.
Range running_sizes(const Job& job) {
    Range sizes{Length::from_nm(1), Length::from_nm(0)};
    for (const auto& candidate : job.holes) {
        const Range here = *candidate.pilots.sizes;
        const bool first = &candidate == &job.holes.front();
        sizes = {first ? here.lo : std::min(sizes.lo, here.lo),
                 first ? here.hi : std::max(sizes.hi, here.hi)};
    }
    return sizes;
}

} // namespace

Windows windows_of(const Job& job) {
    const auto& practice = job.shop->practice;
    Windows windows;
    if (job.head) {
        const Range fitting{job.head->lo + practice.head_clearance, job.sizes->largest};
        windows.fitting_cut.sizes = fitting;
        windows.near_cut.sizes = widened(fitting, practice.closest_share);
    }
    windows.running_pilot.sizes = running_sizes(job);
    if (!job.holes.empty())
        windows.near_pilot.sizes = widened(*windows.running_pilot.sizes, practice.closest_share);
    return windows;
}

} // namespace match
