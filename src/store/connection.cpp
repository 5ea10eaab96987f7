// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/connection.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include "error/error.hpp"
#include "store/file.hpp"
#include "store/query.hpp"
#include "store/refuse.hpp"
#include "store/translate.hpp"

namespace store {

namespace {

namespace fs = std::filesystem;

std::unique_ptr<SQLite::Database> open_database(const fs::path& path, int flags) {
    try {
        // Absolute, so that no name means anything special to SQLite (`:memory:`).
        return std::make_unique<SQLite::Database>(fs::absolute(path).string(),
                                                  flags | SQLite::OPEN_NOMUTEX); // one thread
    } catch (const SQLite::Exception& exception) {
        throw_translated(exception, path.string());
    }
}

void configure(SQLite::Database& database, int option, int value) {
    const int code = sqlite3_db_config(database.getHandle(), option, value, nullptr);
    if (code != SQLITE_OK)
        throw_translated(code, sqlite3_errstr(code), database.getFilename());
}

// Settings that live in the connection, not in the file.
void settle(Connection& connection, std::chrono::milliseconds busy_timeout) {
    SQLite::Database& database = *connection.database;
    database.setBusyTimeout(static_cast<int>(busy_timeout.count()));
    configure(database, SQLITE_DBCONFIG_DEFENSIVE, 1);
    configure(database, SQLITE_DBCONFIG_ENABLE_FKEY, 1);
    distrust(database);
    execute(database, "PRAGMA cell_size_check = ON");
    register_functions(database, *connection.session);
    connection.statements = std::make_unique<Statements>(database);
}

void refuse_read_only(SQLite::Database& database, const fs::path& path) {
    if (sqlite3_db_readonly(database.getHandle(), "main") == 1)
        throw error::InputOutput("the catalogue may not be written: " + path.string(),
                                 "see who may write the file and its folder");
}

} // namespace

Connection connect(const fs::path& path, Access access, std::chrono::milliseconds busy_timeout) {
    refuse_path(path, access);
    const bool write = access == Access::write;
    Connection connection{
        std::make_unique<Session>(),
        open_database(path, write ? SQLite::OPEN_READWRITE : SQLite::OPEN_READONLY)};
    refuse_header(*connection.database, path);
    if (write)
        refuse_read_only(*connection.database, path);
    settle(connection, busy_timeout);
    return connection;
}

void distrust(SQLite::Database& database) {
    configure(database, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0);
    sqlite3_limit(database.getHandle(), SQLITE_LIMIT_LENGTH, k_longest_cell_read);
}

Connection connect_empty(const fs::path& path) {
    Connection connection{std::make_unique<Session>(), open_database(path, SQLite::OPEN_READWRITE)};
    settle(connection, std::chrono::milliseconds(0));
    use_rollback_journal(*connection.database, path);
    return connection;
}

void use_rollback_journal(SQLite::Database& database, const fs::path& path) {
    execute(database, "PRAGMA synchronous = EXTRA");
    Query query(database, "PRAGMA journal_mode = DELETE");
    if (!query.step() || query.text() != "delete")
        throw error::Busy("the catalogue is in use by another program: " + path.string(),
                          "try again when the other program has finished");
}

} // namespace store
