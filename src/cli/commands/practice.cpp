// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `practice`: the limits that the rules use, and changing them for this shop.
#include "cli/command.hpp"
#include "present/csv.hpp"
#include "present/json.hpp"
#include "present/table.hpp"
#include "store/lists.hpp"
#include "trade/material.hpp"
#include "trade/text.hpp"

namespace cli::commands {

namespace {

struct ListOptions {
    bool json = false;
    bool csv = false;
};

struct SetOptions {
    std::string name;
    std::string value;
};

struct ResetOptions {
    std::string name;
};

present::Json row_json(const trade::PracticeRow& row) {
    return {{"name", row.name},
            {"value", row.value},
            {"about", row.about},
            {"source", row.source},
            {"own", row.own}};
}

void print_json(const std::vector<trade::PracticeRow>& rows, Context& context) {
    present::Json list = present::Json::array();
    for (const auto& row : rows)
        list.push_back(row_json(row));
    context.out() << present::json_text({{"format", 1}, {"practice", list}});
}

void print_csv(const std::vector<trade::PracticeRow>& rows, Context& context) {
    context.out() << present::csv_row({"name", "value", "about", "source", "own"});
    for (const auto& row : rows)
        context.out() << present::csv_row(
            {row.name, row.value, row.about, row.source, row.own ? "yes" : "no"});
}

void print_table(const std::vector<trade::PracticeRow>& rows, Context& context) {
    present::Table table({{"name"}, {"value"}, {"what it is"}, {"source"}});
    for (const auto& row : rows)
        table.add({row.name, row.value, row.about, row.own ? "this shop" : row.source});
    context.out() << table.text(context.width(), context.style());
}

error::ExitCode list(const ListOptions& options, Context& context) {
    const auto rows = context.practice_rows();
    if (options.json)
        print_json(rows, context);
    else if (options.csv)
        print_csv(rows, context);
    else
        print_table(rows, context);
    return error::ExitCode::done;
}

// As it is kept: what a work material is taken as by its full name.
std::string value_of(const SetOptions& options, Context& context) {
    const auto value = trade::check_practice_value(options.name, options.value);
    return trade::everyday_word(trade::folded(options.name))
               ? trade::find_material(value, context.tables().materials()).name
               : value;
}

error::ExitCode set(const SetOptions& options, Context& context) {
    auto& file = context.catalogue(store::Access::write);
    const auto value = value_of(options, context);
    store::Change change(file, context.settings().words);
    auto rows = context.practice_rows();
    rows.push_back({options.name, value, {}, {}, true});
    (void)trade::read_practice(rows); // a least over its most is refused before it is kept
    store::set_practice(change, options.name, value);
    change.commit();
    context.out() << "Practice: " << options.name << " is now " << value << ", this shop's own.\n";
    return error::ExitCode::done;
}

error::ExitCode reset(const ResetOptions& options, Context& context) {
    auto& file = context.catalogue(store::Access::write);
    store::Change change(file, context.settings().words);
    store::reset_practice(change, options.name);
    change.commit();
    context.out() << "Practice: " << options.name << " is the default again.\n";
    return error::ExitCode::done;
}

} // namespace

void declare_practice(const Syntax& syntax, Plan& plan) {
    syntax.needs_verb();
    const auto list_verb = syntax.verb("list", "the limits, with unit and source");
    ListOptions& l = chosen<ListOptions>(list_verb, plan, list);
    const auto json = list_verb.flag("--json", l.json, "for programs");
    list_verb.flag("--csv", l.csv, "one row a limit").excludes(json);
    const auto set_verb = syntax.verb("set", "change a limit for this shop");
    SetOptions& s = chosen<SetOptions>(set_verb, plan, set);
    set_verb.word("RULE", s.name, "the name as listed: \"head clearance\"").required();
    set_verb.word("VALUE", s.value, "in the form listed: \".006 in\", \"95 %\"").required();
    const auto reset_verb = syntax.verb("reset", "go back to the default");
    ResetOptions& r = chosen<ResetOptions>(reset_verb, plan, reset);
    reset_verb.word("RULE", r.name, "the name as listed").required();
}

} // namespace cli::commands
