// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What is refused as a catalogue stays as it is, byte for byte.
#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <vector>

#include "random_tools.hpp"
#include "scratch.hpp"
#include "store/migrations.hpp"
#include "store/refuse.hpp"
#include "store/tools.hpp"

namespace fs = std::filesystem;
using error::ExitCode;
using scratch::error_of;
using store::Access;
using store::File;

namespace {

// Both ways of opening refuse the file, in these words and without a trace.
void check_refused(const scratch::Folder& folder, const fs::path& path, ExitCode code,
                   const std::string& message) {
    const std::string before = fs::is_regular_file(path) ? scratch::contents(path) : "";
    const std::string names = folder.names();
    for (const auto access : {Access::read, Access::write}) {
        const auto error = error_of([&] { File::open(path, access); });
        REQUIRE(error);
        CHECK(error->code() == code);
        CHECK(error->what() == message + ": " + path.string());
        CHECK_FALSE(error->hint().empty());
    }
    CHECK(folder.names() == names);
    if (fs::is_regular_file(path))
        CHECK(scratch::contents(path) == before);
}

void set_version(const fs::path& path, int version) {
    SQLite::Database(path.string(), SQLite::OPEN_READWRITE)
        .exec("PRAGMA user_version = " + std::to_string(version));
}

// While it lives, the process is a user whom file permissions bind.
class NoRoot {
  public:
    NoRoot() {
        if (::geteuid() == 0)
            lowered_ = ::seteuid(65534) == 0;
    }
    ~NoRoot() {
        if (lowered_)
            CHECK(::seteuid(0) == 0);
    }
    NoRoot(const NoRoot&) = delete;
    NoRoot& operator=(const NoRoot&) = delete;

  private:
    bool lowered_ = false;
};

} // namespace

TEST_CASE("a file that is not there is no record") {
    const scratch::Folder folder;
    check_refused(folder, folder / "none.db", ExitCode::no_such_record, "there is no catalogue");
    check_refused(folder, ":memory:", ExitCode::no_such_record, "there is no catalogue");
    check_refused(folder, "", ExitCode::no_such_record, "there is no catalogue");
    CHECK(folder.names().empty());
}

TEST_CASE("a folder and a device are no catalogue") {
    const scratch::Folder folder;
    check_refused(folder, folder.path(), ExitCode::damaged_file, "a folder, not a catalogue");
    check_refused(folder, "/dev/null", ExitCode::damaged_file, "a device, not a catalogue");
    REQUIRE(::mkfifo((folder / "pipe").c_str(), 0600) == 0);
    check_refused(folder, folder / "pipe", ExitCode::damaged_file, "a device, not a catalogue");
}

TEST_CASE("an empty file is no catalogue") {
    const scratch::Folder folder;
    scratch::write(folder / "empty", "");
    check_refused(folder, folder / "empty", ExitCode::damaged_file,
                  "the file is empty, not a catalogue");
}

TEST_CASE("a file that SQLite did not write is no catalogue") {
    const scratch::Folder folder;
    scratch::catalogue(folder / "c.db");
    const std::string whole = scratch::contents(folder / "c.db");
    std::string nearly = whole;
    nearly[3] = 'x';
    for (const std::string& bytes :
         {std::string("number,set,kind\n1,A,counterbore\n"), std::string("SQLite format 3"),
          whole.substr(0, 99), nearly, std::string(4096, '\0')}) {
        scratch::write(folder / "other", bytes);
        check_refused(folder, folder / "other", ExitCode::damaged_file,
                      "the file is not a catalogue");
    }
}

TEST_CASE("another program's SQLite file is left alone, with what lies beside it") {
    const scratch::Folder folder;
    SQLite::Database(folder / "other.db", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE)
        .exec("CREATE TABLE body (number INTEGER)");
    scratch::write(folder / "other.db-journal", std::string(600, 'j'));
    check_refused(folder, folder / "other.db", ExitCode::damaged_file,
                  "the file belongs to another program");
    CHECK(scratch::contents(folder / "other.db-journal") == std::string(600, 'j'));
}

TEST_CASE("a newer catalogue is refused with both versions named") {
    const scratch::Folder folder;
    scratch::catalogue(folder / "c.db");
    set_version(folder / "c.db", 99);
    check_refused(folder, folder / "c.db", ExitCode::damaged_file,
                  "the catalogue has version 99, this program knows version " +
                      std::to_string(store::migrations().size()));
}

TEST_CASE("a catalogue without a version is refused") {
    const scratch::Folder folder;
    scratch::catalogue(folder / "c.db");
    set_version(folder / "c.db", 0);
    check_refused(folder, folder / "c.db", ExitCode::damaged_file,
                  "the catalogue has no version 0");
}

TEST_CASE(
    "a catalogue that lost its unit is refused before it is turned back from another journal") {
    const scratch::Folder folder;
    scratch::catalogue(folder / "c.db")
        .database()
        .exec("DELETE FROM setting; PRAGMA journal_mode = WAL");
    check_refused(folder, folder / "c.db", ExitCode::damaged_file,
                  "the catalogue has lost its unit");
    CHECK(scratch::contents(folder / "c.db").substr(18, 2) == "\x02\x02");
}

TEST_CASE("a catalogue with two hard links is read but not written") {
    const scratch::Folder folder;
    scratch::catalogue(folder / "c.db");
    fs::create_hard_link(folder / "c.db", folder / "d.db");
    const std::string before = scratch::contents(folder / "c.db");
    CHECK_FALSE(error_of([&] { File::open(folder / "d.db", Access::read); }));
    const auto error = error_of([&] { File::open(folder / "d.db", Access::write); });
    REQUIRE(error);
    CHECK(error->code() == ExitCode::input_output);
    CHECK(error->what() == "the catalogue has a second name (hard link) and is not written: " +
                               (folder / "d.db").string());
    CHECK(error->hint().find("cp ") != std::string::npos);
    CHECK(scratch::contents(folder / "c.db") == before);
    CHECK(folder.names() == "c.db d.db");
    fs::remove(folder / "c.db");
    CHECK_FALSE(error_of([&] { File::open(folder / "d.db", Access::write); }));
}

TEST_CASE("a symbolic link to a catalogue is as good as its name") {
    const scratch::Folder folder;
    scratch::catalogue(folder / "c.db");
    fs::create_symlink("c.db", folder / "link");
    CHECK_FALSE(error_of([&] { File::open(folder / "link", Access::write); }));
}

TEST_CASE("permissions decide what can be read and what can be written") {
    const scratch::Folder folder;
    scratch::catalogue(folder / "read-only.db");
    scratch::catalogue(folder / "closed.db");
    const std::string before = scratch::contents(folder / "read-only.db");
    fs::permissions(folder.path(), fs::perms(0755));
    fs::permissions(folder / "read-only.db", fs::perms(0444));
    fs::permissions(folder / "closed.db", fs::perms(0000));
    {
        const NoRoot no_root;
        CHECK_FALSE(error_of([&] {
            const File file = File::open(folder / "read-only.db", Access::read);
            CHECK(store::bodies(file).empty());
        }));
        const auto write = error_of([&] { File::open(folder / "read-only.db", Access::write); });
        REQUIRE(write);
        CHECK(write->code() == ExitCode::input_output);
        const auto read = error_of([&] { File::open(folder / "closed.db", Access::read); });
        REQUIRE(read);
        CHECK(read->code() == ExitCode::input_output);
        const auto unreachable =
            error_of([&] { File::open("/proc/1/root/tmp/c.db", Access::read); });
        REQUIRE(unreachable);
    }
    CHECK(scratch::contents(folder / "read-only.db") == before);
}

TEST_CASE("a catalogue that is cut short or overwritten is damaged, and stays as it is") {
    const scratch::Folder folder;
    {
        File file = scratch::catalogue(folder / "c.db");
        store::Change change(file, "add");
        RandomTools random(7);
        for (int i = 0; i < 50; ++i)
            store::add_body(change, random.body());
        change.commit();
    }
    const std::string whole = scratch::contents(folder / "c.db");
    std::vector<std::string> damaged = {whole.substr(0, 100), whole.substr(0, 4096),
                                        whole.substr(0, whole.size() / 2)};
    damaged.push_back(whole.substr(0, 100) + std::string(whole.size() - 100, '\x5a'));
    damaged.push_back(whole.substr(0, 4096) + std::string(whole.size() - 4096, '\0'));
    for (const std::string& bytes : damaged) {
        scratch::write(folder / "damaged.db", bytes);
        for (const auto access : {Access::read, Access::write}) {
            const auto error = error_of([&] {
                const File file = File::open(folder / "damaged.db", access);
                CHECK(store::bodies(file).size() == 50); // whatever is given is right
            });
            REQUIRE(error);
            CHECK(error->code() == ExitCode::damaged_file);
            CHECK(scratch::contents(folder / "damaged.db") == bytes);
        }
    }
}
