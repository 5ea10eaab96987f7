// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One table a kind of value says which row fills which member; reading, checking and the names in
// messages all follow from them.
#include "trade/practice.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <utility>

#include "error/error.hpp"
#include "length/parse.hpp"
#include "length/print.hpp"
#include "trade/material.hpp"
#include "trade/text.hpp"

namespace trade {

using length::Length;

namespace {

template <typename Value>
struct Field {
    std::string_view name;
    Value Practice::*member;
};

constexpr auto k_lengths = std::to_array<Field<Length>>({
    {"head clearance", &Practice::head_clearance},
    {"tool over head number", &Practice::tool_over_head_number},
    {"tool over head fraction", &Practice::tool_over_head_fraction},
    {"published over head", &Practice::published_over_head},
    {"published over head inch", &Practice::published_over_head_inch},
    {"tool size under", &Practice::tool_size_under},
    {"recommended over", &Practice::recommended_over},
    {"large over published", &Practice::large_over_published},
    {"running least", &Practice::running_least},
    {"running most", &Practice::running_most},
    {"running most over half", &Practice::running_most_over_half},
    {"running most over inch", &Practice::running_most_over_inch},
    {"size on size", &Practice::size_on_size},
    {"reamed over", &Practice::reamed_over},
    {"pilot under least", &Practice::pilot_under_least},
    {"pilot under most", &Practice::pilot_under_most},
    {"loose over", &Practice::loose_over},
    {"slip least", &Practice::slip_least},
    {"slip most", &Practice::slip_most},
    {"good slip least", &Practice::good_slip_least},
    {"good slip most", &Practice::good_slip_most},
    {"below flush", &Practice::below_flush},
    {"spotface depth", &Practice::spotface_depth},
    {"counterbore over", &Practice::counterbore_over},
    {"stop within", &Practice::stop_within},
    {"wall least", &Practice::wall_least},
    {"mark cutter under", &Practice::mark_cutter_under},
    {"mark cutter over", &Practice::mark_cutter_over},
    {"mark metric cutter wear", &Practice::mark_metric_cutter_wear},
    {"mark pilot under", &Practice::mark_pilot_under},
    {"mark pilot over", &Practice::mark_pilot_over},
    {"mark metric pilot wear", &Practice::mark_metric_pilot_wear},
    {"mark shank under", &Practice::mark_shank_under},
    {"mark shank over", &Practice::mark_shank_over},
    {"mark bore under", &Practice::mark_bore_under},
    {"mark bore over", &Practice::mark_bore_over},
    {"rule within", &Practice::rule_within},
    {"caliper within", &Practice::caliper_within},
    {"micrometer within", &Practice::micrometer_within},
    {"pin gauge within", &Practice::pin_gauge_within},
    {"test hole within", &Practice::test_hole_within},
    {"guess within", &Practice::guess_within},
    {"unstated decimal within", &Practice::unstated_decimal_within},
    {"unstated fraction within", &Practice::unstated_fraction_within},
});

constexpr auto k_shares = std::to_array<Field<std::int64_t>>({
    {"large share of head", &Practice::large_share_of_head},
    {"seat share", &Practice::seat_share},
    {"loose share", &Practice::loose_share},
    {"set screw point share", &Practice::set_screw_point_share},
    {"guidance share", &Practice::guidance_share},
    {"closest share", &Practice::closest_share},
    {"ledge least", &Practice::ledge_least},
    {"ledge usual", &Practice::ledge_usual},
    {"wall share", &Practice::wall_share},
});

constexpr auto k_good = std::to_array<Field<GoodClearance>>({
    {"good to eighth", &Practice::good_to_eighth},
    {"good to quarter", &Practice::good_to_quarter},
    {"good to half", &Practice::good_to_half},
    {"good over half", &Practice::good_over_half},
    {"pilot under its hole", &Practice::pilot_under_hole},
});

constexpr auto k_texts = std::to_array<Field<std::string>>({
    {"drill indexes", &Practice::drill_indexes},
});

constexpr std::array<std::string_view, 4> k_indexes{"fraction", "number", "letter", "metric"};

constexpr Length k_largest = length::thousandths(1000);
constexpr std::int64_t k_whole_share = 1000;

[[noreturn]] void refuse(std::string_view name, std::string_view why, std::string_view text,
                         std::string hint) {
    throw error::BadData(fmt::format("practice: {}: {}: '{}'", name, why, text), std::move(hint));
}

constexpr std::string_view k_length_hint =
    "a length with its unit: .005 in, 1/64 in, 0.1 mm, or 0 in";

length::Written parse_named(std::string_view name, std::string_view text, length::Unit unit) {
    try {
        return length::parse_length_or_zero(text, unit);
    } catch (const error::BadData& problem) {
        throw error::BadData(fmt::format("practice: {}: {}", name, problem.what()),
                             std::string(k_length_hint));
    }
}

// `unit`: what a bare number is in; none: it must say.
length::Written read_written(std::string_view name, std::string_view text,
                             std::optional<length::Unit> unit) {
    const auto found = parse_named(name, text, unit.value_or(length::Unit::inch));
    if (!unit && !found.unit_said && !found.fraction)
        refuse(name, "a length without its unit", text, std::string(k_length_hint));
    if (found.value > k_largest)
        refuse(name, "over 1 in", text, std::string(k_length_hint));
    return found;
}

// Inches that five decimals do not hold are whole 64ths, and are shown so.
std::string plain(const length::Written& written) {
    if (written.unit == length::Unit::inch && written.value.nm() % length::inches_e5(1).nm() != 0)
        return length::as_fraction(written.value);
    return written.value == Length{} ? "0" : length::to_text(written.value, written.unit);
}

std::string_view unit_text(const length::Written& written) {
    return written.unit == length::Unit::inch ? " in" : " mm";
}

// Each kind of value: reading it, and showing what was read.
struct ReadLength {
    Length value;
    std::string text;
};
ReadLength read_length(std::string_view name, std::string_view text) {
    const auto written = read_written(name, text, std::nullopt);
    return {written.value, fmt::format("{}{}", plain(written), unit_text(written))};
}

struct ReadGood {
    GoodClearance value;
    std::string text;
};
ReadGood read_good(std::string_view name, std::string_view text) {
    constexpr std::string_view k_to = " to ";
    const auto folded_text = folded(text);
    const auto at = folded_text.find(k_to);
    if (at == std::string::npos)
        refuse(name, "not a range", text, "two lengths and a unit: .001 to .003 in");
    const auto most = read_written(name, folded_text.substr(at + k_to.size()), std::nullopt);
    const auto least = read_written(name, folded_text.substr(0, at), most.unit);
    if (least.value > most.value)
        refuse(name, "the first is the larger", text, "the smaller first: .001 to .003 in");
    if (least.unit != most.unit)
        refuse(name, "two units", text, "one unit for both: .001 to .003 in");
    return {{least.value, most.value},
            fmt::format("{} to {}{}", plain(least), plain(most), unit_text(most))};
}

struct ReadShare {
    std::int64_t value;
    std::string text;
};
ReadShare read_share(std::string_view name, std::string_view text) {
    const std::string hint = "a share from 0 to 100 % with one decimal at most: 95 %, 12.5 %";
    auto digits = trimmed(text);
    if (digits.empty() || digits.back() != '%')
        refuse(name, "not a share", text, hint);
    digits.remove_suffix(1);
    digits = trimmed(digits);
    const auto point = digits.find('.');
    const auto whole_text = digits.substr(0, point);
    const auto tenth_text =
        point == std::string_view::npos ? std::string_view("0") : digits.substr(point + 1);
    std::int64_t whole = 0;
    std::int64_t tenth = 0;
    const auto take = [](std::string_view from, std::int64_t& into) {
        const auto* end = from.data() + from.size();
        const auto read = std::from_chars(from.data(), end, into);
        return !from.empty() && from.front() != '-' && read.ec == std::errc() && read.ptr == end;
    };
    if (!take(whole_text, whole) || tenth_text.size() != 1 || !take(tenth_text, tenth) ||
        whole > 100 || whole * 10 + tenth > k_whole_share)
        refuse(name, "not a share", text, hint);
    return {whole * 10 + tenth,
            tenth == 0 ? fmt::format("{} %", whole) : fmt::format("{}.{} %", whole, tenth)};
}

std::string read_indexes(std::string_view name, std::string_view text) {
    std::string result;
    const auto wanted = split(folded(text), ',');
    for (const auto& index : wanted)
        if (std::find(k_indexes.begin(), k_indexes.end(), index) == k_indexes.end())
            refuse(name, "no drill index", index,
                   "any of fraction, number, letter, metric with commas between; empty for those "
                   "of the catalogue's unit");
    for (const auto index : k_indexes) // in their own order, each once
        if (std::find(wanted.begin(), wanted.end(), index) != wanted.end())
            result += (result.empty() ? "" : ", ") + std::string(index);
    return result;
}

template <typename Fields>
auto find_field(const Fields& fields, std::string_view name) {
    const auto found = std::find_if(fields.begin(), fields.end(),
                                    [&](const auto& field) { return field.name == name; });
    return found == fields.end() ? nullptr : &*found;
}

// Sets the member that the row names and gives the value's canonical text.
std::string set_value(Practice& practice, const std::string& name, std::string_view text) {
    if (const auto* field = find_field(k_lengths, name)) {
        auto read = read_length(name, text);
        practice.*(field->member) = read.value;
        return read.text;
    }
    if (const auto* field = find_field(k_good, name)) {
        auto read = read_good(name, text);
        practice.*(field->member) = read.value;
        return read.text;
    }
    if (const auto* field = find_field(k_shares, name)) {
        auto read = read_share(name, text);
        practice.*(field->member) = read.value;
        return read.text;
    }
    if (const auto* field = find_field(k_texts, name))
        return practice.*(field->member) = read_indexes(name, text);
    if (everyday_word(name)) // what a work material is taken as; its table knows the names
        return std::string(trimmed(text));
    throw error::BadData(fmt::format("practice: no such rule: '{}'", name),
                         "`practice list` shows them");
}

// By name, folded. The shop's own row comes before the default, the later before the earlier own.
using RowsByName = std::map<std::string, const PracticeRow*, std::less<>>;

RowsByName by_name(const std::vector<PracticeRow>& rows) {
    RowsByName named;
    for (const auto& row : rows) {
        auto& place = named[folded(row.name)];
        if (!place || row.own)
            place = &row;
    }
    return named;
}

template <typename Fields>
void read_fields(Practice& practice, const Fields& fields, const RowsByName& rows) {
    for (const auto& field : fields) {
        const auto row = rows.find(field.name);
        if (row == rows.end())
            throw error::BadData(fmt::format("practice: a rule is missing: '{}'", field.name));
        set_value(practice, row->first, row->second->value);
    }
}

void check_order(std::string_view name, Length least, Length most) {
    if (least > most)
        throw error::BadData(fmt::format("practice: {}: least is over most: '{} to {}'", name,
                                         length::with_unit(least, length::Unit::inch),
                                         length::with_unit(most, length::Unit::inch)),
                             "set the other end first");
}

} // namespace

Practice read_practice(const std::vector<PracticeRow>& rows) {
    Practice practice;
    for (const auto& row : rows) { // every row, so that a wrong name or value never hides
        Practice unused;
        set_value(unused, folded(row.name), row.value);
    }
    const auto named = by_name(rows);
    read_fields(practice, k_lengths, named);
    read_fields(practice, k_good, named);
    read_fields(practice, k_shares, named);
    read_fields(practice, k_texts, named);
    check_order("running", practice.running_least, practice.running_most);
    check_order("pilot under", practice.pilot_under_least, practice.pilot_under_most);
    check_order("slip", practice.slip_least, practice.slip_most);
    check_order("good slip", practice.good_slip_least, practice.good_slip_most);
    return practice;
}

std::string check_practice_value(std::string_view name, std::string_view text) {
    Practice unused;
    return set_value(unused, folded(name), text);
}

} // namespace trade
