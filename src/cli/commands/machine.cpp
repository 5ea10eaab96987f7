// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `machine`: the shop's machines: the shanks their spindles take, their speeds and their travel.
#include "cli/command.hpp"
#include "cli/format.hpp"
#include "cli/span.hpp"
#include "cli/turns.hpp"
#include "length/parse.hpp"
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
    std::string speeds;
    std::string travel;
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

std::string travel_text(const trade::Machine& machine, length::Unit unit) {
    return machine.travel ? length::with_unit(*machine.travel, unit) : std::string();
}

// The machine of that name as it is on file, or a new one.
trade::Machine machine_to_put(const std::string& text, Context& context) {
    const std::string name(trade::trimmed(text));
    if (name.empty())
        throw error::UsageError("a machine needs a name");
    for (trade::Machine& machine : store::machines(context.catalogue(store::Access::write))) {
        if (trade::folded(machine.name) != trade::folded(name))
            continue;
        machine.name = name;
        return machine;
    }
    return {name, std::nullopt, std::nullopt};
}

std::string sentence(const trade::Machine& machine, length::Unit unit) {
    std::string text = "Machine " + present::safe(machine.name);
    if (machine.chuck)
        text += ", chuck " + chuck_text(machine, unit);
    if (machine.morse)
        text += ", Morse " + std::to_string(*machine.morse);
    if (!machine.speeds.empty())
        text += ", " + turns_text(machine) + " turns a minute";
    if (machine.travel)
        text += ", travel " + travel_text(machine, unit);
    return text;
}

error::ExitCode add(const Options& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    store::Change change(file, context.settings().words);
    trade::Machine machine = machine_to_put(options.name, context);
    if (!options.chuck.empty())
        machine.chuck = read_span(options.chuck, context.unit());
    if (!options.morse.empty())
        machine.morse = read_morse(options.morse);
    if (!options.speeds.empty())
        read_turns(options.speeds, machine);
    if (!options.travel.empty())
        machine.travel = length::parse_length(options.travel, context.unit()).value;
    store::put_machine(change, machine);
    change.commit();
    context.out() << sentence(machine, context.unit()) << '\n';
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
    const bool known = !machine.speeds.empty();
    return {{"name", machine.name},
            {"chuck_mm", present::range_mm(machine.chuck)},
            {"morse", machine.morse ? present::Json(*machine.morse) : present::Json(nullptr)},
            {"speeds", known ? present::Json(machine.speeds) : present::Json(nullptr)},
            {"variable", known ? present::Json(machine.variable) : present::Json(nullptr)},
            {"travel_mm", present::length_mm(machine.travel)}};
}

error::ExitCode list(const ListOptions& options, Context& context) {
    const auto machines = store::machines(context.catalogue());
    present::Json rows = present::Json::array();
    std::vector<std::vector<std::string>> cells{{"name", "chuck", "morse", "speeds", "travel"}};
    present::Table table({{"machine"}, {"chuck"}, {"Morse"}, {"turns a minute"}, {"travel"}});
    for (const trade::Machine& machine : machines) {
        rows.push_back(json_of(machine));
        cells.push_back({machine.name, chuck_text(machine, context.unit()), morse_text(machine),
                         turns_text(machine), travel_text(machine, context.unit())});
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

void declare_machine(const Syntax& syntax, Plan& plan) {
    syntax.needs_verb();
    const auto add_verb = syntax.verb("add", "a machine, or new figures for one");
    Options& a = chosen<Options>(add_verb, plan, add);
    add_verb.word("NAME", a.name, "what the shop calls it").required();
    add_verb.option("--chuck", a.chuck, "straight shanks it takes: \"1/16 to 1/2\"").takes("SPAN");
    add_verb.option("--morse", a.morse, "Morse taper of its spindle").takes("N");
    add_verb.option("--speeds", a.speeds, "turns a minute: \"250, 500, 1000\" or \"150 to 3000\"")
        .takes("SPEEDS");
    add_verb.option("--travel", a.travel, "how far its quill goes down: 3, \"80 mm\"")
        .takes("LENGTH");
    const auto drop_verb = syntax.verb("drop", "a machine that is gone");
    Options& d = chosen<Options>(drop_verb, plan, drop);
    drop_verb.word("NAME", d.name, "as listed").required();
    const auto list_verb = syntax.verb("list", "the machines");
    ListOptions& l = chosen<ListOptions>(list_verb, plan, list);
    declare_format(list_verb, l.format);
}

} // namespace cli::commands
