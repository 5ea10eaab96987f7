// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/migrate.hpp"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <string>

#include "error/error.hpp"
#include "store/kept_table.hpp"
#include "store/new_file.hpp"
#include "store/query.hpp"
#include "store/session.hpp"
#include "store/transaction.hpp"
#include "store/translate.hpp"

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

namespace {

// Throws error::InputOutput unless the copy is whole and as long as its original.
void look_over(SQLite::Database& original, const std::filesystem::path& copy_path) {
    SQLite::Database copy(copy_path.string(), SQLite::OPEN_READONLY);
    Query whole(copy, "PRAGMA integrity_check(1)");
    const bool good = whole.step() && whole.text() == "ok";
    if (!good ||
        integer_from(copy, "PRAGMA page_count") != integer_from(original, "PRAGMA page_count"))
        throw error::InputOutput("the copy of the catalogue is not good: " + copy_path.string(),
                                 "see that the disk is whole and has room");
}

void copy_to(SQLite::Database& original, const std::filesystem::path& copy_path) {
    try {
        SQLite::Database copy(copy_path.string(), SQLite::OPEN_READWRITE);
        execute(copy, "PRAGMA synchronous = EXTRA");
        SQLite::Backup backup(copy, original);
        backup.executeStep(-1);
    } catch (const SQLite::Exception& exception) {
        throw_translated(exception, copy_path.string());
    }
    look_over(original, copy_path);
}

} // namespace

std::filesystem::path back_up_beside(SQLite::Database& database,
                                     const std::filesystem::path& path) {
    NewFile file(path);
    copy_to(database, file.path());
    const std::string stem =
        fmt::format("{}.version-{}", path.string(), integer_from(database, "PRAGMA user_version"));
    std::filesystem::path wanted = stem;
    for (int i = 2; !file.move_to(wanted); ++i)
        wanted = fmt::format("{}.{}", stem, i);
    return wanted;
}

void bring_up_to_date(SQLite::Database& database, Session& session,
                      const std::filesystem::path& path, const std::vector<Migration>& steps) {
    const auto version = static_cast<std::size_t>(integer_from(database, "PRAGMA user_version"));
    if (version >= steps.size())
        return;
    back_up_beside(database, path);
    migrate(database, session, steps);
}

} // namespace store
