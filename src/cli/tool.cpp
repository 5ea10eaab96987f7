// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/tool.hpp"

#include <iterator>
#include <map>

#include "cli/record/make_column.hpp"
#include "length/print.hpp"
#include "present/text.hpp"
#include "store/history.hpp"
#include "store/tools.hpp"
#include "trade/drill.hpp"

namespace cli {

namespace {

// One below and one above: a mistyped number is mostly of the same rack and set.
std::string tools_near(const store::File& file, std::int64_t number) {
    std::map<std::int64_t, std::string> lines;
    for (const trade::Body& body : store::bodies(file))
        lines[body.number] = one_line(body, file.unit());
    for (const trade::Pilot& pilot : store::pilots(file))
        lines[pilot.number] = one_line(pilot, file.unit());
    const auto above = lines.upper_bound(number);
    std::string text;
    if (above != lines.begin())
        text = std::prev(above)->second;
    if (above != lines.end())
        text += (text.empty() ? "" : "\n               ") + above->second;
    return text;
}

[[noreturn]] void no_such_tool(const store::File& file, std::int64_t number) {
    const std::string near = tools_near(file, number);
    const bool taken_back = !store::history(file, number).empty();
    throw error::NoSuchRecord(
        (taken_back ? "the tool of this number was taken back: " : "no tool has this number: ") +
            std::to_string(number),
        near.empty() ? "the catalogue is empty; counterpart add body puts a tool in"
                     : "near it: " + near);
}

void append(std::string& line, const std::string& text) {
    if (!text.empty())
        line += ", " + text;
}

std::string where_it_is(const std::string& place, const std::optional<std::string>& retired,
                        const std::optional<std::string>& loan) {
    std::string text = place.empty() ? "" : "; " + place;
    if (loan)
        text += "; on loan to " + *loan;
    if (retired)
        text += "; retired";
    return text;
}

std::string pilot_words(const trade::Body& body, length::Unit stored) {
    const std::string bore = shown_size(body.bore, stored);
    switch (body.pilot_kind) {
    case trade::PilotKind::integral:
    case trade::PilotKind::unknown:
        if (body.pilot_dia)
            return "integral pilot " + shown_size(body.pilot_dia, stored);
        return body.pilot_kind == trade::PilotKind::integral ? "integral pilot"
               : bore.empty()                                ? "pilot unknown"
                                                             : "bore " + bore;
    case trade::PilotKind::removable:
        return bore.empty() ? "removable pilot" : "removable pilot, bore " + bore;
    case trade::PilotKind::none:
        break;
    }
    return "no pilot";
}

} // namespace

std::int64_t tool_number(const std::string& word) {
    try {
        return record::read_count(word, record::k_largest_number);
    } catch (const error::BadData&) {
        throw error::UsageError("not a tool's number: " + word,
                                "a whole number; counterpart list shows them");
    }
}

record::PilotRecord with_trial(const trade::Pilot& pilot, const store::File& file) {
    record::PilotRecord result;
    static_cast<trade::Pilot&>(result) = pilot;
    for (const trade::Trial& trial : store::trials(file))
        if (trial.pilot == pilot.number && trial.body == pilot.in_body)
            result.tried = trial.how;
    return result;
}

Tool find_tool(const store::File& file, std::int64_t number) {
    if (const auto body = store::body(file, number))
        return *body;
    if (const auto pilot = store::pilot(file, number))
        return with_trial(*pilot, file);
    no_such_tool(file, number);
}

trade::Body find_body(const store::File& file, std::int64_t number) {
    const Tool tool = find_tool(file, number);
    if (const auto* body = std::get_if<trade::Body>(&tool))
        return *body;
    throw error::NoSuchRecord("not a body but a pilot: " + one_line(tool, file.unit()),
                              "the pilot's number comes first, then the body's");
}

record::PilotRecord find_pilot(const store::File& file, std::int64_t number) {
    const Tool tool = find_tool(file, number);
    if (const auto* pilot = std::get_if<record::PilotRecord>(&tool))
        return *pilot;
    throw error::NoSuchRecord("not a pilot but a body: " + one_line(tool, file.unit()),
                              "counterpart list pilots shows the pilots");
}

void update_tool(store::Change& change, const Tool& tool) {
    if (const auto* body = std::get_if<trade::Body>(&tool))
        store::update_body(change, *body);
    else
        store::update_pilot(change, std::get<record::PilotRecord>(tool));
}

std::string shown_size(const trade::MaybeDimension& dimension, length::Unit stored) {
    if (!dimension)
        return {};
    if (!trade::number_or_letter_drill(dimension->text).empty())
        return dimension->text;
    const length::Written written = length::parse_reading_or_zero(dimension->text, stored).nominal;
    if (written.unit_said || written.fraction)
        return dimension->text;
    return dimension->text + (written.unit == length::Unit::inch ? " in" : " mm");
}

std::string known_size(const trade::MaybeDimension& dimension, length::Unit stored,
                       length::Unit unit) {
    if (!dimension)
        return "not known";
    return shown_size(dimension, stored) + " (" +
           (dimension->how == trade::How::unstated
                ? std::string()
                : std::string(trade::to_text(dimension->how)) + ", ") +
           length::to_text(dimension->range, unit) + ')';
}

std::string short_size(const trade::MaybeDimension& dimension, length::Unit stored,
                       length::Unit unit, bool convert) {
    if (!dimension)
        return {};
    if (auto drill = trade::number_or_letter_drill(dimension->text); !drill.empty())
        return drill;
    const length::Written written = length::parse_reading_or_zero(dimension->text, stored).nominal;
    if (convert && written.unit != unit)
        return length::to_text(written.value, unit, unit == length::Unit::inch ? 4 : 3);
    if (written.fraction)
        return length::as_fraction(written.value);
    return written.unit == unit ? length::to_text(written.value, unit)
                                : length::with_unit(written.value, written.unit);
}

std::string one_line(const trade::Body& body, length::Unit stored) {
    std::string line = std::to_string(body.number) + ": ";
    const bool named = body.kind != trade::BodyKind::unknown && body.kind != trade::BodyKind::other;
    line += named ? std::string(trade::to_text(body.kind)) : std::string("body");
    line += ' ' + (body.cut_dia ? shown_size(body.cut_dia, stored) : "of unknown diameter");
    append(line, pilot_words(body, stored));
    return present::safe(line + where_it_is(body.place, body.retired, body.loan));
}

std::string one_line(const trade::Pilot& pilot, length::Unit stored) {
    std::string line = std::to_string(pilot.number) + ": pilot ";
    line += pilot.pilot_dia ? shown_size(pilot.pilot_dia, stored) : "of unknown diameter";
    if (pilot.shank_dia)
        append(line, "shank " + shown_size(pilot.shank_dia, stored));
    if (pilot.in_body)
        append(line, "in body " + std::to_string(*pilot.in_body));
    return present::safe(line + where_it_is(pilot.place, pilot.retired, pilot.loan));
}

std::string one_line(const Tool& tool, length::Unit stored) {
    return std::visit([stored](const auto& record) { return one_line(record, stored); }, tool);
}

} // namespace cli
