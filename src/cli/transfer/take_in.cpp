// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Records with numbers of their own go first, so that the others get numbers that are free.
#include "cli/transfer/take_in.hpp"

#include <algorithm>
#include <functional>
#include <set>

#include "cli/record/berths.hpp"
#include "cli/record/entry.hpp"
#include "cli/what_it_is.hpp"
#include "match/question.hpp"
#include "store/tools.hpp"
#include "trade/text.hpp"

namespace cli::transfer {

namespace {

using record::Problem;

template <class Record>
struct Entry {
    std::size_t row = 0;
    Record record;
};

// The rows whose every cell can be read.
template <class Record>
std::vector<Entry<Record>> read_rows(const std::vector<SheetRow>& rows,
                                     const record::Columns<Record>& columns, Destination& to) {
    std::vector<Entry<Record>> entries;
    for (const SheetRow& row : rows) {
        Record read;
        const auto problems = record::read_cells(read, columns, row.cells, to.reading);
        to.mistakes.add(row.row, problems);
        if (problems.empty())
            entries.push_back({row.row, std::move(read)});
    }
    return entries;
}

template <class Record>
void numbered_first(std::vector<Entry<Record>>& entries) {
    std::stable_partition(entries.begin(), entries.end(),
                          [](const Entry<Record>& entry) { return entry.record.number != 0; });
}

// Does something for one row; a refusal becomes a mistake of that row.
bool done(std::size_t row, const std::string& column, const std::string& cell, Destination& to,
          const std::function<void()>& action) {
    try {
        action();
        return true;
    } catch (const error::BadData& bad) {
        to.mistakes.add(row, record::problem_of(column, cell, bad.what(), bad.hint()));
    } catch (const error::NoSuchRecord& missing) {
        to.mistakes.add(row, record::problem_of(column, cell, missing.what(), missing.hint()));
    }
    return false;
}

std::string number_cell(std::int64_t number) {
    return number == 0 ? std::string() : std::to_string(number);
}

bool to_be_shown(const Destination& to) {
    return to.taken != nullptr && to.taken->size() < k_most_shown;
}

// Adds a tool and tells of it.
template <class Record>
std::int64_t add(std::size_t row, const Record& record, Destination& to) {
    const std::int64_t number = record::add_tool(to.change, record);
    if (to_be_shown(to))
        to.taken->push_back({row, number, what_it_is(record, to.reading.stored)});
    return number;
}

} // namespace

std::vector<std::int64_t> take_in_bodies(const std::vector<SheetRow>& rows, Destination& to) {
    auto entries = read_rows(rows, record::body_columns(), to);
    numbered_first(entries);
    std::vector<std::int64_t> numbers;
    for (const auto& [row, body] : entries) {
        const auto problems = record::contradictions(body);
        to.mistakes.add(row, problems);
        if (!problems.empty())
            continue;
        done(row, "number", number_cell(body.number), to,
             [&, at = row, &added = body] { numbers.push_back(add(at, added, to)); });
    }
    std::sort(numbers.begin(), numbers.end());
    return numbers;
}

std::vector<std::int64_t> take_in_pilots(const std::vector<SheetRow>& rows, Destination& to) {
    auto entries = read_rows(rows, record::pilot_columns(), to);
    numbered_first(entries);
    record::Berths berths(to.file);
    std::vector<std::int64_t> numbers;
    for (const auto& [row, pilot] : entries) {
        auto problems = record::contradictions(pilot);
        if (const auto problem = berths.take(pilot))
            problems.push_back(*problem);
        to.mistakes.add(row, problems);
        if (!problems.empty())
            continue;
        done(row, "number", number_cell(pilot.number), to,
             [&, at = row, &added = pilot] { numbers.push_back(add(at, added, to)); });
    }
    std::sort(numbers.begin(), numbers.end());
    return numbers;
}

std::size_t take_in_screws(const std::vector<SheetRow>& rows, Destination& to) {
    std::set<std::string> seen;
    std::size_t count = 0;
    for (const auto& [row, screw] : read_rows(rows, record::screw_columns(), to)) {
        if (!seen.insert(trade::folded(screw.name)).second) {
            to.mistakes.add(row, Problem{"screw", "a screw that is there twice", screw.name,
                                         "keep one of them"});
            continue;
        }
        done(row, "screw", screw.name, to, [&, at = row, &added = screw] {
            store::put_own_screw(to.change, added);
            if (to_be_shown(to))
                to.taken->push_back({at, 0, added.name});
            ++count;
        });
    }
    return count;
}

trade::Screw house_screw(const store::HouseScrew& house, const trade::Tables& tables,
                         const std::vector<trade::OwnScrew>& own) {
    return trade::resolve_screw(house.screw, "", tables, own);
}

void check_house_hole(const store::HouseScrew& house, const trade::Screw& screw,
                      const trade::Tables& tables, const record::Reading& reading) {
    if (!house.hole.empty())
        static_cast<void>(
            match::parse_hole(house.hole, screw, tables, *reading.practice, reading.stored));
}

std::size_t take_in_house(const std::vector<SheetRow>& rows, Destination& to,
                          const trade::Tables& tables) {
    const auto own = store::own_screws(to.file);
    std::set<std::pair<std::string, std::string>> seen;
    std::size_t count = 0;
    for (const auto& [row, house] : read_rows(rows, record::house_columns(), to)) {
        if (!seen.emplace(trade::folded(house.screw), trade::folded(house.hole)).second) {
            to.mistakes.add(row, Problem{"screw", "a screw that is there twice with the same hole",
                                         house.screw, "keep one of them"});
            continue;
        }
        trade::Screw screw;
        const auto& added = house;
        if (done(row, "screw", house.screw, to, [&] { screw = house_screw(added, tables, own); }) &&
            done(row, "hole", house.hole, to,
                 [&] { check_house_hole(added, screw, tables, to.reading); }) &&
            done(row, "screw", house.screw, to, [&] { store::put_house(to.change, added); })) {
            if (to_be_shown(to))
                to.taken->push_back(
                    {row, 0, house.screw + (house.hole.empty() ? "" : ", hole " + house.hole)});
            ++count;
        }
    }
    return count;
}

} // namespace cli::transfer
