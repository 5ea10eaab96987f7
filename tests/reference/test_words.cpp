// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The words that name forms and series, through the reader of screw texts.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>

#include "tables.hpp"
#include "trade/screw.hpp"

namespace {

// A size that the series has.
std::string size_in(const std::string& series) {
    for (const auto& size : tables::sizes())
        for (const auto& head : tables::reference().heads(size.text))
            if (head.series == series)
                return size.text;
    return {};
}

} // namespace

TEST_CASE("every word for a form names it") {
    for (const auto& word : tables::reference().form_words()) {
        if (word.form == "countersunk")
            continue; // test_spellings.cpp
        CAPTURE(word.word);
        CHECK(trade::parse_screw("1/4-20 " + word.word, tables::reference()).form == word.form);
        CHECK(trade::parse_screw("1/4-20 " + word.word + " screw", tables::reference()).form ==
              word.form);
    }
}

TEST_CASE("every word for a series names it among the series of its form") {
    for (const auto& series : tables::reference().series())
        for (const auto& word : series.words) {
            CAPTURE(series.name);
            CAPTURE(word);
            const auto text = size_in(series.name) + " " + series.form + " " + word;
            const auto screw = trade::resolve_screw(text, "", tables::reference(), {});
            CHECK(screw.series == series.name);
            CHECK(screw.form == series.form);
        }
}

TEST_CASE("every series is named by its own name") {
    for (const auto& series : tables::reference().series()) {
        CAPTURE(series.name);
        const auto text = size_in(series.name) + " " + series.form;
        CHECK(trade::resolve_screw(text, series.name, tables::reference(), {}).series ==
              series.name);
    }
}

TEST_CASE("series come by rank, each once, with a title") {
    const auto all = tables::reference().series();
    CHECK(all.size() == 37);
    std::set<std::string> names;
    for (std::size_t at = 0; at < all.size(); ++at) {
        CHECK(all[at].rank == static_cast<int>(at) + 1);
        CHECK(!all[at].title.empty());
        names.insert(all[at].name);
    }
    CHECK(names.size() == all.size());
}

TEST_CASE("the withdrawn series are those of DIN whose screws ISO took over, and Whitworth's") {
    std::set<std::string> withdrawn;
    for (const auto& series : tables::reference().series())
        if (series.withdrawn)
            withdrawn.insert(series.name);
    CHECK(withdrawn ==
          std::set<std::string>{"DIN 912", "DIN 84", "DIN 7985", "DIN 931/933", "BS 1083 BSW/BSF"});
}

TEST_CASE("screws as they are asked for at the bench find their series") {
    for (const auto& [asked, series] :
         {std::pair{"5/16-18 socket head cap", "ASME B18.3 1960"},
          {"5/16-18 shcs 1936", "ASA B18.3 1936"},
          {"5/16-18 older socket cap", "ASA B18.3 1936"},
          {"5/16-22 bsf socket head cap", "BSW/BSF socket"},
          {"1/4-20 fillister", "ASME B18.6.3 fillister"},
          {"1/4-20 fillister head cap screw", "ASME B18.6.2 fillister cap"},
          {"1/4-20 fillister head machine screw", "ASME B18.6.3 fillister"},
          {"#8-32 pan head machine screw", "ASME B18.6.3 pan recessed"},
          {"3/8-16 hex bolt", "ASME B18.2.1 hex cap"},
          {"1/4 shoulder screw", "ASME B18.3 shoulder"},
          {"2BA socket head cap", "BA socket"},
          {"M8 socket head cap", "ISO 4762"},
          {"M18 socket head cap", "JIS B 1176"},
          {"M52 socket head cap", "JIS B 1176"},
          {"M8 torx socket head cap", "ISO 14579"},
          {"M4 pan head iso 14583", "ISO 14583"},
          {"M6 flanged button head", "ISO 7380-2"},
          {"M6 button head", "ISO 7380-1"},
          {"M8 hex flange bolt", "EN 1665"},
          {"M8 hex flange bolt EN 1662", "EN 1662"},
          {"3/8-16 hex flange screw", "ASME B18.2.1 hex flange"},
          {"1/2 hex bolt BS 1083", "BS 1083 BSW/BSF"},
          {"M12 shoulder screw", "trade shoulder"},
          {"M10 shoulder screw", "ISO 7379"},
          {"M8 cheese head", "ISO 1207"},
          {"M8 button head socket screw", "ISO 7380-1"},
          {"M10 hexagon bolt", "ISO 4017"},
          {"M10 DIN 931 hex bolt", "DIN 931/933"}}) {
        const std::string text = asked;
        CAPTURE(text);
        CHECK(trade::resolve_screw(text, "", tables::reference(), {}).series == series);
    }
}
