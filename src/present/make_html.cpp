// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/make_html.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>
#include <vector>

#include "drawing/lettering.hpp"
#include "present/drawing_svg.hpp"
#include "present/make_words.hpp"
#include "present/xml.hpp"

namespace present {

using drawing::Lettering;

namespace {

// Plain black on white; the drawing keeps its size on paper, so that its scale holds.
constexpr std::string_view k_style = R"(
body { margin: 0 auto; max-width: 186mm; color: #000; background: #fff;
    font: 10pt/1.35 Arial, Helvetica, sans-serif; }
h1 { font-size: 16pt; margin: 0 0 3mm; }
h2 { font-size: 11pt; margin: 4mm 0 1mm; }
p { margin: 0 0 2mm; }
table { border-collapse: collapse; width: 100%; font-size: 9pt; margin-bottom: 3mm; }
th, td { border: 0.2mm solid #000; padding: 0.6mm 1.5mm; text-align: left; vertical-align: top; }
th { font-weight: bold; }
td.number { text-align: right; white-space: nowrap; }
td.limits { white-space: nowrap; }
ol { margin: 0; padding-left: 5mm; font-size: 9pt; }
svg { display: block; }
.piece { break-before: page; }
.piece h2 { margin-top: 3mm; }
tr, li { break-inside: avoid; }
@media screen { .piece { margin-top: 10mm; } }
)";

std::string cell(std::string_view words, std::string_view kind = {}) {
    const auto attribute = kind.empty() ? std::string() : fmt::format(" class=\"{}\"", kind);
    return fmt::format("<td{}>{}</td>", attribute, xml_text(words));
}

std::string number(std::string_view words) {
    return cell(words, "number");
}

// A heading and a table; nothing where there are no rows.
std::string table(std::string_view title, std::initializer_list<std::string_view> heads,
                  const std::string& rows) {
    if (rows.empty())
        return {};
    std::string html = fmt::format("<h2>{}</h2>\n<table>\n<thead><tr>", title);
    for (const auto& head : heads)
        html += fmt::format("<th>{}</th>", head);
    return html + "</tr></thead>\n<tbody>\n" + rows + "</tbody>\n</table>\n";
}

std::string row(const std::string& cells) {
    return "<tr>" + cells + "</tr>\n";
}

std::string in_words(const make::Dimension& dimension, const Lettering& lettering) {
    if (!dimension.limits)
        return dimension.to_suit == "as it is" ? "as it is" : "to suit";
    return fmt::format("{}", fmt::join(drawing::limits_stack(*dimension.limits, lettering), " "));
}

std::string piece_rows(const make::MakeList& list, const std::vector<make::Spec>& specs,
                       const Lettering& lettering) {
    std::string rows;
    for (std::size_t i = 0; i < list.pieces.size(); ++i) {
        const auto& piece = list.pieces[i];
        const auto owned = piece.owned ? fmt::format(" {}", piece.owned->number) : "";
        rows += row(number(std::to_string(piece.item)) +
                    cell(std::string(kind_word(piece.kind)) + owned) +
                    cell(in_words(specs[i].pilot_dia, lettering), "limits") +
                    cell(in_words(specs[i].shank_dia, lettering), "limits") +
                    cell(body_numbers(piece)) + cell(screws_served(piece)));
    }
    return rows;
}

std::string bar_rows(const std::vector<make::BarPlan>& bars, const Lettering& lettering) {
    std::string rows;
    for (const auto& bar : bars) {
        std::string cuts;
        for (const auto& cut : bar.cuts)
            cuts += fmt::format("{}item {}: {}", cuts.empty() ? "" : ", ", cut.item,
                                drawing::size_text(cut.length, lettering.unit));
        rows += row(cell(drawing::size_text(bar.diameter, lettering.unit)) + cell(cuts) +
                    cell(drawing::size_text(bar.kerf, lettering.unit)) +
                    number(drawing::size_text(bar.total, lettering.unit)));
    }
    return rows;
}

std::string settle_rows(const make::MakeList& list) {
    std::string rows;
    for (const auto& settle : list.settle_first)
        rows += row(
            cell(settle.screw) + number(std::to_string(settle.answer.body)) +
            number(settle.answer.pilot ? std::to_string(*settle.answer.pilot) : std::string("-")) +
            cell(match::next_step(settle.answer)));
    return rows;
}

std::string cannot_rows(const make::MakeList& list, const Lettering& lettering) {
    std::string rows;
    for (const auto& cannot : list.cannot) {
        const auto& cutter = cannot.wanted.cutter;
        rows += row(
            cell(cannot.screw) +
            cell(cutter ? drawing::limits_text(*cutter, lettering.unit) : "not known", "limits") +
            cell(cannot.nearest ? fmt::format("body {}: {}", cannot.nearest->body,
                                              match::next_step(*cannot.nearest))
                                : "no body comes near"));
    }
    return rows;
}

std::string count_of(std::size_t count, std::string_view one, std::string_view many) {
    return fmt::format("{} {}", count, count == 1 ? one : many);
}

std::string summary(const make::MakeList& list) {
    const auto pieces = count_of(list.pieces.size(), "piece", "pieces");
    const auto least = list.pieces.empty() ? std::string()
                       : list.proven
                           ? std::string("; fewer cannot do")
                           : fmt::format("; not proven, at least {} are needed", list.bound);
    return fmt::format("<p>{} to make{}. Of the screws asked for {} met already, {} to be settled "
                       "first, {} cannot be met.</p>\n",
                       pieces, least, count_of(list.met.size(), "is", "are"),
                       list.settle_first.size(), list.cannot.size());
}

std::string first_page(const make::MakeList& list, const std::vector<make::Spec>& specs,
                       const std::vector<make::BarPlan>& bars, const Lettering& lettering) {
    const bool inch = lettering.unit == length::Unit::inch;
    return "<h1>Pilots to make</h1>\n" + summary(list) +
           fmt::format("<p>Limits are in {}{}. Print at full size: the drawings are to "
                       "scale, but work to the figures.</p>\n",
                       inch ? "inches" : "millimetres",
                       lettering.both_units ? inch ? " [millimetres]" : " [inches]" : "") +
           table("Settle first", {"Screw", "Body", "Pilot", "What"}, settle_rows(list)) +
           table("Pieces", {"Item", "Make", "Nose", "Shank", "In body", "For (drill)"},
                 piece_rows(list, specs, lettering)) +
           table("Bar to cut", {"Bar", "Cuts, in order", "Kerf each", "In all, with a grip"},
                 bar_rows(bars, lettering)) +
           table("Cannot be met", {"Screw", "Look for a cutter of", "Nearest"},
                 cannot_rows(list, lettering));
}

std::string capitalized(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

// A row a source: `3`, `Pilot length, shank chamfer`, `common practice`.
std::string source_rows(const make::Piece& piece, const make::Spec& spec) {
    std::vector<std::pair<std::string, std::string>> by_source{
        {spec.treatment_source, "treatment"}};
    for (const auto* dimension : make::dimensions_of(spec)) {
        const auto found = std::find_if(by_source.begin(), by_source.end(), [&](const auto& entry) {
            return entry.first == dimension->source;
        });
        if (found == by_source.end())
            by_source.emplace_back(dimension->source, dimension->name);
        else
            found->second += ", " + dimension->name;
    }
    std::string rows;
    for (const auto& [source, names] : by_source)
        rows += row(number(std::to_string(piece.item)) + cell(capitalized(names)) +
                    cell(capitalized(source)));
    return rows;
}

std::string piece_page(const make::Piece& piece, const make::Spec& spec, const Sheet& sheet) {
    std::string html = "<div class=\"piece\">\n" +
                       svg_element(make::draw(piece, spec, sheet.lettering, sheet.date));
    html += fmt::format("<h2>Item {}: order of work</h2>\n<ol>\n", piece.item);
    for (const auto& step : spec.steps)
        html += "<li>" + xml_text(step) + "</li>\n";
    return html + "</ol>\n</div>\n";
}

std::string last_page(const make::MakeList& list, const std::vector<make::Spec>& specs) {
    std::string rows;
    for (std::size_t i = 0; i < list.pieces.size(); ++i)
        rows += source_rows(list.pieces[i], specs[i]);
    if (rows.empty())
        return rows;
    return "<div class=\"piece\">\n" +
           table("Where the limits are from", {"Item", "Dimensions", "From"}, rows) + "</div>\n";
}

} // namespace

std::string make_html(const make::MakeList& list, const std::vector<make::Spec>& specs,
                      const std::vector<make::BarPlan>& bars, const Sheet& sheet) {
    std::string body = first_page(list, specs, bars, sheet.lettering);
    for (std::size_t i = 0; i < list.pieces.size(); ++i)
        body += piece_page(list.pieces[i], specs[i], sheet);
    body += last_page(list, specs);
    return html_page("Pilots to make", sheet.paper, k_style, body);
}

} // namespace present
