// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The hole, the counterbore and its depth, and how the depth is read at the machine.
#pragma once

#include "job/figure.hpp"
#include "match/answer.hpp"

namespace job {

// The hole that a drill leaves, as the match has it: from its own size to the most it cuts over.
[[nodiscard]] Figure drilled_hole(const trade::Drill& drill, const length::Range& hole);

// The counterbore that a cutter leaves: its own diameter to that and what the spindle may add.
[[nodiscard]] Figure counterbore_left(const length::Range& cutter, const trade::Practice& practice);

// How far the quill goes from all lips touching the top face: head height (most of its limits; of a
// hex head the spotface), washer, and below the surface or what the standard adds. `depth` is what
// the match worked out for this question.
[[nodiscard]] Figure stop_travel(const match::Question& question, length::Length depth,
                                 const trade::Practice& practice);

// What a depth gauge may read on the floor: the depth to that and what the stop may repeat over it.
[[nodiscard]] Figure gauge_reading(length::Length depth, const trade::Practice& practice);

// How far the bearing face of the screw's own head, standing upside down on the floor, lies below
// the surface. Absent for a head of unknown height and for a spotface.
[[nodiscard]] std::optional<Figure> head_upside_down(const match::Question& question,
                                                     length::Length depth,
                                                     const trade::Practice& practice);

// Quill travel from the nose of the pilot at the hole to full depth. Absent: pilot length unknown.
[[nodiscard]] std::optional<Figure> quill_travel(length::Length depth,
                                                 const length::MaybeRange& pilot_length);

} // namespace job
