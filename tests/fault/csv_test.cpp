// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Files that are wrong in every way that we could think of: refused with the place, and nothing
// entered; and files that are merely large.
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <sys/stat.h>

#include <cstdlib>
#include <fstream>

#include "bench.hpp"

namespace {

using fault::Bench;
using namespace std::string_literals;

struct Malformed {
    const char* what; // to import
    std::string text;
    const char* place; // as the complaint names it
};

const std::vector<Malformed>& malformed() {
    static const std::vector<Malformed> k_files = {
        // no CSV
        {"bodies", "", "row 1: no header row"},
        {"bodies", "\xEF\xBB\xBF", "row 1: no header row"},
        {"bodies", "\n\n", "row 1: the header row is empty"},
        {"bodies", ",,\n1,2,3\n", "row 1: the header row is empty"},
        {"bodies", "number;place\n1;x\n", "row 1, column 1: the columns are not separated"},
        {"bodies", "number\tplace\n1\tx\n", "row 1, column 1: the columns are not separated"},
        {"bodies", "place\n\"open\n", "row 2, column place: a quote is opened"},
        {"bodies", "place,note\nx,\"y\nz,w\n", "row 2, column note: a quote is opened"},
        {"bodies", "place\nx\ny\"z\n", "row 3, column place: a quote inside"},
        {"bodies", "place,note\n\"x\"y,z\n", "row 2, column place: text after the closing quote"},
        {"bodies", "place,note\nx\n", "row 2, column note: 1 cell where the header has 2"},
        {"bodies", "place,note\nx,y,z\n", "row 2, column 3: 3 cells where the header has 2"},
        {"bodies", "place\nx\rplace\n", "row 2, column place: a carriage return"},
        {"bodies", "place\ncaf\xE9\n", "row 2, column place: not UTF-8 at byte 9"},
        {"bodies", "place\nx\0y\n"s, "row 2, column place: a NUL byte at byte 7"},
        {"bodies", "place\nok\n\xFF\xFE\n", "row 3, column place: not UTF-8"},
        {"bodies", "\x89PNG\r\n\x1a\n", "row 1, column 1: not UTF-8 at byte 0"},
        {"bodies", "PK\x03\x04\0\0"s, "row 1, column 1: a NUL byte"},
        {"bodies", "place\n" + std::string(1'000'001, 'x') + "\n",
         "row 2, column place: a cell of more than a million bytes"},
        // a header that is not ours
        {"bodies", "place,colour\nx,y\n", "row 1, column 2: unknown column: 'colour'"},
        {"bodies", "place,place\nx,y\n", "row 1, column 2: a column that is there twice"},
        {"bodies", "place,\nx,\n", "row 1, column 2: unknown column: '(empty)'"},
        {"screws", "head_dia\n.5\n", "row 1: the column screw is missing"},
        {"house", "hole\nclose\n", "row 1: the column screw is missing"},
        // cells that cannot be
        {"bodies", "cut_dia\n7/16\n1/0\n", "row 3, column cut_dia"},
        {"bodies", "cut_dia\n-7/16\n", "row 2, column cut_dia"},
        {"bodies", "cut_dia\n0\n", "row 2, column cut_dia"},
        {"bodies", "cut_dia\n0x10\n", "row 2, column cut_dia"},
        {"bodies", "cut_dia\nnan\n", "row 2, column cut_dia"},
        {"bodies", "cut_dia\n7/16 in.ch\n", "row 2, column cut_dia"},
        {"bodies", "cut_dia\n\"0,4375\"\n", "row 2, column cut_dia"},
        {"bodies", "cut_dia\n.4375 +-.0000001\n", "row 2, column cut_dia"},
        {"bodies", "cut_dia\n9999999999999999999999\n", "row 2, column cut_dia"},
        {"bodies", "cut_dia,cut_how\n7/16,by eye\n", "row 2, column cut_how"},
        {"bodies", "kind\nteapot\n", "row 2, column kind"},
        {"bodies", "pilot_kind\nperhaps\n", "row 2, column pilot_kind"},
        {"bodies", "retention\nglue\n", "row 2, column retention"},
        {"bodies", "condition\nfine\n", "row 2, column condition"},
        {"bodies", "flutes\n-3\n", "row 2, column flutes"},
        {"bodies", "flutes\n3.5\n", "row 2, column flutes"},
        {"bodies", "fluted\nmaybe\n", "row 2, column fluted"},
        {"bodies", "number\n0\n", "row 2, column number"},
        {"bodies", "number\n-1\n", "row 2, column number"},
        {"bodies", "number\n1e3\n", "row 2, column number"},
        {"bodies", "number\n9999999999\n", "row 2, column number"},
        {"bodies", "number\n900\n900\n", "row 3, column number"},
        {"bodies", "number\n1\n", "row 2, column number"}, // given out before
        {"bodies", "pilot_kind,pilot_dia\nremovable,1/4\n", "row 2, column pilot_dia"},
        {"pilots", "in_body\n999\n", "row 2, column in_body: no body has this number"},
        {"pilots", "in_body\nnone\n", "row 2, column in_body"},
        {"pilots", "tried\nsticks\n", "row 2, column tried"},
        {"pilots", "shank_dia\n3/8 1/2\n", "row 2, column shank_dia"},
        {"screws", "screw,head_dia\n,.5\n", "row 2, column screw"},
        {"screws", "screw,head_dia\na,.5\na,.5\n",
         "row 3, column screw: a screw that is there twice"},
        {"house", "screw\nM8 teapot\n", "row 2, column screw"},
        {"house", "screw,hole\nM8 socket head cap,sideways\n", "row 2, column hole"},
        {"house", "screw\nM8 socket head cap\nm8  socket head cap\n",
         "row 3, column screw: a screw that is there twice"},
    };
    return k_files;
}

} // namespace

TEST_SUITE_BEGIN("csv");

TEST_CASE("a malformed file is refused with its place, and nothing is entered") {
    const Bench bench;
    bench.fill();
    const std::string bytes = fault::contents(bench.file());
    CHECK(malformed().size() >= 40);
    for (const auto& [what, text, place] : malformed()) {
        fault::write(bench / "a.csv", text);
        const auto outcome = bench.run({"import", what, "a.csv"});
        CAPTURE(text.substr(0, 60));
        CAPTURE(outcome.err);
        CHECK(outcome.code == 3);
        CHECK(outcome.err.find("a.csv: "s + place) != std::string::npos);
        CHECK(fault::contents(bench.file()) == bytes);
    }
}

TEST_CASE("a cell of 100 megabytes is refused without being held in memory") {
    const Bench bench;
    bench.done({"start"});
    for (const char* start : {"place\n", "place\n\""}) {
        {
            std::ofstream out(bench / "a.csv", std::ios::binary);
            out << start;
            const std::string part(1'000'000, 'x');
            for (int i = 0; i < 100; ++i)
                out << part;
        }
        const auto outcome = bench.run({"import", "bodies", "a.csv"});
        CAPTURE(outcome.err);
        CHECK(outcome.code == 3);
        CHECK(outcome.err.find("row 2, column place: a cell of more than a million bytes") !=
              std::string::npos);
        CHECK(outcome.peak_kib < 60'000);
        bench.is_whole();
    }
}

TEST_CASE("a million rows are imported in under 300 MB, with progress on a terminal") {
    const Bench bench;
    bench.done({"start"});
    const int rows = fault::times(20'000, 1'000'000);
    fault::write(bench / "a.csv", fault::many_bodies(rows));
    fault::Hardship patient;
    patient.give_up = std::chrono::seconds(1800);
    const auto outcome = bench.run({"import", "bodies", "a.csv"}, patient);
    CAPTURE(outcome.err);
    CHECK(outcome.code == 0);
    CHECK(outcome.err.empty()); // no terminal, no progress
    MESSAGE(rows << " rows: " << outcome.peak_kib / 1024 << " MiB at most");
    CHECK(outcome.peak_kib < fault::times(60, 300) * 1024);
    CHECK(fault::number_from(bench.file(), "SELECT count(*) FROM body") == rows);
    bench.is_whole();
    for (const char* format : {"--json", "--csv"}) { // row by row, whatever there is
        patient.output = bench / "history";
        const auto told = bench.run({"history", format}, patient);
        CHECK(told.code == 0);
        CHECK(told.peak_kib < 24 * 1024);
    }

    // `script` gives it a terminal.
    const std::string command =
        fmt::format("cd '{}' && script -qec '{} --file other.db start && {} --file other.db import "
                    "bodies a.csv' typescript >/dev/null 2>&1 </dev/null",
                    bench.folder().string(), FAULT_PROGRAM, FAULT_PROGRAM);
    REQUIRE(std::system(command.c_str()) == 0);
    const std::string typed = fault::contents(bench / "typescript");
    CHECK(typed.find("\rrow ") != std::string::npos);
    CHECK(typed.find(fmt::format("Imported {} bodies", rows)) != std::string::npos);
}

TEST_CASE("rows with numbers of their own and rows without, from a file and from a pipe") {
    const Bench bench;
    bench.done({"start"});
    std::string text = "number,place\n";
    for (int i = 0; i < 300; ++i)
        text += i % 3 == 0 ? fmt::format("{},own\n", 10 + i) : ",next\n";
    fault::write(bench / "a.csv", text);
    bench.done({"import", "bodies", "a.csv"});
    REQUIRE(::mkfifo((bench / "pipe").c_str(), 0600) == 0);
    const pid_t child = bench.start({"--file", "other.db", "start"});
    CHECK(bench.wait(child).code == 0);
    const pid_t reader = bench.start({"--file", "other.db", "import", "bodies", "pipe"});
    fault::write(bench / "pipe", text);
    CHECK(bench.wait(reader).code == 0);
    for (const char* file : {"catalogue.db", "other.db"}) {
        CHECK(fault::number_from(bench / file, "SELECT count(*) FROM body") == 300);
        CHECK(fault::number_from(bench / file,
                                 "SELECT max(number) FROM body WHERE place = 'own'") == 307);
        CHECK(fault::number_from(bench / file,
                                 "SELECT min(number) FROM body WHERE place = 'next'") == 308);
    }
}

TEST_CASE("a file's name may be any bytes, and is printed without its control characters") {
    const Bench bench;
    bench.done({"start"});
    const std::string name = "caf\xE9\x1B[31m.csv";
    fault::write(bench / name, "place,cut_dia\nrack,3/8\nrack,none\n");
    const std::string rejects = "b\x1B[31m.csv";
    const auto outcome = bench.run({"import", "bodies", name, "--rejects", rejects});
    CAPTURE(outcome.err);
    CHECK(outcome.code == 0);
    CHECK((outcome.out + outcome.err).find('\x1B') == std::string::npos);
    CHECK(fault::fs::exists(bench / rejects));
    CHECK(bench.done({"history"}).find("caf\\xe9\\x1b[31m.csv") != std::string::npos);
    bench.is_whole();
}

TEST_CASE("lines that cannot be read are not the end of the lines") {
    const Bench bench;
    bench.done({"start"});
    fault::Hardship folder;
    folder.input = "/";
    const auto outcome = bench.run({"intake"}, folder);
    CHECK(outcome.code == 7);
    CHECK(outcome.err.find("cannot read the lines to their end") != std::string::npos);
    CHECK(fault::number_from(bench.file(), "SELECT count(*) FROM history") == 0);
}

TEST_SUITE_END();
