// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "few_tables.hpp"

#include <algorithm>
#include <cstdint>
#include <iterator>
#include <string>
#include <utility>

#include "length/parse.hpp"
#include "trade/text.hpp"

namespace few_tables {

using length::Length;
using trade::Clearance;

namespace {

trade::Series series_row(std::string name, std::string form, std::string words, int rank,
                         bool withdrawn = false) {
    return {name, std::move(form), name, trade::split(words, ';'), withdrawn, rank};
}

// `3/8` or `.4375` or `13 mm`; for a canonical size, its basic diameter.
Length sized(const std::string& text) {
    return length::parse_length(text, length::Unit::inch).value;
}

// Diameters and heights from least to most; `unit` is `` or ` mm`.
struct HeadRow {
    std::string series;
    std::string form;
    std::string size;
    std::string pitches;
    std::string head_min, head_max, height_max;
    std::string drive_size;
    std::string thread{};
};

// Heads after ASME B18.3 (1960 and low), BS 2470 (1936), ISO 4762, ASME B18.6.3, B18.6.2, B18.2.1,
// ISO 1580; fillister, pan and hex rows are rounded, the withdrawn M8 and M36 are made up.
const HeadRow k_heads[] = {
    {"ASME B18.3 1960", "socket head cap", "#1", "64;72", ".112", ".118", ".073", "1/16"},
    {"ASME B18.3 1960", "socket head cap", "#10", "24;32", ".303", ".312", ".190", "5/32"},
    {"ASME B18.3 1960", "socket head cap", "5/16", "18;24", ".457", ".469", ".3125", "1/4"},
    {"ASME B18.3 1960", "socket head cap", "3/8", "16;24", ".550", ".5625", ".375", "5/16"},
    {"ASME B18.3 1960", "socket head cap", "1", "8;12", "1.476", "1.500", "1.000", "3/4"},
    {"ASME B18.3 1960", "socket head cap", "1-1/4", "7;12", "1.845", "1.875", "1.250", "7/8"},
    {"ASA B18.3 1936", "socket head cap", "5/16", "18;24", ".425", ".437", ".3125", "7/32"},
    {"ASA B18.3 1936", "socket head cap", "3/8", "16;24", ".550", ".5625", ".375", "5/16"},
    {"BSW socket", "socket head cap", "5/16", "18", ".425", ".437", ".3125", "7/32"},
    {"BSW socket", "socket head cap", "1/2", "12", ".735", ".750", ".500", "3/8"},
    {"BA socket", "socket head cap", "2BA", "", ".304", ".312", ".187", "5/32"},
    {"ISO 4762", "socket head cap", "M8", "1.25", "12.73 mm", "13.27 mm", "8 mm", "6 mm"},
    {"DIN 912", "socket head cap", "M36", "4", "53 mm", "54 mm", "36 mm", "27 mm"},
    {"DIN 912", "socket head cap", "M8", "1.25;1", "12.5 mm", "14 mm", "8 mm", "6 mm"},
    {"ASME B18.6.3 fillister", "fillister", "#10", "24;32", ".292", ".313", ".167", ""},
    {"ASME B18.6.2 fillister cap", "fillister", "1/4", "20;28", ".363", ".375", ".216", ""},
    {"ASME B18.6.3 fillister", "fillister", "1/4", "20;28", ".389", ".414", ".223", ""},
    {"ASME B18.6.3 pan slotted", "pan head", "#10", "24;32", ".357", ".373", ".110", ""},
    {"ASME B18.6.3 pan recessed", "pan head", "#10", "24;32", ".357", ".373", ".133", ""},
    {"ISO 1580", "pan head", "M5", "0.8", "9.14 mm", "9.5 mm", "3 mm", ""},
    {"ASME B18.2.1 hex cap", "hex cap", "3/8", "16;24", ".628", ".650", ".243", "9/16"},
    {"ASME B18.2.1 hex cap", "hex cap", "1", "8;12", "1.663", "1.732", ".627", "1-1/2"},
    {"ASME B18.3 shoulder", "shoulder", "3/8", "18", ".540", ".5625", ".250", "3/16", "5/16"},
};

trade::ScrewSize size_named(const std::string& text) {
    return text == "1" ? *trade::inch_size(1) : trade::parse_size(text);
}

trade::Head head_of(const HeadRow& row) {
    trade::Head head;
    head.series = row.series;
    head.form = row.form;
    head.size = size_named(row.size);
    head.pitches = trade::split(row.pitches, ';');
    head.screw_dia = length::exactly(head.size.diameter);
    head.head_dia = {sized(row.head_min), sized(row.head_max)};
    head.head_height_max = sized(row.height_max);
    if (row.size == "5/16")
        head.head_height_min = sized(".306");
    head.drive = row.drive_size.empty() ? "slot" : "hex socket";
    head.drive_size = row.drive_size;
    if (row.size == "5/16")
        head.fillet_dia_max = sized(".354");
    head.thread = row.thread;
    head.origin = {row.series, "two sources"};
    return head;
}

Clearance::Hole hole(const std::string& drill) {
    return {drill, sized(drill)};
}

} // namespace

FewTables::FewTables()
    : series_{
          series_row("ASME B18.3 1960", "socket head cap",
                 "asme b18.3;b18.3;1960;1960 series;newer;newer pattern", 1),
          series_row("ASA B18.3 1936", "socket head cap", "1936;1936 series;older;older pattern", 2),
          series_row("BSW socket", "socket head cap", "bsw;whitworth", 3),
          series_row("BA socket", "socket head cap", "ba", 4),
          series_row("ISO 4762", "socket head cap", "iso4762", 5),
          series_row("DIN 912", "socket head cap", "din912", 6, true),
          series_row("ASME B18.6.3 fillister", "fillister",
                 "b18.6.3;fillister machine;machine;fillister head machine screw", 7),
          series_row("ASME B18.6.2 fillister cap", "fillister", "b18.6.2;fillister cap", 8),
          series_row("ASME B18.6.3 pan slotted", "pan head", "b18.6.3;slotted", 9),
          series_row("ASME B18.6.3 pan recessed", "pan head", "b18.6.3;recessed", 10),
          series_row("ISO 1580", "pan head", "iso1580;slotted", 11),
          series_row("ASME B18.2.1 hex cap", "hex cap", "b18.2.1", 12),
          series_row("ASME B18.3 shoulder", "shoulder", "b18.3", 13),
      },
      form_words_{
          {"socket head cap", "socket head cap"}, {"socket head", "socket head cap"},
          {"shcs", "socket head cap"},            {"hex socket head cap", "socket head cap"},
          {"fillister", "fillister"},             {"cheese head", "fillister"},
          {"pan head", "pan head"},               {"hex cap", "hex cap"},
          {"hex", "hex cap"},                     {"shoulder screw", "shoulder"},
          {"allen", "socket head cap"},           {"socket", "socket head cap"},
          {"hex socket", "socket head cap"},      {"flat head", "countersunk"},
      } {
    for (const auto& row : k_heads)
        heads_.push_back(head_of(row));
    std::stable_sort(heads_.begin(), heads_.end(),
                     [this](const trade::Head& a, const trade::Head& b) {
                         const auto rank = [this](const std::string& name) {
                             return std::find_if(series_.begin(), series_.end(),
                                                 [&](const auto& s) { return s.name == name; })
                                 ->rank;
                         };
                         return rank(a.series) < rank(b.series);
                     });
}

std::vector<trade::Head> FewTables::heads(std::string_view size) const {
    std::vector<trade::Head> found;
    std::copy_if(heads_.begin(), heads_.end(), std::back_inserter(found),
                 [&](const trade::Head& head) { return head.size.text == size; });
    return found;
}

// ASME B18.2.8, ISO 273 and the shop chart; the published #10 row is without its loose hole here,
// and 1/2 is only in the chart.
std::vector<Clearance> FewTables::clearances(std::string_view size) const {
    const trade::Origin origin{"clearance", "two sources"};
    if (size == "5/16")
        return {{"shop chart", hole(".3230"), hole(".3320"), std::nullopt, origin},
                {"ASME B18.2.8", hole("21/64"), hole("11/32"), hole("23/64"), origin}};
    if (size == "#10")
        return {{"ASME B18.2.8", hole(".2055"), std::nullopt, hole(".2380"), origin},
                {"shop chart", hole(".1960"), hole(".2010"), std::nullopt, origin}};
    if (size == "1/2")
        return {{"shop chart", hole("33/64"), hole("17/32"), std::nullopt, origin}};
    if (size == "M8")
        return {{"ISO 273", hole("8.4 mm"), hole("9 mm"), hole("10 mm"), origin}};
    if (size == "3/8")
        return {{"ASME B18.2.8", hole("25/64"), hole("13/32"), hole("27/64"), origin}};
    return {};
}

std::vector<trade::Counterbore> FewTables::counterbores(std::string_view size) const {
    const trade::Origin origin{"counterbore", "memory"};
    const auto row = [&](const char* series_name, const char* rule, const char* kind,
                         const char* diameter) {
        return trade::Counterbore{series_name, rule,         kind,         sized(diameter),
                                  diameter,    std::nullopt, std::nullopt, origin};
    };
    if (size != "5/16")
        return {};
    return {row("ASME B18.3 1960", "ASME B18.3 appendix", "recommended", "17/32"),
            row("ASA B18.3 1936", "head and 1/32", "least cutter", "15/32")};
}

std::vector<trade::TapDrill> FewTables::tap_drills(std::string_view size) const {
    const trade::Origin origin{"tap", "memory"};
    if (size == "5/16")
        return {{"18", "F", sized(".2570"), origin, "UNC"},
                {"24", "I", sized(".2720"), origin, "UNF"},
                {"32", "9/32", sized("9/32"), origin, "UNEF"},
                {"18", "6.5 mm", sized("6.5 mm"), origin, "BSW"}};
    if (size == "1/2") // UNC before BSW
        return {{"13", "27/64", sized("27/64"), origin, "UNC"},
                {"12", "10.5 mm", sized("10.5 mm"), origin, "BSW"}};
    if (size == "M8")
        return {{"1.25", "6.8 mm", sized("6.8 mm"), origin, "ISO metric coarse"}};
    return {};
}

} // namespace few_tables
