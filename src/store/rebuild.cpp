// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/rebuild.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <sqlite3.h>

#include <algorithm>
#include <optional>
#include <set>

#include "error/error.hpp"
#include "store/choose.hpp"
#include "store/connection.hpp"
#include "store/kept_table.hpp"
#include "store/migrate.hpp"
#include "store/query.hpp"
#include "store/refuse.hpp"
#include "store/shape.hpp"
#include "store/transaction.hpp"
#include "store/translate.hpp"

namespace store {

namespace {

namespace fs = std::filesystem;

// Loans point at the numbers that were given out.
constexpr auto k_tables = R"(
SELECT name FROM main.sqlite_schema
WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name <> 'tool_number', name)";

constexpr auto k_columns = R"(
SELECT name FROM pragma_table_xinfo(?1) WHERE name <> ?2 ORDER BY cid)";

constexpr auto k_key = R"(
SELECT name FROM pragma_table_xinfo(?1) WHERE pk = 1 ORDER BY cid)";

constexpr auto k_groups_without_row = R"(
SELECT DISTINCT grp FROM history WHERE grp NOT IN (SELECT id FROM change_group) ORDER BY grp)";

constexpr auto k_groups_without_own_entry = R"(
SELECT id FROM change_group
WHERE id NOT IN (SELECT grp FROM history WHERE tbl = 'change_group') ORDER BY id)";

constexpr auto k_stand_in_group = R"(
INSERT INTO change_group (id, at, schema_version, words)
SELECT ?1, 'unknown', user_version, '(lost)' FROM pragma_user_version)";

constexpr auto k_groups_without_entries = R"(
DELETE FROM change_group WHERE id NOT IN (SELECT grp FROM history))";

constexpr auto k_numbers_given = R"(
INSERT OR IGNORE INTO tool_number (number, kind)
SELECT DISTINCT number, tbl FROM history WHERE tbl IN ('body', 'pilot') AND number IS NOT NULL)";

constexpr auto k_numbers_table = "tool_number";
constexpr auto k_numbers_unsure =
    "numbers given out: some cannot be read, so see that no tool carries one that comes again";

constexpr auto k_give_number = R"(
INSERT OR IGNORE INTO tool_number (number, kind)
SELECT ?1 ->> 0, ?2 WHERE ?2 IN ('body', 'pilot'))";

constexpr auto k_unit = R"(
INSERT OR IGNORE INTO setting (id, unit) VALUES (1, 'in') RETURNING id)";

// Read past a broken schema as far as it goes.
Connection open_damaged(const fs::path& path, const fs::path& called) {
    Connection connection{std::make_unique<Session>(), nullptr};
    try {
        connection.database =
            std::make_unique<SQLite::Database>(fs::absolute(path).string(), SQLite::OPEN_READWRITE);
    } catch (const SQLite::Exception& exception) {
        throw_translated(exception, called.string());
    }
    refuse_header(*connection.database, called);
    distrust(*connection.database);
    register_functions(*connection.database, *connection.session);
    connection.database->tryExec("PRAGMA writable_schema = ON");
    drop_views(*connection.database, called.string());
    return connection;
}

class Rebuilder {
  public:
    Rebuilder(SQLite::Database& damaged, Connection& fresh, const fs::path& called,
              Recovered& recovered)
        : damaged_(damaged), fresh_(*fresh.database), session_(*fresh.session),
          called_(called.string()), recovered_(recovered) {}

    void run() {
        SalvagedHistory history = salvage_history(damaged_);
        const auto rows = choose_rows(damaged_, kept_tables_of(fresh_), history, recovered_);
        if (rows.empty() && history.good.empty() && !history.end_known)
            throw error::DamagedFile("nothing of the catalogue can be read: " + called_,
                                     "go back to a backup with `counterpart restore FILE`");
        say_lost(history);
        sqlite3_db_config(fresh_.getHandle(), SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
        WriteTransaction transaction(fresh_);
        copy_history(history);
        copy_plain_tables();
        put_rows(rows);
        recovered_.history_whole =
            history.whole() && recovered_.doubtful.empty() && recovered_.lost.empty();
        if (!recovered_.history_whole)
            write_snapshot();
        transaction.commit();
    }

  private:
    void say_lost(const SalvagedHistory& history) {
        if (history.lost > 0)
            recovered_.lost.push_back(fmt::format("{} entr{} of the history", history.lost,
                                                  history.lost == 1 ? "y" : "ies"));
        if (!history.end_known)
            recovered_.lost.push_back("the end of the history");
        for (const auto& [id, name] : history.bad)
            recovered_.lost.push_back(
                fmt::format("entry {} of the history, about {} {}, does not fit its sum", id,
                            name.first, name.second));
    }

    // Whole rows, as they are. False where the row cannot be read or does not fit in; what the disk
    // says to the writing is no fault of the row.
    bool copy_row(const std::string& table, const std::string& columns, const std::string& key,
                  std::int64_t id) {
        std::optional<Query> read;
        try {
            read.emplace(damaged_,
                         fmt::format("SELECT {} FROM {} WHERE {} = ?1", columns, table, key));
            if (!read->put(id).step())
                return false;
        } catch (const error::Error&) {
            return false;
        }
        return put_row(table, columns, *read);
    }

    bool put_row(const std::string& table, const std::string& columns, Query& read) {
        std::vector<std::string> marks;
        for (int i = 0; i < read.columns(); ++i)
            marks.push_back(fmt::format("?{}", i + 1));
        Query put(fresh_, fmt::format("INSERT INTO {} ({}) VALUES ({})", table, columns,
                                      fmt::join(marks, ", ")));
        try {
            for (int i = 0; i < read.columns(); ++i)
                put.put_value(read);
            return put.run() == 1;
        } catch (const error::InputOutput&) {
            throw;
        } catch (const error::Error&) {
            return false;
        }
    }

    std::string columns_of(const std::string& table, const std::string& left_out = {}) {
        std::vector<std::string> names;
        Query query(fresh_, k_columns);
        query.put(table).put(left_out);
        while (query.step())
            names.push_back(query.text());
        return fmt::format("{}", fmt::join(names, ", "));
    }

    std::string key_of(const std::string& table) {
        Query query(fresh_, k_key);
        query.put(table);
        return query.step() ? query.text() : "rowid";
    }

    void copy_history(const SalvagedHistory& history) {
        put_groups(history);
        // Numbered anew, so that what is lost leaves no gap.
        const std::string entries = columns_of("history", "id");
        for (const std::int64_t id : history.good)
            copy_row("history", entries, "id", id);
        stand_in_for_lost_groups();
        execute(fresh_, k_groups_without_entries);
        for (const std::int64_t id : ids(k_groups_without_own_entry))
            write_change_entry(fresh_, id);
    }

    // Changes as their own entries have them, else as the table has them.
    void put_groups(const SalvagedHistory& history) {
        const KeptTable changes(fresh_, k_change_table);
        const std::string columns = columns_of(k_change_table);
        std::set<std::int64_t> groups = readable_ids(damaged_, k_change_table, "id").ids;
        const auto& told = history.replay.rows();
        for (auto at = told.lower_bound({k_change_table, ""});
             at != told.end() && at->first.first == k_change_table; ++at)
            if (const auto newest = entry(damaged_, at->second.entry))
                groups.insert(newest->group);
        for (const std::int64_t id : groups) {
            const auto at = told.find({k_change_table, fmt::format("[{}]", id)});
            const auto newest = at == told.end() ? std::nullopt : entry(damaged_, at->second.entry);
            if (newest && newest->after)
                changes.insert(*newest->after);
            else
                copy_row(k_change_table, columns, "id", id);
        }
    }

    std::vector<std::int64_t> ids(const char* sql) {
        std::vector<std::int64_t> found;
        Query query(fresh_, sql);
        while (query.step())
            found.push_back(query.integer());
        return found;
    }

    void stand_in_for_lost_groups() {
        for (const std::int64_t id : ids(k_groups_without_row)) {
            Query(fresh_, k_stand_in_group).put(id).run();
            recovered_.lost.push_back(
                fmt::format("when change {} was made, and what was asked", id));
        }
    }

    // Those that are not kept in the history: they are as they can be read.
    void copy_plain_tables() {
        for (const std::string& table : plain_tables()) {
            const std::string columns = columns_of(table);
            const std::string key = key_of(table);
            const SalvagedIds found = readable_ids(damaged_, table, key);
            if (!found.all)
                recovered_.lost.push_back(table == k_numbers_table
                                              ? k_numbers_unsure
                                              : "what cannot be read of the table " + table);
            for (const std::int64_t id : found.ids)
                if (!copy_row(table, columns, key, id))
                    recovered_.lost.push_back(fmt::format("{} {}", table, id));
        }
        execute(fresh_, k_numbers_given);
        Query unit(fresh_, k_unit);
        if (unit.step())
            recovered_.lost.push_back("what bare numbers are in; now inches");
    }

    std::vector<std::string> plain_tables() {
        std::vector<std::string> names;
        Query query(fresh_, k_tables);
        while (query.step()) {
            const std::string name = query.text();
            const auto& kept = kept_tables();
            if (name != "history" && name != k_change_table &&
                std::find(kept.begin(), kept.end(), name) == kept.end())
                names.push_back(name);
        }
        return names;
    }

    void put_rows(const std::map<RowName, std::string>& rows) {
        for (const std::string& table : kept_tables_of(fresh_)) {
            const KeptTable kept(fresh_, table);
            for (auto at = rows.lower_bound({table, ""});
                 at != rows.end() && at->first.first == table; ++at) {
                Query(fresh_, k_give_number).put_as_is(at->first.second).put(table).run();
                put_kept(kept, at->first, at->second);
            }
        }
    }

    // A row whose partner is lost is kept without it if it can be.
    void put_kept(const KeptTable& table, const RowName& name, const std::string& row) {
        const std::string what = name.first + ' ' + name.second;
        try {
            table.insert(row);
            return;
        } catch (const error::InputOutput&) {
            throw;
        } catch (const error::Error&) {
        }
        try {
            table.insert_alone(row);
            recovered_.lost.push_back(what + ": what it points at");
        } catch (const error::InputOutput&) {
            throw;
        } catch (const error::Error& problem) {
            recovered_.lost.push_back(what + ": " + problem.what());
        }
    }

    void write_snapshot() {
        const OpenGroup group(fresh_, session_);
        for (const std::string& name : kept_tables_of(fresh_))
            KeptTable(fresh_, name).write_snapshot();
        group.write({"recover", std::nullopt, true});
    }

    SQLite::Database& damaged_;
    SQLite::Database& fresh_;
    Session& session_;
    std::string called_;
    Recovered& recovered_;
};

std::vector<Migration> steps_to(std::int64_t version) {
    std::vector<Migration> steps = migrations();
    steps.resize(static_cast<std::size_t>(version));
    return steps;
}

} // namespace

Recovered rebuild(const fs::path& damaged_path, const fs::path& fresh_path,
                  const fs::path& called) {
    Recovered recovered;
    Connection damaged = open_damaged(damaged_path, called);
    Connection fresh = connect_empty(fresh_path);
    execute(*fresh.database, fmt::format("PRAGMA application_id = {}", k_application_id));
    migrate(*fresh.database, *fresh.session,
            steps_to(integer_from(*damaged.database, "PRAGMA user_version")));
    Rebuilder(*damaged.database, fresh, called, recovered).run();
    return recovered;
}

} // namespace store
