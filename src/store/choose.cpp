// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/choose.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <map>
#include <optional>

#include "store/compare.hpp"
#include "store/kept_table.hpp"
#include "store/query.hpp"

namespace store {

namespace {

constexpr auto k_keys = R"(
SELECT DISTINCT rowkey FROM found WHERE tbl = ?1 ORDER BY rowkey)";

constexpr auto k_states = R"(
SELECT row, stray FROM found WHERE tbl = ?1 AND rowkey = ?2 ORDER BY rowid)";

constexpr auto k_was_once = R"(
SELECT 1 FROM history WHERE sound AND tbl = ?1 AND rowkey = ?2 AND after = ?3 ORDER BY id LIMIT 1)";

// A row as it was found.
struct Found {
    std::vector<std::string> live;  // in its table
    std::vector<std::string> stray; // on pages that nothing leads to
    std::optional<Entry> newest;    // entry about it
    std::optional<std::string> recorded;
    bool sure = false; // that the history has it right
};

class Chooser {
  public:
    Chooser(const Loose& loose, const std::string& table, const SalvagedHistory& history,
            Recovered& recovered)
        : loose_(loose), database_(*loose.connection.database), table_(table), history_(history),
          recovered_(recovered) {}

    void run(const SeeStates& see) {
        for (const std::string& key : keys()) {
            const Found found = find(key);
            if (const auto states = choose(key, found); !states.empty())
                see(key, states);
        }
    }

  private:
    // Those with the newest entries first, then those of which the history knows nothing.
    std::vector<std::string> keys() {
        std::map<std::string, std::int64_t> newest;
        Query query(database_, k_keys);
        query.put(table_);
        while (query.step())
            newest[query.text()] = 0;
        const auto& told = history_.replay.rows();
        for (auto at = told.lower_bound({table_, ""});
             at != told.end() && at->first.first == table_; ++at)
            newest[at->first.second] = at->second.entry;
        std::vector<std::string> all;
        for (const auto& [key, entry] : newest)
            all.push_back(key);
        std::stable_sort(all.begin(), all.end(),
                         [&newest](const auto& a, const auto& b) { return newest[a] > newest[b]; });
        return all;
    }

    Found find(const std::string& key) {
        Found found;
        Query states(*loose_.connection.statements, k_states);
        states.put(table_).put_as_is(key);
        while (states.step()) {
            std::string row = states.text();
            (states.integer() == 0 ? found.live : found.stray).push_back(std::move(row));
        }
        const auto told = history_.replay.rows().find({table_, key});
        if (told != history_.replay.rows().end())
            found.newest = entry(database_, told->second.entry);
        if (found.newest)
            found.recorded = found.newest->after;
        found.sure = found.newest ? is_sure({table_, key}, found.newest->id) : history_.complete();
        return found;
    }

    // Unless a later entry, which may be about this row, is lost or bad. A bad entry that names
    // another row is about that row; one that names none that is known may be about any.
    [[nodiscard]] bool is_sure(const RowName& name, std::int64_t newest) const {
        const auto& rows = history_.replay.rows();
        return history_.end_known && newest > history_.newest_lost &&
               std::none_of(history_.bad.upper_bound(newest), history_.bad.end(),
                            [&](const auto& bad) {
                                return bad.second == name || !rows.contains(bad.second);
                            });
    }

    // The table without the row is newer than an entry that has it, if nothing of the table is
    // missing; but a tool does not go for so little.
    [[nodiscard]] bool may_be_gone(const Found& found) const {
        return found.live.empty() && !loose_.broken.contains(table_) && table_ != "body" &&
               table_ != "pilot";
    }

    std::vector<std::string> choose(const std::string& key, const Found& found) {
        std::vector<std::string> states;
        if (found.sure) {
            tell_sure(key, found);
            if (found.recorded)
                states.push_back(*found.recorded);
            return states;
        }
        states = found.live;
        // Of several under one key, which cannot all be its row, the one that the history knows.
        const auto known = std::find(states.begin(), states.end(), found.recorded);
        std::rotate(states.begin(), known == states.end() ? states.begin() : known, states.end());
        for (const std::string& row : found.stray)
            if (!was_once(key, row))
                states.push_back(row);
        if (found.recorded && !may_be_gone(found))
            states.push_back(*found.recorded);
        tell_unsure(key, found, states);
        return states;
    }

    // Older than the newest entry about it.
    bool was_once(const std::string& key, const std::string& row) {
        Query query(database_, k_was_once);
        query.put(table_).put_as_is(key).put_as_is(row);
        return query.step();
    }

    Finding about(const std::string& key, const Found& found, const std::string& what) {
        Finding finding{what, table_, key, {}, {}, {}, {}};
        if (found.newest)
            finding.number = found.newest->number;
        else if (!found.live.empty() || !found.stray.empty())
            finding.number =
                number_of(database_, found.live.empty() ? found.stray[0] : found.live[0]);
        return finding;
    }

    void tell_sure(const std::string& key, const Found& found) {
        const Finding finding = about(key, found, "as the history has it");
        for (const std::string& row : found.live)
            if (row != found.recorded)
                add_differences(database_, finding, found.recorded, row, recovered_.mended);
        if (found.live.empty() && found.recorded)
            add_differences(database_, finding, found.recorded, {}, recovered_.mended);
    }

    void tell_unsure(const std::string& key, const Found& found,
                     const std::vector<std::string>& states) {
        const bool in_table = !found.live.empty();
        for (std::size_t i = 1; i < found.live.size(); ++i)
            if (states[i] != states[0])
                add_differences(database_, about(key, found, "the table has both"), states[0],
                                states[i], recovered_.doubtful);
        if (in_table && states[0] == found.recorded)
            return;
        if (states.empty() && !found.recorded)
            return;
        const bool as_recorded = !states.empty() && states[0] == found.recorded;
        const char* what = in_table || states.empty() ? "as the table has it"
                           : as_recorded              ? "as the history last had it"
                                                      : "as a page outside its table has it";
        add_differences(database_, about(key, found, what), found.recorded,
                        states.empty() || (as_recorded && !in_table) ? std::nullopt
                                                                     : std::optional(states[0]),
                        recovered_.doubtful);
    }

    const Loose& loose_;
    SQLite::Database& database_;
    const std::string& table_;
    const SalvagedHistory& history_;
    Recovered& recovered_;
};

} // namespace

void choose_rows(const Loose& loose, const std::string& table, const SalvagedHistory& history,
                 Recovered& recovered, const SeeStates& see) {
    if (loose.broken.contains(table) && !history.whole())
        recovered.lost.push_back("what cannot be read of the table " + table);
    Chooser(loose, table, history, recovered).run(see);
}

} // namespace store
