// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the program writes beside the catalogue: who may use it, where it can be written, and that
// nothing lies about afterwards.
#include <doctest/doctest.h>
#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>

#include "bench.hpp"

namespace {

using fault::Bench;
using fault::Hardship;
using fault::Words;

constexpr uid_t k_somebody = 12345;

// Owner, group and mode, such as `12345:12345 640`.
std::string rights_of(const fault::fs::path& path) {
    struct stat status {};
    REQUIRE(::stat(path.c_str(), &status) == 0);
    return fmt::format("{}:{} {:o}", status.st_uid, status.st_gid, status.st_mode & 07777U);
}

void make_somebodys(const fault::fs::path& path, mode_t mode) {
    if (::geteuid() == 0)
        REQUIRE(::chown(path.c_str(), k_somebody, k_somebody) == 0);
    REQUIRE(::chmod(path.c_str(), mode) == 0);
}

bool is_hidden(const std::string& name) {
    return name.front() == '.';
}

long hidden(const Bench& bench) {
    const auto names = bench.names();
    return std::count_if(names.begin(), names.end(), is_hidden);
}

const std::vector<Words>& writers_of(const std::string& name) {
    static std::vector<Words> k_writers;
    k_writers = {{"export", "bodies", "-o", name},
                 {"chart", "--html", name},
                 {"labels", "1", "--html", name},
                 {"make-list", "--html", name},
                 {"backup", name}};
    return k_writers;
}

} // namespace

TEST_SUITE_BEGIN("outputs");

TEST_CASE("a catalogue put back or mended in its place is whose it was, and open to the same") {
    for (const mode_t mode : {0600U, 0640U, 0664U}) {
        const Bench bench;
        bench.fill();
        bench.done({"backup", "copy.db"});
        make_somebodys(bench.file(), mode);
        const auto before = rights_of(bench.file());
        bench.done({"restore", "copy.db"});
        CHECK(rights_of(bench.file()) == before);
        bench.done({"recover", "--in-place"});
        CHECK(rights_of(bench.file()) == before);
        for (const std::string& name : bench.names())
            if (name.rfind("catalogue.db.", 0) == 0)
                CHECK(rights_of(bench / name) == before);
        bench.is_whole();
    }
}

TEST_CASE("an owner that cannot be kept is said, and the file is open to nobody else for it") {
    if (::geteuid() != 0)
        return;
    const Bench bench;
    bench.fill();
    bench.done({"backup", "copy.db"});
    for (const auto& folder : {bench.folder().parent_path(), bench.folder()})
        ::chmod(folder.c_str(), 0777);
    ::chmod((bench / "copy.db").c_str(), 0644);
    make_somebodys(bench.file(), 0666);
    ::chmod(bench.file().c_str(), 0662); // group more than others
    Hardship nobody;
    nobody.as_nobody = true;
    ::chmod(bench.file().c_str(), 0666);
    const auto outcome = bench.run({"restore", "copy.db"}, nobody);
    CAPTURE(outcome.err);
    CHECK(outcome.code == 0);
    CHECK(outcome.err.find("Its owner or group could not be kept") != std::string::npos);
    CHECK(rights_of(bench.file()) == "65534:65534 666");
}

TEST_CASE("what is replaced keeps its owner and mode; what is new is as private as the catalogue") {
    for (const Words& words : writers_of("out")) {
        const Bench bench;
        bench.fill();
        CAPTURE(words.front());
        ::chmod(bench.file().c_str(), 0600);
        bench.done(words);
        CHECK(rights_of(bench / "out").substr(rights_of(bench / "out").find(' ')) == " 600");
        make_somebodys(bench / "out", 0644);
        const auto before = rights_of(bench / "out");
        Words again = words;
        again.push_back("--force");
        bench.done(again);
        CHECK(rights_of(bench / "out") == before);
    }
}

TEST_CASE("nothing is written through a symbolic link at the output") {
    const Bench bench;
    bench.fill();
    fault::write(bench / "treasure", "mine");
    const auto refused = [&](const Words& words) {
        const auto outcome = bench.run(words);
        CAPTURE(words.front());
        CAPTURE(outcome.err);
        CHECK(outcome.code == 7);
        return outcome.err;
    };
    for (const std::string to : {"treasure", "nowhere"}) {
        fault::fs::create_symlink(to, bench / "out");
        for (const Words& words : writers_of("out")) {
            refused(words);
            Words forced = words;
            forced.push_back("--force");
            CHECK(refused(forced).find("symbolic link") != std::string::npos);
        }
        refused({"recover", "-o", "out"});
        refused({"--file", "out", "start"});
        CHECK(fault::fs::is_symlink(bench / "out"));
        fault::fs::remove(bench / "out");
    }
    CHECK(fault::contents(bench / "treasure") == "mine");
    CHECK_FALSE(fault::fs::exists(bench / "nowhere"));
    CHECK(hidden(bench) == 0);
}

TEST_CASE("on a file system without links, owners and modes everything can be written, once") {
    const Bench bench;
    bench.fill();
    fault::write(bench / "bad.csv", "kind,cut_dia\ncounterbore,7/16\ncounterbore,wide\n");
    Hardship stick;
    stick.variables = {"LD_PRELOAD=" FAULT_CALLS, "FAULT_STICK=1"};
    for (const auto& [words, file] :
         std::vector<std::pair<Words, std::string>>{{{"export", "bodies", "-o", "a"}, "a"},
                                                    {{"chart", "--html", "b"}, "b"},
                                                    {{"backup", "c"}, "c"},
                                                    {{"recover", "-o", "d"}, "d"},
                                                    {{"--file", "e", "start"}, "e"}}) {
        const auto outcome = bench.run(words, stick);
        CAPTURE(words.front());
        CAPTURE(outcome.err);
        CHECK(outcome.code == 0);
        const auto bytes = fault::contents(bench / file);
        CHECK_FALSE(bytes.empty());
        CHECK(fault::fs::hard_link_count(bench / file) == 1);
        CHECK(bench.run(words, stick).code == 7); // there already
        CHECK((fault::contents(bench / file) == bytes));
    }
    CHECK(bench.run({"import", "bodies", "bad.csv", "--rejects", "r"}, stick).code == 0);
    CHECK_FALSE(fault::contents(bench / "r").empty());
    CHECK(bench.run({"restore", "c"}, stick).code == 0);
    CHECK(bench.run({"recover", "--in-place"}, stick).code == 0);
    CHECK(hidden(bench) == 0);
    bench.is_whole();
}

TEST_CASE("a catalogue where nothing may be written is recovered to another place") {
    const Bench bench;
    bench.fill();
    fault::fs::create_directory(bench / "room");
    for (const auto& folder : {bench.folder().parent_path(), bench / "room"})
        ::chmod(folder.c_str(), 0777);
    ::chmod(bench.file().c_str(), 0444);
    ::chmod(bench.folder().c_str(), 0555);
    Hardship nobody;
    nobody.as_nobody = true;
    for (const Words& words : {Words{"recover", "-o", "room/new.db"}, {"backup", "room/copy.db"}}) {
        const auto outcome = bench.run(words, nobody);
        CAPTURE(outcome.err);
        CHECK(outcome.code == 0);
    }
    CHECK(fault::number_from(bench / "room/new.db", "SELECT count(*) FROM body") > 0);
    ::chmod(bench.folder().c_str(), 0777);
}

TEST_CASE("what a killed run left is taken away by the next one, which says so") {
    const Bench bench;
    bench.done({"start"});
    fault::write(bench / "more.csv", fault::many_bodies(4000));
    bench.done({"import", "bodies", "more.csv"});
    for (const Words& words : {Words{"backup"}, {"recover", "--in-place"}}) {
        Hardship killed;
        for (int i = 1; hidden(bench) == 0 && i < 200; ++i) {
            killed.kill_after = std::chrono::milliseconds(5 * i);
            bench.run(words, killed);
        }
        REQUIRE(hidden(bench) > 0);
        const auto outcome = bench.run({"add", "body", "--cut-dia", "7/16"});
        CHECK(outcome.code == 0);
        CHECK(outcome.err.find("Taken away: .catalogue.db.unfinished-") != std::string::npos);
        CHECK(outcome.err.find("left by a run that was cut short") != std::string::npos);
        CHECK(hidden(bench) == 0);
    }
    bench.is_whole();
}

TEST_CASE("what a run is writing, and what only looks like it, is not taken away") {
    const Bench bench;
    bench.done({"start"});
    const std::string held = ".catalogue.db.unfinished-abcdef";
    for (const std::string name :
         {held.c_str(), ".catalogue.db.unfinished-abc", ".catalogue.db.abcdef",
          "catalogue.db.unfinished-abcdef", ".other.db.unfinished-abcdef"})
        fault::write(bench / name, "mine");
    fault::fs::create_symlink("catalogue.db", bench / ".catalogue.db.unfinished-linked");
    const int handle = ::open((bench / held).c_str(), O_RDWR | O_CLOEXEC);
    struct flock lock {};
    lock.l_type = F_WRLCK;
    lock.l_start = off_t{1} << 62U;
    lock.l_len = 1;
    REQUIRE(::fcntl(handle, F_OFD_SETLK, &lock) == 0);
    const auto before = bench.names();
    bench.done({"add", "body", "--cut-dia", "7/16"});
    CHECK(bench.names() == before);
    ::close(handle);
    bench.done({"add", "body", "--cut-dia", "7/16"});
    CHECK(bench.names().size() == before.size() - 1);
    CHECK_FALSE(fault::fs::exists(bench / held));
}

TEST_SUITE_END();
