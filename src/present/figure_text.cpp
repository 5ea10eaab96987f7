// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A unit is a row: its name, how much of the kind's own unit it holds, and how many digits count.
#include "present/figure_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "job/shop_text.hpp"
#include "length/print.hpp"
#include "present/text.hpp"
#include "trade/conversion.hpp"

namespace present {

using length::Unit;

namespace {

constexpr double k_mpa_in_psi = trade::k_megapascals_in_ksi / 1000;

constexpr double k_least_foot_pounds = 10;
constexpr double k_least_kilonewtons = 10;
constexpr double k_seconds_in_minute = 60;
constexpr double k_least_minutes = 2;

struct Scale {
    const char* unit;
    double size; // in the kind's own unit
    int digits = 3;
};

Scale torque_scale(double most, Unit unit) {
    if (unit == Unit::millimetre)
        return {" N m", 1};
    if (most < k_least_foot_pounds * trade::k_newton_metres_in_foot_pound)
        return {" in-lb", trade::k_newton_metres_in_foot_pound / 12};
    return {" ft-lb", trade::k_newton_metres_in_foot_pound};
}

Scale force_scale(double most, Unit unit) {
    if (unit == Unit::inch)
        return {" lbf", trade::k_newtons_in_pound};
    return most < k_least_kilonewtons * 1000 ? Scale{" N", 1} : Scale{" kN", 1000};
}

Scale scale_of(const job::Measure& measure, Unit unit) {
    const bool inch = unit == Unit::inch;
    switch (measure.kind) {
    case job::Kind::angle:
        return {" deg", 1};
    case job::Kind::area:
        return inch ? Scale{" sq in", trade::k_mm_in_inch * trade::k_mm_in_inch} : Scale{" mm2", 1};
    case job::Kind::surface_speed:
        return inch ? Scale{" ft/min", trade::k_metres_in_foot} : Scale{" m/min", 1};
    case job::Kind::rotation:
        return {" rpm", 1, 4};
    case job::Kind::torque:
        return torque_scale(measure.hi, unit);
    case job::Kind::force:
        return force_scale(measure.hi, unit);
    case job::Kind::pressure:
        return inch ? Scale{" psi", k_mpa_in_psi} : Scale{" MPa", 1};
    case job::Kind::time:
        return {" s", 1};
    case job::Kind::number:
        break;
    }
    return {"", 1, 4};
}

// To so many significant digits, never in powers of ten, without zeros at the end.
std::string rounded(double value, int digits) {
    if (!(std::abs(value) > 0))
        return "0";
    const int place = digits - 1 - static_cast<int>(std::floor(std::log10(std::abs(value))));
    if (place <= 0) {
        const double step = std::pow(10.0, -place);
        return fmt::format("{:.0f}", std::round(value / step) * step);
    }
    auto text = fmt::format("{:.{}f}", value, place);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.')
        text.pop_back();
    return text;
}

std::string from_to(const std::string& lo, const std::string& hi) {
    return lo == hi ? lo : lo + " to " + hi;
}

// `2 min 5 s`, `12 min`.
std::string minutes_text(double seconds) {
    const double whole = std::round(seconds);
    const double minutes = std::floor(whole / k_seconds_in_minute);
    const double left = whole - minutes * k_seconds_in_minute;
    auto text = fmt::format("{:.0f} min", minutes);
    return left > 0 ? text + fmt::format(" {:.0f} s", left) : text;
}

// `45 s`, `2 min 5 s`, `30 s to 2 min`.
std::string time_text(double lo, double hi) {
    const double least = k_least_minutes * k_seconds_in_minute;
    if (hi < least)
        return from_to(rounded(lo, 3), rounded(hi, 3)) + " s";
    return from_to(lo < least ? rounded(lo, 3) + " s" : minutes_text(lo), minutes_text(hi));
}

std::string value_text(const job::Measure& measure, Unit unit) {
    if (measure.kind == job::Kind::time)
        return time_text(measure.lo, measure.hi);
    const Scale scale = scale_of(measure, unit);
    return from_to(rounded(measure.lo / scale.size, scale.digits),
                   rounded(measure.hi / scale.size, scale.digits)) +
           scale.unit;
}

std::string value_text(const length::Range& range, Unit unit) {
    const bool inch = unit == Unit::inch;
    const int places = inch ? 4 : 3;
    return from_to(length::to_text(range.lo, unit, places),
                   length::to_text(range.hi, unit, places)) +
           (inch ? " in" : " mm");
}

std::string value_text(const std::string& text, Unit /*unit*/) {
    return safe(text);
}

// `label` in its column, the text beside it, wrapped under itself; nothing without a text.
std::string beside(const std::string& label, const std::string& text, std::size_t column,
                   std::size_t width) {
    const std::string indent(column, ' ');
    std::string lines;
    for (const auto& line : wrapped(text, width > column ? width - column : 1))
        lines += (lines.empty() ? padded(label, column, false) : indent) + line + '\n';
    return lines;
}

// Two figures, or whole numbers where that is more.
int few_digits(double value) {
    return value < 100 ? 2 : static_cast<int>(std::floor(std::log10(value))) + 1;
}

int sheet_digits(job::Kind kind, double value) {
    switch (kind) {
    case job::Kind::torque:
    case job::Kind::surface_speed:
        return few_digits(value);
    case job::Kind::area:
    case job::Kind::force:
        return 3;
    default:
        return 2;
    }
}

// `about 8 min`, `about 25 min`, `about 2-1/2 h`: to a minute, to five, to half an hour.
std::string about_time(const job::Measure& time) {
    const double minutes = (time.lo + time.hi) / 2 / k_seconds_in_minute;
    constexpr double k_ten = 10;
    constexpr double k_in_hours = 90;
    if (minutes < k_ten)
        return fmt::format("about {:.0f} min", std::max(1.0, std::round(minutes)));
    if (minutes < k_in_hours)
        return fmt::format("about {:.0f} min", std::round(minutes / 5) * 5);
    const auto halves = std::llround(minutes / (k_seconds_in_minute / 2));
    return fmt::format("about {}{} h", halves / 2, halves % 2 ? "-1/2" : "");
}

std::string sheet_text_of(const job::Measure& measure, Unit unit, job::Grain grain) {
    if (measure.kind == job::Kind::time)
        return about_time(measure);
    if (grain == job::Grain::set)
        return value_text(measure, unit);
    const Scale scale = scale_of(measure, unit);
    const auto one = [&](double value) {
        return rounded(value / scale.size, sheet_digits(measure.kind, value / scale.size));
    };
    return from_to(one(measure.lo), one(measure.hi)) + scale.unit;
}

std::string sheet_text_of(const length::Range& range, Unit unit, job::Grain grain) {
    if (grain == job::Grain::set)
        return value_text(range, unit);
    const auto text = job::shop_text(range, unit, grain);
    if (unit == Unit::millimetre)
        return text + " mm";
    const auto fraction =
        grain == job::Grain::stop ? job::nearest_fraction(range.lo) : std::string();
    return text + " in" + (fraction.empty() ? "" : " (" + fraction + ")");
}

std::string sheet_text_of(const std::string& text, Unit /*unit*/, job::Grain /*grain*/) {
    return safe(text);
}

} // namespace

std::string figure_value(const job::Value& value, Unit unit) {
    return std::visit([unit](const auto& known) { return value_text(known, unit); }, value);
}

std::string gauge_value(const job::Figure& figure, Unit unit) {
    return figure_value(figure.value, unit);
}

std::string sheet_value(const job::Figure& figure, Unit unit) {
    return std::visit([&](const auto& known) { return sheet_text_of(known, unit, figure.grain); },
                      figure.value);
}

std::string figure_lines(const std::vector<job::Figure>& figures, Unit unit, std::size_t width,
                         ValueText value) {
    std::size_t column = 0;
    for (const auto& figure : figures)
        column = std::max(column, display_width(safe(figure.name)));
    std::string text;
    for (const auto& figure : figures)
        text += beside(safe(figure.name), value(figure, unit), column + 2, width);
    return text;
}

std::string explain_figure(const job::Figure& figure, Unit unit, std::size_t width,
                           ValueText value) {
    constexpr std::size_t k_column = 10;
    const auto name = safe(figure.name) + ": ";
    auto text = beside(name, value(figure, unit), display_width(name), width);
    text += beside("  formula", safe(figure.formula), k_column, width);
    std::string label = "  with";
    for (const auto& input : figure.inputs) {
        text += beside(label, safe(input.name) + ": " + figure_value(input.value, unit), k_column,
                       width);
        label.clear();
    }
    return text + beside("  source", safe(figure.source), k_column, width);
}

} // namespace present
