// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Copies of two catalogues in one folder: whose a copy is, and that nobody else takes it away.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>

#include "bench.hpp"
#include "older.hpp"

namespace {

using fault::Bench;
using fault::Words;

std::string identity_of(const fault::fs::path& file) {
    return fault::lines_from(file, "SELECT identity FROM setting");
}

// A bench with a stick and two catalogues that are called the same.
class Two {
  public:
    Two() {
        for (const std::string name : {"school", "club", "stick"})
            fault::fs::create_directory(bench / name);
        for (const std::string name : {"school", "club"})
            done(name, {"start"});
    }
    std::string done(const std::string& whose, Words words) const {
        words.insert(words.begin(), {"--file", whose + "/catalogue.db"});
        return bench.done(words);
    }
    [[nodiscard]] fault::fs::path file(const std::string& whose) const {
        return bench / (whose + "/catalogue.db");
    }
    // The dated copies on the stick that are a catalogue's.
    [[nodiscard]] long copies(const std::string& whose) const {
        const fault::fs::directory_iterator stick(bench / "stick");
        return std::count_if(begin(stick), end(stick), [&](const auto& entry) {
            return identity_of(entry.path()) == identity_of(file(whose));
        });
    }
    Bench bench;
};

void add_one(const Two& two, const std::string& whose) {
    two.done(whose, {"add", "body", "--cut-dia", "7/16"});
}

} // namespace

TEST_SUITE_BEGIN("copies");

TEST_CASE("keeping few copies of one catalogue takes away none of another") {
    const Two two;
    CHECK(identity_of(two.file("school")) != identity_of(two.file("club")));
    for (int i = 0; i < 2; ++i) {
        add_one(two, "school");
        two.done("school", {"backup", "stick"});
    }
    std::string said;
    for (int i = 0; i < 5; ++i) {
        add_one(two, "club");
        said = two.done("club", {"backup", "stick", "--keep", "3"});
    }
    CHECK(two.copies("school") == 2);
    CHECK(two.copies("club") == 3);
    CHECK(said.find("Left alone: 2 copies") != std::string::npos);
    CHECK(said.find("Taken away: stick/catalogue.db.backup-") != std::string::npos);
}

TEST_CASE("a copy with a change that the catalogue does not have is left alone") {
    const Two two;
    add_one(two, "club");
    two.done("club", {"backup", "first.db"});
    two.done("club", {"add", "pilot", "--pilot-dia", "1/4"});
    two.done("club", {"backup", "stick"});
    two.done("club", {"restore", "first.db"});
    for (int i = 0; i < 3; ++i) {
        two.done("club", {"add", "body", "--note", fmt::format("after {}", i)});
        two.done("club", {"backup", "stick", "--keep", "1"});
    }
    CHECK(two.copies("club") == 2);
    long with_pilot = 0;
    for (const auto& entry : fault::fs::directory_iterator(two.bench / "stick"))
        with_pilot += fault::number_from(entry.path(), "SELECT count(*) FROM pilot");
    CHECK(with_pilot == 1);
}

TEST_CASE("an older program's copy, one that is damaged, a link and a folder are left alone") {
    const Two two;
    const auto stick = two.bench / "stick";
    fault::make_older(stick / "catalogue.db.backup-2020-01-01-000000", 7, 2);
    fault::write(stick / "catalogue.db.backup-2020-01-02-000000", "Dear sir");
    fault::fs::create_symlink("../school/catalogue.db",
                              stick / "catalogue.db.backup-2020-01-03-000000");
    fault::fs::create_directory(stick / "catalogue.db.backup-2020-01-04-000000");
    for (int i = 0; i < 3; ++i)
        two.done("school", {"backup", "stick", "--keep", "1"});
    for (int day = 1; day <= 4; ++day)
        CHECK(fault::fs::exists(fault::fs::symlink_status(
            stick / fmt::format("catalogue.db.backup-2020-01-0{}-000000", day))));
    CHECK(fault::fs::exists(two.file("school")));
}

TEST_CASE("one catalogue's copy does not replace another's, not even with --force") {
    const Two two;
    two.done("school", {"backup", "stick/copy.db"});
    const auto bytes = fault::contents(two.bench / "stick/copy.db");
    for (const std::string to : {"stick/copy.db", "school/catalogue.db"}) {
        const auto outcome =
            two.bench.run({"--file", "club/catalogue.db", "backup", to, "--force"});
        CHECK(outcome.code == 7);
        CHECK(outcome.err.find("not known to be a copy of this catalogue") != std::string::npos);
    }
    CHECK((fault::contents(two.bench / "stick/copy.db") == bytes));
    add_one(two, "school");
    two.done("school", {"backup", "stick/copy.db", "--force"});
    CHECK((fault::contents(two.bench / "stick/copy.db") != bytes));
    fault::write(two.bench / "stick/copy.db", "half a copy");
    two.done("school", {"backup", "stick/copy.db", "--force"});
}

TEST_CASE("a catalogue is the same one after backup, restore and recover") {
    const Two two;
    const auto mine = identity_of(two.file("school"));
    REQUIRE(mine.size() == 33); // and a line end
    two.done("school", {"backup", "copy.db"});
    CHECK(identity_of(two.bench / "copy.db") == mine);
    add_one(two, "school");
    const auto said = two.done("school", {"restore", "copy.db"});
    CHECK(said.find("another catalogue") == std::string::npos);
    CHECK(identity_of(two.file("school")) == mine);
    two.done("school", {"recover", "-o", "new.db"});
    CHECK(identity_of(two.bench / "new.db") == mine);
    two.done("school", {"recover", "--in-place"});
    CHECK(identity_of(two.file("school")) == mine);
}

TEST_CASE(
    "another catalogue's copy brings its own identity, an older program's takes the one there") {
    const Two two;
    two.done("club", {"backup", "club.db"});
    CHECK(two.done("school", {"restore", "club.db"}).find("another catalogue") !=
          std::string::npos);
    const auto clubs = identity_of(two.file("club"));
    CHECK(identity_of(two.file("school")) == clubs);
    fault::make_older(two.bench / "old.db", 7, 2);
    two.done("school", {"restore", "old.db"});
    CHECK(identity_of(two.file("school")) == clubs);
    CHECK(fault::number_from(two.file("school"), "SELECT count(*) FROM body") == 2);
    two.done("school", {"check"});
    fault::make_older(two.bench / "older.db", 6, 2);
    two.bench.done({"--file", "older.db", "list"});
    CHECK(identity_of(two.bench / "older.db").size() == 33);
}

TEST_SUITE_END();
