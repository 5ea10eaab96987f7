// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Who has a tool, and who had one. Loans stand outside the history, so that undo leaves them alone
// and a name that was purged is nowhere in the file.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "store/file.hpp"

namespace store {

struct Loan {
    std::int64_t number = 0;
    std::string name;                // who has it
    std::string since;               // UTC, ISO 8601
    std::optional<std::string> due;  // the day it is due back, ISO 8601
    std::optional<std::string> back; // UTC, ISO 8601; none while it is out
};

[[nodiscard]] std::vector<Loan> open_loans(const File& file);   // by number
[[nodiscard]] std::vector<Loan> closed_loans(const File& file); // in the order they came back

// When something was last lent or came back.
[[nodiscard]] std::optional<std::string> newest_loan_time(const File& file);

// Lends tools from now on, all or none. Throws error::BadData for one that is out.
void lend(File& file, const std::vector<std::int64_t>& numbers, const std::string& name,
          const std::optional<std::string>& due);

// Takes tools back, all or none. Throws error::BadData for one that is not out.
void take_back(File& file, const std::vector<std::int64_t>& numbers);

// Forgets the loans that are over, down to the bytes of the file; returns how many there were.
int purge_closed_loans(File& file);

} // namespace store
