// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/in_place.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

#include "error/error.hpp"
#include "store/copy.hpp"
#include "store/file.hpp"
#include "store/new_file.hpp"
#include "store/query.hpp"

namespace store {

namespace {

namespace fs = std::filesystem;

fs::path journal_of(const fs::path& path) {
    return path.string() + "-journal";
}

void copy_one(const fs::path& from, const fs::path& to) {
    std::error_code code;
    fs::copy_file(from, to, fs::copy_options::overwrite_existing, code);
    const int handle = code ? -1 : ::open(to.c_str(), O_RDWR | O_CLOEXEC);
    const bool on_disk = handle >= 0 && ::fsync(handle) == 0;
    if (handle >= 0)
        ::close(handle);
    if (!on_disk)
        throw error::InputOutput("the file cannot be copied: " + from.string(),
                                 code ? code.message() : "see that the disk is whole and has room");
}

// The catalogue with everybody else shut out, its last change whole or taken back. Empty if SQLite
// cannot open it: then nobody else can either.
std::optional<Connection> lock(const fs::path& path) {
    try {
        Connection connection = connect(path, Access::write, k_busy_timeout);
        use_rollback_journal(*connection.database, path);
        execute(*connection.database, "PRAGMA locking_mode = EXCLUSIVE");
        execute(*connection.database, "BEGIN EXCLUSIVE; COMMIT");
        return connection;
    } catch (const error::DamagedFile&) {
        return std::nullopt;
    }
}

// A journal left there would be played back into the new file.
void drop_journal(const fs::path& path) {
    std::error_code code;
    fs::remove(journal_of(path), code);
    if (code)
        throw error::InputOutput("the journal beside the catalogue cannot be taken away: " +
                                     journal_of(path).string(),
                                 code.message());
}

} // namespace

fs::path move_beside(NewFile& file, const fs::path& wanted) {
    fs::path name = wanted;
    for (int i = 2; !file.move_to(name); ++i)
        name = fmt::format("{}.{}", wanted.string(), i);
    return name;
}

void copy_bytes(const fs::path& from, const fs::path& to) {
    copy_one(from, to);
    if (std::error_code code; fs::exists(journal_of(from), code))
        copy_one(journal_of(from), journal_of(to));
}

Place::Place(const fs::path& path) : path_(path), target_(real_path(path)) {
    std::error_code code;
    free_ = !fs::exists(target_, code);
    if (!free_)
        locked_ = lock(target_);
}

SQLite::Database* Place::catalogue() const {
    return locked_ ? locked_->database.get() : nullptr;
}

void Place::copy_to(const fs::path& to) const {
    if (!locked_)
        return copy_bytes(target_, to);
    try {
        copy_database(*locked_->database, to);
    } catch (const error::DamagedFile&) {
        copy_bytes(target_, to);
    } catch (const error::InputOutput&) {
        copy_bytes(target_, to); // longer than its header says, perhaps
    }
}

fs::path Place::put(NewFile& file, const std::string& word) const {
    if (free_) {
        if (!file.move_to(target_))
            throw error::Busy("a catalogue has come to be there: " + path_.string(), "try again");
        return {};
    }
    const auto rights = rights_of(target_);
    NewFile old(target_, rights);
    copy_to(old.path());
    if (rights)
        old.take_rights(*rights);
    std::error_code code;
    const bool with_journal = fs::exists(journal_of(old.path()), code);
    fs::path saved = move_beside(old, target_.string() + word + date_for_a_name());
    if (with_journal)
        fs::rename(journal_of(old.hidden()), journal_of(saved));
    try {
        drop_journal(target_);
        file.replace(target_);
    } catch (...) {
        // Nothing was done, so nothing is left; but of what SQLite cannot open the journal may be
        // gone already.
        if (locked_ && !file.is_in_place()) {
            fs::remove(saved, code);
            fs::remove(journal_of(saved), code);
        }
        throw;
    }
    return saved;
}

} // namespace store
