// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/sheet_text.hpp"

#include <fmt/format.h>

#include "job/steps.hpp"
#include "present/figure_text.hpp"
#include "present/screw_text.hpp"
#include "present/sheet_words.hpp"
#include "present/table.hpp"
#include "present/text.hpp"

namespace present {

namespace {

constexpr std::size_t k_indent = 2;

// `lead` before the first line, as many spaces before the others.
std::string item(const std::string& lead, const std::string& words, std::size_t width) {
    std::string text;
    const std::string under(lead.size(), ' ');
    for (const auto& line : wrapped(safe(words), width - lead.size()))
        text += (text.empty() ? lead : under) + line + '\n';
    return text;
}

std::string indented(const std::string& lines) {
    std::string text;
    for (std::size_t at = 0; at < lines.size();) {
        const auto end = lines.find('\n', at);
        text += std::string(k_indent, ' ') + lines.substr(at, end - at) + '\n';
        at = end + 1;
    }
    return text;
}

std::string section_text(const job::Section& section, const SheetLayout& layout) {
    std::string text = layout.style.strong(section.title) + '\n';
    const auto width = layout.width - k_indent;
    if (layout.explain)
        for (const auto& figure : section.figures)
            text += indented(explain_figure(figure, layout.unit, width, sheet_value));
    else
        text += indented(figure_lines(section.figures, layout.unit, width, sheet_value));
    for (const auto& note : section.notes)
        text += item("  - ", note, layout.width);
    return text;
}

std::string ways_text(const std::vector<job::Way>& ways, const SheetLayout& layout) {
    if (ways.empty())
        return {};
    std::string text = layout.style.strong("Other ways") + '\n';
    for (const auto& way : ways) {
        text += item("  ", way.what + ": " + way.how, layout.width);
        text += item("    if    ", way.conditions, layout.width);
        text += item("    mind  ", way.caution, layout.width);
    }
    return text;
}

std::string list_text(const char* title, const char* mark, const std::vector<std::string>& lines,
                      const SheetLayout& layout) {
    std::string text = layout.style.strong(title) + '\n';
    for (const auto& line : lines)
        text += item(mark, line, layout.width);
    return text;
}

std::string state_text(const job::Sheet& sheet, const SheetLayout& layout) {
    const auto& style = layout.style;
    const auto words = item("", sheet_state(sheet), layout.width);
    if (!sheet.answer)
        return style.bad(words);
    return sheet.answer->kind == match::AnswerKind::ready ? style.good(words)
                                                          : style.doubtful(words);
}

} // namespace

std::string sheet_text(const job::Sheet& sheet, const SheetLayout& layout) {
    std::string text = item("", sheet_title(sheet), layout.width);
    text += screw_summary(sheet.question.screw, layout.unit, layout.width);
    text += state_text(sheet, layout);
    if (!sheet.particulars.note.empty())
        text += item("Note: ", sheet.particulars.note, layout.width);
    // Where no tool will do, the figures for the desk are about one of the other ways.
    std::string last;
    for (const auto& section : sheet.sections) {
        const bool about_ways = !sheet.ways.empty() && section.title.ends_with("(guidance only)");
        (about_ways ? last : text) += '\n' + section_text(section, layout);
    }
    if (!sheet.steps.empty())
        text += '\n' + list_text("Steps", "  [ ] ", sheet.steps, layout) +
                "  Measured: diameter ________  depth ________\n";
    if (!sheet.ways.empty())
        text += '\n' + ways_text(sheet.ways, layout);
    text += last;
    return text + '\n' +
           list_text("Cautions", "  - ", job::cautions(sheet.particulars.material), layout);
}

std::string plan_text(const job::Plan& plan, const std::vector<job::Sheet>& sheets,
                      const SheetLayout& layout) {
    Table pull({{"pull"}, {"number", true}, {"place"}});
    for (const auto& tool : plan.pull)
        pull.add({tool.kind, tool.number, tool.place});
    Table order({{"operation"}, {"with"}, {"holes", true}, {"for"}});
    for (const auto& run : plan.runs)
        order.add(
            {run.operation, run.with, std::to_string(run.holes), lines_named(run.lines, sheets)});
    std::string text = pull.empty() ? "" : pull.text(layout.width, layout.style) + '\n';
    text += order.empty() ? "" : order.text(layout.width, layout.style);
    if (!plan.not_ready.empty())
        text += item("Not ready: ", lines_named(plan.not_ready, sheets), layout.width);
    return text;
}

} // namespace present
