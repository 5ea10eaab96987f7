// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `machine`: the shop's machines, as far as a tool's shank must fit their spindles.
#include "cli/command.hpp"
#include "cli/format.hpp"
#include "cli/span.hpp"
#include "length/print.hpp"
#include "present/json.hpp"
#include "present/table.hpp"
#include "present/text.hpp"
#include "store/lists.hpp"
#include "trade/text.hpp"

namespace cli::commands {

namespace {

constexpr int k_largest_morse = 7; // the tapers run from 0 to 7 (ISO 296)

struct Options {
    std::string name;
    std::string chuck;
    std::string morse;
};

struct ListOptions {
    Format format;
};

int read_morse(const std::string& text) {
    const std::string number(trade::trimmed(text));
    if (number.size() != 1 || number.front() < '0' || number.front() > '0' + k_largest_morse)
        throw error::BadData("no such Morse taper: '" + text + "'", "0 to 7");
    return number.front() - '0';
}

std::string chuck_text(const trade::Machine& machine, length::Unit unit) {
    if (!machine.chuck)
        return {};
    return length::to_text(*machine.chuck, unit) + (unit == length::Unit::inch ? " in" : " mm");
}

std::string morse_text(const trade::Machine& machine) {
    return machine.morse ? std::to_string(*machine.morse) : std::string();
}

error::ExitCode add(const Options& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    trade::Machine machine;
    machine.name = std::string(trade::trimmed(options.name));
    if (machine.name.empty())
        throw error::UsageError("a machine needs a name");
    if (!options.chuck.empty())
        machine.chuck = read_span(options.chuck, context.unit());
    if (!options.morse.empty())
        machine.morse = read_morse(options.morse);
    store::Change change(file, context.settings().words);
    store::put_machine(change, machine);
    change.commit();
    context.out() << "Machine " << present::safe(machine.name);
    if (machine.chuck)
        context.out() << ", chuck " << chuck_text(machine, context.unit());
    if (machine.morse)
        context.out() << ", Morse " << *machine.morse;
    context.out() << '\n';
    return error::ExitCode::done;
}

error::ExitCode drop(const Options& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    store::Change change(file, context.settings().words);
    store::drop_machine(change, options.name);
    change.commit();
    context.out() << "Dropped machine " << present::safe(options.name) << '\n';
    return error::ExitCode::done;
}

present::Json json_of(const trade::Machine& machine) {
    return {{"name", machine.name},
            {"chuck_mm", present::range_mm(machine.chuck)},
            {"morse", machine.morse ? present::Json(*machine.morse) : present::Json(nullptr)}};
}

error::ExitCode list(const ListOptions& options, Context& context) {
    const auto machines = store::machines(context.catalogue());
    present::Json rows = present::Json::array();
    std::vector<std::vector<std::string>> cells{{"name", "chuck", "morse"}};
    present::Table table({{"machine"}, {"chuck"}, {"Morse"}});
    for (const trade::Machine& machine : machines) {
        rows.push_back(json_of(machine));
        cells.push_back({machine.name, chuck_text(machine, context.unit()), morse_text(machine)});
        table.add(cells.back());
    }
    if (options.format.json)
        context.out() << present::json_text({{"format", 1}, {"machines", rows}});
    else if (options.format.csv)
        print_csv(cells, context);
    else if (table.empty())
        context.out() << "No machines.\n";
    else
        context.out() << table.text(context.width(), context.style());
    return error::ExitCode::done;
}

} // namespace

void declare_machine(CLI::App& app, Plan& plan) {
    app.require_subcommand(1);
    auto* add_app = app.add_subcommand("add", "a machine, or new figures for one");
    Options& a = chosen<Options>(*add_app, plan, add);
    add_app->add_option("NAME", a.name, "what the shop calls it")->required();
    add_app->add_option("--chuck", a.chuck, "straight shanks it takes: \"1/16 to 1/2\"")
        ->type_name("SPAN");
    add_app->add_option("--morse", a.morse, "Morse taper of its spindle")->type_name("N");
    auto* drop_app = app.add_subcommand("drop", "a machine that is gone");
    Options& d = chosen<Options>(*drop_app, plan, drop);
    drop_app->add_option("NAME", d.name, "as listed")->required();
    auto* list_app = app.add_subcommand("list", "the machines");
    ListOptions& l = chosen<ListOptions>(*list_app, plan, list);
    declare_format(*list_app, l.format);
}

} // namespace cli::commands
