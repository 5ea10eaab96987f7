// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/steps.hpp"

#include "match/say.hpp"

namespace job {

using length::Length;
using match::say;
using match::Seat;

namespace {

constexpr auto k_in_one_go = length::sixty_fourths(32); // drills to this size go in at once
constexpr std::int64_t k_web_percent = 15;

Length up_to_step(Length value, Length step) {
    return Length::from_nm((value.nm() + step.nm() - 1) / step.nm() * step.nm());
}

std::string drilling(const Steps& job) {
    const auto& answer = job.answer;
    if (answer.reamed)
        return "Drill under size and ream for the shoulder, to the hole above";
    if (!answer.drill)
        return "Measure the hole: it is as above";
    const auto first = pilot_drill(*answer.drill);
    std::string step = "Centre, ";
    step += first.empty() ? "then drill " : "drill " + first + " for the web, then ";
    step += answer.drill->name;
    if (job.question.blind)
        step += ", " + say(*job.question.blind, job.unit) + " deep";
    return step + "; withdraw and clear chips every diameter or so";
}

std::string pilot_step(const Steps& job) {
    const auto& answer = job.answer;
    if (answer.seat == Seat::integral || !answer.pilot)
        return {};
    std::string step = "Pilot " + std::to_string(*answer.pilot) + " in body " +
                       std::to_string(answer.body) + ", hard against its shoulder";
    if (job.body.retention != trade::Retention::set_screw)
        return step + "; try that it holds";
    step += "; set screw on its flat, and tight";
    return job.key.empty() ? step : step + " (key " + job.key + ")";
}

std::string first_hole(const Steps& job) {
    return job.question.screw.hex
               ? "First hole: the seat is clean all round"
               : "First hole: depth gauge, then the screw's own head upside down in it; correct "
                 "the stop";
}

std::string cutting(const Steps& job) {
    const bool dwell = !job.material || job.material->may_dwell();
    return std::string("Feed steadily to the stop, withdraw once or twice on the way and clear the "
                       "chips") +
           (dwell ? "" : "; never let it rub, straight out at the stop");
}

} // namespace

std::string pilot_drill(const trade::Drill& drill) {
    if (drill.diameter <= k_in_one_go)
        return {};
    const auto web = Length::from_nm(drill.diameter.nm() * k_web_percent / 100);
    if (drill.kind == trade::DrillKind::metric)
        return length::with_unit(up_to_step(web, length::micrometres(500)),
                                 length::Unit::millimetre);
    return length::as_fraction(up_to_step(web, length::sixty_fourths(2)));
}

std::vector<std::string> steps_for(const Steps& job) {
    std::vector<std::string> steps;
    const auto add = [&steps](std::string step) {
        if (!step.empty())
            steps.push_back(std::move(step));
    };
    for (const auto& work : job.answer.work)
        add("First, on the tool: " + work);
    add(drilling(job));
    add("Deburr the mouth of the hole lightly: a burr keeps the pilot out");
    add(pilot_step(job));
    add("Spindle stopped: pilot oiled, tried in the hole by hand; it enters and turns freely, else "
        "stop here");
    if (job.answer.depth)
        add("All lips on the top face, the lowest edge of a rough one; stop set from there");
    if (job.question.thick)
        add("Under the part: room for the pilot's nose, clear of table and vise");
    add("Pilot in the hole, teeth clear of the work, then start the spindle");
    add(cutting(job));
    add(first_hole(job));
    add("Before each hole: spindle stopped, chips brushed out, pilot oiled");
    if (job.edge)
        add("Break the edge of the hole at the floor as above, no larger");
    add("Deburr the rim");
    if (job.question.hole.tapped)
        add("Tap last: drill, counterbore, tap");
    add("Try the screw: the head seats all round");
    return steps;
}

std::vector<std::string> cautions(const std::optional<trade::Material>& material) {
    std::vector<std::string> list;
    if (material)
        for (const auto& restriction : material->restrictions)
            list.push_back(material->name + ": " + restriction.words);
    for (const auto* usual :
         {"Machine guarded, work or vise clamped; never a piloted counterbore in a hand-held drill",
          "Eye protection; no gloves, loose sleeves, rings or hair at the spindle; chuck key out",
          "Spindle stopped to enter the pilot and to gauge; chips by brush, never by hand",
          "Learners under supervision; local rules and the people responsible come first",
          "Pressure and torque are guidance: the joint's designer and local rules decide"})
        list.emplace_back(usual);
    return list;
}

} // namespace job
