// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/identity.hpp"

#include "error/error.hpp"
#include "store/query.hpp"

namespace store {

namespace {

constexpr auto k_identity = R"(
SELECT identity FROM setting ORDER BY id)";

constexpr auto k_set_identity = R"(
UPDATE setting SET identity = ?1)";

constexpr auto k_newest_change = R"(
SELECT id, at, words FROM change_group ORDER BY id DESC LIMIT 1)";

constexpr auto k_has_change = R"(
SELECT count(*) FROM change_group WHERE id = ?1 AND at = ?2 AND words = ?3)";

bool has_its_newest_change(SQLite::Database& copy, SQLite::Database& catalogue) {
    Query newest(copy, k_newest_change);
    if (!newest.step())
        return true; // nothing was ever changed
    Query there(catalogue, k_has_change);
    there.put(newest.integer());
    there.put_as_is(newest.text());
    there.put_as_is(newest.text());
    return there.step() && there.integer() == 1;
}

} // namespace

std::optional<std::string> identity_of(SQLite::Database& database) {
    try {
        Query query(database, k_identity);
        return query.step() ? query.maybe_text() : std::nullopt;
    } catch (const error::DamagedFile&) {
        return std::nullopt;
    } catch (const error::InputOutput&) {
        return std::nullopt;
    }
}

void set_identity(SQLite::Database& database, const std::string& identity) {
    Query(database, k_set_identity).put(identity).run();
}

bool is_earlier_state(SQLite::Database& copy, SQLite::Database& catalogue) {
    const auto identity = identity_of(copy);
    return identity && identity == identity_of(catalogue) && has_its_newest_change(copy, catalogue);
}

} // namespace store
