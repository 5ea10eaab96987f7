// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `material`: what the tables say of the materials that are cut.
#include "trade/material.hpp"

#include "cli/command.hpp"
#include "cli/format.hpp"
#include "present/json.hpp"
#include "present/material_json.hpp"
#include "present/material_text.hpp"

namespace cli::commands {

namespace {

struct ListOptions {
    Format format;
};

struct ShowOptions {
    std::vector<std::string> words;
    bool json = false;
};

error::ExitCode list(const ListOptions& options, Context& context) {
    const auto materials = context.tables().materials();
    const auto everyday = trade::everyday_materials(context.practice_rows());
    if (options.format.json) {
        const auto feeds = context.tables().feeds();
        present::Json rows = present::Json::array();
        for (const auto& material : materials)
            rows.push_back(present::material_json(material, feeds));
        context.out() << present::json_text(
            {{"format", 2}, {"materials", rows}, {"everyday", present::everyday_json(everyday)}});
    } else if (options.format.csv) {
        print_csv(present::material_cells(materials, context.unit()), context);
    } else {
        context.out() << present::materials_table(materials, context.unit(), context.width(),
                                                  context.style())
                      << '\n'
                      << present::everyday_table(everyday, context.width(), context.style());
    }
    return error::ExitCode::done;
}

error::ExitCode show(const ShowOptions& options, Context& context) {
    const auto material = trade::find_material(joined(options.words), context.tables().materials(),
                                               trade::everyday_materials(context.practice_rows()));
    const auto feeds = context.tables().feeds();
    if (options.json)
        context.out() << present::json_text(
            {{"format", 2}, {"material", present::material_json(material, feeds)}});
    else
        context.out() << present::material_text(material, feeds, context.unit(), context.width());
    return error::ExitCode::done;
}

} // namespace

void declare_material(const Syntax& syntax, Plan& plan) {
    syntax.needs_verb();
    const auto list_verb = syntax.verb("list", "every material, a line each");
    ListOptions& l = chosen<ListOptions>(list_verb, plan, list);
    declare_format(list_verb, l.format);
    const auto show_verb = syntax.verb("show", "everything known of one, with sources");
    ShowOptions& s = chosen<ShowOptions>(show_verb, plan, show);
    show_verb.word("NAME", s.words, "a part of its name, or an everyday name: 1018, mild steel")
        .required();
    show_verb.flag("--json", s.json, "for programs");
    syntax.footer("Works without a catalogue.");
}

} // namespace cli::commands
