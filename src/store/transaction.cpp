// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/transaction.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>
#include <sqlite3.h>

#include "error/error.hpp"
#include "store/chain.hpp"
#include "store/kept_table.hpp"
#include "store/query.hpp"
#include "store/session.hpp"
#include "store/translate.hpp"

namespace store {

namespace {

constexpr auto k_next_group = R"(
SELECT coalesce(max(id), 0) + 1 FROM change_group)";

constexpr auto k_add_group = R"(
INSERT INTO change_group (id, at, schema_version, words, undoes, snapshot)
SELECT ?1, strftime('%Y-%m-%dT%H:%M:%SZ', 'now'), user_version, ?2, ?3, ?4
FROM pragma_user_version)";

constexpr auto k_add_entry = R"(
INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
SELECT ?1, ?2, counterpart_key(?1), NULL, NULL, ?3,
    counterpart_digest(?2, counterpart_key(?1), NULL, ?3))";

} // namespace

WriteTransaction::WriteTransaction(SQLite::Database& database) : database_(database) {
    execute(database_, "BEGIN IMMEDIATE");
}

WriteTransaction::~WriteTransaction() {
    // Fails only where SQLite has already taken the transaction back.
    if (!committed_)
        database_.tryExec("ROLLBACK");
}

void WriteTransaction::commit() {
    try {
        execute(database_, "COMMIT");
    } catch (const error::InputOutput& problem) {
        // The journal is gone, so the change is made; but the disk did not confirm that it is gone.
        if (sqlite3_extended_errcode(database_.getHandle()) == SQLITE_IOERR_DIR_FSYNC)
            throw_uncertain(database_.getFilename());
        throw;
    }
    committed_ = true;
}

ReadTransaction::ReadTransaction(SQLite::Database& database) : database_(database) {
    execute(database_, "BEGIN");
    // The lock comes with the first reading.
    (void)integer_from(database_, "SELECT count(*) FROM sqlite_schema");
}

ReadTransaction::~ReadTransaction() {
    database_.tryExec("ROLLBACK");
}

OpenGroup::OpenGroup(SQLite::Database& database, Session& session)
    : database_(database), session_(session) {
    session_.group = integer_from(database_, k_next_group);
    session_.changed = false;
}

OpenGroup::~OpenGroup() {
    session_ = {};
}

void OpenGroup::write(const GroupWords& words) const {
    if (!session_.changed)
        return;
    Query query(database_, k_add_group);
    query.put(*session_.group).put(words.words).put(words.undoes);
    query.put(std::int64_t{words.snapshot}).run();
    write_change_entry(database_, *session_.group);
    chain_entries(database_, Rows::held);
}

void write_change_entry(SQLite::Database& database, std::int64_t group) {
    const auto row = KeptTable(database, k_change_table).row(fmt::format("[{}]", group));
    Query(database, k_add_entry).put(group).put(k_change_table).put(row).run();
}

} // namespace store
