// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/check.hpp"

#include <fmt/format.h>

#include <functional>

#include "error/error.hpp"
#include "store/chain.hpp"
#include "store/compare.hpp"
#include "store/query.hpp"
#include "store/replay.hpp"
#include "store/shape.hpp"
#include "store/transaction.hpp"

namespace store {

namespace {

// So many are listed; a damaged file can have any number.
constexpr auto k_integrity = R"(
PRAGMA integrity_check(100))";

constexpr auto k_points_nowhere = R"(
SELECT "table", coalesce(rowid, ''), parent FROM pragma_foreign_key_check
ORDER BY "table", rowid, parent)";

constexpr auto k_groups_without_entries = R"(
SELECT id, words FROM change_group WHERE id NOT IN (SELECT grp FROM history) ORDER BY id)";

constexpr auto k_numbers_lost = R"(
SELECT DISTINCT number, tbl FROM history WHERE tbl IN ('body', 'pilot')
EXCEPT SELECT number, kind FROM tool_number
ORDER BY number)";

class Checker {
  public:
    explicit Checker(SQLite::Database& database) : database_(database) {}

    Checked check() {
        attempt("the pages of the file", [this] { sqlite_checks(); });
        attempt("the schema", [this] { check_shape(); });
        attempt("the rows that point at others", [this] { references(); });
        attempt("the history", [this] { history(); });
        attempt("the list of changes", [this] { groups(); });
        attempt("the numbers given out", [this] { numbers(); });
        return std::move(checked_);
    }

  private:
    // One part of the check; that it cannot be done is a finding.
    void attempt(const std::string& part, const std::function<void()>& act) {
        try {
            act();
        } catch (const error::DamagedFile&) {
            say(part + " cannot be read");
        }
    }

    void say(const std::string& what) {
        checked_.findings.push_back({what, {}, {}, {}, {}, {}, {}});
    }

    void sqlite_checks() {
        Query query(database_, k_integrity);
        while (query.step())
            if (const std::string line = query.text(); line != "ok")
                say("SQLite: " + line);
    }

    void check_shape() {
        for (const std::string& object : foreign_objects(database_))
            say("not as this version has it: " + object);
    }

    void references() {
        Query query(database_, k_points_nowhere);
        while (query.step()) {
            Finding& finding = checked_.findings.emplace_back();
            finding.table = query.text();
            finding.key = query.text();
            finding.what = "points at a row that is not there, of " + query.text();
        }
    }

    void history() {
        Replay replay;
        const std::int64_t start = replay_start(database_);
        Query query(database_, select_entries(database_) + "ORDER BY id");
        std::int64_t last = 0;
        while (query.step()) {
            const Entry entry = take_entry(query);
            if (entry.id <= last)
                throw error::DamagedFile("the history is out of order");
            if (entry.id > last + 1)
                say_missing(last + 1, entry.id - 1);
            last = entry.id;
            replay.add(entry, start);
        }
        if (const std::int64_t end = chain_end(database_); end > last)
            say_missing(last + 1, end);
        checked_.entries = replay.count();
        Comparison compare(database_, checked_.findings);
        compare.complaints(replay);
        checked_.rows = compare.tables(replay);
    }

    void say_missing(std::int64_t first, std::int64_t last) {
        say(first == last
                ? fmt::format("entry {} of the history is missing", first)
                : fmt::format("entries {} to {} of the history are missing", first, last));
    }

    void groups() {
        Query query(database_, k_groups_without_entries);
        while (query.step()) {
            const std::int64_t group = query.integer();
            say(fmt::format("change {} has lost its rows: {}", group, query.text()));
        }
    }

    void numbers() {
        Query query(database_, k_numbers_lost);
        while (query.step()) {
            Finding& finding = checked_.findings.emplace_back();
            finding.table = "tool_number";
            finding.number = query.integer();
            finding.recorded = query.text();
            finding.what = "the number is not among those given out";
        }
    }

    SQLite::Database& database_;
    Checked checked_;
};

} // namespace

Checked check(SQLite::Database& database) {
    const ReadTransaction transaction(database);
    return Checker(database).check();
}

Checked check(const File& file) {
    return check(file.database());
}

Checked refuse_damaged(SQLite::Database& database, const std::string& path) {
    refuse_views(database, path);
    Checked checked = check(database);
    if (!checked.whole())
        throw error::DamagedFile(
            fmt::format("the catalogue is damaged ({}): {}", checked.findings.front().what, path),
            "`counterpart check` says where, `counterpart recover` mends it");
    return checked;
}

} // namespace store
