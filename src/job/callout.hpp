// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The hole as a drawing calls it out in one line.
#pragma once

#include <string>

#include "match/answer.hpp"

namespace job {

// In inches with the signs of ASME Y14.5: `8X Ø.328 THRU ⌴ Ø.531 ↧ .328`, a spotface `⌴SF`.
[[nodiscard]] std::string inch_callout(const match::Question& question, const match::Answer& answer,
                                       int count);

// In millimetres, after ISO 129-1 and ISO 15786: `8× Ø8.3 ⌴ Ø13.5 h 8.3`; nothing said of the
// hole's depth: it goes through.
[[nodiscard]] std::string metric_callout(const match::Question& question,
                                         const match::Answer& answer, int count);

// The size that a tool of these limits is called: the whole 64th, or half millimetre, that lies
// inside, else the middle.
[[nodiscard]] length::Length called(const length::Range& limits, length::Unit unit);

} // namespace job
