// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/program.hpp"

#include <doctest/doctest.h>

#include <sstream>

#include "cli/command.hpp"
#include "error/error.hpp"

using namespace cli;
using error::ExitCode;

namespace {

struct Result {
    ExitCode code;
    std::string out;
    std::string err;
};

Result run_words(const std::vector<std::string>& words, const Surroundings& around = {}) {
    std::ostringstream out;
    std::ostringstream err;
    const ExitCode code = run(words, around, out, err);
    return {code, out.str(), err.str()};
}

} // namespace

TEST_CASE("every command prints a usage of its own and nothing else happens") {
    CHECK(all_commands().size() > 15);
    for (const Command& command : all_commands()) {
        const Result help = run_words({std::string(command.name), "--help"});
        CHECK(help.code == ExitCode::done);
        CHECK(help.out.rfind("Usage: counterpart " + std::string(command.name), 0) == 0);
        CHECK(help.err.empty());
    }
}

TEST_CASE("every command is in the listing, below its task") {
    const std::string listing = run_words({"--help"}).out;
    for (const Command& command : all_commands()) {
        CHECK(listing.find("\n  " + std::string(command.name) + ' ') != std::string::npos);
        CHECK(listing.find('\n' + std::string(command.group) + ":\n") != std::string::npos);
        CHECK(!command.about.empty());
    }
}

TEST_CASE("help keeps within eighty columns") {
    for (const Command& command : all_commands()) {
        std::istringstream lines(run_words({std::string(command.name), "--help"}).out);
        std::string line;
        while (std::getline(lines, line)) {
            CAPTURE(line);
            CHECK(line.size() <= 80);
        }
    }
}

TEST_CASE("a failing command prints nothing but its error") {
    const Result result = run_words({"--file", "/nowhere/catalogue.db", "list"});
    CHECK(result.code == ExitCode::no_such_record);
    CHECK(result.out.empty());
    CHECK(result.err.rfind("counterpart: ", 0) == 0);
    CHECK(result.err.find("\nhint: ") != std::string::npos);
}

TEST_CASE("the catalogue is where the user says, else where the desktop keeps data") {
    Surroundings around;
    around.home = "/home/someone";
    CHECK(usual_file(around) == "/home/someone/.local/share/counterpart/catalogue.db");
    around.data_home = "/data";
    CHECK(usual_file(around) == "/data/counterpart/catalogue.db");
    around.file = "mine.db";
    CHECK(usual_file(around) == "mine.db");
    CHECK_THROWS_AS(static_cast<void>(usual_file(Surroundings{})), error::UsageError);
}

TEST_CASE("an option may be written as the column is called") {
    const Result hyphens = run_words({"--file", "/nowhere", "add", "body", "--cut-dia", "7/16"});
    const Result column = run_words({"--file", "/nowhere", "add", "body", "--cut_dia", "7/16"});
    CHECK(hyphens.code == ExitCode::no_such_record);
    CHECK(column.code == hyphens.code);
}
