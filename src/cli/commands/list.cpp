// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `list`: the records, a line each.
#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "cli/command.hpp"
#include "cli/filter.hpp"
#include "cli/format.hpp"
#include "cli/inventory.hpp"
#include "cli/record/make_column.hpp"
#include "cli/tool.hpp"
#include "cli/transfer/rows.hpp"
#include "present/json_lists.hpp"
#include "present/table.hpp"
#include "store/lists.hpp"
#include "trade/text.hpp"

namespace cli::commands {

namespace {

struct Options {
    std::string what;
    FilterOptions filter;
    Format format;
};

struct Selection {
    std::vector<trade::Body> bodies;
    std::vector<record::PilotRecord> pilots;
    std::map<std::int64_t, std::int64_t> in_body; // body to pilot, of all
};

Selection select(const Options& options, Context& context) {
    const store::File& file = context.catalogue();
    const Filter filter(options.filter, context.unit());
    Selection found;
    for (const record::PilotRecord& pilot : pilot_records(file)) {
        if (pilot.in_body)
            found.in_body[*pilot.in_body] = pilot.number;
        if (options.what != "bodies" && filter.wants(pilot))
            found.pilots.push_back(pilot);
    }
    if (options.what != "pilots")
        for (const trade::Body& body : store::bodies(file))
            if (filter.wants(body))
                found.bodies.push_back(body);
    return found;
}

// What keeps a tool from being taken and used as it is.
template <class Record>
std::string state(const Record& record) {
    std::vector<std::string> parts;
    if (record.retired)
        parts.push_back("retired: " + *record.retired);
    if (record.loan)
        parts.push_back("on loan to " + *record.loan);
    if (record.condition && *record.condition != trade::Condition::good)
        parts.emplace_back(trade::to_text(*record.condition));
    if (!record.work.empty())
        parts.push_back(record::list_text(record.work));
    return fmt::format("{}", fmt::join(parts, "; "));
}

// How sizes are printed here.
struct Sizes {
    explicit Sizes(Context& context)
        : stored(context.catalogue().unit()), unit(context.unit()),
          convert(context.settings().units.has_value()) {}

    [[nodiscard]] std::string operator()(const trade::MaybeDimension& size) const {
        return short_size(size, stored, unit, convert);
    }

    length::Unit stored;
    length::Unit unit;
    bool convert;
};

std::string pilot_cell(const trade::Body& body, const Selection& found, const Sizes& sizes) {
    const auto in_it = found.in_body.find(body.number);
    if (in_it != found.in_body.end())
        return "no. " + std::to_string(in_it->second);
    return body.pilot_dia ? sizes(body.pilot_dia) : std::string(trade::to_text(body.pilot_kind));
}

// Left out where all are of one kind, the usual one.
std::string kind_cell(const trade::Body& body, const Selection& found) {
    const bool all_counterbores =
        std::all_of(found.bodies.begin(), found.bodies.end(), [](const trade::Body& other) {
            return other.kind == trade::BodyKind::counterbore;
        });
    return all_counterbores ? std::string() : std::string(trade::to_text(body.kind));
}

std::string body_table(const Selection& found, Context& context) {
    const Sizes sizes(context);
    present::Table table({{"body", true},
                          {"cuts", true},
                          {"kind"},
                          {"pilot"},
                          {"bore", true},
                          {"set"},
                          {"place"},
                          {"state"}});
    for (const trade::Body& body : found.bodies)
        table.add({std::to_string(body.number), sizes(body.cut_dia), kind_cell(body, found),
                   pilot_cell(body, found, sizes), sizes(body.bore), body.set, body.place,
                   state(body)});
    return table.empty() ? std::string() : table.text(context.width(), context.style());
}

std::string pilot_table(const Selection& found, Context& context) {
    const Sizes sizes(context);
    present::Table table({{"pilot", true},
                          {"size", true},
                          {"shank", true},
                          {"in", true},
                          {"tried"},
                          {"set"},
                          {"place"},
                          {"state"}});
    for (const record::PilotRecord& pilot : found.pilots)
        table.add({std::to_string(pilot.number), sizes(pilot.pilot_dia), sizes(pilot.shank_dia),
                   pilot.in_body ? std::to_string(*pilot.in_body) : std::string(),
                   pilot.tried ? std::string(trade::to_text(*pilot.tried)) : std::string(),
                   pilot.set, pilot.place, state(pilot)});
    return table.empty() ? std::string() : table.text(context.width(), context.style());
}

void print_tables(const Selection& found, Context& context) {
    const std::string bodies = body_table(found, context);
    const std::string pilots = pilot_table(found, context);
    if (bodies.empty() && pilots.empty()) {
        context.out() << "Nothing to list.\n";
        return;
    }
    context.out() << bodies << (bodies.empty() || pilots.empty() ? "" : "\n") << pilots;
}

void print_json(const Options& options, const Selection& found, Context& context) {
    present::JsonLists lists(context.out());
    if (options.what != "pilots") {
        lists.begin("bodies");
        for (const trade::Body& body : found.bodies)
            lists.add(tool_json(body, record::body_columns()));
    }
    if (options.what != "bodies") {
        lists.begin("pilots");
        for (const record::PilotRecord& pilot : found.pilots)
            lists.add(tool_json(pilot, record::pilot_columns()));
    }
    lists.end();
}

void print_tools(const Options& options, Context& context) {
    const Selection found = select(options, context);
    const length::Unit stored = context.catalogue().unit();
    if (options.format.json)
        print_json(options, found, context);
    else if (!options.format.csv)
        print_tables(found, context);
    else if (options.what == "bodies")
        transfer::print_rows(found.bodies, record::body_columns(), stored, context);
    else if (options.what == "pilots")
        transfer::print_rows(found.pilots, record::pilot_columns(), stored, context);
    else
        throw error::UsageError("bodies and pilots do not share their columns",
                                "list bodies --csv, or list pilots --csv");
}

void print_screws(const Options& options, Context& context) {
    const Sizes sizes(context);
    const auto screws = store::own_screws(context.catalogue());
    present::Json rows = present::Json::array();
    present::Table table(
        {{"screw"}, {"head", true}, {"height", true}, {"diameter", true}, {"drive"}, {"note"}});
    for (const trade::OwnScrew& screw : screws) {
        rows.push_back(record::json_of(screw, record::screw_columns()));
        const std::string key = screw.drive_size.empty() ? "" : " " + screw.drive_size;
        table.add({screw.name, sizes(screw.head_dia), sizes(screw.head_height),
                   sizes(screw.screw_dia), screw.drive + key, screw.note});
    }
    if (options.format.json)
        context.out() << present::json_text({{"format", 1}, {"screws", rows}});
    else if (options.format.csv)
        transfer::print_rows(screws, record::screw_columns(), sizes.stored, context);
    else if (table.empty())
        context.out() << "No screws of the shop's own.\n";
    else
        context.out() << table.text(context.width(), context.style());
}

error::ExitCode run(const Options& given, Context& context) {
    Options options = given;
    options.what = trade::folded(given.what);
    if (options.what == "screws")
        print_screws(options, context);
    else if (options.what.empty() || options.what == "bodies" || options.what == "pilots")
        print_tools(options, context);
    else
        throw error::UsageError("nothing is listed by that name: " + given.what,
                                "bodies, pilots or screws; the house list: house list");
    return error::ExitCode::done;
}

} // namespace

void declare_list(const Syntax& syntax, Plan& plan) {
    Options& options = chosen<Options>(syntax, plan, run);
    syntax.word("WHAT", options.what, "bodies, pilots or screws; else bodies and pilots");
    declare_filter(syntax, options.filter);
    declare_format(syntax, options.format);
}

} // namespace cli::commands
