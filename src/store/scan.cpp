// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/scan.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

#include "store/translate.hpp"

namespace store {

Scan::Scan(SQLite::Database& database, std::string_view sql) : database_(database) {
    sqlite3_stmt* statement = nullptr;
    check(sqlite3_prepare_v2(database.getHandle(), sql.data(), static_cast<int>(sql.size()),
                             &statement, nullptr));
    statement_.reset(statement);
}

Scan& Scan::put(int place, std::int64_t value) {
    check(sqlite3_bind_int64(statement_.get(), place, value));
    return *this;
}

Scan& Scan::put(int place, std::string_view text) {
    check(sqlite3_bind_text(statement_.get(), place, text.data(), static_cast<int>(text.size()),
                            SQLITE_TRANSIENT));
    return *this;
}

bool Scan::step() {
    const int code = sqlite3_step(statement_.get());
    if (code != SQLITE_ROW && code != SQLITE_DONE)
        check(code);
    return code == SQLITE_ROW;
}

void Scan::check(int code) const {
    sqlite3* handle = database_.getHandle();
    if (code != SQLITE_OK)
        throw_translated(sqlite3_extended_errcode(handle), sqlite3_errmsg(handle),
                         database_.getFilename());
}

} // namespace store
