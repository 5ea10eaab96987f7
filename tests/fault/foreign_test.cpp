// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Files that are no catalogue, or one that this program does not know: refused, bytes unchanged.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include "bench.hpp"

namespace {

using fault::Bench;

std::string with_number(std::string bytes, std::size_t at, std::uint32_t number) {
    for (std::size_t i = 0; i < 4; ++i)
        bytes[at + i] = static_cast<char>(number >> (24 - 8 * i));
    return bytes;
}

} // namespace

TEST_SUITE_BEGIN("foreign");

TEST_CASE("a file that is no catalogue of this program is refused by every command, untouched") {
    const Bench bench;
    bench.fill();
    const std::string good = fault::contents(bench.file());
    const struct {
        const char* name;
        std::string bytes;
        const char* said;
    } k_files[] = {
        {"empty", "", "empty"},
        {"a letter", "Dear sir, the counterbores are in the third drawer.\n", "not a catalogue"},
        {"a hundred zeros", std::string(100, '\0'), "not a catalogue"},
        {"CSV", fault::many_bodies(50), "not a catalogue"},
        {"the header alone", good.substr(0, 100), ""},
        {"ninety-nine bytes", good.substr(0, 99), "not a catalogue"},
        {"another program's", with_number(good, 68, 0x12345678), "another program"},
        {"no program's", with_number(good, 68, 0), "another program"},
        {"newer", with_number(good, 60, 9000), "version 9000"},
        {"version 0", with_number(good, 60, 0), "version 0"},
        {"version -1", with_number(good, 60, 0xFFFFFFFF), "version -1"},
    };
    for (const auto& [name, bytes, said] : k_files) {
        for (const fault::Words& words : {fault::Words{"list"},
                                          {"add", "body", "--cut-dia", "7/16"},
                                          {"undo"},
                                          {"check"},
                                          {"backup"},
                                          {"backup", "copy.db"},
                                          {"recover"},
                                          {"match", "M8 socket head cap"}}) {
            fault::write(bench.file(), bytes);
            const auto outcome = bench.run(words);
            CAPTURE(name);
            CAPTURE(words.front());
            CAPTURE(outcome.err);
            CHECK(outcome.code == 6);
            CHECK(outcome.err.find(said) != std::string::npos);
            CHECK((fault::contents(bench.file()) == bytes));
            CHECK(bench.names() == std::vector<std::string>{"catalogue.db"});
        }
    }
}

TEST_CASE("a copy that is no catalogue is not put in a catalogue's place") {
    const Bench bench;
    bench.fill();
    const std::string good = fault::contents(bench.file());
    std::string altered = good; // a value, which only the history knows better
    altered.replace(altered.find("rack 9"), 6, "rack 8");
    for (const std::string& bytes :
         {std::string(), std::string("a letter"), with_number(good, 60, 9000),
          good.substr(0, good.size() / 2), altered}) {
        fault::write(bench / "copy.db", bytes);
        CHECK(bench.run({"restore", "copy.db"}).code == 6);
        CHECK((fault::contents(bench.file()) == good));
        CHECK((fault::contents(bench / "copy.db") == bytes));
        CHECK(bench.names() == std::vector<std::string>{"catalogue.db", "copy.db"});
    }
    CHECK(bench.run({"restore", "nothing.db"}).code == 4);
    CHECK(bench.run({"restore", "catalogue.db"}).code == 7);
    CHECK(bench.run({"backup", "catalogue.db", "--force"}).code == 7);
    CHECK((fault::contents(bench.file()) == good));
}

TEST_CASE(
    "a file with a hard link is read and not written; a symbolic link is as good as the file") {
    const Bench bench;
    bench.fill();
    const std::string good = fault::contents(bench.file());
    fault::fs::create_hard_link(bench.file(), bench / "second.db");
    CHECK(bench.run({"list"}).code == 0);
    const auto outcome = bench.run({"add", "body", "--cut-dia", "7/16"});
    CHECK(outcome.code == 7);
    CHECK(outcome.err.find("cp catalogue.db") != std::string::npos);
    CHECK(bench.run({"restore", "second.db"}).code == 7);
    CHECK(bench.run({"backup", "second.db", "--force"}).code == 7);
    CHECK((fault::contents(bench.file()) == good));
    fault::fs::remove(bench / "second.db");

    fault::fs::create_directory(bench / "elsewhere");
    fault::fs::rename(bench.file(), bench / "elsewhere/real.db");
    fault::fs::create_symlink("elsewhere/real.db", bench.file());
    bench.done({"add", "body", "--cut-dia", "7/16"});
    bench.done({"backup", "copy.db"});
    bench.done({"add", "body", "--cut-dia", "9/16"});
    bench.done({"restore", "copy.db"});
    CHECK(fault::fs::is_symlink(bench.file()));
    const auto newest = "SELECT max(number) FROM body";
    CHECK(fault::number_from(bench / "elsewhere/real.db", newest) ==
          fault::number_from(bench / "copy.db", newest));
    bench.is_whole();
}

TEST_SUITE_END();
