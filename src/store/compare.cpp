// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/compare.hpp"

#include <fmt/format.h>

#include <set>

#include "store/kept_table.hpp"
#include "store/query.hpp"

namespace store {

namespace {

constexpr auto k_both_json = R"(
SELECT json_valid(?1) AND json_valid(?2))";

constexpr auto k_differences = R"(
SELECT coalesce(a.key, b.key), a.value, b.value
FROM json_each(?1) a FULL JOIN json_each(?2) b ON a.key = b.key
WHERE a.value IS NOT b.value
ORDER BY coalesce(a.id, b.id))";

// A trial goes by its pilot.
constexpr auto k_number = R"(
SELECT coalesce(?1 ->> '$.number', ?1 ->> '$.pilot') WHERE json_valid(?1))";

bool both_json(SQLite::Database& database, const std::string& a, const std::string& b) {
    Query query(database, k_both_json);
    query.put_as_is(a).put_as_is(b);
    return query.step() && query.integer() == 1;
}

} // namespace

std::optional<std::int64_t> number_of(SQLite::Database& database, const std::string& row) {
    Query query(database, k_number);
    query.put_as_is(row);
    return query.step() ? query.maybe_integer() : std::nullopt;
}

void add_differences(SQLite::Database& database, const Finding& about,
                     const std::optional<std::string>& recorded,
                     const std::optional<std::string>& found, std::vector<Finding>& findings) {
    if (!recorded || !found || !both_json(database, *recorded, *found)) {
        Finding& finding = findings.emplace_back(about);
        finding.recorded = recorded;
        finding.found = found;
        return;
    }
    Query query(database, k_differences);
    query.put_as_is(*recorded).put_as_is(*found);
    bool any = false;
    while (query.step()) {
        Finding& finding = findings.emplace_back(about);
        finding.column = query.text();
        finding.recorded = query.maybe_text();
        finding.found = query.maybe_text();
        any = true;
    }
    if (!any) // the same values, written otherwise
        findings.push_back(about);
}

void Comparison::complaints(const Replay& replay) {
    for (const auto& [fault, id, earlier] : replay.complaints()) {
        const auto bad = entry(database_, id);
        if (!bad)
            continue;
        Finding about{{}, bad->table, bad->key, bad->number, {}, {}, {}};
        if (fault != Replay::Fault::order) {
            about.what = fmt::format("entry {} of the history does not fit its {}", id,
                                     fault == Replay::Fault::sum ? "sum" : "place");
            findings_.push_back(about);
            continue;
        }
        about.what = fmt::format("entry {} of the history does not follow from the one before", id);
        const auto former = earlier == 0 ? std::nullopt : entry(database_, earlier);
        add_differences(database_, about, former ? former->after : std::nullopt, bad->before,
                        findings_);
    }
}

void Comparison::row(const RowName& name, const Replay::Told* told,
                     const std::optional<std::string>& row) {
    Finding about{{}, name.first, name.second, {}, {}, {}, {}};
    const auto newest = told == nullptr ? std::nullopt : entry(database_, told->entry);
    const auto recorded = newest ? newest->after : std::nullopt;
    about.number = newest ? newest->number : number_of(database_, *row);
    if (!row)
        about.what = "the row is missing";
    else if (!recorded)
        about.what = "the history has no such row";
    else
        about.what = told->fits ? "not as it was written"
                                : "not as in the history, whose entry does not fit its sum";
    add_differences(database_, about, recorded, row, findings_);
}

std::int64_t Comparison::table(const std::string& name, const Replay& replay) {
    std::int64_t count = 0;
    std::set<std::string> missing;
    for (auto at = replay.rows().lower_bound({name, ""});
         at != replay.rows().end() && at->first.first == name; ++at)
        if (at->second.sum)
            missing.insert(at->first.second);
    const KeptTable table(database_, name);
    table.each([&](const std::string& key, const std::string& found) {
        ++count;
        missing.erase(key);
        const auto told = replay.rows().find({name, key});
        const bool known = told != replay.rows().end();
        if (!known && name == k_change_table)
            return; // of a program that did not yet give changes entries of their own
        if (!known || told->second.sum != Replay::sum(found))
            row({name, key}, known ? &told->second : nullptr, found);
    });
    for (const std::string& key : missing)
        row({name, key}, &replay.rows().at({name, key}), std::nullopt);
    return count;
}

std::int64_t Comparison::tables(const Replay& replay) {
    std::int64_t count = 0;
    for (const std::string& name : kept_tables_of(database_))
        count += table(name, replay);
    table(k_change_table, replay);
    return count;
}

} // namespace store
