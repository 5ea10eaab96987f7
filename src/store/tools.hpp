// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Bodies, pilots, where pilots are and how they were tried.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "store/change.hpp"
#include "trade/body.hpp"
#include "trade/pilot.hpp"

namespace store {

[[nodiscard]] std::vector<trade::Body> bodies(const File& file);  // by number
[[nodiscard]] std::vector<trade::Pilot> pilots(const File& file); // by number
[[nodiscard]] std::optional<trade::Body> body(const File& file, std::int64_t number);
[[nodiscard]] std::optional<trade::Pilot> pilot(const File& file, std::int64_t number);

// Adds a record under its own number, or the next one if that is 0; returns the number.
// Throws error::BadData if the number was ever given out.
std::int64_t add_body(Change& change, const trade::Body& body);
std::int64_t add_pilot(Change& change, const trade::Pilot& pilot);

// Replaces every field of an existing record. Trials of the tool stop counting when its bore or
// pilot shank changed. Loans are not touched. Throws error::NoSuchRecord.
void update_body(Change& change, const trade::Body& body);
void update_pilot(Change& change, const trade::Pilot& pilot);

// Puts a pilot in a body (taking out what was there) or takes it out. Throws error::BadData for an
// integral body.
void put_in_body(Change& change, std::int64_t pilot, std::int64_t body);
void take_out(Change& change, std::int64_t pilot);

[[nodiscard]] std::vector<trade::Trial> trials(const File& file);  // by pilot, then body
void record_trial(Change& change, const trade::Trial& trial);      // replaces an earlier one
void forget_trials(Change& change, std::int64_t tool);             // reground, polished, remeasured

} // namespace store
