// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/sheet_html.hpp"

#include <fmt/format.h>

#include <variant>

#include "job/section.hpp"
#include "job/steps.hpp"
#include "present/drawing_svg.hpp"
#include "present/figure_text.hpp"
#include "present/sheet_words.hpp"
#include "present/xml.hpp"

namespace present {

namespace {

// Plain black on white; the drawing keeps its size on paper, so that its scale holds.
constexpr std::string_view k_style = R"(
body { margin: 0 auto; max-width: 186mm; color: #000; background: #fff;
    font: 10pt/1.2 Arial, Helvetica, sans-serif; }
h1 { font-size: 17pt; margin: 0; }
h2 { font-size: 10pt; margin: 1.5mm 0 0.5mm; border-bottom: 0.3mm solid #000; }
p { margin: 1mm 0; }
p.state { font-size: 13pt; font-weight: bold; }
table { border-collapse: collapse; width: 100%; }
th, td { padding: 0.1mm 1mm 0.1mm 0; text-align: left; vertical-align: top; }
td.value { font-weight: bold; text-align: right; white-space: nowrap; }
td.words { font-weight: bold; text-align: right; }
table.large td { font-size: 14pt; }
table.large td.words { font-size: 13pt; }
span.counterbore { display: inline-block; width: 3mm; height: 1.6mm; border: 0.3mm solid #000;
    border-top: none; }
table.listed th, table.listed td { border: 0.2mm solid #000; padding: 0.6mm 1.5mm; }
table.columns { table-layout: fixed; }
table.columns > tbody > tr > td { padding: 0 4mm 0 0; }
td.figures { width: 86mm; }
ul { margin: 0; padding-left: 4mm; font-size: 8pt; }
ul.ticks { font-size: 9.5pt; line-height: 1.15; }
ul.ticks { list-style: none; padding: 0; }
ul.ticks li { padding-left: 7mm; text-indent: -7mm; }
span.box { display: inline-block; width: 4mm; height: 4mm; border: 0.3mm solid #000;
    margin-right: 2.6mm; vertical-align: -0.6mm; text-indent: 0; }
div.small, div.small h2 { font-size: 8pt; line-height: 1.1; }
svg { display: block; }
.sheet { break-after: page; }
.sheet:last-child { break-after: auto; }
@media screen { .sheet { margin-bottom: 15mm; } }
)";

// Few fonts have the sign of a counterbore: it is drawn.
std::string with_signs(std::string html) {
    constexpr std::string_view k_sign = "⌴";
    constexpr std::string_view k_drawn = "<span class=\"counterbore\"></span>";
    for (auto at = html.find(k_sign); at != std::string::npos; at = html.find(k_sign, at))
        html.replace(at, k_sign.size(), k_drawn);
    return html;
}

// Words may break at the end of a line; a size never does.
std::string_view cell_of(const job::Figure& figure) {
    return std::holds_alternative<std::string>(figure.value) ? "words" : "value";
}

std::string rows(const std::vector<job::Figure>& figures, length::Unit unit) {
    std::string html;
    for (const auto& figure : figures)
        html += fmt::format("<tr><td>{}</td><td class=\"{}\">{}</td></tr>\n", xml_text(figure.name),
                            cell_of(figure), with_signs(xml_text(sheet_value(figure, unit))));
    return html;
}

std::string items(const std::vector<std::string>& lines) {
    std::string html;
    for (const auto& line : lines)
        html += "<li>" + xml_text(line) + "</li>\n";
    return html.empty() ? html : "<ul>\n" + html + "</ul>\n";
}

std::string section_html(const job::Section& section, length::Unit unit, std::string_view kind) {
    return fmt::format("<h2>{}</h2>\n<table{}>\n{}</table>\n{}", xml_text(section.title), kind,
                       rows(section.figures, unit), items(section.notes));
}

// The seat and the cone are read at the desk, the rest at the machine.
bool for_the_desk(const job::Section& section) {
    return section.title.ends_with("(guidance only)");
}

std::string ticks(const std::vector<std::string>& steps) {
    std::string html = "<h2>Steps</h2>\n<ul class=\"ticks\">\n";
    for (const auto& step : steps)
        html += "<li><span class=\"box\"></span>" + xml_text(step) + "</li>\n";
    return html + "</ul>\n<p>Measured: diameter ______________ depth ______________ "
                  "date ______________</p>\n";
}

std::string ways_html(const std::vector<job::Way>& ways) {
    std::string html = ways.empty() ? "" : "<h2>Other ways</h2>\n";
    for (const auto& way : ways)
        html += fmt::format("<p><b>{}</b>: {}. If: {}. Mind: {}.</p>\n", xml_text(way.what),
                            xml_text(way.how), xml_text(way.conditions), xml_text(way.caution));
    return html;
}

// Sections for the machine, or for the desk.
std::string figures_html(const job::Sheet& sheet, length::Unit unit, bool desk) {
    std::string html;
    for (std::size_t i = 0; i < sheet.sections.size(); ++i)
        if (for_the_desk(sheet.sections[i]) == desk)
            html += section_html(sheet.sections[i], unit, i == 0 ? " class=\"large\"" : "");
    return html;
}

std::string drawing_html(const job::Sheet& sheet, const drawing::Lettering& lettering) {
    const auto section = job::draw_section(sheet, lettering);
    return section ? svg_element(*section) : std::string();
}

std::string cautions_html(const job::Sheet& sheet) {
    return "<div class=\"small\"><h2>Cautions</h2>\n" +
           items(job::cautions(sheet.particulars.material)) + "</div>\n";
}

std::string page(const job::Sheet& sheet, const drawing::Lettering& lettering) {
    std::string html = "<div class=\"sheet\">\n";
    html += "<h1>" + xml_text(sheet.question.screw.name) + "</h1>\n";
    html += "<p>" + xml_text(sheet_title(sheet)) + "</p>\n";
    html += "<p class=\"state\">" + xml_text(sheet_state(sheet)) + "</p>\n";
    if (!sheet.particulars.note.empty())
        html += "<p>" + xml_text(sheet.particulars.note) + "</p>\n";
    if (!sheet.usable())
        return html + figures_html(sheet, lettering.unit, false) + ways_html(sheet.ways) +
               figures_html(sheet, lettering.unit, true) + cautions_html(sheet) + "</div>\n";
    html += fmt::format(
        "<table class=\"columns\"><tbody><tr><td class=\"figures\">\n{}{}</td><td>\n{}{}"
        "<div class=\"small\">\n{}</div></td></tr></tbody></table>\n",
        figures_html(sheet, lettering.unit, false), cautions_html(sheet),
        drawing_html(sheet, lettering), ticks(sheet.steps),
        figures_html(sheet, lettering.unit, true));
    return html + "</div>\n";
}

std::string first_page(const job::Plan& plan, const std::vector<job::Sheet>& sheets) {
    std::string html = "<div class=\"sheet\">\n<h1>Job</h1>\n<h2>Tools to pull</h2>\n"
                       "<table class=\"listed\">\n";
    for (const auto& tool : plan.pull)
        html += fmt::format("<tr><td>{}</td><td>{}</td><td>{}</td></tr>\n", tool.kind,
                            xml_text(tool.number), xml_text(tool.place));
    html += "</table>\n<h2>Order of work</h2>\n<table class=\"listed\">\n";
    for (const auto& run : plan.runs)
        html +=
            fmt::format("<tr><td>{}</td><td>{}</td><td>{}</td><td>{}</td></tr>\n", run.operation,
                        xml_text(run.with), run.holes, xml_text(lines_named(run.lines, sheets)));
    html += "</table>\n";
    if (!plan.not_ready.empty())
        html += "<p>Not ready: " + xml_text(lines_named(plan.not_ready, sheets)) + "</p>\n";
    return html + "</div>\n";
}

} // namespace

std::string sheet_html(const std::vector<job::Sheet>& sheets, const job::Plan* plan, Paper paper,
                       const drawing::Lettering& lettering) {
    std::string body = plan ? first_page(*plan, sheets) : std::string();
    for (const auto& sheet : sheets)
        body += page(sheet, lettering);
    return html_page("Operation sheet", paper, k_style, body);
}

} // namespace present
