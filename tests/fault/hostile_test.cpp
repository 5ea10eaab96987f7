// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Hostile text in every field: kept to the byte, never active in what is printed or drawn.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <cstdlib>

#include "bench.hpp"

namespace {

using fault::Bench;
using fault::Words;

const std::string k_hostile[] = {
    "\x1b[2J\x1b[31mred",
    "\xC2\x9B"
    "31m one-byte control",
    "right \xE2\x80\xAEtfel\xE2\x80\xAC \xE2\x81\xA6isolate\xE2\x81\xA9",
    "<script>alert(1)</script>",
    "]]> --> <!-- & &lt; \"' onload=\"x()\"",
    "bell \x07 back \x08 return \r line\nend\ttab",
    "=1+1",
    "\x7f\x01\x02",
};

// A control character, or one that turns the direction of writing, other than line ends.
bool has_control(const std::string& text) {
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto byte = static_cast<unsigned char>(text[i]);
        if ((byte < 0x20 && byte != '\n') || byte == 0x7F)
            return true;
        if (byte == 0xC2 && i + 1 < text.size() && static_cast<unsigned char>(text[i + 1]) < 0xA0)
            return true;
        const std::string three = text.substr(i, 3);
        for (const char* turn :
             {"\xE2\x80\xAA", "\xE2\x80\xAB", "\xE2\x80\xAC", "\xE2\x80\xAD", "\xE2\x80\xAE",
              "\xE2\x81\xA6", "\xE2\x81\xA7", "\xE2\x81\xA8", "\xE2\x81\xA9"})
            if (three == turn)
                return true;
    }
    return false;
}

bool is_xml(const fault::fs::path& path) {
    return std::system(
               ("xmllint --noout --nonet '" + path.string() + "' >/dev/null 2>&1").c_str()) == 0;
}

bool is_active(const std::string& text) {
    for (const char* active : {"<script", "onload=\"", "javascript:", "<iframe", "<foreignObject",
                               "href=\"http", "src=\"http"})
        if (text.find(active) != std::string::npos)
            return true;
    return false;
}

void enter(const Bench& bench, const std::string& text) {
    bench.done({"start"});
    bench.done({"add",          "body", "--cut-dia", "7/16", "--pilot-kind", "removable",
                "--bore",       "3/16", "--set",     text,   "--place",      text,
                "--note",       text,   "--marking", text,   "--material",   text,
                "--shank-kind", text,   "--work",    text,   "--retention",  "set screw",
                "--set-screw",  "#8-32"});
    bench.done({"add", "pilot", "--pilot-dia", "17/64", "--shank-dia", ".1872", "--set", text,
                "--place", text, "--note", text, "--material", text, "--in-body", "1"});
    bench.done({"add", "screw", "gate screw " + text, "--head-dia", ".427", "--head-height", ".19",
                "--screw-dia", ".248", "--note", text});
    bench.done({"house", "add", "1/4-20 socket head cap", "--note", text});
    bench.done({"house", "add", "5/16-18 socket head cap", "--note", text});
    bench.done({"machine", "add", "drill " + text, "--morse", "2"});
}

} // namespace

TEST_SUITE_BEGIN("hostile");

TEST_CASE("hostile text never reaches a terminal, a drawing or a page as anything but text") {
    for (const std::string& text : k_hostile) {
        const Bench bench;
        CAPTURE(text);
        enter(bench, text);
        bench.is_whole();
        CHECK(fault::number_from(bench.file(), "SELECT count(*) FROM body WHERE length(note) > 0 "
                                               "AND note = place AND note = marking") == 1);
        for (const Words& words : {Words{"list"},
                                   {"list", "screws"},
                                   {"show", "1"},
                                   {"show", "2"},
                                   {"history"},
                                   {"history", "1"},
                                   {"work", "list"},
                                   {"house", "list"},
                                   {"machine", "list"},
                                   {"match", "1/4-20 socket head cap"},
                                   {"match", "gate screw " + text},
                                   {"screw", "gate screw " + text},
                                   {"make-list"},
                                   {"undo"},
                                   {"check"},
                                   {"list", "--json"},
                                   {"history", "--json"},
                                   {"show", "1", "--json"},
                                   {"match", "no such screw " + text},
                                   {"add", "body", "--cut-dia", text},
                                   {text},
                                   {"show", text},
                                   {"--file", "no " + text, "list"}}) {
            const auto outcome = bench.run(words);
            CAPTURE(words.front());
            CAPTURE(outcome.out);
            CAPTURE(outcome.err);
            CHECK_FALSE(outcome.hung);
            CHECK(outcome.code < 8);
            CHECK_FALSE(has_control(outcome.out));
            CHECK_FALSE(has_control(outcome.err));
        }
        fault::fs::create_directory(bench / "drawings");
        bench.done({"make-list", "--for", "5/16-18 socket head cap", "--for", "3/8-16 fillister",
                    "--drawings", "drawings", "--html", "sheet.html"});
        CHECK(is_xml(bench / "sheet.html"));
        CHECK_FALSE(is_active(fault::contents(bench / "sheet.html")));
        for (const auto& entry : fault::fs::directory_iterator(bench / "drawings")) {
            CHECK(is_xml(entry.path()));
            CHECK_FALSE(is_active(fault::contents(entry.path())));
        }
    }
}

TEST_CASE("hostile text comes back from CSV to the byte") {
    for (const std::string& text : k_hostile) {
        const Bench bench;
        CAPTURE(text);
        enter(bench, text);
        const auto notes = "SELECT hex(note || place || marking) = "
                           "(SELECT hex(note || place || marking) FROM body WHERE number = 1) "
                           "FROM body ORDER BY number DESC LIMIT 1";
        bench.done({"export", "bodies", "-o", "bodies.csv"});
        std::string rows = fault::contents(bench / "bodies.csv");
        rows.replace(rows.find("\n1,"), 3, "\n77,");
        fault::write(bench / "bodies.csv", rows);
        bench.done({"import", "bodies", "bodies.csv"});
        CHECK(fault::number_from(bench.file(), notes) == 1);
        bench.is_whole();
    }
}

TEST_SUITE_END();
