// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Figures that others have published, in figures.csv with their sources, against what the program's
// own functions and tables give. A row that differs says why, and must go on differing.
#include <doctest/doctest.h>

#include <algorithm>
#include <functional>
#include <map>

#include "figure_row.hpp"
#include "job/cone.hpp"
#include "job/gauge.hpp"
#include "job/run.hpp"
#include "job/seat.hpp"
#include "length/parse.hpp"
#include "match/job.hpp"
#include "store/reference.hpp"
#include "trade/conversion.hpp"
#include "trade/material.hpp"
#include "trade/tolerance.hpp"

using length::Length;
using length::Range;
using published::FigureRow;

namespace {

// Least and most, in the row's unit.
struct Ours {
    double least;
    double most;
};

struct Bench {
    store::Reference tables;
    trade::Practice practice = trade::read_practice(tables.practice());
    match::Shop shop = match::make_shop(tables, practice, length::Unit::inch);
};

const Bench& bench() {
    static const Bench all;
    return all;
}

double in_unit(double millimetres, const std::string& unit) {
    return unit == "in" ? millimetres / trade::k_mm_in_inch : millimetres;
}

Ours ours(const Range& range, const FigureRow& row) {
    return {in_unit(static_cast<double>(range.lo.nm()) / 1e6, row.unit),
            in_unit(static_cast<double>(range.hi.nm()) / 1e6, row.unit)};
}

double of_measure(const std::string& unit) {
    static const std::map<std::string, double> units{
        {"lbf", trade::k_newtons_in_pound},
        {"kN", 1000},
        {"N m", 1},
        {"ft-lb", trade::k_newton_metres_in_foot_pound},
        {"mm2", 1},
        {"ft/min", trade::k_metres_in_foot}};
    return units.at(unit);
}

Ours ours(const job::Figure& figure, const FigureRow& row) {
    if (const auto* range = std::get_if<Range>(&figure.value))
        return ours(*range, row);
    const auto& measure = std::get<job::Measure>(figure.value);
    return {measure.lo / of_measure(row.unit), measure.hi / of_measure(row.unit)};
}

Ours one(double value) {
    return {value, value};
}

Length size_of(const std::string& text) {
    return length::parse_length(text, length::Unit::inch).value;
}

// `M8 ISO 898-1 12.9`: the thread, and the grade that its proof stress is from.
struct Threaded {
    double diameter; // mm
    job::Figure area;
    trade::Grade grade;
};

Threaded threaded(const FigureRow& row) {
    const auto space = row.of.find(' ');
    const auto screw =
        trade::resolve_screw(row.of.substr(0, space) + " shcs", "", bench().tables, {});
    const double diameter = static_cast<double>(screw.size->diameter.nm()) / 1e6;
    const auto pitch = job::pitch_mm(screw);
    REQUIRE(pitch);
    const bool metric = row.of.front() == 'M';
    const auto name = row.of.substr(space + 1);
    for (const auto& grade : bench().tables.grades())
        if (grade.name == name && (!grade.above || *grade.above < screw.size->diameter) &&
            (!grade.upto || screw.size->diameter <= *grade.upto))
            return {diameter, job::stress_area(diameter, *pitch, metric), grade};
    throw std::runtime_error("no such grade: " + name);
}

trade::NutFactor factor(const std::string& surface) {
    for (const auto& row : bench().tables.nut_factors())
        if (row.surface == surface)
            return row;
    throw std::runtime_error("no such surface: " + surface);
}

trade::NutFactor exactly(int thousandths) {
    return {"as stated", thousandths, thousandths, thousandths, thousandths, {}};
}

job::Figure force(const Threaded& of) {
    return job::usual_force(of.grade, of.area);
}

job::Measure measure(const job::Figure& figure) {
    return std::get<job::Measure>(figure.value);
}

job::Figure torque(const Threaded& of, const trade::NutFactor& by) {
    return job::torque_for(measure(force(of)), of.diameter, by);
}

// The force that the torque for the surface gives where friction is .3 in thread and seat:
// K = (.16 P + .58 d2 mu + Dkm mu / 2) / d (VDI 2230) is .387 for M8.
job::Figure force_at_high_friction(const Threaded& of) {
    const auto told = torque(of, factor("stainless on stainless"));
    return job::force_from(measure(told), of.diameter, exactly(387));
}

trade::Head head(const std::string& size) {
    for (const auto& row : bench().tables.heads(size))
        if (row.series == "ASME B18.3 1960")
            return row;
    throw std::runtime_error("no such head: " + size);
}

trade::Material material(const FigureRow& row) {
    return trade::find_material(row.of, bench().tables.materials());
}

Range drilled_hole(const std::string& name) {
    const auto screw = trade::resolve_screw("3/8-16 shcs", "", bench().tables, {});
    return match::drilled_hole({name, trade::DrillKind::fraction, size_of(name)}, screw,
                               bench().shop)
        .hole;
}

Length depth(const std::string& screw) {
    match::Question question;
    question.screw = trade::resolve_screw(screw, "", bench().tables, {});
    return match::make_job(question, bench().shop).depth.value();
}

double printed_torque(const std::string& size, const std::string& surface) {
    for (const auto& row : bench().tables.torques(size))
        if (row.surface == surface)
            return row.newton_metres;
    throw std::runtime_error("no chart for " + size);
}

Length tap_drill(const std::string& text) {
    const auto dash = text.find('-');
    for (const auto& row : bench().tables.tap_drills(text.substr(0, dash)))
        if (row.pitch == text.substr(dash + 1))
            return row.diameter;
    throw std::runtime_error("no tap drill for " + text);
}

double carbon_share(const trade::Material& of) {
    const auto slow = job::surface_speeds(of, job::Steel::carbon).at(0);
    const auto fast = job::surface_speeds(of, job::Steel::high_speed).at(0);
    return measure(slow).hi / measure(fast).hi;
}

using Finder = std::function<Ours(const FigureRow&)>;

const std::map<std::string, Finder>& speeds() {
    static const std::map<std::string, Finder> all{
        {"spindle speed",
         [](const auto&) {
             return one(job::turns_a_minute(80 * trade::k_metres_in_foot, size_of("1/2")));
         }},
        {"drilling speed", [](const auto& row) { return one(material(row).drill_speed); }},
        {"carbon steel over high-speed steel",
         [](const auto& row) { return one(carbon_share(material(row))); }},
        {"counterbore over drill speed",
         [](const auto& row) {
             const auto of = material(row);
             return Ours{double(of.speed_low) / of.drill_speed,
                         double(of.speed_high) / of.drill_speed};
         }},
        {"dwell allowed", [](const auto& row) { return one(material(row).may_dwell() ? 1 : 0); }}};
    return all;
}

const std::map<std::string, Finder>& sizes() {
    static const std::map<std::string, Finder> all{
        {"pilot to e8",
         [](const auto& row) { return ours(trade::e8_limits(size_of(row.of + " mm")), row); }},
        {"cutter to z9 at most",
         [](const auto& row) {
             const auto nominal = size_of(row.of + " mm");
             return ours(length::exactly(nominal + trade::z9_over(nominal)), row);
         }},
        {"drilled hole at most",
         [](const auto& row) { return ours(length::exactly(drilled_hole(row.of).hi), row); }},
        {"drilled hole at least",
         [](const auto& row) { return ours(length::exactly(drilled_hole(row.of).lo), row); }},
        {"fillet under the head",
         [](const auto& row) {
             return ours(length::exactly(head(row.of).fillet_dia_max.value()), row);
         }},
        {"least head",
         [](const auto& row) { return ours(length::exactly(head(row.of).head_dia.lo), row); }},
        {"depth", [](const auto& row) { return ours(length::exactly(depth(row.of)), row); }},
        {"point of 118 degrees",
         [](const auto& row) {
             job::ConeSeat seat;
             seat.counterbore = length::exactly(size_of(row.of));
             return ours(job::cone_depth(seat), row);
         }},
        {"tap drill",
         [](const auto& row) { return ours(length::exactly(tap_drill(row.of)), row); }},
        {"angle of the V", [](const auto&) { return one(job::suited_anvil_angle(3).value()); }},
        {"diameter over chord", [](const auto&) {
             const auto chord = length::exactly(length::inches_e5(100'000));
             const auto found = job::gauge_chord({3, 0, chord}).diameter.value();
             return one(double(found.lo.nm()) / double(chord.lo.nm()));
         }}};
    return all;
}

const std::map<std::string, Finder>& loads() {
    static const std::map<std::string, Finder> all{
        {"seat",
         [](const auto& row) {
             const auto mm = [](const char* text) { return length::exactly(size_of(text)); };
             return ours(job::bearing_area(mm("12.33 mm"), mm("9.2 mm")), row);
         }},
        {"proof load",
         [](const auto& row) {
             const auto of = threaded(row);
             return ours(job::proof_load(of.grade, of.area), row);
         }},
        {"three quarters of proof",
         [](const auto& row) { return ours(force(threaded(row)), row); }},
        {"torque at K .20",
         [](const auto& row) { return ours(torque(threaded(row), exactly(200)), row); }},
        {"printed torque zinc plated",
         [](const auto& row) {
             return one(printed_torque(row.of, "zinc plated") / of_measure(row.unit));
         }},
        {"torque dry",
         [](const auto& row) { return ours(torque(threaded(row), factor("dry steel")), row); }},
        {"torque oiled",
         [](const auto& row) { return ours(torque(threaded(row), factor("oiled")), row); }},
        {"preload at mu .3",
         [](const auto& row) { return ours(force_at_high_friction(threaded(row)), row); }},
        {"nut factor",
         [](const auto& row) {
             const auto of = factor(row.of);
             return Ours{of.seen_low / 1000., of.seen_high / 1000.};
         }},
        {"greatest seat pressure",
         [](const auto& row) { return one(material(row).pressure_high_mpa); }},
        {"least seat pressure",
         [](const auto& row) { return one(material(row).pressure_low_mpa); }}};
    return all;
}

Ours find_ours(const FigureRow& row) {
    for (const auto* all : {&speeds(), &sizes(), &loads()})
        if (const auto found = all->find(row.figure); found != all->end())
            return found->second(row);
    throw std::runtime_error("nothing works out: " + row.figure);
}

bool agrees(const Ours& ours, const FigureRow& row) {
    const double off = std::max(row.within, 1e-9) * row.most;
    return ours.least >= row.least - off && ours.most <= row.most + off;
}

} // namespace

TEST_CASE("the program's figures are those that others have published, or the reason is known") {
    const auto rows = published::read_figures(FIGURES);
    CHECK(rows.size() == 42);
    for (const auto& row : rows) {
        CAPTURE(row.figure);
        CAPTURE(row.of);
        const auto found = find_ours(row);
        CAPTURE(found.least);
        CAPTURE(found.most);
        CHECK_FALSE(row.source.empty());
        CHECK((row.ours == "differs") != row.why.empty());
        if (row.ours == "at most")
            CHECK(found.most <= row.most * (1 + row.within));
        else
            CHECK(agrees(found, row) == (row.ours == "is"));
    }
}
