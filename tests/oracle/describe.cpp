// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Lengths are written in inches, as a range where it is one.
#include "oracle/describe.hpp"

#include <fmt/format.h>

namespace oracle {

using length::Length;

namespace {

double inches(Length value) {
    return static_cast<double>(value.nm()) / static_cast<double>(length::k_nm_per_inch);
}

std::string inches(const length::MaybeRange& range) {
    if (!range) {
        return "?";
    }
    if (range->lo == range->hi) {
        return fmt::format("{:.6g}", inches(range->lo));
    }
    return fmt::format("{:.6g}..{:.6g}", inches(range->lo), inches(range->hi));
}

std::string inches(const trade::MaybeDimension& dimension) {
    return inches(trade::range_of(dimension));
}

std::string published(const trade::Screw& screw) {
    std::string text;
    for (const auto& hole : {screw.close, screw.normal, screw.loose}) {
        text += hole ? fmt::format(" {}={:.6g}", hole->drill, inches(hole->diameter)) : " -";
    }
    for (const trade::Counterbore& row : screw.counterbores) {
        text += fmt::format("; {} {} {:.6g}", row.rule, row.kind, inches(row.diameter));
    }
    for (const trade::PublishedTool& tool : screw.tools) {
        text += fmt::format("; tool {} pilot {}", inches(tool.cut_dia.listed),
                            inches(tool.pilot_dia.listed));
    }
    return text;
}

std::string hole_text(const match::Hole& hole) {
    switch (hole.kind) {
    case match::HoleKind::chosen:
        return "chosen";
    case match::HoleKind::drilled:
        return fmt::format("drill {}{}", hole.drill.name, hole.tapped ? " tapped" : "");
    default:
        return "measured " + inches(length::MaybeRange(hole.measured));
    }
}

std::string in_hand_text(const auto& tool) {
    return fmt::format("{}{}{}{}{}", tool.condition ? " " : "",
                       tool.condition ? trade::to_text(*tool.condition) : "",
                       tool.work.empty() ? "" : " work", tool.retired ? " retired" : "",
                       tool.loan ? " lent" : "");
}

} // namespace

std::string_view word(match::AnswerKind kind) {
    constexpr std::array<std::string_view, match::k_answer_kinds> words = {
        "ready", "after work", "measure first", "make pilot", "closest"};
    return words[static_cast<std::size_t>(kind)];
}

std::string_view word(match::Verdict verdict) {
    constexpr std::array<std::string_view, 3> words = {"pass", "fail", "unknown"};
    return words[static_cast<std::size_t>(verdict)];
}

std::string_view word(match::SizeClass size) {
    constexpr std::array<std::string_view, 4> words = {"recommended", "tool size", "small",
                                                       "large"};
    return words[static_cast<std::size_t>(size)];
}

std::string describe(const OracleAnswer& answer) {
    std::string text =
        fmt::format("{} body {} pilot {} (+{}) drill {}, {}:", word(answer.kind), answer.body,
                    answer.pilot ? std::to_string(*answer.pilot) : "-", answer.other_pilots,
                    answer.drill.value_or("-"), answer.size ? word(*answer.size) : "no size");
    for (const RuleVerdict& rule : answer.rules) {
        text += fmt::format(" {} {},", rule.rule, word(rule.verdict));
    }
    text.back() = '.';
    return text;
}

std::string describe(const match::Question& question) {
    const trade::Screw& screw = question.screw;
    std::string text = fmt::format(
        "{}{}{} dia {} head {} high {}{}\n  hole {} below {}", screw.name, screw.hex ? " hex" : "",
        screw.shoulder ? " shoulder" : "", inches(screw.screw_dia), inches(screw.head_dia),
        inches(screw.head_height), published(screw), hole_text(question.hole),
        question.below ? fmt::format("{:.6g}", inches(*question.below)) : "as usual");
    if (question.washer) {
        text += fmt::format(" washer {} by {}",
                            inches(length::MaybeRange(question.washer->outside_dia)),
                            inches(question.washer->thickness));
    }
    if (question.thick) {
        text += " thick " + inches(question.thick);
    }
    if (question.blind) {
        text += " blind " + inches(question.blind);
    }
    if (question.machine) {
        text += fmt::format(" machine chuck {} Morse {}", inches(question.machine->chuck),
                            question.machine->morse.value_or(0));
    }
    return question.set.empty() ? text : text + " set " + question.set;
}

std::string describe(const trade::Body& body) {
    return fmt::format("body {} {} cut {} pilot {} {} by {} bore {} deep {} {} {} at {} reach {} "
                       "shank {} {}{} {}",
                       body.number, trade::to_text(body.kind), inches(body.cut_dia),
                       trade::to_text(body.pilot_kind), inches(body.pilot_dia),
                       inches(body.pilot_length), inches(body.bore), inches(body.bore_depth),
                       body.retention ? trade::to_text(*body.retention) : "held ?", body.set_screw,
                       inches(body.set_screw_at), inches(body.reach), body.shank_kind,
                       inches(body.shank_dia), in_hand_text(body), body.marking);
}

std::string describe(const trade::Pilot& pilot) {
    const char* flat = !pilot.has_flat ? "?" : *pilot.has_flat ? "yes" : "none";
    return fmt::format("pilot {} dia {} by {} shank {} by {} flat {} at {} by {} in {}{}",
                       pilot.number, inches(pilot.pilot_dia), inches(pilot.pilot_length),
                       inches(pilot.shank_dia), inches(pilot.shank_length), flat,
                       inches(pilot.flat_at), inches(pilot.flat_length),
                       pilot.in_body ? std::to_string(*pilot.in_body) : "-", in_hand_text(pilot));
}

} // namespace oracle
