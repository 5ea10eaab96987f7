// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/file.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>
#include <sqlite3.h>

#include <string>

#include "error/error.hpp"
#include "store/connection.hpp"
#include "store/migrate.hpp"
#include "store/new_file.hpp"
#include "store/query.hpp"
#include "store/refuse.hpp"
#include "store/shape.hpp"
#include "store/translate.hpp"

namespace store {

namespace {

namespace fs = std::filesystem;
using std::chrono::milliseconds;

constexpr auto k_set_unit = R"(
INSERT INTO setting (id, unit) VALUES (1, ?1))";

constexpr auto k_unit = R"(
SELECT unit FROM setting ORDER BY id)";

// What takes back one statement of a change is kept in memory: a change is one row after another,
// and in a temporary file each would be written there first. Not for migrations, whose statements
// are large.
constexpr auto k_small_statements = "PRAGMA temp_store = MEMORY";

// Pages of a change that is going on, in KiB: the indexes of a long import are all over the file.
constexpr auto k_room = "PRAGMA cache_size = -8000";

length::Unit read_unit(SQLite::Database& database) {
    Query query(database, k_unit);
    if (!query.step())
        throw error::DamagedFile("the catalogue has lost its unit: " + database.getFilename(),
                                 "keep the file as it is and go back to a copy");
    return query.text() == "in" ? length::Unit::inch : length::Unit::millimetre;
}

void build(const fs::path& path, length::Unit unit) {
    const Connection connection = connect_empty(path);
    SQLite::Database& database = *connection.database;
    execute(database, fmt::format("PRAGMA application_id = {}", k_application_id));
    migrate(database, *connection.session, migrations());
    Query(database, k_set_unit).put(unit == length::Unit::inch ? "in" : "mm").run();
}

[[noreturn]] void throw_name_taken(const fs::path& path) {
    throw error::InputOutput("there is something of this name already: " + path.string(),
                             "choose another name with --file; nothing was overwritten");
}

std::int64_t version_of(const Connection& connection) {
    return integer_from(*connection.database, "PRAGMA user_version");
}

// A change that a crash cut short lies in a journal beside the file. Only a connection that may
// write can take it back.
bool has_cut_change(const Connection& connection) {
    sqlite3* handle = connection.database->getHandle();
    const int code = connection.database->tryExec("SELECT count(*) FROM sqlite_schema");
    if (code == SQLITE_BUSY) // it was waited for; once is enough
        throw_translated(code, sqlite3_errmsg(handle), connection.database->getFilename());
    return sqlite3_extended_errcode(handle) == SQLITE_READONLY_ROLLBACK;
}

// Opens for writing, which takes back a change cut short, and brings an older file up to date.
Connection connect_to_write(const fs::path& path, milliseconds busy_timeout) {
    Connection connection = connect(path, Access::write, busy_timeout);
    SQLite::Database& database = *connection.database;
    refuse_version(version_of(connection), path);
    refuse_foreign_programs(database, path.string());
    (void)read_unit(database); // without one it is refused, and nothing may be written before that
    bring_up_to_date(database, *connection.session, path, migrations());
    use_rollback_journal(database, path);
    execute(database, k_small_statements);
    execute(database, k_room);
    return connection;
}

Connection connect_to_read(const fs::path& path, milliseconds busy_timeout) {
    if (Connection connection = connect(path, Access::read, busy_timeout);
        !has_cut_change(connection)) {
        const std::int64_t version = version_of(connection);
        refuse_version(version, path);
        refuse_views(*connection.database, path.string());
        if (version == static_cast<std::int64_t>(migrations().size()))
            return connection;
    } // closed, or it would stand in the way of the one that writes
    (void)connect_to_write(path, busy_timeout);
    return connect(path, Access::read, busy_timeout);
}

} // namespace

File File::create(const fs::path& path, length::Unit unit) {
    std::error_code code;
    if (fs::exists(fs::symlink_status(path, code)))
        throw_name_taken(path);
    NewFile file(path);
    build(file.path(), unit);
    if (!file.move_to(path))
        throw_name_taken(path);
    return open(path, Access::write);
}

File File::open(const fs::path& path, Access access, milliseconds busy_timeout) {
    return File(access == Access::write ? connect_to_write(path, busy_timeout)
                                        : connect_to_read(path, busy_timeout));
}

File::File(Connection connection)
    : connection_(std::make_unique<Connection>(std::move(connection))),
      unit_(read_unit(*connection_->database)) {}

File::File(File&&) noexcept = default;
File& File::operator=(File&&) noexcept = default;
File::~File() = default;

SQLite::Database& File::database() const {
    return *connection_->database;
}

Statements& File::statements() const {
    return *connection_->statements;
}

Session& File::session() const {
    return *connection_->session;
}

} // namespace store
