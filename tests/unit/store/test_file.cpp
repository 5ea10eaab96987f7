// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Making and opening catalogue files: the settings, and a crash in the middle of a change.
#include "store/file.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>

#include "random_tools.hpp"
#include "scratch.hpp"
#include "store/connection.hpp"
#include "store/migrations.hpp"
#include "store/new_file.hpp"
#include "store/tools.hpp"

namespace fs = std::filesystem;
using error::ExitCode;
using scratch::error_of;
using scratch::number_from;
using store::Access;
using store::File;

TEST_CASE("a new catalogue knows its unit, and is the only thing in its folder") {
    const scratch::Folder folder;
    CHECK(File::create(folder / "inch.db", length::Unit::inch).unit() == length::Unit::inch);
    CHECK(File::create(folder / "mm.db", length::Unit::millimetre).unit() ==
          length::Unit::millimetre);
    CHECK(folder.names() == "inch.db mm.db");
    CHECK(File::open(folder / "inch.db", Access::read).unit() == length::Unit::inch);
    CHECK(File::open(folder / "mm.db", Access::write).unit() == length::Unit::millimetre);
    CHECK(folder.names() == "inch.db mm.db");
}

TEST_CASE("a new catalogue carries the program's mark and its version") {
    const scratch::Folder folder;
    const File file = scratch::catalogue(folder / "c.db");
    CHECK(number_from(file, "PRAGMA application_id") == store::k_application_id);
    CHECK(scratch::contents(folder / "c.db").substr(68, 4) == "CPRT");
    CHECK(number_from(file, "PRAGMA user_version") ==
          static_cast<std::int64_t>(store::migrations().size()));
}

TEST_CASE("a new catalogue goes over nothing, and needs its folder") {
    const scratch::Folder folder;
    scratch::write(folder / "taken", "a letter");
    fs::create_symlink(folder / "nowhere", folder / "link");
    for (const auto* name : {"taken", "link", "missing/c.db", "."}) {
        CAPTURE(name);
        const auto error = error_of([&] { File::create(folder / name, length::Unit::inch); });
        REQUIRE(error);
        CHECK(error->code() == ExitCode::input_output);
    }
    CHECK(scratch::contents(folder / "taken") == "a letter");
    CHECK(folder.names() == "link taken");
}

TEST_CASE("a new file that is given up leaves nothing, and one that comes late goes over nothing") {
    const scratch::Folder folder;
    { const store::NewFile given_up(folder / "c.db"); }
    CHECK(folder.names().empty());
    {
        store::NewFile late(folder / "c.db");
        CHECK(late.path().parent_path() == folder.path());
        scratch::write(folder / "c.db", "another's");
        CHECK_FALSE(late.move_to(folder / "c.db"));
    }
    CHECK(folder.names() == "c.db");
    CHECK(scratch::contents(folder / "c.db") == "another's");
    CHECK(fs::hard_link_count(folder / "c.db") == 1);
}

TEST_CASE("every connection has the settings that keep the file safe") {
    const scratch::Folder folder;
    scratch::catalogue(folder / "c.db");
    for (const auto access : {Access::read, Access::write}) {
        const File file = File::open(folder / "c.db", access);
        CHECK(number_from(file, "PRAGMA foreign_keys") == 1);
        if (access == Access::write)
            CHECK(number_from(file, "PRAGMA synchronous") == 3); // EXTRA
        CHECK(number_from(file, "PRAGMA trusted_schema") == 0);
        CHECK(number_from(file, "PRAGMA cell_size_check") == 1);
        CHECK(number_from(file, "PRAGMA busy_timeout") == 5000);
        CHECK(number_from(file, "SELECT journal_mode = 'delete' FROM pragma_journal_mode") == 1);
        // Defensive: the schema cannot be written as a table.
        file.database().exec("PRAGMA writable_schema = ON");
        CHECK_THROWS(file.database().exec("DELETE FROM sqlite_schema"));
    }
}

TEST_CASE("a connection for reading cannot write and leaves no trace") {
    const scratch::Folder folder;
    scratch::catalogue(folder / "c.db");
    const std::string before = scratch::contents(folder / "c.db");
    {
        File file = File::open(folder / "c.db", Access::read);
        CHECK(store::bodies(file).empty());
        const auto error = error_of([&] {
            store::Change change(file, "add");
            store::add_body(change, {});
        });
        REQUIRE(error);
        CHECK(error->code() == ExitCode::input_output);
    }
    CHECK(scratch::contents(folder / "c.db") == before);
    CHECK(folder.names() == "c.db");
}

TEST_CASE("a catalogue opened for writing is not written by that") {
    const scratch::Folder folder;
    scratch::catalogue(folder / "c.db");
    const std::string before = scratch::contents(folder / "c.db");
    { const File file = File::open(folder / "c.db", Access::write); }
    CHECK(scratch::contents(folder / "c.db") == before);
}

TEST_CASE("a catalogue with a write-ahead log goes back to a file that can be copied at rest") {
    const scratch::Folder folder;
    scratch::catalogue(folder / "c.db").database().exec("PRAGMA journal_mode = WAL");
    { const File file = File::open(folder / "c.db", Access::write); }
    CHECK(folder.names() == "c.db");
    CHECK(scratch::contents(folder / "c.db").substr(18, 2) == "\x01\x01");
}

namespace {

// The file and its journal as a crash leaves them when part of a change is on the disk.
void leave_cut_change(const scratch::Folder& folder, const std::string& name) {
    File file = scratch::catalogue(folder / "whole.db");
    RandomTools random(5);
    store::Change first(file, "first");
    store::add_body(first, random.body());
    first.commit();
    file.database().exec("PRAGMA cache_size = 2");
    store::Change second(file, "second");
    for (int i = 0; i < 100; ++i)
        store::add_body(second, random.body());
    fs::copy_file(folder / "whole.db", folder / name);
    fs::copy_file(folder / "whole.db-journal", folder / (name + "-journal"));
}

} // namespace

TEST_CASE("a change that a crash cut short is taken back at the next opening, also for reading") {
    for (const auto access : {Access::read, Access::write}) {
        const scratch::Folder folder;
        leave_cut_change(folder, "c.db");
        REQUIRE(scratch::contents(folder / "c.db") != scratch::contents(folder / "whole.db"));
        const File file = File::open(folder / "c.db", access);
        CHECK(store::bodies(file).size() == 1);
        CHECK(number_from(file, "SELECT integrity_check = 'ok' FROM pragma_integrity_check") == 1);
        CHECK(folder.names() == "c.db whole.db");
        CHECK(scratch::contents(folder / "c.db") == scratch::contents(folder / "whole.db"));
    }
}
