// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Three labels across on either paper; each page is a table of its own, so that no line to cut
// along runs over a page's end.
#include "present/labels_html.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "present/xml.hpp"

namespace present {

namespace {

constexpr std::size_t k_across = 3;
// Of 30 mm each, between margins of 12 mm: 270 of A4's 273, 240 of Letter's 255.
constexpr std::size_t k_down_a4 = 9;
constexpr std::size_t k_down_letter = 8;

constexpr std::string_view k_style = R"(
body { margin: 0 auto; width: 186mm; color: #000; background: #fff;
    font: 10pt/1.15 Arial, Helvetica, sans-serif; }
table { border-collapse: collapse; table-layout: fixed; width: 186mm; break-after: page; }
table:last-child { break-after: auto; }
tr { break-inside: avoid; }
td { box-sizing: border-box; width: 62mm; height: 30mm; padding: 0 2.5mm; border: 0.2mm dashed #000;
    vertical-align: middle; overflow-wrap: break-word; }
td.none { border: 0; }
div.large { font-size: 24pt; font-weight: bold; line-height: 1.1; }
span { white-space: nowrap; }
span.number { border: 0.5mm solid #000; border-radius: 1.5mm; padding: 0 1.5mm; margin-right: 2mm; }
div.what { font-size: 12pt; margin-top: 0.8mm; }
div.place { font-size: 10pt; margin-top: 0.5mm; }
@media screen { table { margin-bottom: 10mm; } }
)";

std::string cell(const Label& label) {
    std::string html =
        fmt::format("<td><div class=\"large\"><span class=\"number\">{}</span>"
                    "<span class=\"size\">{}</span></div>"
                    "<div class=\"what\">{}</div>",
                    xml_text(label.number), xml_text(label.size), xml_text(label.what));
    if (!label.place.empty())
        html += fmt::format("<div class=\"place\">{}</div>", xml_text(label.place));
    return html + "</td>\n";
}

std::string page(const std::vector<Label>& labels, std::size_t from, std::size_t end) {
    std::string html = "<table>\n";
    for (std::size_t row = from; row < end; row += k_across) {
        html += "<tr>\n";
        for (std::size_t i = row; i < row + k_across; ++i)
            html += i < end ? cell(labels[i]) : "<td class=\"none\"></td>\n";
        html += "</tr>\n";
    }
    return html + "</table>\n";
}

} // namespace

std::string labels_html(const std::vector<Label>& labels, Paper paper) {
    const std::size_t down = paper == Paper::a4 ? k_down_a4 : k_down_letter;
    const std::size_t on_page = k_across * down;
    std::string body;
    for (std::size_t from = 0; from < labels.size(); from += on_page)
        body += page(labels, from, std::min(labels.size(), from + on_page));
    return html_page("Labels", paper, k_style, body);
}

} // namespace present
