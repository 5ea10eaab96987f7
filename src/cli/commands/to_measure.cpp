// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `to-measure`: what to measure or try first, by how many house screws it could settle.
#include "match/to_measure.hpp"

#include "cli/command.hpp"
#include "cli/format.hpp"
#include "cli/house.hpp"
#include "present/to_measure_text.hpp"

namespace cli::commands {

namespace {

struct Options {
    bool all = false;
    Format format;
};

error::ExitCode run(const Options& options, Context& context) {
    const auto stored = context.catalogue().unit(); // first: without one there is nothing to ask
    const auto practice = context.practice();
    const auto asked = house_asked(practice, context);
    const auto shop = match::make_shop(context.tables(), practice, stored);
    const auto list = match::to_measure(asked, shop, match::load_tools(context.rack()));
    if (options.format.json)
        context.out() << present::json_text(present::to_measure_json(list, asked));
    else if (options.format.csv)
        print_csv(present::to_measure_rows(list, asked, context.unit()), context);
    else
        context.out() << present::to_measure_text(
            list, asked, {context.unit(), context.style(), context.width(), options.all});
    return error::ExitCode::done;
}

} // namespace

void declare_to_measure(const Syntax& syntax, Plan& plan) {
    Options& o = chosen<Options>(syntax, plan, run);
    syntax.flag("--all", o.all, "also what settles no screw alone");
    declare_format(syntax, o.format);
    syntax.footer("Record it with `counterpart measure` or `counterpart pair --tried`.");
}

} // namespace cli::commands
