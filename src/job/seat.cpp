// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/seat.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <numbers>

#include "length/print.hpp"
#include "trade/conversion.hpp"

namespace job {

using length::Range;

namespace {

constexpr double k_mm_in_metre = 1000;
constexpr double k_share_of_proof = 0.75;
// Of the pitch: so far under the screw lies the diameter that the stress area is reckoned with.
constexpr double k_stress_depth_inch = 0.9743;
constexpr double k_stress_depth_metric = 0.9382;

double square(double value) {
    return value * value;
}

double disc(double diameter) {
    return std::numbers::pi / 4 * square(diameter);
}

Measure one(Kind kind, double value) {
    return {kind, value, value};
}

Measure factor_seen(const trade::NutFactor& factor) {
    return {Kind::number, factor.seen_low / 1000.0, factor.seen_high / 1000.0};
}

Value diameter_value(double mm) {
    return length::exactly(
        length::Length::from_nm(std::llround(mm * static_cast<double>(length::k_nm_per_mm))));
}

std::optional<double> number_in(const std::string& text) {
    double value = 0;
    const auto end = text.data() + text.size();
    const auto result = std::from_chars(text.data(), end, value);
    if (result.ec != std::errc() || result.ptr != end || !(value > 0))
        return std::nullopt;
    return value;
}

} // namespace

Figure bearing_area(const Range& face, const Range& hole) {
    const auto area = [](length::Length outside, length::Length inside) {
        return disc(length::as_mm(outside)) - disc(length::as_mm(inside));
    };
    return {"seat area",
            Measure{Kind::area, area(face.lo, hole.hi), area(face.hi, hole.lo)},
            "pi/4 (face^2 - hole^2), the hole with its broken edge",
            {{"bearing face", face}, {"hole", hole}},
            "geometry, as in VDI 2230; the face from the least of the head's standard to the whole "
            "head, or the washer"};
}

bool coarse(const trade::Screw& screw) {
    if (screw.pitch.empty() || screw.heads.empty() || screw.heads.front().pitches.empty())
        return true;
    return screw.pitch == screw.heads.front().pitches.front();
}

std::optional<double> pitch_mm(const trade::Screw& screw) {
    auto pitch = screw.pitch;
    if (pitch.empty() && !screw.heads.empty() && !screw.heads.front().pitches.empty())
        pitch = screw.heads.front().pitches.front();
    const auto number = number_in(pitch);
    if (!number || !screw.size)
        return std::nullopt;
    const auto system = screw.size->system;
    const bool in_mm = system == trade::SizeSystem::metric || system == trade::SizeSystem::ba;
    return in_mm ? *number : trade::k_mm_in_inch / *number;
}

Figure stress_area(double diameter, double pitch, bool metric) {
    const double depth = metric ? k_stress_depth_metric : k_stress_depth_inch;
    return {"stress area",
            one(Kind::area, disc(diameter - depth * pitch)),
            "pi/4 (diameter - share of pitch)^2",
            {{"diameter", diameter_value(diameter)},
             {"pitch", diameter_value(pitch)},
             {"share", one(Kind::number, depth)}},
            metric ? "ISO 898-1" : "ASME B1.1"};
}

Figure usual_force(const trade::Grade& grade, const Figure& area) {
    const double force = k_share_of_proof * grade.proof_mpa * std::get<Measure>(area.value).lo;
    return {"75 % of proof",
            one(Kind::force, force),
            "0.75 x proof stress x stress area, the force to tighten to",
            {{"proof stress, " + grade.name, one(Kind::pressure, grade.proof_mpa)},
             {area.name, area.value}},
            grade.origin.source + "; three quarters: machine design textbooks"};
}

Figure proof_load(const trade::Grade& grade, const Figure& area) {
    return {"proof load",
            one(Kind::force, grade.proof_mpa * std::get<Measure>(area.value).lo),
            "proof stress x stress area",
            {{"proof stress, " + grade.name, one(Kind::pressure, grade.proof_mpa)},
             {area.name, area.value}},
            grade.origin.source};
}

std::optional<Figure> chart_torque(const std::vector<trade::Torque>& torques,
                                   const std::string& surface) {
    Figure figure{"charts print, " + surface, Measure{Kind::torque}, "as printed", {}, {}};
    auto& range = std::get<Measure>(figure.value);
    for (const auto& torque : torques) {
        if (torque.surface != surface)
            continue;
        const bool first = figure.inputs.empty();
        range.lo = first ? torque.newton_metres : std::min(range.lo, torque.newton_metres);
        range.hi = std::max(range.hi, torque.newton_metres);
        figure.inputs.push_back(
            {torque.chart + ", " + torque.about, one(Kind::torque, torque.newton_metres)});
        figure.source += (first ? "" : "; ") + torque.origin.source;
    }
    return figure.inputs.empty() ? std::nullopt : std::optional(std::move(figure));
}

Figure torque_for(const Measure& force, double diameter, const trade::NutFactor& factor) {
    const double least = factor_seen(factor).lo;
    const double metres = diameter / k_mm_in_metre;
    return {"seating torque",
            Measure{Kind::torque, least * metres * force.lo, least * metres * force.hi},
            "T = K d F, with the lowest K",
            {{"K, " + factor.surface, one(Kind::number, least)},
             {"d, screw diameter", diameter_value(diameter)},
             {"F, force", force}},
            factor.origin.source};
}

Figure force_from(const Measure& torque, double diameter, const trade::NutFactor& factor) {
    const auto k = factor_seen(factor);
    const double metres = diameter / k_mm_in_metre;
    return {"force in the screw",
            Measure{Kind::force, torque.lo / (k.hi * metres), torque.hi / (k.lo * metres)},
            "F = T / (K d)",
            {{"T, torque", torque},
             {"K, " + factor.surface, k},
             {"d, screw diameter", diameter_value(diameter)}},
            factor.origin.source};
}

Figure seat_pressure(const Measure& force, const Measure& area) {
    return {"pressure under the head",
            Measure{Kind::pressure, force.lo / area.hi, force.hi / area.lo},
            "force / seat area",
            {{"force", force}, {"seat area", area}},
            "definition"};
}

Figure pressure_limit(const trade::Material& material) {
    return {"limit of the material",
            Measure{Kind::pressure, static_cast<double>(material.pressure_low_mpa),
                    static_cast<double>(material.pressure_high_mpa)},
            "as printed",
            {{"material",
              material.name + (material.condition.empty() ? "" : ", ") + material.condition}},
            material.pressure_basis};
}

} // namespace job
