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

// Every row whose cells can be read, in order.
template <class Record, class Take>
void each_record(const Rows& rows, const record::Columns<Record>& columns, Destination& to,
                 Mistakes& mistakes, Take take) {
    rows([&](const SheetRow& row) {
        Record read;
        const auto problems = record::read_cells(read, columns, row.cells, to.reading);
        mistakes.add(row.row, problems);
        if (problems.empty())
            take(row.row, read);
    });
}

// The file is read twice rather than held in memory: first those with numbers of their own.
template <class Record, class Take>
void numbered_first(const Rows& rows, const record::Columns<Record>& columns, Destination& to,
                    Take take) {
    bool others = false;
    each_record(rows, columns, to, to.mistakes, [&](std::size_t row, const Record& record) {
        if (record.number == 0)
            others = true;
        else
            take(row, record);
    });
    Mistakes told_already;
    if (others)
        each_record(rows, columns, to, told_already, [&](std::size_t row, const Record& record) {
            if (record.number == 0)
                take(row, record);
        });
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

std::vector<std::int64_t> take_in_bodies(const Rows& rows, Destination& to) {
    std::vector<std::int64_t> numbers;
    numbered_first(rows, record::body_columns(), to, [&](std::size_t row, const trade::Body& body) {
        const auto problems = record::contradictions(body);
        to.mistakes.add(row, problems);
        if (problems.empty())
            done(row, "number", number_cell(body.number), to,
                 [&] { numbers.push_back(add(row, body, to)); });
    });
    std::sort(numbers.begin(), numbers.end());
    return numbers;
}

std::vector<std::int64_t> take_in_pilots(const Rows& rows, Destination& to) {
    record::Berths berths(to.file);
    std::vector<std::int64_t> numbers;
    const auto take = [&](std::size_t row, const record::PilotRecord& pilot) {
        auto problems = record::contradictions(pilot);
        if (const auto problem = berths.take(pilot))
            problems.push_back(*problem);
        to.mistakes.add(row, problems);
        if (problems.empty())
            done(row, "number", number_cell(pilot.number), to,
                 [&] { numbers.push_back(add(row, pilot, to)); });
    };
    numbered_first(rows, record::pilot_columns(), to, take);
    std::sort(numbers.begin(), numbers.end());
    return numbers;
}

std::size_t take_in_screws(const Rows& rows, Destination& to) {
    std::set<std::string> seen;
    std::size_t count = 0;
    const auto take = [&](std::size_t row, const trade::OwnScrew& screw) {
        if (!seen.insert(trade::folded(screw.name)).second) {
            to.mistakes.add(row, Problem{"screw", "a screw that is there twice", screw.name,
                                         "keep one of them"});
            return;
        }
        done(row, "screw", screw.name, to, [&] {
            store::put_own_screw(to.change, screw);
            if (to_be_shown(to))
                to.taken->push_back({row, 0, screw.name});
            ++count;
        });
    };
    each_record(rows, record::screw_columns(), to, to.mistakes, take);
    return count;
}

void check_house_hole(const store::HouseScrew& house, const trade::Screw& screw,
                      const trade::Tables& tables, const record::Reading& reading) {
    if (!house.hole.empty())
        static_cast<void>(
            match::parse_hole(house.hole, screw, tables, *reading.practice, reading.stored));
}

std::size_t take_in_house(const Rows& rows, Destination& to, const trade::Tables& tables) {
    const trade::ScrewFinder finder(tables, store::own_screws(to.file));
    std::set<std::pair<std::string, std::string>> seen;
    std::size_t count = 0;
    const auto take = [&](std::size_t row, const store::HouseScrew& house) {
        if (!seen.emplace(trade::folded(house.screw), trade::folded(house.hole)).second) {
            to.mistakes.add(row, Problem{"screw", "a screw that is there twice with the same hole",
                                         house.screw, "keep one of them"});
            return;
        }
        trade::Screw screw;
        if (done(row, "screw", house.screw, to, [&] { screw = finder.find(house.screw, ""); }) &&
            done(row, "hole", house.hole, to,
                 [&] { check_house_hole(house, screw, tables, to.reading); }) &&
            done(row, "screw", house.screw, to, [&] { store::put_house(to.change, house); })) {
            if (to_be_shown(to))
                to.taken->push_back(
                    {row, 0, house.screw + (house.hole.empty() ? "" : ", hole " + house.hole)});
            ++count;
        }
    };
    each_record(rows, record::house_columns(), to, to.mistakes, take);
    return count;
}

} // namespace cli::transfer
