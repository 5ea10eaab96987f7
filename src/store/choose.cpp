// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/choose.hpp"

#include <algorithm>

#include "store/compare.hpp"
#include "store/kept_table.hpp"

namespace store {

namespace {

class Chooser {
  public:
    Chooser(SQLite::Database& damaged, const SalvagedHistory& history, Recovered& recovered)
        : damaged_(damaged), history_(history), recovered_(recovered) {}

    void table(const std::string& name) {
        std::set<std::string> keys;
        const auto& told = history_.replay.rows();
        for (auto at = told.lower_bound({name, ""}); at != told.end() && at->first.first == name;
             ++at)
            keys.insert(at->first.second);
        const auto [rows, to_the_end] = salvage_rows(damaged_, name, keys);
        if (!to_the_end && !history_.whole())
            recovered_.lost.push_back("what cannot be read of the table " + name);
        for (const auto& [key, row] : rows)
            keys.insert(key);
        for (const std::string& key : keys) {
            const auto found = rows.find(key);
            choose({name, key}, found == rows.end() ? std::nullopt : std::optional(found->second));
        }
    }

    std::map<RowName, std::string> take() { return std::move(chosen_); }

  private:
    // Believed unless a later entry, which may be about this row, is lost or bad. A bad entry that
    // names another row is about that row; one that names none that is known may be about any.
    [[nodiscard]] bool is_sure(const RowName& name, std::int64_t newest) const {
        const auto& rows = history_.replay.rows();
        return history_.end_known && newest > history_.newest_lost &&
               std::none_of(history_.bad.upper_bound(newest), history_.bad.end(),
                            [&](const auto& bad) {
                                return bad.second == name || !rows.contains(bad.second);
                            });
    }

    void choose(const RowName& name, const std::optional<std::string>& found) {
        const auto at = history_.replay.rows().find(name);
        const bool known = at != history_.replay.rows().end();
        std::optional<Entry> newest;
        if (known)
            newest = entry(damaged_, at->second.entry);
        const auto recorded = newest ? newest->after : std::nullopt;
        const bool sure = newest && is_sure(name, newest->id);
        const auto& right = sure ? recorded : (found ? found : recorded);
        if (recorded != found)
            tell(name, newest, found, sure);
        if (right)
            chosen_[name] = *right;
    }

    void tell(const RowName& name, const std::optional<Entry>& newest,
              const std::optional<std::string>& found, bool sure) {
        Finding about{{}, name.first, name.second, {}, {}, {}, {}};
        about.number = newest ? newest->number : number_of(damaged_, *found);
        about.what = sure    ? "as the history has it"
                     : found ? "as the table has it"
                             : "as the history last had it";
        add_differences(damaged_, about, newest ? newest->after : std::nullopt, found,
                        sure ? recovered_.mended : recovered_.doubtful);
    }

    SQLite::Database& damaged_;
    const SalvagedHistory& history_;
    Recovered& recovered_;
    std::map<RowName, std::string> chosen_;
};

} // namespace

std::map<RowName, std::string> choose_rows(SQLite::Database& damaged,
                                           const std::vector<std::string>& tables,
                                           const SalvagedHistory& history, Recovered& recovered) {
    Chooser chooser(damaged, history, recovered);
    for (const std::string& name : tables)
        chooser.table(name);
    return chooser.take();
}

} // namespace store
