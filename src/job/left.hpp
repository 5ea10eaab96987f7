// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What is left round the counterbore: the broken edge of the hole, the thickness under the head,
// the hole below the seat and the wall to the edge of the part.
#pragma once

#include "job/figure.hpp"
#include "match/answer.hpp"

namespace job {

// To what diameter the edge of the hole must be broken for the fillet under the head: no larger
// than the fillet. Absent where the hole clears it or no table has it. Source: ASME B18.3,
// appendix, on holes smaller than the fillet in parts about as hard as the screw.
[[nodiscard]] std::optional<Figure> edge_break(const trade::Screw& screw,
                                               const length::Range& hole);

// The part's thickness less the depth.
[[nodiscard]] Figure left_under_head(const length::Range& thick, length::Length depth);

// What is usually left under the head: a share of the screw's diameter.
[[nodiscard]] Figure usual_ledge(const length::Range& screw_dia, const trade::Practice& practice);

// The least that should be, likewise.
[[nodiscard]] length::Length least_ledge(const length::Range& screw_dia,
                                         const trade::Practice& practice);

// Of a blind hole, from its mouth: its depth less that of the counterbore.
[[nodiscard]] Figure hole_below_seat(const length::Range& blind, length::Length depth);

// From the counterbore to the edge of the part: `to_edge` is from the hole's axis.
[[nodiscard]] Figure wall_to_edge(const length::Range& to_edge, const length::Range& counterbore);

// The least that this wall should be: a share of the cutter, and not under a fixed least.
[[nodiscard]] Figure least_wall(const length::Range& cutter, const trade::Practice& practice);

} // namespace job
