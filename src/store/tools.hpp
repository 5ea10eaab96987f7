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

// The pilot that is in a body.
[[nodiscard]] std::optional<std::int64_t> pilot_in(const File& file, std::int64_t body);
// The bodies whose numbers come just before and after one that no body has, ascending.
[[nodiscard]] std::vector<std::int64_t> bodies_next_to(const File& file, std::int64_t number);

// The number that the next tool without one of its own will get.
[[nodiscard]] std::int64_t next_number(const File& file);

// Adds a record under its own number, or the next one if that is 0; returns the number. One
// sequence serves bodies and pilots, and a number that was given out stays spent, also when the
// tool was taken back. `loan` is not written: loans have their own table. Throws error::BadData if
// the number was ever given out, or if the pilot cannot be in the body it says it is in;
// error::NoSuchRecord if there is no such body.
std::int64_t add_body(Change& change, const trade::Body& body);
std::int64_t add_pilot(Change& change, const trade::Pilot& pilot);

// Replaces every field of an existing record. Trials of the tool stop counting when its bore or
// pilot shank changed. Loans are not touched. Throws error::NoSuchRecord; error::BadData for a
// body that holds a pilot and is now to take none, or a pilot that moves where it cannot go.
void update_body(Change& change, const trade::Body& body);
void update_pilot(Change& change, const trade::Pilot& pilot);

// Puts a pilot in a body (taking out what was there) or takes it out. Throws error::NoSuchRecord;
// error::BadData for a body that takes no removable pilot, and for a retired body or pilot.
void put_in_body(Change& change, std::int64_t pilot, std::int64_t body);
void take_out(Change& change, std::int64_t pilot);

[[nodiscard]] std::vector<trade::Trial> trials(const File& file); // by pilot, then body
// Replaces an earlier one of the same two. Throws error::NoSuchRecord; error::BadData for a body
// that takes no removable pilot.
void record_trial(Change& change, const trade::Trial& trial);
void forget_trials(Change& change, std::int64_t tool); // reground, polished, remeasured

// Whether a dimension is known otherwise than before, so that a trial says nothing of it any more.
[[nodiscard]] bool is_remeasured(const trade::MaybeDimension& before,
                                 const trade::MaybeDimension& after);

} // namespace store
