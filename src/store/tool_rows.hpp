// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What bodies and pilots share: their numbers, their lists of work, and who has them.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "store/change.hpp"

namespace store {

enum class ToolKind { body, pilot };

// Spends a number for a tool: the one wanted, or the next if that is 0. Throws error::BadData for
// one that was ever given out, or is not from 1 to 999,999,999.
std::int64_t give_number(Change& change, ToolKind kind, std::int64_t wanted);

// Throws error::NoSuchRecord, saying so if the number belonged to a tool or is one of the other
// kind.
[[noreturn]] void throw_no_such(const File& file, ToolKind kind, std::int64_t number);

// A tool that an index or another row names, but of which there is no record.
[[noreturn]] void throw_lost_tool(const File& file, ToolKind kind, std::int64_t number);

using WorkLists = std::map<std::int64_t, std::vector<std::string>>;
using Loans = std::map<std::int64_t, std::string>;

[[nodiscard]] WorkLists all_work(SQLite::Database& database);
[[nodiscard]] Loans all_loans(SQLite::Database& database);
[[nodiscard]] std::vector<std::string> work_of(Statements& statements, std::int64_t number);
[[nodiscard]] std::optional<std::string> loan_of(Statements& statements, std::int64_t number);

// Gives a tool just read its work, which is taken out of the lists, and who has it.
template <class Tool>
void complete(Tool& tool, WorkLists& work, const Loans& loans) {
    if (const auto found = work.find(tool.number); found != work.end())
        tool.work = std::move(found->second);
    if (const auto found = loans.find(tool.number); found != loans.end())
        tool.loan = found->second;
}

// The list of a tool that is new and has none.
void add_work(Change& change, std::int64_t number, const std::vector<std::string>& tasks);

// Makes the list this one; rows that stay the same are not touched.
void put_work(Change& change, std::int64_t number, const std::vector<std::string>& tasks);

} // namespace store
