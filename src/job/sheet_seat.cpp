// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The seat under the head, flat and as a drill's point leaves it. Guidance only.
#include <algorithm>

#include "error/error.hpp"
#include "job/cone.hpp"
#include "job/seat.hpp"
#include "job/sheet_parts.hpp"
#include "length/print.hpp"
#include "trade/text.hpp"

namespace job {

using length::Length;

namespace {

// The grade that screws of a series come in unless somebody says otherwise.
std::string usual_grade(const trade::Screw& screw) {
    if (screw.form != "socket head cap" || !screw.size)
        return {};
    return screw.size->system == trade::SizeSystem::metric ? "ISO 898-1 12.9" : "ASTM A574";
}

double diameter_mm(const Subject& subject) {
    return length::as_mm(subject.question.screw.screw_dia->hi);
}

const trade::NutFactor& factor_of(const Subject& subject) {
    std::string known;
    for (const auto& row : subject.books.nut_factors) {
        if (trade::folded(row.surface) == trade::folded(subject.particulars.surface))
            return row;
        known += (known.empty() ? "" : ", ") + row.surface;
    }
    throw error::BadData("no such surface: '" + subject.particulars.surface + "'", known);
}

bool in_band(const trade::Grade& grade, Length diameter) {
    return (!grade.above || diameter > *grade.above) && (!grade.upto || diameter <= *grade.upto);
}

// The row of a grade named in full or by its last words (`12.9`, `grade 5`). Throws error::BadData.
const trade::Grade* grade_named(const std::string& name, const Subject& subject) {
    std::string known;
    const auto asked = trade::folded(name);
    const Length diameter = subject.question.screw.screw_dia->hi;
    for (const auto& row : subject.books.grades) {
        const auto full = trade::folded(row.name);
        const bool named = full == asked || full.ends_with(" " + asked);
        if (named && in_band(row, diameter))
            return &row;
        if (known.find(row.name) == std::string::npos)
            known += (known.empty() ? "" : ", ") + row.name;
    }
    throw error::BadData("no such grade for this screw: '" + name + "'", known);
}

// The torque given, or of the charts, or that of the grade; what leads to it goes into `figures`.
std::optional<Measure> seating_torque(const Subject& subject, std::vector<Figure>& figures) {
    const auto& screw = subject.question.screw;
    const auto& given = subject.particulars;
    if (given.torque) {
        figures.push_back({"seating torque", *given.torque, "as given", {}, "given"});
        return given.torque;
    }
    if (!given.grade && screw.form == "socket head cap" && coarse(screw) &&
        !subject.books.torques.empty()) {
        figures.push_back(chart_torque(subject.books.torques));
        return std::get<Measure>(figures.back().value);
    }
    const auto name = given.grade.value_or(usual_grade(screw));
    const auto pitch = pitch_mm(screw);
    if (name.empty() || !pitch)
        return std::nullopt;
    const bool metric = screw.size->system == trade::SizeSystem::metric;
    const auto area = stress_area(diameter_mm(subject), *pitch, metric);
    const auto force = usual_force(*grade_named(name, subject), area);
    const auto torque =
        torque_for(std::get<Measure>(force.value), diameter_mm(subject), factor_of(subject));
    figures.insert(figures.end(), {area, force, torque});
    return std::get<Measure>(torque.value);
}

// Washer or head, whichever bears on the part.
length::MaybeRange face_on_part(const match::Question& question) {
    return question.washer ? length::MaybeRange(question.washer->outside_dia)
                           : bearing_face(question.screw);
}

bool seat_known(const Subject& subject) {
    const auto face = face_on_part(subject.question);
    const auto hole = subject.hole_at_seat();
    return face && hole && subject.question.screw.screw_dia && face->lo > hole->hi &&
           !subject.question.hole.tapped;
}

std::string judged(const Measure& pressure, const Measure& limit) {
    if (pressure.hi <= limit.lo)
        return "under the material's limit over the whole range of torque and friction";
    if (pressure.lo > limit.hi)
        return "over the material's limit: a hardened washer, or less torque; ask the designer";
    return "may go over the material's limit, by friction: a hardened washer, or ask the designer";
}

// What the cone's figures need of the seat's.
std::optional<Measure> force_in(const Section& seat) {
    for (const auto& figure : seat.figures)
        if (figure.name == "force in the screw")
            return std::get<Measure>(figure.value);
    return std::nullopt;
}

} // namespace

Section seat_section(const Subject& subject) {
    Section section{"Seat (guidance only)", {}, {}};
    if (!seat_known(subject))
        return section;
    auto& figures = section.figures;
    const auto area = bearing_area(*face_on_part(subject.question), *subject.hole_at_seat());
    figures.push_back(area);
    const auto torque = seating_torque(subject, figures);
    if (!torque) {
        section.notes.push_back("no usual torque is known for this screw: give a torque or grade");
        return section;
    }
    const auto force = force_from(*torque, diameter_mm(subject), factor_of(subject));
    const auto pressure =
        seat_pressure(std::get<Measure>(force.value), std::get<Measure>(area.value));
    figures.insert(figures.end(), {force, pressure});
    if (const auto& material = subject.particulars.material) {
        figures.push_back(pressure_limit(*material));
        section.notes.push_back(
            judged(std::get<Measure>(pressure.value), std::get<Measure>(figures.back().value)));
    }
    return section;
}

Section cone_section(const Subject& subject) {
    Section section{"If the seat were left as a drill's point (guidance only)", {}, {}};
    const auto& screw = subject.question.screw;
    const auto pitch = pitch_mm(screw);
    const auto& material = subject.particulars.material;
    if (!seat_known(subject) || !pitch || !material || !subject.answer.counterbore ||
        subject.question.washer)
        return section;
    const auto force = force_in(seat_section(subject));
    if (!force)
        return section;
    const auto& factor = factor_of(subject);
    const ConeSeat seat{*bearing_face(screw),
                        *subject.hole_at_seat(),
                        *subject.answer.counterbore,
                        diameter_mm(subject),
                        *pitch,
                        (factor.usual_low + factor.usual_high) / 2000.0};
    section.figures =
        cone_figures(seat, *force, std::get<Measure>(pressure_limit(*material).value));
    section.notes.push_back("the head bears on a ring at its rim, which beds in and loses force; a "
                            "cone off the axis bends the screw: square the seat");
    return section;
}

} // namespace job
