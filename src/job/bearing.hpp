// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What bears under a head: less than the head, whose edge is chamfered or rounded on that side.
#pragma once

#include "trade/screw.hpp"

namespace job {

// The bearing face, from the least that the head's standard allows to the whole head. Socket heads:
// ISO 4762 dw min, in inches ASME B18.3 with its greatest chamfer off the least head; hex heads:
// the flats (cos 30 of the corners), to 10 % under them (ASME B18.2.1; dw of ISO 4017 lies within 2
// % of that); other heads: the head as it is. Absent where the head is not known.
[[nodiscard]] length::MaybeRange bearing_face(const trade::Screw& screw);

} // namespace job
