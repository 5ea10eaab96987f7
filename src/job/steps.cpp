// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/steps.hpp"

#include "match/say.hpp"

namespace job {

using match::say;
using match::Seat;

namespace {

std::string drilling(const match::Question& question, const match::Answer& answer,
                     length::Unit unit) {
    if (!answer.drill)
        return "Measure the hole: " + say(answer.hole, unit);
    std::string step = "Centre, then drill " + answer.drill->name;
    if (question.blind)
        step += ", " + say(*question.blind, unit) + " deep";
    return step + "; expect a hole of " + say(answer.hole, unit);
}

std::string pilot_step(const match::Answer& answer, const trade::Body& body,
                       const std::string& key) {
    if (answer.seat == Seat::integral || !answer.pilot)
        return {};
    std::string step = "Pilot " + std::to_string(*answer.pilot) + " in body " +
                       std::to_string(answer.body) + ", hard against its shoulder";
    if (body.retention != trade::Retention::set_screw)
        return step + "; try that it holds";
    step += "; set screw on its flat, and tight";
    return key.empty() ? step : step + " (key " + key + ")";
}

} // namespace

std::vector<std::string> steps_for(const match::Question& question, const match::Answer& answer,
                                   const trade::Body& body, const std::string& key,
                                   const std::optional<length::Length>& edge, length::Unit unit) {
    std::vector<std::string> steps;
    const auto add = [&steps](std::string step) {
        if (!step.empty())
            steps.push_back(std::move(step));
    };
    for (const auto& work : answer.work)
        add("First, on the tool: " + work);
    add(drilling(question, answer, unit));
    add("Deburr the mouth of the hole lightly: a burr keeps the pilot out");
    add(pilot_step(answer, body, key));
    add("Spindle stopped: pilot oiled, entered by hand and turned by hand; it runs freely");
    if (answer.depth)
        add("All lips on the top face, stop set " + say(*answer.depth, unit) +
            " below, on the first "
            "hole");
    if (question.screw.hex)
        add("First hole: the seat is clean all round");
    else
        add("First hole: depth gauge, then the screw's own head upside down in it; correct the "
            "stop");
    if (question.thick && answer.depth)
        add("Under the part: room for the pilot's nose, clear of table and vise");
    add("Before each hole: spindle stopped, chips brushed out, pilot oiled");
    if (edge)
        add("Break the edge of the hole at the floor to " + say(*edge, unit) + ", no larger");
    add("Deburr the rim");
    if (question.hole.tapped)
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
          "Spindle stopped to enter the pilot, to gauge and to brush out chips",
          "Learners under supervision; local rules and the people responsible come first",
          "Pressure and torque are guidance: the joint's designer decides"})
        list.emplace_back(usual);
    return list;
}

} // namespace job
