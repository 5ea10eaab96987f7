// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `show`: everything that is known of one tool, and the screws it serves.
#include <algorithm>

#include "cli/command.hpp"
#include "cli/filter.hpp"
#include "cli/format.hpp"
#include "cli/inventory.hpp"
#include "cli/record/show_fields.hpp"
#include "cli/serves.hpp"
#include "cli/transfer/rows.hpp"
#include "present/fields.hpp"
#include "present/table.hpp"

namespace cli::commands {

namespace {

struct Options {
    std::string number;
    Format format;
};

std::int64_t number_of(const Tool& tool) {
    return std::visit([](const auto& record) { return record.number; }, tool);
}

std::vector<trade::Trial> trials_of(const Tool& tool, const store::File& file) {
    std::vector<trade::Trial> trials = store::trials(file);
    const std::int64_t number = number_of(tool);
    std::erase_if(trials, [number](const trade::Trial& trial) {
        return trial.pilot != number && trial.body != number;
    });
    return trials;
}

std::string other_tool(const trade::Trial& trial, const Tool& tool, const store::File& file) {
    const bool is_body = std::holds_alternative<trade::Body>(tool);
    return one_line(find_tool(file, is_body ? trial.pilot : trial.body), file.unit());
}

void print_partners(const Tool& tool, const store::File& file, const Context& context) {
    if (std::holds_alternative<trade::Body>(tool))
        for (const trade::Pilot& pilot : store::pilots(file))
            if (pilot.in_body == number_of(tool))
                context.out() << "In it: " << one_line(pilot, file.unit()) << '\n';
    for (const trade::Trial& trial : trials_of(tool, file))
        context.out() << "Tried with " << other_tool(trial, tool, file) << ": "
                      << trade::to_text(trial.how) << '\n';
}

void print_served(const Tool& tool, const std::vector<Served>& served, const Context& context) {
    if (served.empty()) {
        context.out() << "It serves no screw that was looked at.\n";
        return;
    }
    present::Table table(
        {{"serves"}, {"hole"}, {"answer"}, {"body", true}, {"pilot", true}, {"drill"}});
    const bool is_body = std::holds_alternative<trade::Body>(tool);
    for (const Served& one : served) {
        const match::Answer& answer = one.answer;
        table.add({one.screw, one.hole, std::string(match::to_text(answer.kind)),
                   is_body ? std::string() : std::to_string(answer.body),
                   is_body && answer.pilot ? std::to_string(*answer.pilot) : std::string(),
                   answer.drill ? answer.drill->name : std::string()});
    }
    context.out() << table.text(context.width(), context.style());
}

void print_text(const Tool& tool, const std::vector<Served>& served, Context& context) {
    const store::File& file = context.catalogue();
    context.out() << context.style().strong(one_line(tool, file.unit())) << '\n';
    std::visit(
        [&](const auto& record) {
            context.out()
                << record::fields_of(record, file.unit(), context.unit()).text(context.width());
            const std::string missing = unknowns(record);
            if (!missing.empty())
                context.out() << "Not known, and decides fits: " << missing << '\n';
        },
        tool);
    print_partners(tool, file, context);
    context.out() << '\n';
    print_served(tool, served, context);
}

void print_json(const Tool& tool, const std::vector<Served>& served, Context& context) {
    present::Json json = {{"format", 1}};
    if (const auto* body = std::get_if<trade::Body>(&tool))
        json["body"] = tool_json(*body, record::body_columns());
    else
        json["pilot"] = tool_json(std::get<record::PilotRecord>(tool), record::pilot_columns());
    json["trials"] = present::Json::array();
    for (const trade::Trial& trial : trials_of(tool, context.catalogue()))
        json["trials"].push_back(
            {{"pilot", trial.pilot}, {"body", trial.body}, {"tried", trade::to_text(trial.how)}});
    json["serves"] = present::Json::array();
    for (const Served& one : served)
        json["serves"].push_back(
            {{"screw", one.screw},
             {"hole", present::text_json(one.hole)},
             {"answer", match::to_text(one.answer.kind)},
             {"body", one.answer.body},
             {"pilot", one.answer.pilot ? present::Json(*one.answer.pilot) : present::Json()},
             {"drill",
              one.answer.drill ? present::Json(one.answer.drill->name) : present::Json()}});
    context.out() << present::json_text(json);
}

void print_csv_of(const Tool& tool, Context& context) {
    const length::Unit stored = context.catalogue().unit();
    if (const auto* body = std::get_if<trade::Body>(&tool))
        transfer::print_rows<trade::Body>({*body}, record::body_columns(), stored, context);
    else
        transfer::print_rows<record::PilotRecord>({std::get<record::PilotRecord>(tool)},
                                                  record::pilot_columns(), stored, context);
}

error::ExitCode run(const Options& options, Context& context) {
    const Tool tool = find_tool(context.catalogue(), tool_number(options.number));
    if (options.format.csv)
        print_csv_of(tool, context);
    else if (options.format.json)
        print_json(tool, served_screws(tool, context), context);
    else
        print_text(tool, served_screws(tool, context), context);
    return error::ExitCode::done;
}

} // namespace

void declare_show(const Syntax& syntax, Plan& plan) {
    Options& options = chosen<Options>(syntax, plan, run);
    syntax.word("NUMBER", options.number, "the tool's number").required();
    declare_format(syntax, options.format);
    syntax.footer(
        "The screws it serves are those of the house list; while that is empty, the listed "
        "socket head and fillister screws of about its size.");
}

} // namespace cli::commands
