// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/transaction.hpp"

#include "store/query.hpp"
#include "store/session.hpp"

namespace store {

namespace {

constexpr auto k_next_group = R"(
SELECT coalesce(max(id), 0) + 1 FROM change_group)";

constexpr auto k_add_group = R"(
INSERT INTO change_group (id, at, schema_version, words, undoes, snapshot)
SELECT ?1, strftime('%Y-%m-%dT%H:%M:%SZ', 'now'), user_version, ?2, ?3, ?4
FROM pragma_user_version)";

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
    execute(database_, "COMMIT");
    committed_ = true;
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
}

} // namespace store
