// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/backup.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

#include "error/error.hpp"
#include "store/connection.hpp"
#include "store/copy.hpp"
#include "store/dated_copies.hpp"
#include "store/identity.hpp"
#include "store/in_place.hpp"
#include "store/migrate.hpp"
#include "store/new_file.hpp"

namespace store {

namespace {

namespace fs = std::filesystem;

bool same_file(const fs::path& a, const fs::path& b) {
    std::error_code code;
    return fs::equivalent(a, b, code) && !code;
}

// Throws error::DamagedFile unless the file is whole; returns how many rows it has.
std::int64_t checked(const fs::path& file, const fs::path& called) {
    const Connection connection = connect(file, Access::read, k_busy_timeout);
    return refuse_damaged(*connection.database, called.string()).rows;
}

// A checked copy under a hidden name beside `to`.
std::int64_t write_copy(const fs::path& path, NewFile& copy) {
    {
        const File file = File::open(path, Access::read);
        copy_database(file.database(), copy.path());
    }
    return checked(copy.path(), path);
}

// A catalogue that is not this one, or is too old to say. What cannot be read as one is none.
bool is_another_catalogue(const fs::path& path, const fs::path& to) {
    try {
        const Connection there = connect(to, Access::read, k_busy_timeout);
        const File catalogue = File::open(path, Access::read);
        return identity_of(*there.database) != identity_of(catalogue.database());
    } catch (const error::DamagedFile&) {
        return false;
    }
}

void refuse_target(const fs::path& path, const fs::path& to, bool replace) {
    refuse_output(to);
    if (same_file(path, to))
        throw error::InputOutput("the catalogue cannot be its own backup: " + to.string(),
                                 "name another file");
    std::error_code code;
    const bool there = fs::exists(to, code);
    if (there && !replace)
        throw_already_there(to);
    if (there && is_another_catalogue(path, to))
        throw error::InputOutput("not known to be a copy of this catalogue: " + to.string(),
                                 "name another file; if it can go, take it away yourself");
}

// A copy of before identities becomes a state of the catalogue whose place it takes.
void keep_identity(Connection& fresh, const std::optional<std::string>& was, Restored& restored) {
    SQLite::Database& database = *fresh.database;
    const auto is = identity_of(database);
    restored.another = was && is && was != is;
    if (!was || is)
        return;
    migrate(database, *fresh.session, migrations());
    set_identity(database, *was);
}

// What the catalogue in the place hands on to the file that comes there: the numbers that it gave
// out.
void hand_on(const Place& place, const fs::path& draft, Restored& restored) {
    restored.since.all = place.is_free() || place.catalogue() != nullptr;
    if (place.catalogue() == nullptr)
        return;
    Connection fresh = connect_empty(draft);
    keep_identity(fresh, identity_of(*place.catalogue()), restored);
    restored.since = keep_given_numbers(*fresh.database, given_numbers(*place.catalogue()));
}

} // namespace

BackedUp back_up(const fs::path& path, const fs::path& to, bool replace) {
    refuse_target(path, to, replace);
    NewFile copy(to, rights_of(path));
    const std::int64_t rows = write_copy(path, copy);
    if (replace)
        copy.replace(to);
    else if (!copy.move_to(to))
        throw_already_there(to);
    return {to, rows, {}};
}

BackedUp back_up_dated(const fs::path& path, const fs::path& folder, std::size_t keep) {
    const fs::path where = folder.empty() ? path.parent_path() : folder;
    const std::string name = path.filename().string();
    NewFile copy(where / name, rights_of(path));
    BackedUp backed_up{{}, write_copy(path, copy), {}};
    backed_up.path = move_beside(copy, where / dated_name(name));
    if (keep > 0)
        backed_up.thinned = keep_newest(keep, backed_up.path, name);
    return backed_up;
}

Restored restore(const fs::path& path, const fs::path& from) {
    std::error_code code;
    if (!fs::exists(from, code))
        throw error::NoSuchRecord("there is no backup of this name: " + from.string(),
                                  "see `ls` for what there is");
    if (same_file(path, from))
        throw error::InputOutput("the catalogue cannot be put back from itself: " + from.string(),
                                 "name a backup");
    NewFile draft(real_path(path), rights_of(path));
    {
        const Connection source = connect(from, Access::read, k_busy_timeout);
        copy_database(*source.database, draft.path());
    }
    Restored restored;
    restored.rows = checked(draft.path(), from);
    const Place place(path);
    hand_on(place, draft.path(), restored);
    restored.saved = place.put(draft, ".before-restore-");
    return restored;
}

} // namespace store
