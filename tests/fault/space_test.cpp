// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// No room on the disk, nowhere to print to, nothing that may be written.
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include "bench.hpp"

namespace {

using fault::Bench;
using fault::Hardship;

// Everybody may do with the folder what root may, so that nobody can be stopped by the file alone.
void open_to_all(const Bench& bench) {
    ::chmod(bench.folder().parent_path().c_str(), 0777);
    ::chmod(bench.folder().c_str(), 0777);
    for (const std::string& name : bench.names())
        ::chmod((bench / name).c_str(), 0666);
}

} // namespace

TEST_SUITE_BEGIN("space");

TEST_CASE("a disk that is full at any of fifty sizes: all of the work or none") {
    const Bench bench;
    bench.fill();
    fault::write(bench / "more.csv", fault::many_bodies(fault::times(300, 3000)));
    const std::string bytes = fault::contents(bench.file());
    const auto before = fault::rows_of(bench.file());
    bench.done({"import", "bodies", "more.csv"});
    const auto full = static_cast<std::int64_t>(fault::contents(bench.file()).size());
    int refused = 0;
    int made = 0;
    for (int i = 1; i <= 50; ++i) {
        fault::write(bench.file(), bytes);
        Hardship hardship;
        hardship.largest_file = full * i / 48;
        const auto outcome = bench.run({"import", "bodies", "more.csv"}, hardship);
        CAPTURE(i);
        CAPTURE(outcome.err);
        if (outcome.code == 0) {
            ++made;
        } else {
            ++refused;
            CHECK(outcome.code == 7);
            CHECK(outcome.err.find("counterpart: ") == 0);
            if (!fault::fs::exists(bench / "catalogue.db-journal"))
                CHECK((fault::contents(bench.file()) == bytes));
            CHECK((fault::rows_of(bench.file()) == before));
        }
        bench.is_whole();
    }
    CHECK(refused > 30);
    CHECK(made >= 2);
}

TEST_CASE("a backup for which there is no room leaves nothing lying about") {
    const Bench bench;
    bench.fill();
    Hardship hardship;
    hardship.largest_file = static_cast<std::int64_t>(fault::contents(bench.file()).size()) / 2;
    const auto outcome = bench.run({"backup"}, hardship);
    CHECK(outcome.code == 7);
    CHECK(bench.names() == std::vector<std::string>{"catalogue.db"});
}

TEST_CASE("output that cannot be written is said, and never takes back what was done") {
    const Bench bench;
    bench.fill();
    Hardship full;
    full.output = "/dev/full";
    Hardship closed;
    closed.closed_pipe = true;
    for (const Hardship& hardship : {full, closed}) {
        const auto bytes = fault::contents(bench.file());
        for (const fault::Words& words :
             {fault::Words{"list"}, {"export", "bodies"}, {"match", "1/4-20 socket head cap"}}) {
            const auto outcome = bench.run(words, hardship);
            CHECK(outcome.code == 7);
            CHECK(outcome.err.find("cannot write the output") != std::string::npos);
        }
        CHECK((fault::contents(bench.file()) == bytes));
        const auto bodies = fault::number_from(bench.file(), "SELECT count(*) FROM body");
        CHECK(bench.run({"add", "body", "--cut-dia", "7/16"}, hardship).code == 7);
        CHECK(fault::number_from(bench.file(), "SELECT count(*) FROM body") == bodies + 1);
        bench.is_whole();
    }
}

TEST_CASE("a file or folder that may not be written is read, and otherwise left alone") {
    const Bench bench;
    bench.fill();
    open_to_all(bench);
    Hardship nobody;
    nobody.as_nobody = true;
    const auto bytes = fault::contents(bench.file());
    const auto refuse = [&](const char* what) {
        CAPTURE(what);
        const auto before = bench.names();
        for (const fault::Words& words : {fault::Words{"add", "body", "--cut-dia", "7/16"},
                                          {"undo"},
                                          {"house", "add", "M8 socket head cap"}}) {
            const auto outcome = bench.run(words, nobody);
            CHECK(outcome.code == 7);
            CHECK(outcome.err.find("hint: ") != std::string::npos);
        }
        CHECK(bench.run({"list"}, nobody).code == 0);
        CHECK(bench.run({"check"}, nobody).code == 0);
        CHECK((fault::contents(bench.file()) == bytes));
        CHECK(bench.names() == before);
    };
    ::chmod(bench.file().c_str(), 0444);
    refuse("file");
    ::chmod(bench.file().c_str(), 0666);
    ::chmod(bench.folder().c_str(), 0555);
    refuse("folder");
    ::chmod(bench.file().c_str(), 0000);
    CHECK(bench.run({"list"}, nobody).code == 7);
    ::chmod(bench.folder().c_str(), 0777);
    ::chmod(bench.file().c_str(), 0666);
    CHECK(bench.run({"add", "body", "--cut-dia", "7/16"}, nobody).code == 0);
}

TEST_CASE("a backup is open to nobody to whom its catalogue is not") {
    const Bench bench;
    bench.fill();
    ::chmod(bench.file().c_str(), 0600);
    bench.done({"backup", "copy.db"});
    bench.done({"restore", "copy.db"});
    bench.done({"recover", "-o", "new.db"});
    for (const std::string& name : bench.names()) {
        CAPTURE(name);
        CHECK((fault::fs::status(bench / name).permissions() & fault::fs::perms::all) ==
              (fault::fs::perms::owner_read | fault::fs::perms::owner_write));
    }
}

TEST_SUITE_END();
