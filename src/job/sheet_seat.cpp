// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The seat under the head, flat and as a drill's point leaves it. Guidance only.
#include <algorithm>

#include "error/error.hpp"
#include "job/bearing.hpp"
#include "job/cone.hpp"
#include "job/seat.hpp"
#include "job/sheet_parts.hpp"
#include "length/print.hpp"
#include "trade/text.hpp"

namespace job {

using length::Length;

namespace {

// What bears, on what.
struct Seating {
    const match::Question& question;
    const Particulars& particulars;
    const Books& books;
    length::MaybeRange hole; // with its edge broken for the fillet

    [[nodiscard]] double diameter_mm() const { return length::as_mm(question.screw.screw_dia->hi); }
};

Seating seating_of(const match::Question& question, const Particulars& particulars,
                   const Books& books, length::MaybeRange hole) {
    const auto& fillet = question.screw.fillet_dia;
    if (hole && fillet)
        hole = length::Range{std::max(hole->lo, *fillet), std::max(hole->hi, *fillet)};
    return {question, particulars, books, hole};
}

bool stainless(const std::string& surface) {
    return trade::folded(surface).find("stainless") != std::string::npos;
}

// The grade that a screw is taken as unless somebody says; empty where there is none.
std::string usual_grade(const Seating& seat) {
    const auto& screw = seat.question.screw;
    if (stainless(seat.particulars.surface))
        return "ISO 3506-1 A2-70";
    if (screw.form != "socket head cap" || !screw.size)
        return {};
    return screw.is_metric() ? "ISO 898-1 12.9" : "ASTM A574";
}

const trade::NutFactor& factor_of(const Seating& seat) {
    std::string known;
    for (const auto& row : seat.books.nut_factors) {
        if (trade::folded(row.surface) == trade::folded(seat.particulars.surface))
            return row;
        known += (known.empty() ? "" : ", ") + row.surface;
    }
    throw error::BadData("no such surface: '" + seat.particulars.surface + "'", known);
}

bool in_band(const trade::Grade& grade, Length diameter) {
    return (!grade.above || diameter > *grade.above) && (!grade.upto || diameter <= *grade.upto);
}

// The row of a grade named in full or by its last words (`12.9`, `grade 5`). Throws error::BadData.
const trade::Grade& grade_named(const std::string& name, const Seating& seat) {
    std::string known;
    const auto asked = trade::folded(name);
    const Length diameter = seat.question.screw.screw_dia->hi;
    for (const auto& row : seat.books.grades) {
        const auto full = trade::folded(row.name);
        const bool named = full == asked || full.ends_with(" " + asked);
        if (named && in_band(row, diameter))
            return row;
        if (known.find(row.name) == std::string::npos)
            known += (known.empty() ? "" : ", ") + row.name;
    }
    throw error::BadData("no such grade for this screw: '" + name + "'", known);
}

// What the screw bears by its grade.
struct Strength {
    std::string grade;
    Figure area;
    Figure usual; // 75 % of proof
    Figure proof;
};

std::optional<Strength> strength_of(const Seating& seat) {
    const auto name = seat.particulars.grade.value_or(usual_grade(seat));
    const auto pitch = pitch_mm(seat.question.screw);
    if (name.empty() || !pitch)
        return std::nullopt;
    const bool metric = seat.question.screw.is_metric();
    const auto& grade = grade_named(name, seat);
    const auto area = stress_area(seat.diameter_mm(), *pitch, metric);
    return Strength{grade.name, area, usual_force(grade, area), proof_load(grade, area)};
}

double force_of(const Figure& figure) {
    return std::get<Measure>(figure.value).hi;
}

// A whole number of newtons does not matter: a torque that is made from 75 % of proof is not over.
bool over(double force, const Figure& limit) {
    return force > force_of(limit) * (1 + 1e-9);
}

std::string held_against(const Measure& force, const Strength& strength) {
    if (over(force.lo, strength.proof))
        return "over the proof load: the screw stretches; use less torque";
    if (over(force.hi, strength.proof))
        return "over the proof load where friction is low: the screw may stretch; use less torque";
    if (over(force.hi, strength.usual))
        return "over 75 % of proof where friction is low: not for a joint that is taken apart "
               "again";
    return "within 75 % of proof over the whole range of friction";
}

// The torque of a chart for this surface, where one was printed, held against proof.
void add_chart(const Seating& seat, const std::optional<Strength>& strength, Section& section) {
    const auto& screw = seat.question.screw;
    if (seat.particulars.torque || seat.particulars.grade || screw.form != "socket head cap" ||
        !coarse(screw))
        return;
    const auto& factor = factor_of(seat);
    const auto chart = chart_torque(seat.books.torques, factor.surface);
    if (!chart)
        return;
    section.figures.push_back(*chart);
    const auto force = force_from(std::get<Measure>(chart->value), seat.diameter_mm(), factor);
    if (strength)
        section.notes.push_back("the chart's torque: " +
                                held_against(std::get<Measure>(force.value), *strength));
}

// Torque given, or the one that is safe by the grade; absent where neither is known.
std::optional<Figure> torque_of(const Seating& seat, const std::optional<Strength>& strength) {
    const auto& given = seat.particulars.torque;
    if (given)
        return Figure{"seating torque", *given, "as given", {}, "given"};
    if (!strength)
        return std::nullopt;
    return torque_for(std::get<Measure>(strength->usual.value), seat.diameter_mm(),
                      factor_of(seat));
}

// Torque and force, with what they are held against; the force is the last figure.
std::optional<Measure> add_force(const Seating& seat, Section& section) {
    const auto strength = strength_of(seat);
    const auto torque = torque_of(seat, strength);
    if (!torque) {
        section.notes.emplace_back(
            "no usual torque is known for this screw: give a torque or grade");
        return std::nullopt;
    }
    if (strength)
        section.figures.insert(section.figures.end(),
                               {strength->area, strength->usual, strength->proof});
    section.figures.push_back(*torque);
    add_chart(seat, strength, section);
    const auto force =
        force_from(std::get<Measure>(torque->value), seat.diameter_mm(), factor_of(seat));
    section.figures.push_back(force);
    const auto range = std::get<Measure>(force.value);
    if (!strength)
        section.notes.emplace_back("grade not known: the force is held against no proof load");
    else
        section.notes.push_back((seat.particulars.grade ? "" : "grade not said, taken as ") +
                                strength->grade + ": " + held_against(range, *strength));
    return range;
}

// Washer or head, whichever bears on the part.
length::MaybeRange face_on_part(const match::Question& question) {
    return question.washer ? length::MaybeRange(question.washer->outside_dia)
                           : bearing_face(question.screw);
}

bool seat_known(const Seating& seat) {
    const auto face = face_on_part(seat.question);
    return face && seat.hole && seat.question.screw.screw_dia && face->lo > seat.hole->hi &&
           !seat.question.hole.tapped;
}

std::string judged(const Measure& pressure, const Measure& limit) {
    if (pressure.hi <= limit.lo)
        return "under the material's limit over the whole range of friction";
    if (pressure.lo > limit.hi)
        return "over the material's limit: a hardened washer, or less torque; ask the designer";
    if (pressure.hi <= limit.hi)
        return "under the higher of the editions' limits, over the lower: a hardened washer is "
               "safe";
    return "may go over the material's limit, by friction: a hardened washer, or ask the designer";
}

} // namespace

Section seat_section(const Subject& subject) {
    Section section{"Seat (guidance only)", {}, {}};
    const auto seat =
        seating_of(subject.question, subject.particulars, subject.books, subject.answer.hole);
    if (!seat_known(seat))
        return section;
    const auto area = bearing_area(*face_on_part(seat.question), *seat.hole);
    section.figures.push_back(area);
    const auto force = add_force(seat, section);
    if (!force)
        return section;
    const auto pressure = seat_pressure(*force, std::get<Measure>(area.value));
    section.figures.push_back(pressure);
    if (const auto& material = subject.particulars.material) {
        section.figures.push_back(pressure_limit(*material));
        section.notes.push_back(judged(std::get<Measure>(pressure.value),
                                       std::get<Measure>(section.figures.back().value)));
    }
    return section;
}

Section cone_section(const match::Question& question, const Particulars& particulars,
                     const match::Wanted& wanted, const Books& books) {
    Section section{"If the seat were left as a drill's point (guidance only)", {}, {}};
    const auto seat = seating_of(question, particulars, books, wanted.hole);
    const auto pitch = pitch_mm(question.screw);
    const auto& material = particulars.material;
    if (!seat_known(seat) || !pitch || !material || !wanted.cutter || question.washer)
        return section;
    Section forces;
    const auto force = add_force(seat, forces);
    if (!force)
        return section;
    const auto& factor = factor_of(seat);
    const ConeSeat cone{*bearing_face(question.screw),
                        *seat.hole,
                        *wanted.cutter,
                        seat.diameter_mm(),
                        *pitch,
                        (factor.usual_low + factor.usual_high) / 2000.0};
    const auto limit = std::get<Measure>(pressure_limit(*material).value);
    section.figures = cone_figures(cone, *force, limit);
    section.notes.emplace_back(
        "the head bears on a ring at its rim, which beds in and loses force; "
        "a cone off the axis bends the screw: square the seat");
    if (all_of_head(cone, *force, limit))
        section.notes.emplace_back(
            "where friction is low even the whole head is over the material's "
            "limit: it goes in until it bears");
    return section;
}

} // namespace job
