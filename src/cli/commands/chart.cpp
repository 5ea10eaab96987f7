// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `chart`: which screws can be counterbored, and with which body, at a glance.
#include "cli/command.hpp"
#include "cli/format.hpp"
#include "cli/house.hpp"
#include "cli/transfer/files.hpp"
#include "present/chart_html.hpp"
#include "present/chart_text.hpp"

namespace cli::commands {

namespace {

struct Options {
    bool all = false;
    std::string html; // file for the wall chart
    bool letter = false;
    bool force = false;
    Format format;
};

void write_wall_chart(const Options& options, const std::vector<match::ChartEntry>& entries,
                      const Context& context) {
    const auto paper = options.letter ? present::Paper::letter : present::Paper::a4;
    transfer::write_whole(options.html, present::chart_html(entries, paper), options.force,
                          context);
    context.err() << "Wrote " << options.html << ".\n";
}

error::ExitCode run(const Options& options, Context& context) {
    const auto stored = context.catalogue().unit(); // first: without one there is nothing to show
    const auto practice = context.practice();
    const auto asked = options.all ? listed_asked(context) : house_asked(practice, context);
    const auto shop = match::make_shop(context.tables(), practice, stored);
    const auto entries = match::chart(asked, shop, context.rack(), context.unit());
    if (!options.html.empty())
        write_wall_chart(options, entries, context);
    if (options.format.json)
        context.out() << present::json_text(present::chart_json(entries));
    else if (options.format.csv)
        print_csv(present::chart_rows(entries), context);
    else
        context.out() << present::chart_text(entries, context.style(), context.width());
    return error::ExitCode::done;
}

} // namespace

void declare_chart(const Syntax& syntax, Plan& plan) {
    Options& o = chosen<Options>(syntax, plan, run);
    syntax.flag("--all", o.all, "every screw of the tables, not only those of the house list");
    syntax.option("--html", o.html, "a chart for the wall into this file");
    syntax.flag("--letter", o.letter, "the wall chart on Letter paper rather than A4");
    syntax.flag("--force", o.force, "replace a file that is there");
    declare_format(syntax, o.format);
    syntax.footer("`counterpart match SCREW` gives the pilot, the drill and the reasons.");
}

} // namespace cli::commands
