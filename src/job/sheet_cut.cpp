// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Tools, hole, depth, running and what is left.
#include <algorithm>

#include "job/cut.hpp"
#include "job/feed.hpp"
#include "job/left.hpp"
#include "job/run.hpp"
#include "job/sheet_parts.hpp"
#include "length/grid.hpp"
#include "match/say.hpp"
#include "trade/set_screw.hpp"

namespace job {

using length::Length;
using match::say;
using match::Seat;

namespace {

constexpr auto k_record = "the catalogue";

Figure words(std::string name, std::string text) {
    return {std::move(name), std::move(text), "as recorded", {}, k_record};
}

std::string placed(std::int64_t number, const std::string& place) {
    return std::to_string(number) + (place.empty() ? ", place not recorded" : ", " + place);
}

std::string pilot_words(const Subject& subject) {
    const auto& answer = subject.answer;
    switch (answer.seat) {
    case Seat::integral:
        return "in one piece with the body";
    case Seat::in_this_body:
        return std::to_string(*answer.pilot) + ", in the body";
    case Seat::in_other_body:
        return std::to_string(*answer.pilot) + ", out of body " +
               std::to_string(*subject.pilot->in_body);
    case Seat::free:
        return placed(*answer.pilot, answer.pilot_place);
    case Seat::none:
        break;
    }
    return "none recorded";
}

trade::Oversize oversize_of(const Subject& subject) {
    return trade::oversize_at(subject.books.oversize, subject.answer.drill->diameter);
}

Figure measured_hole(const length::Range& hole) {
    return {"hole", hole, "as measured or given", {}, "given"};
}

} // namespace

length::MaybeRange Subject::hole_at_seat() const {
    auto hole = answer.hole;
    if (hole && question.screw.fillet_dia) {
        hole->lo = std::max(hole->lo, *question.screw.fillet_dia);
        hole->hi = std::max(hole->hi, *question.screw.fillet_dia);
    }
    return hole;
}

std::string Subject::key() const {
    const auto row = trade::find_set_screw(body.set_screw, books.set_screws);
    return row ? row->key : std::string();
}

Section tools_section(const Subject& subject) {
    const auto& answer = subject.answer;
    Section section{"Tools", {}, {}};
    auto& figures = section.figures;
    figures.push_back(words("body", placed(answer.body, answer.place)));
    figures.push_back(words("pilot", pilot_words(subject)));
    if (answer.drill)
        figures.push_back({"drill", answer.drill->name, "as matched", {}, "match"});
    if (answer.pilot && subject.body.retention == trade::Retention::set_screw) {
        const auto key = subject.key();
        const auto& screw = subject.body.set_screw;
        figures.push_back(words("set screw", (screw.empty() ? "size not recorded" : screw) +
                                                 (key.empty() ? "" : ", key " + key)));
    }
    for (const auto& work : answer.work)
        figures.push_back(words("first", work));
    for (const auto& note : answer.notes)
        section.notes.push_back(note);
    return section;
}

Section hole_section(const Subject& subject) {
    const auto& answer = subject.answer;
    Section section{"Hole and counterbore", {}, {}};
    auto& figures = section.figures;
    if (answer.drill)
        figures.push_back(drilled_hole(*answer.drill, oversize_of(subject)));
    else if (answer.hole)
        figures.push_back(measured_hole(*answer.hole));
    if (answer.pilot_dia && answer.running_clearance)
        figures.push_back({"running clearance",
                           *answer.running_clearance,
                           "hole - pilot",
                           {{"hole", *answer.hole}, {"pilot", *answer.pilot_dia}},
                           "geometry"});
    if (answer.counterbore)
        figures.push_back(counterbore_left(*answer.counterbore, subject.shop.practice));
    if (answer.hole)
        if (auto edge = edge_break(subject.question.screw, *answer.hole))
            figures.push_back(*edge);
    return section;
}

Section depth_section(const Subject& subject) {
    Section section{"Depth", {}, {}};
    if (!subject.answer.depth) {
        section.notes.push_back("not known: measure the head height, or the washer's thickness");
        return section;
    }
    const Length depth = *subject.answer.depth;
    const auto& practice = subject.shop.practice;
    auto& figures = section.figures;
    figures.push_back(depth_to_cut(subject.question, depth, practice));
    figures.push_back(stop_travel(depth));
    figures.push_back(gauge_reading(depth, practice));
    if (auto head = head_upside_down(subject.question, depth, practice))
        figures.push_back(*head);
    if (auto standard = depth_by_standard(subject.question))
        figures.push_back(*standard);
    const auto length =
        trade::range_of(subject.pilot ? subject.pilot->pilot_length : subject.body.pilot_length);
    if (auto travel = quill_travel(depth, length)) {
        const auto& machine = subject.question.machine;
        if (machine && machine->travel &&
            std::get<length::Range>(travel->value).hi > *machine->travel)
            section.notes.push_back("the quill of " + machine->name + " goes " +
                                    say(*machine->travel, subject.unit) +
                                    ": lower the head or raise the table for the pilot");
        figures.push_back(*travel);
    }
    return section;
}

Section running_section(const Subject& subject) {
    const auto& material = subject.particulars.material;
    const auto& cutter = subject.answer.counterbore;
    Section section{"Running", {}, {}};
    if (!material) {
        section.notes.push_back("speed and feed: name the material");
        return section;
    }
    auto& figures = section.figures;
    const auto speed = surface_speed(*material);
    figures.push_back(speed);
    section.notes.push_back(hand_feed_words(*material));
    section.notes.push_back("coolant: " + material->coolant + "; oil the pilot");
    if (subject.answer.drill)
        figures.push_back(drill_turns(*material, *subject.answer.drill));
    if (!cutter)
        return section;
    auto turning = turns(speed, *cutter);
    figures.push_back(turning);
    if (const auto& machine = subject.question.machine)
        if (const auto step = machine_speed(*machine, std::get<Measure>(turning.value).hi)) {
            auto set = machine_turns(*machine, turning, *step);
            if (step->too_fast)
                section.notes.push_back("the slowest of " + machine->name +
                                        " is too fast: a slower machine, or expect chatter");
            const auto& turned = std::get<Measure>(set.value);
            turning.value = turned; // what the time is reckoned with
            figures.push_back(std::move(set));
        }
    const auto feed = feed_a_turn(
        feed_for(material->feed_class, middle(*cutter), subject.books.feeds), *material);
    figures.push_back(feed);
    if (subject.answer.depth)
        figures.push_back(
            time_for(subject.particulars.count, *subject.answer.depth, feed, turning));
    return section;
}

Section left_section(const Subject& subject) {
    const auto& question = subject.question;
    const auto& practice = subject.shop.practice;
    Section section{"What is left", {}, {}};
    auto& figures = section.figures;
    if (question.thick && subject.answer.depth) {
        const auto left = left_under_head(*question.thick, *subject.answer.depth);
        figures.push_back(left);
        if (question.screw.screw_dia) {
            const auto least = least_ledge(*question.screw.screw_dia, practice);
            if (std::get<length::Range>(left.value).lo < std::get<length::Range>(least.value).lo)
                section.notes.push_back("thin under the head: ask whoever answers for the joint");
            figures.push_back(least);
        }
    }
    if (question.blind && subject.answer.depth)
        figures.push_back(hole_below_seat(*question.blind, *subject.answer.depth));
    if (subject.particulars.to_edge && subject.answer.counterbore) {
        const auto wall = wall_to_edge(*subject.particulars.to_edge, *subject.answer.counterbore);
        const auto least = least_wall(*subject.answer.counterbore, practice);
        if (std::get<length::Range>(wall.value).lo < std::get<length::Range>(least.value).lo)
            section.notes.push_back("thin wall: the rim may bulge or break out");
        figures.push_back(wall);
        figures.push_back(least);
    }
    return section;
}

} // namespace job
