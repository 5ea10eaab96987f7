// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/rebuild.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <sqlite3.h>

#include <algorithm>
#include <functional>
#include <map>
#include <optional>
#include <set>

#include "error/error.hpp"
#include "store/chain.hpp"
#include "store/choose.hpp"
#include "store/connection.hpp"
#include "store/kept_table.hpp"
#include "store/loose.hpp"
#include "store/migrate.hpp"
#include "store/pages.hpp"
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
SELECT name FROM sqlite_schema
WHERE type = 'table' AND name NOT GLOB 'sqlite_*' ORDER BY name <> 'tool_number', name)";

constexpr auto k_put_entry = R"(
INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7))";

constexpr auto k_groups_without_row = R"(
SELECT grp FROM history WHERE grp NOT IN (SELECT id FROM change_group)
UNION SELECT undoes FROM change_group
WHERE undoes IS NOT NULL AND undoes NOT IN (SELECT id FROM change_group) ORDER BY 1)";

constexpr auto k_groups_without_own_entry = R"(
SELECT id FROM change_group
WHERE id NOT IN (SELECT grp FROM history WHERE tbl = 'change_group') ORDER BY id)";

constexpr auto k_stand_in_group = R"(
INSERT INTO change_group (id, at, schema_version, words)
SELECT ?1, 'unknown', user_version, '(lost)' FROM pragma_user_version)";

constexpr auto k_found_but_settings = R"(
SELECT count(*) FROM found WHERE tbl <> 'setting')";

constexpr auto k_found = R"(
SELECT rowkey, row FROM found WHERE tbl = ?1 ORDER BY stray, rowid)";

constexpr auto k_numbers_given = R"(
INSERT OR IGNORE INTO tool_number (number, kind)
SELECT DISTINCT number, tbl FROM history WHERE tbl IN ('body', 'pilot') AND number IS NOT NULL)";

constexpr auto k_numbers_table = "tool_number";
constexpr auto k_numbers_unsure =
    "numbers given out: some cannot be read, so see that no tool carries one that comes again";

constexpr auto k_give_number = R"(
INSERT OR IGNORE INTO tool_number (number, kind)
SELECT ?1 ->> 0, ?2 WHERE ?2 IN ('body', 'pilot'))";

constexpr auto k_numbers_without_tool = R"(
SELECT number, kind FROM tool_number
WHERE number NOT IN (SELECT number FROM body UNION ALL SELECT number FROM pilot) ORDER BY number)";

// Where numbers are missing: the first and the last.
constexpr auto k_numbers_between = R"(
SELECT former + 1, number - 1
FROM (SELECT number, lag(number, 1, 0) OVER (ORDER BY number) AS former FROM tool_number)
WHERE number > former + 1 ORDER BY number)";

constexpr auto k_newest_version = R"(
SELECT coalesce(max(row ->> 'schema_version'), 0) FROM found WHERE tbl = 'change_group')";

constexpr auto k_unit = R"(
INSERT OR IGNORE INTO setting (id, unit) VALUES (1, 'in') RETURNING id)";

class Rebuilder {
  public:
    Rebuilder(const Loose& loose, Connection& fresh, const fs::path& called, Recovered& recovered)
        : loose_(loose), damaged_(*loose.connection.database), fresh_(*fresh.database),
          session_(*fresh.session), called_(called.string()), recovered_(recovered),
          history_(salvage_history(loose)) {}

    void run() {
        if (history_.good.empty() && !history_.end_known &&
            integer_from(damaged_, k_found_but_settings) == 0)
            throw error::DamagedFile("nothing of the catalogue can be read: " + called_,
                                     "go back to a backup with `counterpart restore FILE`");
        say_lost();
        sqlite3_db_config(fresh_.getHandle(), SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
        WriteTransaction transaction(fresh_);
        put_history();
        put_plain_tables();
        for (const std::string& table : kept_tables_of(fresh_))
            put_kept_table(table);
        say_lost_numbers();
        recovered_.history_whole =
            history_.whole() && recovered_.doubtful.empty() && recovered_.lost.empty();
        chain_entries(fresh_, Rows::as_they_are);
        if (!recovered_.history_whole)
            write_snapshot();
        transaction.commit();
    }

  private:
    void lose(const std::string& what) { recovered_.lost.push_back(what); }

    void say_lost() {
        if (history_.lost > 0)
            lose(fmt::format("{} entr{} of the history", history_.lost,
                             history_.lost == 1 ? "y" : "ies"));
        if (!history_.end_known)
            lose("the end of the history");
        for (const auto& [id, name] : history_.bad)
            lose(fmt::format("entry {} of the history, about {} {}, does not fit its sum", id,
                             name.first, name.second));
    }

    // Numbered anew, so that what is lost leaves no gap. A change and the one that took it back may
    // come in any order.
    void put_history() {
        execute(fresh_, "PRAGMA defer_foreign_keys = ON");
        Query put(fresh_, k_put_entry);
        for (const std::int64_t id : history_.good) {
            const Entry one = entry(damaged_, id).value();
            put.put(one.group).put(one.table).put(one.key).put(one.number);
            put.put(one.before).put(one.after).put(one.digest).run();
        }
        put_groups();
        for (const std::int64_t id : ids(k_groups_without_row)) {
            Query(fresh_, k_stand_in_group).put(id).run();
            lose(fmt::format("when change {} was made, and what was asked", id));
        }
        for (const std::int64_t id : ids(k_groups_without_own_entry))
            write_change_entry(fresh_, id);
        execute(fresh_, "PRAGMA defer_foreign_keys = OFF");
    }

    // Changes as their own entries have them, else as the table has them.
    void put_groups() {
        std::map<std::string, std::string> groups;
        Query found(damaged_, k_found);
        found.put(k_change_table);
        while (found.step()) {
            const std::string key = found.text();
            groups.try_emplace(key, found.text());
        }
        const auto& told = history_.replay.rows();
        for (auto at = told.lower_bound({k_change_table, ""});
             at != told.end() && at->first.first == k_change_table; ++at)
            if (const auto newest = entry(damaged_, at->second.entry); newest && newest->after)
                groups[at->first.second] = *newest->after;
        const KeptTable changes(fresh_, k_change_table);
        for (const auto& [key, row] : groups)
            if (const auto problem = problem_of([&] { changes.insert(row); }))
                lose(fmt::format("{} {}: {}", k_change_table, key, *problem));
    }

    std::vector<std::int64_t> ids(const char* sql) {
        std::vector<std::int64_t> found;
        Query query(fresh_, sql);
        while (query.step())
            found.push_back(query.integer());
        return found;
    }

    // Those that are not kept in the history: they are as they can be read.
    void put_plain_tables() {
        for (const std::string& table : plain_tables()) {
            if (loose_.broken.contains(table))
                lose(table == k_numbers_table ? k_numbers_unsure
                                              : "what cannot be read of the table " + table);
            put_plain_table(table);
        }
        execute(fresh_, k_numbers_given);
        Query unit(fresh_, k_unit);
        if (unit.step())
            lose("what bare numbers are in; now inches");
    }

    void put_plain_table(const std::string& table) {
        const KeptTable plain(fresh_, table, KeptTable::NotKept());
        std::set<std::string> there;
        Query found(damaged_, k_found);
        found.put(table);
        while (found.step()) {
            const std::string key = found.text();
            const std::string row = found.text();
            if (there.contains(key))
                continue;
            if (const auto problem = problem_of([&] { plain.insert(row); }))
                lose(fmt::format("{} {}: {}", table, key, *problem));
            else
                there.insert(key);
        }
    }

    std::vector<std::string> plain_tables() {
        std::vector<std::string> names;
        Query query(fresh_, k_tables);
        while (query.step()) {
            const std::string name = query.text();
            const auto& kept = kept_tables();
            if (name != "history" && name != "history_chain" && name != k_change_table &&
                std::find(kept.begin(), kept.end(), name) == kept.end())
                names.push_back(name);
        }
        return names;
    }

    void put_kept_table(const std::string& name) {
        const KeptTable table(fresh_, name);
        Query give_number(fresh_, k_give_number);
        choose_rows(loose_, name, history_, recovered_,
                    [&](const std::string& key, const std::vector<std::string>& states) {
                        give_number.put_as_is(key).put(name).run();
                        put_kept(table, name + ' ' + key, states);
                    });
    }

    // The first state that the catalogue takes. A row whose partner is lost is kept without it if
    // it can be.
    void put_kept(const KeptTable& table, const std::string& what,
                  const std::vector<std::string>& states) {
        std::optional<std::string> problem;
        for (const std::string& row : states) {
            problem = problem_of([&] { table.insert(row); });
            const bool alone = problem && !problem_of([&] { table.insert_alone(row); });
            if (problem && !alone)
                continue;
            if (alone)
                lose(what + ": what it points at");
            if (row != states[0])
                lose(what + ": its newest state, so it is as it was before");
            return;
        }
        lose(what + ": " + problem.value_or(""));
    }

    // What the disk says to the writing is no fault of the row.
    static std::optional<std::string> problem_of(const std::function<void()>& act) {
        try {
            act();
            return std::nullopt;
        } catch (const error::InputOutput&) {
            throw;
        } catch (const error::Error& problem) {
            return problem.what();
        }
    }

    // Every number that was given out is back with its tool, or its tool was taken back, or it is
    // named.
    void say_lost_numbers() {
        std::vector<std::pair<std::int64_t, std::string>> lost;
        Query query(fresh_, k_numbers_without_tool);
        while (query.step()) {
            const std::int64_t number = query.integer();
            const std::string kind = query.text();
            if (!history_.complete() &&
                !history_.replay.rows().contains({kind, fmt::format("[{}]", number)}))
                lost.emplace_back(number, kind);
        }
        for (std::size_t i = 0, next = 0; i < lost.size(); i = next) {
            const auto& [first, kind] = lost[i];
            for (next = i + 1; next < lost.size() && lost[next].second == kind &&
                               lost[next].first == lost[next - 1].first + 1;)
                ++next;
            lose_numbers(kind, first, lost[next - 1].first, "nothing can be read of");
        }
        if (!loose_.broken.contains(k_numbers_table))
            return;
        Query between(fresh_, k_numbers_between);
        while (between.step()) {
            const std::int64_t first = between.integer();
            lose_numbers("number", first, between.integer(), "given out or not");
        }
    }

    void lose_numbers(const std::string& kind, std::int64_t first, std::int64_t last,
                      const char* how) {
        const std::string plural = kind == "body" ? "bodies" : kind + "s";
        lose(first == last ? fmt::format("{}: {} {}", how, kind, first)
                           : fmt::format("{}: {} {} to {}", how, plural, first, last));
    }

    void write_snapshot() {
        const OpenGroup group(fresh_, session_);
        for (const std::string& name : kept_tables_of(fresh_))
            KeptTable(fresh_, name).write_snapshot();
        group.write({"recover", std::nullopt, true});
    }

    const Loose& loose_;
    SQLite::Database& damaged_;
    SQLite::Database& fresh_;
    Session& session_;
    std::string called_;
    Recovered& recovered_;
    SalvagedHistory history_;
};

// A change that a crash cut short is taken back, if SQLite can; what is damaged stays so. Throws
// error::DamagedFile for what is no catalogue.
void take_back_cut_change(const fs::path& path, const fs::path& called) {
    try {
        SQLite::Database database(fs::absolute(path).string(), SQLite::OPEN_READWRITE);
        distrust(database);
        refuse_header(database, called);
        database.tryExec("PRAGMA writable_schema = ON");
        database.tryExec("SELECT count(*) FROM sqlite_schema");
    } catch (const SQLite::Exception& exception) {
        throw_translated(exception, called.string());
    }
}

std::vector<Migration> steps_to(std::int64_t version) {
    std::vector<Migration> steps = migrations();
    steps.resize(static_cast<std::size_t>(version));
    return steps;
}

} // namespace

Recovered rebuild(const fs::path& damaged, const fs::path& path, const fs::path& called) {
    take_back_cut_change(damaged, called);
    const std::int64_t version = Pages(damaged).user_version();
    Connection fresh = connect_empty(path);
    execute(*fresh.database, fmt::format("PRAGMA application_id = {}", k_application_id));
    migrate(*fresh.database, *fresh.session, steps_to(version));
    Loose loose = pour(damaged, *fresh.database);
    // If the header is damaged, the changes know better of which version the tables are.
    const std::int64_t newest = integer_from(*loose.connection.database, k_newest_version);
    if (newest > version && newest <= static_cast<std::int64_t>(migrations().size())) {
        migrate(*fresh.database, *fresh.session, steps_to(newest));
        loose = pour(damaged, *fresh.database);
    }
    Recovered recovered;
    Rebuilder(loose, fresh, called, recovered).run();
    return recovered;
}

} // namespace store
