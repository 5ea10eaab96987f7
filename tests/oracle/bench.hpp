// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A small shop for the hand-written cases: a 5/16 socket head cap screw of the 1960 series, three
// drills, and tools that are added one by one and changed where a case needs it.
#pragma once

#include "oracle/oracle.hpp"
#include "oracle/random_catalogue.hpp"

namespace oracle {

// Hundred-thousandths of an inch.
inline length::Range inches(std::int64_t lo, std::int64_t hi) {
    return {length::inches_e5(lo), length::inches_e5(hi)};
}
inline trade::Dimension about(std::int64_t nominal, std::int64_t within = 20) {
    return {"", trade::How::micrometer, inches(nominal - within, nominal + within)};
}

inline trade::Drill fraction_drill(std::string name, std::int64_t of_64) {
    return {std::move(name), trade::DrillKind::fraction, length::sixty_fourths(of_64)};
}

// Heads of 5/16-18 (ASME B18.3; the older pattern from memory of the pre-1960 table, its minimum
// less the spread of the newer).
inline const length::Range k_newer_head = inches(44'600, 46'900);
inline const length::Range k_older_head = inches(41'400, 43'700);

struct Bench {
    match::Question question;
    match::Shop shop;
    Tools tools;

    Bench() {
        shop.practice = usual_practice();
        shop.oversize = usual_oversize();
        shop.drilled_holes = usual_drilled_holes();
        shop.drills = {fraction_drill("21/64", 21), fraction_drill("11/32", 22),
                       fraction_drill("23/64", 23)};
        trade::Screw& screw = question.screw;
        screw.name = "5/16-18 socket head cap";
        screw.size = trade::ScrewSize{trade::SizeSystem::inch, "5/16", length::sixty_fourths(20)};
        screw.screw_dia = inches(31'250, 31'250);
        screw.head_dia = k_newer_head;
        screw.head_height = inches(30'600, 31'200);
        screw.close = {"21/64", length::sixty_fourths(21)};
        screw.normal = {"11/32", length::sixty_fourths(22)};
        screw.loose = {"23/64", length::sixty_fourths(23)};
        question.below = length::sixty_fourths(1);
    }

    void publish(std::string rule, std::string kind, length::Length diameter) {
        trade::Counterbore row;
        row.rule = std::move(rule);
        row.kind = std::move(kind);
        row.diameter = diameter;
        question.screw.counterbores.push_back(row);
    }

    // With a pilot of its own that runs well in a 21/64 hole.
    trade::Body& add_integral(std::int64_t number, std::int64_t cut) {
        trade::Body& body = tools.bodies.emplace_back();
        body.number = number;
        body.kind = trade::BodyKind::counterbore;
        body.cut_dia = about(cut);
        body.pilot_kind = trade::PilotKind::integral;
        body.pilot_dia = about(32'750);
        body.pilot_length = about(50'000);
        return body;
    }

    // Recommended size, a 1/4 bore, nothing to hold a pilot by that could go wrong.
    trade::Body& add_removable(std::int64_t number) {
        trade::Body& body = tools.bodies.emplace_back();
        body.number = number;
        body.kind = trade::BodyKind::counterbore;
        body.cut_dia = about(53'125);
        body.pilot_kind = trade::PilotKind::removable;
        body.bore = about(25'000, 0);
        body.retention = trade::Retention::detent;
        return body;
    }

    // Runs well in a 21/64 hole and slips into a 1/4 bore.
    trade::Pilot& add_pilot(std::int64_t number) {
        trade::Pilot& pilot = tools.pilots.emplace_back();
        pilot.number = number;
        pilot.pilot_dia = about(32'750);
        pilot.pilot_length = about(50'000);
        pilot.shank_dia = about(24'950, 0);
        return pilot;
    }

    [[nodiscard]] OracleReport ask(Form form = Form::bodies) const {
        return judge(question, shop, tools.bodies, tools.pilots, tools.trials, form);
    }
    // The only answer there is; a case that gives none is wrong.
    [[nodiscard]] OracleAnswer answer() const { return ask().answers.at(0); }
    [[nodiscard]] match::AnswerKind kind() const { return answer().kind; }
    [[nodiscard]] std::optional<match::Verdict> verdict(const std::string& rule) const {
        for (const RuleVerdict& one : answer().rules) {
            if (one.rule == rule) {
                return one.verdict;
            }
        }
        return std::nullopt;
    }
};

} // namespace oracle
