// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/statements.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

namespace store {

Statements::Statements(SQLite::Database& database) : database_(database) {}

Statements::~Statements() = default;

std::unique_ptr<SQLite::Statement> Statements::take(const std::string& sql) {
    auto& idle = idle_[sql];
    return idle ? std::move(idle) : std::make_unique<SQLite::Statement>(database_, sql);
}

// What went wrong with it was said where it was run.
void Statements::give_back(std::unique_ptr<SQLite::Statement> statement) noexcept {
    (void)statement->tryReset();
    if (const auto place = idle_.find(statement->getQuery()); place != idle_.end())
        place->second = std::move(statement);
}

Lent::~Lent() {
    from_.give_back(std::move(statement_));
}

} // namespace store
