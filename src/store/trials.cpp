// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The table of trials: which pilot was tried in which body, and how it went.
#include <fmt/format.h>

#include "error/error.hpp"
#include "store/query.hpp"
#include "store/record.hpp"
#include "store/tool_rows.hpp"
#include "store/tools.hpp"

namespace store {

namespace {

constexpr auto k_all = R"(
SELECT pilot, body, how FROM trial ORDER BY pilot, body)";

constexpr auto k_put = R"(
INSERT INTO trial (pilot, body, how) VALUES (?1, ?2, ?3)
ON CONFLICT (pilot, body) DO UPDATE SET how = excluded.how)";

constexpr auto k_forget = R"(
DELETE FROM trial WHERE pilot = ?1 OR body = ?1)";

} // namespace

std::vector<trade::Trial> trials(const File& file) {
    std::vector<trade::Trial> all;
    Query query(file.database(), k_all);
    while (query.step()) {
        trade::Trial& trial = all.emplace_back();
        trial.pilot = query.integer();
        trial.body = query.integer();
        trial.how = word_of<trade::Tried>(query.text());
    }
    return all;
}

void record_trial(Change& change, const trade::Trial& trial) {
    if (!pilot(change.file(), trial.pilot))
        throw_no_such(change.file(), ToolKind::pilot, trial.pilot);
    const auto tried_in = body(change.file(), trial.body);
    if (!tried_in)
        throw_no_such(change.file(), ToolKind::body, trial.body);
    if (!trade::may_take_pilot(*tried_in))
        throw error::BadData(fmt::format("the body takes no removable pilot: {}", trial.body),
                             "see its pilot_kind");
    Query query(change.statements(), k_put);
    query.put(trial.pilot).put(trial.body).put(trade::to_text(trial.how)).run();
}

void forget_trials(Change& change, std::int64_t tool) {
    Query(change.statements(), k_forget).put(tool).run();
}

bool is_remeasured(const trade::MaybeDimension& before, const trade::MaybeDimension& after) {
    if (!before || !after)
        return before.has_value() != after.has_value();
    return before->text != after->text || before->range != after->range;
}

} // namespace store
