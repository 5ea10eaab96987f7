// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Screws as people write them, put to the published tables: what is taken, what is asked back and
// what is refused.
#include <doctest/doctest.h>

#include <string>

#include "error/error.hpp"
#include "tables.hpp"
#include "trade/screw.hpp"

namespace {

trade::Screw resolved(const std::string& text) {
    return trade::resolve_screw(text, "", tables::reference(), {});
}

std::string refused(const std::string& text) {
    try {
        (void)resolved(text);
    } catch (const error::BadData& bad) {
        return bad.what();
    }
    return "accepted";
}

struct Spelling {
    std::string text;
    std::string name;
    std::string series;
};

const Spelling k_spellings[] = {
    {"M6 DIN912", "M6 socket head cap", "ISO 4762"},
    {"M6x20 DIN912", "M6 socket head cap", "ISO 4762"},
    {"DIN 912 M6 x 20", "M6 socket head cap", "ISO 4762"},
    {"ISO4762 M6x1x20", "M6x1 socket head cap", "ISO 4762"},
    {"m6x20", "M6 socket head cap", "ISO 4762"},
    {"M6X20 ALLEN", "M6 socket head cap", "ISO 4762"},
    {"6mm cap screw", "M6 socket head cap", "ISO 4762"},
    {"M8x1.25 8.8", "M8x1.25 socket head cap", "ISO 4762"},
    {"M20x2.5", "M20x2.5 socket head cap", "ISO 4762"},
    {"M8x1 shcs", "M8x1 socket head cap", "ISO 4762"},
    {"M18x1.5 allen", "M18x1.5 socket head cap", "JIS B 1176"},
    {"M20x50", "M20 socket head cap", "ISO 4762"},
    {"M2x4 shcs", "M2 socket head cap", "ISO 4762"},
    {"1/4-20", "1/4-20 socket head cap", "ASME B18.3 1960"},
    {"1/4-20 x 3/4", "1/4-20 socket head cap", "ASME B18.3 1960"},
    {"1/4-20x3/4 SHCS", "1/4-20 socket head cap", "ASME B18.3 1960"},
    {"1/4 x 3/4 allen cap screw", "1/4 socket head cap", "ASME B18.3 1960"},
    {"allen 1/4-20 x 1-1/2\" long", "1/4-20 socket head cap", "ASME B18.3 1960"},
    {".375-16", "3/8-16 socket head cap", "ASME B18.3 1960"},
    {".250-28 shcs", "1/4-28 socket head cap", "ASME B18.3 1960"},
    {"10-32 x 1/2", "#10-32 socket head cap", "ASME B18.3 1960"},
    {"10-32 UNF allen head cap screw", "#10-32 socket head cap", "ASME B18.3 1960"},
    {"#10 unf", "#10-32 socket head cap", "ASME B18.3 1960"},
    {"1/4-20UNC-2A x 3/4 SHCS", "1/4-20 socket head cap", "ASME B18.3 1960"},
    {"1/4-20 UNC-3A", "1/4-20 socket head cap", "ASME B18.3 1960"},
    {"M8x1.25-6g x 30 SHCS", "M8x1.25 socket head cap", "ISO 4762"},
    {"1-8", "1-8 socket head cap", "ASME B18.3 1960"},
    {"1-14 SHCS", "1-14 socket head cap", "ASME B18.3 1960"},
    {"1-12 SHCS", "1-12 socket head cap", "ASME B18.3 1960"},
    {"1-20 UNEF SHCS", "1-20 socket head cap", "ASME B18.3 1960"},
    {"1/4-26 bsf", "1/4-26 socket head cap", "BSW/BSF socket"},
    {"1/4 bsf socket", "1/4-26 socket head cap", "BSW/BSF socket"},
    {"1/4-26 shcs", "1/4-26 socket head cap", "BSW/BSF socket"},
    {"2 BA allen", "2BA socket head cap", "BA socket"},
    {"3/8-16 BHCS", "3/8-16 button head", "ASME B18.3 button"},
    {"allen button head 3/8-16", "3/8-16 button head", "ASME B18.3 button"},
    {"M6 low profile cap screw", "M6 low head", "DIN 7984"},
    {"low profile 1/4-20 socket", "1/4-20 low head", "ASME B18.3 low head"},
    {"#8-32 phillips pan head", "#8-32 pan head", "ASME B18.6.3 pan recessed"},
    {"#8-32 phillips", "#8-32 pan head", "ASME B18.6.3 pan recessed"},
    {"M4 phillips pan", "M4 pan head", "ISO 7045"},
    {"M5 torx", "M5 hexalobular cheese", "ISO 14580"},
    {"M5x16 torx cheese head", "M5 hexalobular cheese", "ISO 14580"},
    {"M8x1 hex flange bolt", "M8x1 hex flange", "EN 1665"},
    {"M6 flange button head", "M6 flanged button head", "ISO 7380-2"},
    {"M6 torx socket head cap screw", "M6 hexalobular socket cap", "ISO 14579"},
    {"1/2 bsw bolt", "1/2-12 hex cap", "BS 1083 BSW/BSF"},
    {"1/2-13 bolt", "1/2-13 hex cap", "ASME B18.2.1 hex cap"},
    {"M10x50 bolt", "M10 hex cap", "ISO 4017"},
    {"HHCS 3/8-16 x 2", "3/8-16 hex cap", "ASME B18.2.1 hex cap"},
    {"8 mm shoulder screw", "M8 shoulder", "ISO 7379"},
    {"M8 ISO 7379", "M8 shoulder", "ISO 7379"},
    {"M6 shoulder bolt", "M6 shoulder", "trade shoulder"},
    {"M5 shoulder bolt", "M6 shoulder", "trade shoulder"},
    {"M8x1.25 shoulder", "M10 shoulder", "ISO 7379"},
    {"1/4-20 shoulder screw", "5/16 shoulder", "ASME B18.3 shoulder"},
    {"10-24 shoulder", "1/4 shoulder", "ASME B18.3 shoulder"},
    {"1 in shoulder", "1 in shoulder", "ASME B18.3 shoulder"},
};

} // namespace

TEST_CASE("screws are taken as people write them") {
    for (const auto& [text, name, series] : k_spellings) {
        CAPTURE(text);
        const auto screw = resolved(text);
        CHECK(screw.name == name);
        CHECK(screw.series == series);
    }
}

TEST_CASE("the name of every head reads back as that head") {
    for (const auto& head : tables::reference().every_head()) {
        const auto name = trade::listed_screw(head, tables::reference()).name;
        CAPTURE(name);
        CAPTURE(head.series);
        const auto again = trade::resolve_screw(name, head.series, tables::reference(), {});
        CHECK(again.name == name);
        CHECK(again.head_dia == head.head_dia);
    }
}

TEST_CASE("every name of a countersunk head is answered with the countersink") {
    int words = 0;
    for (const auto& word : tables::reference().form_words()) {
        if (word.form != "countersunk")
            continue;
        ++words;
        for (const auto* before : {"1/4-20 ", "M6 ", "M6x20 "}) {
            CAPTURE(word.word);
            CHECK(refused(before + word.word)
                      .starts_with("screw: a countersunk head wants a countersink, not a "
                                   "counterbore: '"));
        }
    }
    CHECK(words > 20);
}

TEST_CASE("what can be read in two ways is asked back with both") {
    for (const auto& [text, answer] : {std::pair{"1 shcs", "screw: #1 or 1 in? '1' may be either"},
                                       {"2", "screw: #2 or 2 in? '2' may be either"},
                                       {"10 shcs", "screw: #10 or M10? '10' may be either"},
                                       {"1/4-20 machine screw", "screw: no form of head: '1/4'"},
                                       {"1/4-28 UNC", "screw: 1/4 unc has another pitch: '28'"},
                                       {"1/4-27 shcs", "screw: no table has this pitch: '27'"},
                                       {"M8x0.6", "screw: no table has this pitch: '0.6'"}}) {
        CAPTURE(text);
        CHECK(refused(text) == answer);
    }
}

TEST_CASE("a doubtful head answers only by name") {
    // #12 is in no table of 1998 and 2003; the 1936 head of that size is not corroborated.
    const auto plain = resolved("#12 shcs");
    CHECK(plain.series == "ASME B18.3 1960");
    CHECK(plain.heads.size() == 1);
    CHECK(resolved("#12 shcs 1936").series == "ASA B18.3 1936");
}

TEST_CASE("a shoulder screw says which of shoulder and thread was taken") {
    // ISO 7379: shoulder 8 has thread M6, shoulder 10 thread M8.
    CHECK(resolved("M8 ISO 7379").thread == "M6");
    CHECK(resolved("M8 ISO 7379").taken ==
          std::vector<std::string>{
              "M8 is taken as the shoulder; the screw with that thread has a shoulder of 10 mm"});
    CHECK(resolved("M6 ISO 7379").taken ==
          std::vector<std::string>{"M6 is taken as the thread; the shoulder is 8 mm"});
    // The trade has shoulders that ISO 7379 has not, on the same threads.
    CHECK(resolved("M5 shoulder").taken ==
          std::vector<std::string>{
              "M5 is taken as the thread; the shoulder is 6 mm, 6.5 mm is made too"});
    CHECK(resolved("M6 shoulder").taken ==
          std::vector<std::string>{
              "M6 is taken as the shoulder; the screw with that thread has a shoulder of 8 mm"});
}

TEST_CASE("Whitworth threads have the tapping drills of BS 1157:1975") {
    struct Row {
        const char* text;
        const char* drill;
    };
    // A public Whitworth thread chart that names BS 1157:1975 prints 3.70 mm for 3/16 BSW; an
    // encyclopedia's table of British Standard Fine prints those marked BSF; the others are as an
    // open CAD program's hole tables give that standard.
    for (const auto& [text, drill] :
         {Row{"3/16-24 bsw shcs", "3.7 mm"}, Row{"1/4 BSW socket", "5.1 mm"},
          Row{"1/2-12 BSW shcs", "10.5 mm"}, Row{"3/4 bsw socket", "16.25 mm"},
          Row{"1/4-26 BSF socket", "5.3 mm"}, Row{"7/16 bsf shcs", "9.7 mm"},
          Row{"1/2 bsw bolt", "10.5 mm"}, Row{"3/4 bsf shcs", "16.75 mm"},
          Row{"1 in bsf shcs", "22.75 mm"}}) {
        CAPTURE(text);
        REQUIRE(resolved(text).tap.has_value());
        CHECK(resolved(text).tap->drill == drill);
    }
    CHECK(resolved("1/4-20 shcs").tap->drill == "#7"); // unified, about 75 % of thread
}
