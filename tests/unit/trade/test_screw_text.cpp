// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// How a screw is asked for.
#include <doctest/doctest.h>

#include <string>

#include "few_tables.hpp"
#include "refusal.hpp"
#include "trade/screw.hpp"

using refusal::hint_of;
using refusal::message_of;

namespace {

struct Spelling {
    std::string text;
    std::string size;
    std::string pitch;
    std::string form;
    std::string series;
};

const Spelling k_spellings[] = {
    {"5/16-18 socket head cap", "5/16", "18", "socket head cap", ""},
    {"5/16-18 Socket Head Cap Screw", "5/16", "18", "socket head cap", ""},
    {"5/16-18 shcs", "5/16", "18", "socket head cap", ""},
    {"shcs 5/16-18", "5/16", "18", "socket head cap", ""},
    {"shcs, 5/16-18, older", "5/16", "18", "socket head cap", "ASA B18.3 1936"},
    {"5/16-18 shcs 1936", "5/16", "18", "socket head cap", "ASA B18.3 1936"},
    {"1936 series 5/16-18 socket head cap", "5/16", "18", "socket head cap", "ASA B18.3 1936"},
    {"5/16 older pattern socket head", "5/16", "", "socket head cap", "ASA B18.3 1936"},
    {"5/16-18 newer", "5/16", "18", "socket head cap", "ASME B18.3 1960"},
    {"5/16-18 ASA B18.3 1936", "5/16", "18", "socket head cap", "ASA B18.3 1936"},
    {"5/16\" shcs", "5/16", "", "socket head cap", ""},
    {"5/16 in shcs", "5/16", "", "socket head cap", ""},
    {"5/16-18 UNC shcs", "5/16", "18", "socket head cap", ""},
    {"1-1/4-7 shcs", "1-1/4", "7", "socket head cap", ""},
    {"1 1/4 shcs", "1-1/4", "", "socket head cap", ""},
    {"1-1/4 shcs", "1-1/4", "", "socket head cap", ""},
    {"socket head cap #10-32", "#10", "32", "socket head cap", ""},
    {"10-32 hex socket head cap", "#10", "32", "socket head cap", ""},
    {"no 10 shcs", "#10", "", "socket head cap", ""},
    {"5/16 BSW", "5/16", "18", "socket head cap", "BSW socket"},
    {"2BA socket head cap", "2BA", "", "socket head cap", ""},
    {"2 BA shcs", "2BA", "", "socket head cap", ""},
    {"M8 socket head cap", "M8", "", "socket head cap", ""},
    {"m8 x 1.25 shcs", "M8", "1.25", "socket head cap", ""},
    {"M8\xC3\x97"
     "1.25 shcs",
     "M8", "1.25", "socket head cap", ""},
    {"M8 ISO 4762", "M8", "", "socket head cap", "ISO 4762"},
    {"DIN 912 M36", "M36", "", "socket head cap", "DIN 912"},
    {"#10 cheese head", "#10", "", "fillister", ""},
    {"#10 fillister head machine screw", "#10", "", "fillister", "ASME B18.6.3 fillister"},
    {"1/4-20 fillister cap screw", "1/4", "20", "fillister", "ASME B18.6.2 fillister cap"},
    {"1/4-20 fillister b18.6.3", "1/4", "20", "fillister", "ASME B18.6.3 fillister"},
    {"#10-24 machine screw", "#10", "24", "fillister", "ASME B18.6.3 fillister"},
    {"slotted fillister 1/4", "1/4", "", "fillister", ""},
    {"#10 pan head machine screw", "#10", "", "pan head", ""},
    {"#10 slotted pan head machine screw", "#10", "", "pan head", "ASME B18.6.3 pan slotted"},
    {"#10 recessed pan head", "#10", "", "pan head", "ASME B18.6.3 pan recessed"},
    {"M5 slotted pan head", "M5", "", "pan head", "ISO 1580"},
    {"M5 slotted", "M5", "", "pan head", "ISO 1580"},
    {"3/8-16 hex head cap screw", "3/8", "16", "hex cap", ""},
    {"3/8-16 hex bolt", "3/8", "16", "hex cap", ""},
    {"3/8 shoulder screw", "3/8", "", "shoulder", ""},
    {"3/8 b18.3 shoulder", "3/8", "", "shoulder", "ASME B18.3 shoulder"},
    // Bare whole numbers.
    {"10-24 shcs", "#10", "24", "socket head cap", ""},
    {"1-64 shcs", "#1", "64", "socket head cap", ""},
    {"1-8 shcs", "1", "8", "socket head cap", ""},
    {"1-8 hex cap", "1", "8", "hex cap", ""},
    {"1 in hex cap", "1", "", "hex cap", ""},
    {"1 in shcs", "1", "", "socket head cap", ""},
    {"1-9 shcs", "1", "9", "socket head cap", ""},
    {"0 shcs", "#0", "", "socket head cap", ""}, // what else
    // No form, or one that only the drive names.
    {"5/16-18", "5/16", "18", "socket head cap", ""},
    {"5/16-18 cap screw", "5/16", "18", "socket head cap", ""},
    {"3/8-16 bolt", "3/8", "16", "hex cap", ""},
    {"5/16-18 socket", "5/16", "18", "socket head cap", ""},
    {"3/8 hex socket shoulder screw", "3/8", "", "shoulder", ""},
    // Threads by name.
    {"5/16 UNC shcs", "5/16", "18", "socket head cap", ""},
    {"5/16 unf", "5/16", "24", "socket head cap", ""},
    {"5/16 shcs coarse", "5/16", "18", "socket head cap", ""},
    {"5/16 fine shcs", "5/16", "24", "socket head cap", ""},
    {"5/16-18 UNC", "5/16", "18", "socket head cap", ""},
    // Decimals and millimetres.
    {".375-16 shcs", "3/8", "16", "socket head cap", ""},
    {"0.3125 in shcs", "5/16", "", "socket head cap", ""},
    {".312-18", "5/16", "18", "socket head cap", ""},
    {".190-32 shcs", "#10", "32", "socket head cap", ""},
    {"8 mm shcs", "M8", "", "socket head cap", ""},
    {"8mm allen", "M8", "", "socket head cap", ""},
    // Lengths.
    {"5/16-18 x 1 shcs", "5/16", "18", "socket head cap", ""},
    {"5/16-18x1-1/4 shcs", "5/16", "18", "socket head cap", ""},
    {"5/16-18 x 3/4\" long shcs", "5/16", "18", "socket head cap", ""},
    {"shcs 5/16-18 x .75", "5/16", "18", "socket head cap", ""},
    {"M8x1.25x30 shcs", "M8", "1.25", "socket head cap", ""},
    {"M8x30 shcs", "M8", "", "socket head cap", ""},
    {"M8 x 30 mm shcs", "M8", "", "socket head cap", ""},
    {"ISO 4762 - M8 x 30 - 12.9", "M8", "", "socket head cap", "ISO 4762"},
    {"10-32 x 1/2", "#10", "32", "socket head cap", ""},
};

} // namespace

TEST_CASE("a screw is asked for in any sensible order and spelling") {
    const few_tables::FewTables tables;
    for (const auto& spelling : k_spellings) {
        CAPTURE(spelling.text);
        const auto asked = trade::parse_screw(spelling.text, tables);
        CHECK(asked.size.text == spelling.size);
        CHECK(asked.pitch == spelling.pitch);
        CHECK(asked.form == spelling.form);
        CHECK(asked.series == spelling.series);
    }
}

TEST_CASE("what cannot be a screw is refused with what is wrong") {
    const few_tables::FewTables tables;
    const std::pair<std::string, std::string> cases[] = {
        {"5/16-18 flat head",
         "screw: a countersunk head wants a countersink, not a counterbore: 'flat'"},
        {"5/16-18 flat head socket cap",
         "screw: a countersunk head wants a countersink, not a counterbore: 'flat'"},
        {"1 shcs", "screw: #1 or 1 in? '1' may be either"},
        {"8 shcs", "screw: #8 or M8? '8' may be either"},
        {"1 x 2 shcs", "screw: #1 or 1 in? '1' may be either"},
        {"5/16-24 UNC", "screw: 5/16 unc has another pitch: '24'"},
        {"5/16-18 sochet head cap", "screw: not a word that is known: 'sochet'"},
        {"", "screw: no size: ''"},
        {"M8 " + std::string(300, 'x'), "screw: longer than 200 characters"},
        {"socket head cap", "screw: no size: 'socket head cap'"},
        {"5/16 shcs 18", "screw: a size in two places: '5/16 shcs 18'"},
        {"5/16-18 x shcs", "screw size: not understood: '5/16-18 x'"},
        {"M8x1.25x30x2 shcs", "screw size: not understood: 'm8x1.25x30x2'"},
        {"3/10 shcs", "screw size: not understood: '3/10'"},
        {"3/8 hex fillister", "screw: 2 forms of head (hex cap, fillister): '3/8 hex fillister'"},
        {"5/16 shcs 1936 1960", "screw: a series that does not go with the rest: '1960'"},
        {"5/16 hex 1936", "screw: a series that does not go with the rest: '1936'"},
        {"#10 UNC shcs", "screw: no pitch beside 'unc'"},
        {"1/2 shcs fine", "screw: no pitch beside 'fine'"},
        {"#10 pan head b18.6.3",
         "screw: more than one series: 'ASME B18.6.3 pan slotted, ASME B18.6.3 pan recessed'"},
    };
    for (const auto& [text, message] : cases) {
        CAPTURE(text);
        const auto& asked_text = text;
        CHECK(message_of([&] { (void)trade::parse_screw(asked_text, tables); }) == message);
    }
}

TEST_CASE("a refusal says what would do") {
    const few_tables::FewTables tables;
    const auto hint = [&](const std::string& text) {
        return hint_of([&] { (void)trade::parse_screw(text, tables); });
    };
    CHECK(hint("5/16-18 flat head") ==
          "countersink to the head's angle, 82 degrees for inch screws and 90 for metric ones; "
          "counterbores are for: socket head cap, fillister, pan head, hex cap, shoulder");
    CHECK(hint("1 shcs") == "write #1, 1 in or, in millimetres, M1; or the pitch: 10-24");
    CHECK(hint("5/16-18 sochet")
              .find("forms: socket head cap, fillister, pan head, hex cap, "
                    "shoulder; series: ASME B18.3 1960, ") == 0);
    CHECK(hint("5/16 hex 1936") == "it names ASA B18.3 1936 (socket head cap)");
    CHECK(hint("#10 UNC shcs") == "write the pitch as a number: 5/16-18, M8x1.25");
}
