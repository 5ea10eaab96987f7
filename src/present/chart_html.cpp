// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/chart_html.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "present/chart_blocks.hpp"
#include "present/chart_text.hpp"
#include "present/xml.hpp"

namespace present {

using match::AnswerKind;
using match::ChartEntry;

namespace {

constexpr std::size_t k_most_columns = 4;

// The words tell the answers apart; frames and grey only help.
constexpr std::string_view k_style = R"(
body { margin: 0 auto; max-width: 186mm; color: #000; background: #fff;
    font: 12pt/1.25 Arial, Helvetica, sans-serif; }
h1 { font-size: 22pt; margin: 0 0 2mm; }
h2 { font-size: 15pt; margin: 5mm 0 1.5mm; break-after: avoid; }
p { margin: 0 0 2mm; }
table { border-collapse: collapse; width: 100%; table-layout: fixed; margin-bottom: 4mm; }
thead { display: table-header-group; }
th, td { border: 0.3mm solid #000; padding: 1mm 2mm; text-align: left; vertical-align: top; }
th.size { width: 38mm; font-size: 14pt; }
td b { font-size: 16pt; margin-right: 2mm; }
td.ready { font-weight: bold; border: 0.8mm solid #000; }
td.later { background: #e4e4e4; }
td span { display: block; font-size: 9pt; font-weight: normal; }
tr { break-inside: avoid; }
)";

std::string how(const match::Answer& answer) {
    std::string text;
    if (answer.pilot)
        text += "pilot " + std::to_string(*answer.pilot);
    if (answer.drill && answer.kind != AnswerKind::make_pilot)
        text += (text.empty() ? "drill " : ", drill ") + answer.drill->name;
    if (!answer.place.empty())
        text += (text.empty() ? "" : "; ") + answer.place;
    return text;
}

std::string cell(const ChartEntry* entry) {
    if (!entry || !entry->best)
        return "<td></td>";
    const auto& answer = *entry->best;
    const bool later = answer.kind > AnswerKind::after_work;
    const auto* style = answer.kind == AnswerKind::ready ? " class=\"ready\""
                        : later                          ? " class=\"later\""
                                                         : "";
    return fmt::format("<td{}><b>{}</b>{}<span>{}</span></td>", style, answer.body,
                       chart_word(answer.kind), xml_text(how(answer)));
}

std::string table(const ChartBlock& block, std::size_t from, std::size_t to) {
    std::string html = "<table>\n<thead><tr><th class=\"size\">Size</th>";
    for (auto at = from; at < to; ++at)
        html += "<th>" + xml_text(block.columns[at]) + "</th>";
    html += "</tr></thead>\n<tbody>\n";
    for (const auto& row : block.rows) {
        const auto first = row.cells.begin() + static_cast<std::ptrdiff_t>(from);
        const auto last = row.cells.begin() + static_cast<std::ptrdiff_t>(to);
        if (std::none_of(first, last, [](const ChartEntry* entry) { return entry != nullptr; }))
            continue;
        html += "<tr><th class=\"size\">" + xml_text(row.label) + "</th>";
        std::for_each(first, last, [&](const ChartEntry* entry) { html += cell(entry); });
        html += "</tr>\n";
    }
    return html + "</tbody>\n</table>\n";
}

std::string heading(std::string title) {
    if (!title.empty() && title[0] >= 'a' && title[0] <= 'z')
        title[0] = static_cast<char>(title[0] - 'a' + 'A');
    return "<h2>" + xml_text(title) + "</h2>\n";
}

} // namespace

std::string chart_html(const std::vector<ChartEntry>& entries, Paper paper) {
    std::string body =
        "<h1>Counterbores by screw</h1>\n<p>The number is the body's. Nothing stands where no tool "
        "comes into question. In all: " +
        chart_counts(entries) + ".</p>\n";
    for (const auto& block : chart_blocks(entries)) {
        body += heading(block.title);
        for (std::size_t from = 0; from < block.columns.size(); from += k_most_columns)
            body += table(block, from, std::min(from + k_most_columns, block.columns.size()));
    }
    body += "<p>Guard the machine, clamp the work, stop the spindle to enter the pilot.</p>\n";
    return html_page("Counterbores by screw", paper, k_style, body);
}

} // namespace present
