// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A small shop for the hand-written cases: a 3/8 socket head cap screw, three drills, and tools
// that are added one by one and changed where a case needs it.
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

// Head of 3/8-16 (ASME B18.3).
inline const length::Range k_head = inches(54'000, 56'200);

struct Bench {
    match::Question question;
    match::Shop shop;
    Tools tools;

    Bench() {
        shop.practice = usual_practice();
        shop.oversize = usual_oversize();
        shop.drilled_holes = usual_drilled_holes();
        shop.drills = {fraction_drill("25/64", 25), fraction_drill("13/32", 26),
                       fraction_drill("27/64", 27)};
        trade::Screw& screw = question.screw;
        screw.name = "3/8-16 socket head cap";
        screw.size = trade::ScrewSize{trade::SizeSystem::inch, "3/8", length::sixty_fourths(24)};
        screw.screw_dia = inches(37'500, 37'500);
        screw.head_dia = k_head;
        screw.head_height = inches(36'800, 37'500);
        screw.close = {"25/64", length::sixty_fourths(25)};
        screw.normal = {"13/32", length::sixty_fourths(26)};
        screw.loose = {"27/64", length::sixty_fourths(27)};
        question.below = length::sixty_fourths(1);
    }

    void publish(std::string rule, std::string kind, length::Length diameter) {
        trade::Counterbore row;
        row.rule = std::move(rule);
        row.kind = std::move(kind);
        row.diameter = diameter;
        question.screw.counterbores.push_back(row);
    }

    // With a pilot of its own that runs well in a 25/64 hole.
    trade::Body& add_integral(std::int64_t number, std::int64_t cut) {
        trade::Body& body = tools.bodies.emplace_back();
        body.number = number;
        body.kind = trade::BodyKind::counterbore;
        body.cut_dia = about(cut);
        body.pilot_kind = trade::PilotKind::integral;
        body.pilot_dia = about(38'850);
        body.pilot_length = about(50'000);
        return body;
    }

    // Recommended size, a 1/4 bore, a set screw whose point meets the flats of its pilots.
    trade::Body& add_removable(std::int64_t number) {
        trade::Body& body = tools.bodies.emplace_back();
        body.number = number;
        body.kind = trade::BodyKind::counterbore;
        body.cut_dia = about(62'500);
        body.pilot_kind = trade::PilotKind::removable;
        body.bore = about(25'000, 0);
        body.retention = trade::Retention::set_screw;
        body.set_screw = "#8-32";
        body.set_screw_at = about(30'000, 0);
        return body;
    }

    // Runs well in a 25/64 hole, slips into a 1/4 bore.
    trade::Pilot& add_pilot(std::int64_t number) {
        trade::Pilot& pilot = tools.pilots.emplace_back();
        pilot.number = number;
        pilot.pilot_dia = about(38'850);
        pilot.pilot_length = about(50'000);
        pilot.shank_dia = about(24'950, 0);
        pilot.shank_length = about(75'000, 0);
        pilot.has_flat = true;
        pilot.flat_at = about(35'000, 0);
        pilot.flat_length = about(20'000, 0);
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
