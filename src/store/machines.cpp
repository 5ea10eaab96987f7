// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The table of the machines. The speeds of one are a text of whole numbers with spaces between.
#include <charconv>
#include <string>

#include "error/error.hpp"
#include "store/lists.hpp"
#include "store/query.hpp"
#include "trade/text.hpp"

namespace store {

namespace {

using length::Length;
using trade::folded;

constexpr auto k_machines = R"(
SELECT name, chuck_lo, chuck_hi, morse, speeds, variable, travel FROM machine ORDER BY name_key)";

constexpr auto k_put_machine = R"(
INSERT INTO machine (name_key, name, chuck_lo, chuck_hi, morse, speeds, variable, travel)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)
ON CONFLICT (name_key) DO UPDATE
SET name = excluded.name, chuck_lo = excluded.chuck_lo, chuck_hi = excluded.chuck_hi,
    morse = excluded.morse, speeds = excluded.speeds, variable = excluded.variable,
    travel = excluded.travel)";

constexpr auto k_drop_machine = R"(
DELETE FROM machine WHERE name_key = ?1)";

std::vector<int> read_speeds(const std::string& text) {
    std::vector<int> speeds;
    for (const std::string& part : trade::split(text, ' ')) {
        int& speed = speeds.emplace_back();
        if (std::from_chars(part.data(), part.data() + part.size(), speed).ec != std::errc())
            throw error::DamagedFile("a machine's speed in the file is no number: '" + part + "'",
                                     "keep the file as it is and go back to a copy");
    }
    return speeds;
}

std::optional<std::string> speeds_text(const std::vector<int>& speeds) {
    std::string text;
    for (const int speed : speeds)
        text += (text.empty() ? "" : " ") + std::to_string(speed);
    return text.empty() ? std::nullopt : std::optional(text);
}

trade::Machine machine_from(Query& row) {
    trade::Machine machine{row.text(), std::nullopt, std::nullopt};
    const auto lo = row.maybe_integer();
    const auto hi = row.maybe_integer();
    if (lo && hi)
        machine.chuck = {Length::from_nm(*lo), Length::from_nm(*hi)};
    if (const auto morse = row.maybe_integer())
        machine.morse = static_cast<int>(*morse);
    machine.speeds = read_speeds(row.maybe_text().value_or(""));
    machine.variable = row.maybe_integer().value_or(0) != 0;
    if (const auto travel = row.maybe_integer())
        machine.travel = Length::from_nm(*travel);
    return machine;
}

} // namespace

std::vector<trade::Machine> machines(const File& file) {
    std::vector<trade::Machine> all;
    Query query(file.database(), k_machines);
    while (query.step())
        all.push_back(machine_from(query));
    return all;
}

void put_machine(Change& change, const trade::Machine& machine) {
    Query query(change.database(), k_put_machine);
    query.put(folded(machine.name)).put(machine.name);
    if (machine.chuck)
        query.put(machine.chuck->lo.nm()).put(machine.chuck->hi.nm());
    else
        query.put_null().put_null();
    query.put(machine.morse ? std::optional<std::int64_t>(*machine.morse) : std::nullopt);
    query.put(speeds_text(machine.speeds));
    if (machine.speeds.empty())
        query.put_null();
    else
        query.put(std::int64_t{machine.variable});
    if (machine.travel)
        query.put(machine.travel->nm());
    else
        query.put_null();
    query.run();
}

void drop_machine(Change& change, const std::string& name) {
    if (Query(change.database(), k_drop_machine).put(folded(name)).run() == 0)
        throw error::NoSuchRecord("there is no such machine: " + name,
                                  "`counterpart machine list` shows them");
}

} // namespace store
