// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/match_text.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "match/say.hpp"
#include "present/fields.hpp"
#include "present/screw_text.hpp"
#include "present/table.hpp"
#include "present/text.hpp"

namespace present {

using match::Answer;
using match::AnswerKind;
using match::say;
using match::Seat;

namespace {

constexpr std::size_t k_first_others = 6;
constexpr const char* k_caution =
    "Clamp the work, guard the spindle, stop it to enter the pilot; see docs/safety.md.\n";

std::string with_pilot(const Answer& answer) {
    switch (answer.seat) {
    case Seat::integral:
        return ", with its own pilot";
    case Seat::in_this_body:
        return fmt::format(", with pilot {} that is in it", *answer.pilot);
    case Seat::free:
        return fmt::format(", with pilot {}{}", *answer.pilot,
                           answer.pilot_place.empty() ? "" : " from " + safe(answer.pilot_place));
    case Seat::in_other_body:
        return fmt::format(", with pilot {} out of another body", *answer.pilot);
    case Seat::none:
        return answer.kind == AnswerKind::closest ? "" : ", without a pilot yet";
    }
    return {};
}

std::string headline(const Answer& answer, const Style& style) {
    auto kind = std::string(match::to_text(answer.kind));
    std::transform(kind.begin(), kind.begin() + 1, kind.begin(),
                   [](char c) { return static_cast<char>(c - 'a' + 'A'); });
    const auto coloured = answer.kind == AnswerKind::ready     ? style.good(kind)
                          : answer.kind == AnswerKind::closest ? style.bad(kind)
                                                               : style.doubtful(kind);
    return fmt::format("{}: body {}{}{}\n", coloured, answer.body,
                       answer.place.empty() ? "" : " from " + safe(answer.place),
                       with_pilot(answer));
}

std::string drill_line(const Answer& answer, length::Unit unit) {
    if (!answer.hole)
        return "none on hand suits the pilot";
    const auto hole = say(*answer.hole, unit);
    if (answer.reamed)
        return "none: ream the hole, " + hole;
    return answer.drill ? answer.drill->name + ", leaves a hole of " + hole : "hole of " + hole;
}

std::string pilot_line(const Answer& answer, length::Unit unit) {
    if (answer.seat == Seat::none)
        return answer.pilot_to_make ? "to be made, " + say(*answer.pilot_to_make, unit)
                                    : std::string();
    std::string line = say(answer.pilot_dia, unit);
    if (answer.running_clearance)
        line += ", runs with " + say(*answer.running_clearance, unit);
    return line;
}

std::string cutter_line(const Answer& answer, const match::Wanted& wanted, length::Unit unit) {
    std::string line = say(answer.counterbore, unit);
    if (answer.size)
        line += fmt::format(", {}", match::to_text(*answer.size));
    if (wanted.published)
        line += fmt::format("; {} has {}", wanted.published_source, say(*wanted.published, unit));
    return line;
}

std::string joined(const std::vector<std::string>& parts) {
    return fmt::format("{}", fmt::join(parts, "; "));
}

std::string best_text(const match::Report& report, const MatchLayout& layout) {
    const auto& answer = report.answers.front();
    Fields fields;
    fields.add("drill", drill_line(answer, layout.unit));
    fields.add("pilot", pilot_line(answer, layout.unit));
    fields.add("cutter", cutter_line(answer, report.wanted, layout.unit));
    fields.add("depth", answer.depth ? say(*answer.depth, layout.unit) + " from the surface"
                                     : "not known: head height or washer is not");
    fields.add("first", joined(answer.work));
    if (answer.kind == AnswerKind::measure_first || answer.kind == AnswerKind::closest)
        fields.add(answer.kind == AnswerKind::closest ? "short of" : "settle",
                   match::next_step(answer));
    for (const auto& assumed : answer.assumed)
        fields.add("assumed", assumed);
    for (const auto* notes : {&answer.notes, &answer.floor_notes})
        for (const auto& note : *notes)
            fields.add("note", note);
    return headline(answer, layout.style) + fields.text(layout.width);
}

// The rules that stand in the way, by name.
std::string in_the_way(const Answer& answer) {
    const auto verdict =
        answer.kind == AnswerKind::closest ? match::Verdict::fail : match::Verdict::unknown;
    std::vector<std::string> rules;
    for (const auto& reason : answer.rules)
        if (reason.result == verdict)
            rules.push_back(reason.rule);
    return joined(rules);
}

std::string short_cutter(const Answer& answer, length::Unit unit) {
    if (!answer.counterbore)
        return "?";
    const auto middle = (answer.counterbore->lo + answer.counterbore->hi) / 2;
    return length::to_text(middle, unit, unit == length::Unit::inch ? 4 : 2);
}

std::string others_text(const match::Report& report, const MatchLayout& layout) {
    const auto& answers = report.answers;
    if (answers.size() < 2)
        return {};
    Table table({{"others"},
                 {"body", true},
                 {"pilot", true},
                 {"drill"},
                 {"cutter", true},
                 {"size"},
                 {"place"},
                 {"first, or what stands in the way"}});
    const auto shown =
        layout.every_other ? answers.size() : std::min(answers.size(), k_first_others + 1);
    for (std::size_t i = 1; i < shown; ++i) {
        const auto& a = answers[i];
        table.add({std::string(match::to_text(a.kind)), std::to_string(a.body),
                   a.pilot                    ? std::to_string(*a.pilot)
                   : a.seat == Seat::integral ? "own"
                                              : "-",
                   a.drill ? a.drill->name : "-", short_cutter(a, layout.unit),
                   a.size ? std::string(match::to_text(*a.size)) : "-", a.place,
                   a.kind == AnswerKind::after_work ? joined(a.work) : in_the_way(a)});
    }
    return "\n" + table.text(layout.width, layout.style);
}

std::string reasons_text(const Answer& answer, const MatchLayout& layout) {
    Table table({{"rule"}, {"result"}, {"needs"}, {"has"}});
    for (const auto& reason : answer.rules)
        table.add(
            {reason.rule, std::string(match::to_text(reason.result)), reason.need, reason.have});
    return "\n" + table.text(layout.width, layout.style);
}

std::string counts_text(const match::Report& report, bool pairs) {
    std::vector<std::string> parts;
    for (std::size_t i = 0; i < match::k_answer_kinds; ++i)
        if (report.counts[i] > 0)
            parts.push_back(
                fmt::format("{} {}", report.counts[i], match::to_text(static_cast<AnswerKind>(i))));
    return parts.empty()
               ? "No body in the catalogue comes near.\n"
               : fmt::format("{}: {}.\n", pairs ? "Pairs" : "Bodies", fmt::join(parts, ", "));
}

bool usable(const match::Report& report) {
    return report.counts[0] + report.counts[1] > 0;
}

// When nothing can be used: the tool to look for.
std::string wanted_text(const match::Report& report, const trade::Screw& screw,
                        const MatchLayout& layout) {
    const auto& wanted = report.wanted;
    if (usable(report) || !wanted.cutter)
        return {};
    std::string line = "Wanted: a cutter of " + say(*wanted.cutter, layout.unit);
    if (wanted.pilot)
        line += ", pilot " + say(*wanted.pilot, layout.unit) +
                (wanted.drill ? " for drill " + wanted.drill->name : "");
    else if (!screw.screw_dia)
        line += "; pilot and drill wait for the screw's diameter, which is not known";
    return fmt::format("{}\n", fmt::join(wrapped(line + ".", layout.width), "\n"));
}

} // namespace

std::string match_text(const match::Report& report, const trade::Screw& screw,
                       const MatchLayout& layout) {
    std::string text = screw_summary(screw, layout.unit, layout.width) + "\n";
    if (!report.answers.empty()) {
        text += best_text(report, layout);
        if (layout.reasons)
            text += reasons_text(report.answers.front(), layout);
        text += others_text(report, layout) + "\n";
    }
    text += counts_text(report, layout.pairs) + wanted_text(report, screw, layout);
    return usable(report) ? text + k_caution : text;
}

} // namespace present
