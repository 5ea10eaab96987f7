// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/migrate.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <string>

#include "error/error.hpp"
#include "store/check.hpp"
#include "store/connection.hpp"
#include "store/copy.hpp"
#include "store/in_place.hpp"
#include "store/kept_table.hpp"
#include "store/new_file.hpp"
#include "store/query.hpp"
#include "store/session.hpp"
#include "store/transaction.hpp"

namespace store {

namespace {

// Foreign keys can only be switched outside a transaction; a step may have to build a table anew
// under other tables' references.
class ForeignKeysOff {
  public:
    explicit ForeignKeysOff(SQLite::Database& database) : database_(database) {
        execute(database_, "PRAGMA foreign_keys = OFF");
    }
    ~ForeignKeysOff() { database_.tryExec("PRAGMA foreign_keys = ON"); }
    ForeignKeysOff(const ForeignKeysOff&) = delete;
    ForeignKeysOff& operator=(const ForeignKeysOff&) = delete;

  private:
    SQLite::Database& database_;
};

void run_step(SQLite::Database& database, const Migration& step) {
    try {
        execute(database, std::string(step.sql));
    } catch (const error::DamagedFile& failure) {
        throw error::DamagedFile(
            fmt::format("the catalogue cannot be brought up to date: step {}", step.name),
            failure.hint().empty() ? failure.what() : failure.hint());
    }
}

void check_references(SQLite::Database& database) {
    Query query(database, R"(
SELECT "table", parent FROM pragma_foreign_key_check ORDER BY "table", parent)");
    if (query.step()) {
        const std::string table = query.text();
        throw error::DamagedFile(
            "the catalogue cannot be brought up to date: a row of " + table + " points nowhere",
            "the file is as it was; go back to an earlier copy, or ask for help with this one");
    }
}

void write_snapshot(SQLite::Database& database, Session& session, std::size_t version) {
    const OpenGroup group(database, session);
    for (const auto& name : kept_tables())
        KeptTable(database, name).write_snapshot();
    group.write({fmt::format("brought up to version {}", version), std::nullopt, true});
}

} // namespace

void migrate(SQLite::Database& database, Session& session, const std::vector<Migration>& steps) {
    const ForeignKeysOff foreign_keys_off(database);
    WriteTransaction transaction(database);
    const auto from = static_cast<std::size_t>(integer_from(database, "PRAGMA user_version"));
    for (std::size_t i = from; i < steps.size(); ++i)
        run_step(database, steps[i]);
    check_references(database);
    execute(database, fmt::format("PRAGMA user_version = {}", steps.size()));
    if (from > 0 && from < steps.size())
        write_snapshot(database, session, steps.size());
    transaction.commit();
}

std::filesystem::path back_up_beside(SQLite::Database& database,
                                     const std::filesystem::path& path) {
    const auto rights = rights_of(path);
    NewFile file(path, rights);
    copy_database(database, file.path());
    if (rights)
        file.take_rights(*rights);
    return move_beside(file, fmt::format("{}.version-{}", path.string(),
                                         integer_from(database, "PRAGMA user_version")));
}

void bring_up_to_date(SQLite::Database& database, Session& session,
                      const std::filesystem::path& path, const std::vector<Migration>& steps) {
    const auto version = static_cast<std::size_t>(integer_from(database, "PRAGMA user_version"));
    if (version >= steps.size())
        return;
    refuse_damaged(database, path.string()); // the snapshot would hide it
    use_rollback_journal(database, path);
    back_up_beside(database, path);
    migrate(database, session, steps);
}

} // namespace store
