// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Tools, hole, depth, running and what is left.
#include <algorithm>

#include "job/bearing.hpp"
#include "job/callout.hpp"
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
constexpr auto k_practice = "common practice";

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
    return answer.kind == match::AnswerKind::make_pilot ? "to be made" : "none recorded";
}

Figure known_hole(const match::Answer& answer) {
    if (answer.drill)
        return drilled_hole(*answer.drill, *answer.hole);
    if (answer.reamed)
        return {
            "hole, reamed", *answer.hole, "for a shoulder", {}, "shop practice, or H8 of ISO 286"};
    return {"hole", *answer.hole, "as measured or given", {}, "given"};
}

// The hole that the head takes a socket wrench into, where a table has it, else as sockets are.
Figure socket_room(const trade::Screw& screw) {
    for (const auto& row : screw.counterbores)
        if (row.kind == "socket wrench")
            return {"for a socket wrench, at least",
                    length::exactly(row.diameter),
                    row.rule,
                    {},
                    row.origin.source};
    const auto flats = bearing_face(screw)->hi;
    return {"for a socket wrench, at least",
            length::exactly(flats * 3 / 2),
            "1-1/2 flats: about as wide as a socket is outside",
            {{"flats", length::exactly(flats)}},
            k_practice};
}

void add_socket_room(const Subject& subject, Section& section) {
    const auto& screw = subject.question.screw;
    if (!screw.hex || !screw.head_dia || !subject.answer.counterbore)
        return;
    section.figures.push_back(socket_room(screw));
    const auto room = std::get<length::Range>(section.figures.back().value);
    if (subject.answer.counterbore->lo < room.lo)
        section.notes.push_back("a socket wrench does not go into this counterbore: a larger "
                                "cutter, or a spanner over a head that stands proud");
}

// What the machine is set by: the low end of the cutter's speeds, or the pilot's where that is
// less.
Figure slowest_end(const Figure& turning, const std::optional<Figure>& pilot) {
    const bool held =
        pilot && std::get<Measure>(pilot->value).hi < std::get<Measure>(turning.value).lo;
    Figure end = held ? *pilot : turning;
    auto& range = std::get<Measure>(end.value);
    range.hi = range.lo;
    return end;
}

std::vector<std::string> running_notes(const trade::Material& material, Steel steel) {
    std::vector<std::string> notes;
    if (auto words = steel_words(steel); !words.empty())
        notes.push_back(std::move(words));
    notes.push_back(hand_feed_words(material));
    notes.push_back("coolant: " + material.coolant + "; oil the pilot");
    return notes;
}

// Adds the pilot's limit where it bites and the speed of the machine; gives what the time is
// reckoned with.
Figure add_set_speed(const Subject& subject, const Figure& turning, Section& section) {
    std::optional<Figure> pilot;
    if (subject.answer.pilot_dia)
        pilot = pilot_turns(*subject.answer.pilot_dia);
    if (pilot && std::get<Measure>(pilot->value).hi < std::get<Measure>(turning.value).hi)
        section.figures.push_back(*pilot);
    const auto end = slowest_end(turning, pilot);
    const auto& machine = subject.question.machine;
    const auto step =
        machine ? machine_speed(*machine, std::get<Measure>(end.value).lo) : std::nullopt;
    if (!step)
        return end;
    if (step->too_fast)
        section.notes.push_back("the slowest of " + machine->name +
                                " is too fast: a slower machine, or expect chatter");
    section.figures.push_back(machine_turns(*machine, end, *step));
    return section.figures.back();
}

// Speed, feed and time of the counterbore.
void add_cutting(const Subject& subject, const trade::Material& material,
                 const std::vector<Figure>& speeds, Section& section) {
    const auto& cutter = *subject.answer.counterbore;
    for (const auto& speed : speeds)
        section.figures.push_back(turns(speed, cutter));
    const auto rate = add_set_speed(subject, turns(speeds.front(), cutter), section);
    const auto feed =
        feed_a_turn(feed_for(material.feed_class, middle(cutter), subject.books.feeds), material);
    section.figures.push_back(feed);
    if (subject.answer.depth)
        section.figures.push_back(
            time_for(subject.particulars.count, *subject.answer.depth, feed, rate));
}

} // namespace

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
    for (const auto& assumed : answer.assumed)
        figures.push_back({"assumed", assumed, "as nobody recorded it", {}, k_practice});
    section.notes = answer.notes;
    return section;
}

Section hole_section(const Subject& subject) {
    const auto& answer = subject.answer;
    Section section{"Hole and counterbore", {}, {}};
    auto& figures = section.figures;
    if (answer.hole)
        figures.push_back(known_hole(answer));
    if (answer.hole && answer.pilot_dia && answer.running_clearance)
        figures.push_back({"running clearance to expect",
                           *answer.running_clearance,
                           "hole - pilot",
                           {{"hole", *answer.hole}, {"pilot", *answer.pilot_dia}},
                           "geometry",
                           Grain::close});
    if (answer.counterbore)
        figures.push_back(counterbore_left(*answer.counterbore, subject.shop.practice));
    if (answer.hole)
        if (auto edge = edge_break(subject.question.screw, *answer.hole))
            figures.push_back(*edge);
    add_socket_room(subject, section);
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
    figures.push_back(stop_travel(subject.question, depth, practice));
    figures.push_back(gauge_reading(depth, practice));
    if (auto head = head_upside_down(subject.question, depth, practice))
        figures.push_back(*head);
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
    Section section{"Running", {}, {}};
    if (!material) {
        section.notes.push_back("speed and feed: name the material");
        return section;
    }
    const auto steel = steel_of(subject.body.material);
    const auto speeds = surface_speeds(*material, steel);
    section.figures = speeds;
    section.notes = running_notes(*material, steel);
    if (subject.answer.counterbore)
        add_cutting(subject, *material, speeds, section);
    if (subject.answer.drill)
        section.figures.push_back(drill_turns(*material, *subject.answer.drill));
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
            const auto usual = usual_ledge(*question.screw.screw_dia, practice);
            const auto rest = std::get<length::Range>(left.value).lo;
            if (rest < least_ledge(*question.screw.screw_dia, practice))
                section.notes.push_back("too thin under the head: ask whoever answers for the "
                                        "joint");
            else if (rest < std::get<length::Range>(usual.value).lo)
                section.notes.push_back("less than usual under the head: ask whoever answers for "
                                        "the joint");
            figures.push_back(usual);
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

Section callout_section(const Subject& subject) {
    Section section{"On a drawing", {}, {}};
    const auto& answer = subject.answer;
    const int count = subject.particulars.count;
    const auto inch = inch_callout(subject.question, answer, count);
    if (inch.empty())
        return section;
    section.figures = {
        {"inch", inch, "hole, then counterbore, as the tools are called", {}, "ASME Y14.5, signs"},
        {"metric",
         metric_callout(subject.question, answer, count),
         "hole, then counterbore, as the tools are called",
         {},
         "ISO 129-1 and ISO 15786"}};
    return section;
}

} // namespace job
