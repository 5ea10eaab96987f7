// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Wherever the program runs: other languages, other clocks, awkward names.
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <sys/stat.h>

#include <cstdlib>

#include "bench.hpp"

namespace {

using fault::Bench;
using fault::Hardship;
using fault::Words;

const std::vector<Words>& questions() {
    static const std::vector<Words> k_questions = {
        {"list"},
        {"export", "bodies"},
        {"export", "pilots"},
        {"show", "36"},
        {"screw", "5/16-18 socket head cap"},
        {"match", "5/16-18 socket head cap", "--json", "--all"},
        {"match", "M8 socket head cap", "--head", "12.9 +-.1 mm"},
        {"make-list", "--json"},
        {"practice", "list"},
        {"check", "--json"}};
    return k_questions;
}

// Locales of these kinds, made beside the bench; empty if the system cannot make them.
std::string made_locales(const Bench& bench) {
    const std::string folder = bench.folder().parent_path() / "locales";
    fault::fs::create_directory(folder);
    for (const std::string name : {"de_DE", "tr_TR", "fr_FR"})
        if (std::system(
                fmt::format("localedef -i {0} -f UTF-8 {1}/{0}.UTF-8 >/dev/null 2>&1", name, folder)
                    .c_str()) != 0)
            return {};
    return folder;
}

} // namespace

TEST_SUITE_BEGIN("surroundings");

TEST_CASE("decimal commas, the dotless i and other time zones change nothing") {
    const Bench bench;
    bench.fill();
    const std::string locales = made_locales(bench);
    if (locales.empty())
        MESSAGE("no locales can be made here: only their names are tried");
    std::vector<std::string> expected;
    for (const Words& words : questions())
        expected.push_back(bench.done(words));
    for (const std::string locale : {"de_DE.UTF-8", "tr_TR.UTF-8", "fr_FR.UTF-8"})
        for (const std::string zone : {"Pacific/Kiritimati", "America/St_Johns"}) {
            Hardship hardship;
            hardship.variables = {"LC_ALL=" + locale, "LANG=" + locale, "LOCPATH=" + locales,
                                  "TZ=" + zone};
            for (std::size_t i = 0; i < questions().size(); ++i) {
                const auto outcome = bench.run(questions()[i], hardship);
                CAPTURE(locale);
                CAPTURE(questions()[i].front());
                CHECK(outcome.code == 0);
                CHECK(outcome.out == expected[i]);
            }
        }
}

TEST_CASE("what is entered under another locale and clock is what is entered under ours") {
    const Words entry = {"add",    "body",      "--cut-dia", ".4375 +-.0005",
                         "--kind", "SPOTFACER", "--place",   "Iıİi rack",
                         "--bore", "4.76 mm",   "--note",    "3,5"};
    const auto rows_under = [&](const std::vector<std::string>& variables) {
        const Bench bench;
        bench.done({"start"});
        const std::string locales = made_locales(bench);
        Hardship hardship;
        hardship.variables = variables;
        hardship.variables.push_back("LOCPATH=" + locales);
        CHECK(bench.run(entry, hardship).code == 0);
        bench.is_whole();
        const auto age = fault::number_from(
            bench.file(), "SELECT abs(unixepoch() - unixepoch(at)) FROM change_group");
        CHECK(age >= 0);
        CHECK(age < 60); // UTC, whatever the zone
        const std::string rows = fault::rows_of(bench.file());
        return rows.substr(0, rows.find("[change_group]"));
    };
    const std::string ours = rows_under({});
    CHECK(ours.find("11099800") != std::string::npos); // .4370 in in nanometres
    CHECK(rows_under({"LC_ALL=de_DE.UTF-8", "TZ=Asia/Kathmandu"}) == ours);
    CHECK(rows_under({"LC_ALL=tr_TR.UTF-8", "TZ=Pacific/Kiritimati"}) == ours);
}

TEST_CASE("names of files with spaces, line ends, quotes and bytes that are no UTF-8") {
    for (const std::string name :
         {"my catalogue.db", "two\nlines.db", "it's \"mine\".db", "caf\xE9.db", "-catalogue.db",
          ":memory:", "file:x?mode=ro", "%41.db", "\x1b[31mred.db"}) {
        const Bench bench;
        CAPTURE(name);
        const auto with = [&](const Words& words) {
            Words all = {"--file", "./" + name};
            all.insert(all.end(), words.begin(), words.end());
            return bench.run(all);
        };
        CHECK(with({"start"}).code == 0);
        CHECK(with({"add", "body", "--cut-dia", "7/16"}).code == 0);
        CHECK(with({"list"}).code == 0);
        CHECK(with({"check"}).code == 0);
        CHECK(with({"backup", "./copy of " + name}).code == 0);
        const auto backed_up = with({"backup"});
        CHECK(backed_up.code == 0);
        CHECK(backed_up.out.find('\x1b') == std::string::npos);
        CHECK(with({"restore", "./copy of " + name}).code == 0);
        CHECK(with({"recover", "-o", "./new " + name}).code == 0);
        CHECK(with({"start"}).code == 7);
        const auto names = bench.names();
        CHECK(std::count(names.begin(), names.end(), name) == 1);
        CHECK(names.size() == 5);
    }
}

TEST_SUITE_END();
