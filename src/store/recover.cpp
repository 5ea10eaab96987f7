// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/recover.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <optional>

#include "error/error.hpp"
#include "store/connection.hpp"
#include "store/copy.hpp"
#include "store/in_place.hpp"
#include "store/new_file.hpp"
#include "store/rebuild.hpp"
#include "store/refuse.hpp"

namespace store {

namespace {

namespace fs = std::filesystem;

constexpr auto k_another = "name another file with -o FILE";

// Of one moment, if SQLite can see to that; byte for byte if it cannot.
void copy_to_work_on(const fs::path& path, const fs::path& to) {
    try {
        const Connection connection = connect(path, Access::read, k_busy_timeout);
        copy_database(*connection.database, to);
    } catch (const error::DamagedFile&) {
        copy_bytes(path, to);
    } catch (const error::InputOutput&) {
        copy_bytes(path, to); // a change cut short, which only the copy may take back
    }
}

std::int64_t rows_checked(const fs::path& draft, const fs::path& called) {
    const Connection connection = connect(draft, Access::read, k_busy_timeout);
    const Checked checked = check(*connection.database);
    if (!checked.whole())
        throw error::DamagedFile(fmt::format("what can be read makes no whole catalogue ({}): {}",
                                             checked.findings.front().what, called.string()),
                                 "go back to a backup with `counterpart restore FILE`");
    return checked.rows;
}

} // namespace

Recovered recover(const fs::path& path, const fs::path& to) {
    refuse_path(path, Access::read);
    const bool in_place = to == path;
    std::error_code code;
    if (!in_place && fs::exists(fs::symlink_status(to, code)))
        throw_already_there(to, k_another);
    // Beside the output: where the catalogue is there may be no room, or nothing may be written.
    const fs::path where = in_place ? real_path(path) : to;
    NewFile work(where, rights_of(path));
    std::optional<Place> place; // held from the reading on, lest a change in between be left out
    if (in_place)
        place.emplace(path).copy_to(work.path());
    else
        copy_to_work_on(path, work.path());
    NewFile draft(where, rights_of(path));
    Recovered recovered = rebuild(work.path(), draft.path(), path);
    recovered.rows = rows_checked(draft.path(), path);
    recovered.path = to;
    if (place)
        recovered.saved = place->put(draft, ".damaged-");
    else if (!draft.move_to(to))
        throw_already_there(to, k_another);
    return recovered;
}

} // namespace store
