// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The record keeps the diameter with its limits and the instrument; the history keeps the command
// as typed, which is the method.
#include "cli/gauging.hpp"

#include <fmt/format.h>

#include "cli/record/date_cell.hpp"
#include "cli/record/make_column.hpp"
#include "cli/record/size_cell.hpp"
#include "cli/tool.hpp"
#include "length/parse.hpp"
#include "length/print.hpp"
#include "present/figure_json.hpp"
#include "present/figure_text.hpp"
#include "present/text.hpp"

namespace cli {

namespace {

using trade::How;

// A range as a cell that holds all of it: middle and limit on the grid that a cell can carry.
std::string cell_text(const length::Range& range, length::Unit unit) {
    const length::Length step = unit == length::Unit::inch
                                    ? length::inches_e5(1)
                                    : length::Length::from_nm(length::k_nm_per_mm / 10'000);
    const std::int64_t lo = range.lo.nm() / step.nm();
    std::int64_t hi = (range.hi.nm() + step.nm() - 1) / step.nm();
    hi += (hi - lo) % 2; // so that the middle is on the grid too
    return length::to_text(step * ((lo + hi) / 2), unit) + " +-" +
           length::to_text(step * ((hi - lo) / 2), unit);
}

trade::Body body_to_record(const store::File& file, std::int64_t number,
                           std::optional<int> flutes) {
    const Tool tool = find_tool(file, number);
    const auto* body = std::get_if<trade::Body>(&tool);
    if (body == nullptr)
        throw error::NoSuchRecord("not a body but a pilot: " + one_line(tool, file.unit()),
                                  "--record takes the number of a body");
    if (flutes && body->flutes && *body->flutes != *flutes)
        throw error::BadData(
            fmt::format("number {} has {} flutes in the catalogue, not {}", number, *body->flutes,
                        *flutes),
            fmt::format("count them; counterpart change {} --flutes {} puts the record right",
                        number, *flutes));
    return *body;
}

} // namespace

void declare_gauge_options(const Syntax& syntax, GaugeOptions& options) {
    syntax
        .option("--how", options.how,
                "how the readings were taken: caliper, micrometer, rule, pin gauge, ...; else "
                "a decimal is by caliper and a fraction off a rule")
        .takes("WORD");
    syntax.option("--record", options.record, "write the cutting diameter to the tool NUMBER")
        .takes("NUMBER");
    const auto explain =
        syntax.flag("--explain", options.explain, "show formula, inputs and source");
    syntax.flag("--json", options.json, "print JSON, lengths in millimetres").excludes(explain);
}

Gauging::Gauging(const GaugeOptions& options, Context& context)
    : options_(options), context_(context) {
    if (!options.record.empty())
        context.catalogue(store::Access::write);
    practice_ = context.practice();
    unit_ = context.unit();
}

How Gauging::how(const std::string& reading) const {
    const How how = record::how_taken(options_.how, reading, unit_);
    if (how == How::mark)
        throw error::BadData("a mark is no reading: '" + options_.how + "'",
                             "caliper, micrometer, rule, pin gauge, test hole or guess");
    return how;
}

length::Range Gauging::reading(const std::string& text) const {
    record::refuse_date(text, record::SizeKind::length);
    const How taken = how(text);
    const length::Reading written = length::parse_reading(text, unit_);
    return written.limits
               ? *written.limits
               : trade::limits_of(written.nominal, taken, trade::Feature::cut_dia, practice_);
}

length::MaybeRange Gauging::maybe_reading(const std::string& text) const {
    return text.empty() ? std::nullopt : length::MaybeRange(reading(text));
}

std::optional<length::Length> Gauging::allowance(const std::string& text) const {
    if (text.empty())
        return std::nullopt;
    return length::parse_length_or_zero(text, unit_).value;
}

int Gauging::flutes(const std::string& text) const {
    return static_cast<int>(record::read_count(text, record::k_most_flutes));
}

error::ExitCode Gauging::finish(const job::Gauged& gauged, How how,
                                std::optional<int> flutes) const {
    if (options_.record.empty()) {
        print(gauged, std::nullopt);
        return error::ExitCode::done;
    }
    const std::int64_t number = tool_number(options_.record);
    store::File& file = context_.catalogue(store::Access::write);
    store::Change change(file, context_.settings().words);
    trade::Body body = body_to_record(file, number, flutes);
    if (!gauged.diameter)
        throw error::BadData("the cutting diameter is not known on both sides: nothing to record",
                             "give --runout, and of a hole --clearance; 0 where there is none");
    const trade::MaybeDimension before = body.cut_dia;
    body.cut_dia =
        record::read_size(cell_text(*gauged.diameter, unit_), how, trade::Feature::cut_dia,
                          {unit_, file.unit(), &practice_, nullptr});
    record::refuse_columns(record::contradictions(body));
    update_tool(change, body);
    change.commit();
    print(gauged, number);
    if (!options_.json)
        context_.out() << "Recorded for " << one_line(body, file.unit())
                       << "\n  cut_dia: " << known_size(body.cut_dia, file.unit(), unit_)
                       << "\n  before: " << known_size(before, file.unit(), unit_) << '\n';
    return error::ExitCode::done;
}

void Gauging::print(const job::Gauged& gauged, std::optional<std::int64_t> recorded) const {
    if (options_.json) {
        present::Json figures = present::Json::array();
        for (const job::Figure& figure : gauged.figures)
            figures.push_back(present::figure_json(figure));
        context_.out() << present::json_text(
            {{"format", 1},
             {"figures", figures},
             {"notes", gauged.notes},
             {"recorded", recorded ? present::Json(*recorded) : present::Json(nullptr)}});
        return;
    }
    if (!options_.explain)
        context_.out() << present::figure_lines(gauged.figures, unit_, context_.width());
    else
        for (const job::Figure& figure : gauged.figures)
            context_.out() << present::explain_figure(figure, unit_, context_.width());
    for (const std::string& note : gauged.notes)
        for (const std::string& line : present::wrapped(note, context_.width()))
            context_.out() << line << '\n';
}

} // namespace cli
