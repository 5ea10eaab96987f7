// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `make-list`: the least to make so that every house screw that can be met is met.
#include "cli/command.hpp"
#include "cli/make_request.hpp"
#include "present/make_json.hpp"
#include "present/make_text.hpp"

namespace cli::commands {

namespace {

struct Options {
    MakeRequest request;
    bool json = false;
    bool csv = false;
};

error::ExitCode run(const Options& options, Context& context) {
    const auto list = make_list_for(options.request, context);
    const auto plan = plan_for(list, context);
    if (options.json)
        context.out() << present::json_text(present::make_json(list, plan.specs, plan.bars));
    else if (options.csv)
        context.out() << present::make_csv(list, plan.specs, context.unit());
    else
        context.out() << present::make_text(list, plan.specs, plan.bars, context.unit(),
                                            context.style(), context.width());
    return error::ExitCode::done;
}

} // namespace

void declare_make_list(CLI::App& app, Plan& plan) {
    Options& o = chosen<Options>(app, plan, run);
    app.add_option("--for", o.request.screws, "these screws instead of the house list");
    app.add_option("--hole", o.request.hole, "the hole they all go through: close, F, 9/32, ...");
    app.add_flag("--sleeves", o.request.options.sleeves,
                 "a sleeve over an owned pilot counts as a piece");
    app.add_flag("--turn-down", o.request.options.turn_down,
                 "an owned soft pilot that no screw needs may be turned smaller");
    auto* json = app.add_flag("--json", o.json, "for programs, format 1");
    app.add_flag("--csv", o.csv, "one row a piece")->excludes(json);
    app.footer("See docs/making-pilots.md.");
}

} // namespace cli::commands
