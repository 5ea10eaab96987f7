// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/backup.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <algorithm>
#include <regex>

#include "error/error.hpp"
#include "store/connection.hpp"
#include "store/copy.hpp"
#include "store/in_place.hpp"
#include "store/new_file.hpp"

namespace store {

namespace {

namespace fs = std::filesystem;

constexpr auto k_dated = ".backup-";

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

[[noreturn]] void throw_already_there(const fs::path& to) {
    throw error::InputOutput("already there: " + to.string(),
                             "name another file, or replace it with --force");
}

void refuse_target(const fs::path& path, const fs::path& to, bool replace) {
    if (same_file(path, to))
        throw error::InputOutput("the catalogue cannot be its own backup: " + to.string(),
                                 "name another file");
    std::error_code code;
    const fs::file_status there = fs::status(to, code);
    if (fs::exists(there) && !fs::is_regular_file(there))
        throw error::InputOutput("not a plain file: " + to.string(), "name another file");
    if (fs::exists(there) && !replace)
        throw_already_there(to);
}

// Dated copies of the catalogue, oldest first.
std::vector<fs::path> dated_copies(const fs::path& folder, const std::string& name) {
    static const std::regex k_date(R"(\d{4}-\d{2}-\d{2}-\d{6}(\.\d+)?)");
    const std::string start = name + k_dated;
    std::vector<fs::path> found;
    for (const auto& entry : fs::directory_iterator(folder.empty() ? "." : folder)) {
        const std::string other = entry.path().filename().string();
        if (other.rfind(start, 0) == 0 && entry.is_regular_file() &&
            std::regex_match(other.substr(start.size()), k_date))
            found.push_back(folder / other);
    }
    std::sort(found.begin(), found.end());
    return found;
}

// The numbers that the catalogue in the place gave out, also in the file that comes there.
GivenNumbers keep_numbers(const Place& place, const fs::path& draft) {
    if (place.catalogue() == nullptr)
        return {{}, place.is_free()};
    const Connection fresh = connect_empty(draft);
    return keep_given_numbers(*fresh.database, given_numbers(*place.catalogue()));
}

void drop_older(const fs::path& folder, const std::string& name, std::size_t keep,
                BackedUp& backed_up) {
    std::vector<fs::path> copies = dated_copies(folder, name);
    std::erase(copies, backed_up.path);
    while (copies.size() + 1 > keep) {
        std::error_code code;
        if (!fs::remove(copies.front(), code) && code)
            throw error::InputOutput("the backup is made, but an older one cannot be taken away: " +
                                         copies.front().string(),
                                     code.message());
        backed_up.dropped.push_back(copies.front());
        copies.erase(copies.begin());
    }
}

} // namespace

BackedUp back_up(const fs::path& path, const fs::path& to, bool replace) {
    refuse_target(path, to, replace);
    NewFile copy(to, permissions_of(path));
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
    NewFile copy(where / name, permissions_of(path));
    BackedUp backed_up{{}, write_copy(path, copy), {}};
    backed_up.path = move_beside(copy, where / (name + k_dated + date_for_a_name()));
    if (keep > 0)
        drop_older(where, name, keep, backed_up);
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
    NewFile draft(real_path(path), permissions_of(path));
    {
        const Connection source = connect(from, Access::read, k_busy_timeout);
        copy_database(*source.database, draft.path());
    }
    Restored restored;
    restored.rows = checked(draft.path(), from);
    const Place place(path);
    restored.since = keep_numbers(place, draft.path());
    restored.saved = place.put(draft, ".before-restore-");
    return restored;
}

} // namespace store
