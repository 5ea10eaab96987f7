// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Units and limits are added by trying: the result must read back to the same figures.
#include "cli/record/size_cell.hpp"

#include <algorithm>

#include "cli/record/date_cell.hpp"
#include "error/error.hpp"
#include "length/print.hpp"
#include "trade/drill.hpp"
#include "trade/drill_mark.hpp"
#include "trade/text.hpp"

namespace cli::record {

namespace {

bool same(const length::Reading& a, const length::Reading& b) {
    return a.nominal.value == b.nominal.value && a.limits == b.limits;
}

// In the unit that takes it exactly.
length::Unit unit_of_limit(length::Length limit) {
    constexpr std::int64_t k_inch_grid = length::k_nm_per_inch / 100'000;
    return limit.nm() % k_inch_grid == 0 ? length::Unit::inch : length::Unit::millimetre;
}

std::string limit_text(length::Length limit) {
    return length::with_unit(limit, unit_of_limit(limit));
}

// A bare value takes the unit of its limits, so one in another unit must say so.
std::string value_text(const std::string& text, const length::Written& written, length::Length over,
                       length::Length under) {
    const bool clear =
        written.unit_said || written.fraction ||
        (unit_of_limit(over) == written.unit && unit_of_limit(under) == written.unit);
    return clear ? text : text + (written.unit == length::Unit::inch ? " in" : " mm");
}

} // namespace

std::string with_stored_unit(std::string_view text, const Reading& reading) {
    std::string written(trade::trimmed(text));
    if (!trade::number_or_letter_drill(written).empty())
        return written;
    const length::Reading meant = length::parse_reading_or_zero(written, reading.bare);
    if (reading.bare == reading.stored)
        return written;
    const auto reads_the_same = [&](const std::string& candidate) {
        return same(length::parse_reading_or_zero(candidate, reading.stored), meant);
    };
    if (reads_the_same(written))
        return written;
    const std::string unit = reading.bare == length::Unit::inch ? " in" : " mm";
    // After the value where limits follow it, else at the end.
    const std::size_t limits = std::min(
        {written.find('+'), written.find("\xC2\xB1"), written.find(" -"), written.find("no")});
    std::string with_unit = written;
    if (limits == std::string::npos)
        with_unit += unit;
    else
        with_unit = std::string(trade::trimmed(written.substr(0, limits))) + unit + ' ' +
                    written.substr(limits);
    if (reads_the_same(with_unit))
        return with_unit;
    throw error::BadData("not clear in which unit: '" + written + "'",
                         "write in or mm after each number");
}

trade::Dimension read_size(std::string_view text, trade::How how, trade::Feature feature,
                           const Reading& reading) {
    refuse_date(text, SizeKind::length);
    if (feature == trade::Feature::pilot_dia)
        trade::refuse_more_than_a_drill(text);
    return read_stored_size(with_stored_unit(text, reading), how, feature, reading);
}

trade::Dimension read_stored_size(std::string_view text, trade::How how, trade::Feature feature,
                                  const Reading& reading) {
    if (feature == trade::Feature::pilot_dia)
        return trade::read_pilot_dia(text, how, reading.stored, *reading.practice, *reading.tables);
    return trade::read_dimension(text, how, feature, reading.stored, *reading.practice);
}

trade::How how_taken(std::string_view word, std::string_view value, length::Unit bare) {
    if (!trade::trimmed(word).empty())
        return trade::parse_how(word);
    refuse_date(value, SizeKind::length);
    try {
        const length::Reading written = length::parse_reading_or_zero(value, bare);
        if (written.limits)
            return trade::How::unstated;
        return written.nominal.fraction ? trade::How::rule : trade::How::caliper;
    } catch (const error::BadData&) {
        return trade::How::unstated; // a drill's name, or reading it says what is wrong
    }
}

std::string size_with_limits(const trade::Dimension& dimension, length::Unit stored) {
    if (dimension.how == trade::How::unstated)
        return dimension.text;
    const length::Reading written = length::parse_reading_or_zero(dimension.text, stored);
    if (written.limits || written.nominal.value == length::Length())
        return dimension.text;
    const length::Length over = dimension.range.hi - written.nominal.value;
    const length::Length under = written.nominal.value - dimension.range.lo;
    const length::Length none;
    if (over < none || under < none || under >= written.nominal.value)
        return "go " + limit_text(dimension.range.lo) + " no-go " + limit_text(dimension.range.hi);
    const std::string value = value_text(dimension.text, written.nominal, over, under);
    if (over == under)
        return value + " +-" + limit_text(over);
    return value + " +" + limit_text(over) + " -" + limit_text(under);
}

} // namespace cli::record
