// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The sections that a sheet is put together from.
#pragma once

#include "job/sheet.hpp"

namespace job {

// All that a section is worked out from.
struct Subject {
    const match::Question& question;
    const Particulars& particulars;
    const match::Answer& answer;
    const trade::Body& body;
    const trade::Pilot* pilot; // absent: integral
    const match::Shop& shop;
    const Books& books;
    length::Unit unit;

    // The key of the body's set screw; empty when the screw or its key is not known.
    [[nodiscard]] std::string key() const;
};

[[nodiscard]] Section tools_section(const Subject& subject);
[[nodiscard]] Section hole_section(const Subject& subject);
[[nodiscard]] Section depth_section(const Subject& subject);
[[nodiscard]] Section running_section(const Subject& subject);
[[nodiscard]] Section left_section(const Subject& subject);
[[nodiscard]] Section seat_section(const Subject& subject);
[[nodiscard]] Section callout_section(const Subject& subject);

// What to settle, or which pilot to make, before a tool is ready.
[[nodiscard]] Section settle_section(const match::Answer& answer);

// For the way that leaves a drill's point under the head: `wanted` has its counterbore and hole.
[[nodiscard]] Section cone_section(const match::Question& question, const Particulars& particulars,
                                   const match::Wanted& wanted, const Books& books);

} // namespace job
