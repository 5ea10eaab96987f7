// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `screw`: what the tables say of a screw, with where each figure is from.
#include "cli/command.hpp"
#include "present/screw_json.hpp"
#include "present/screw_text.hpp"

namespace cli::commands {

namespace {

struct Options {
    std::string screw;
    std::string series;
    bool json = false;
};

error::ExitCode run(const Options& options, Context& context) {
    const auto screw =
        trade::resolve_screw(options.screw, options.series, context.tables(), context.own_screws());
    if (options.json)
        context.out() << present::json_text(present::screw_json(screw));
    else
        context.out() << present::screw_text(screw, context.unit(), context.style(),
                                             context.width());
    return error::ExitCode::done;
}

} // namespace

void declare_screw(const Syntax& syntax, Plan& plan) {
    Options& o = chosen<Options>(syntax, plan, run);
    syntax.word("SCREW", o.screw, "size, pitch, form, series: \"5/16-18 socket head cap\"")
        .required();
    syntax.option("--series", o.series, "which head: 1960, 1936, \"BS 2470\", \"ISO 4762\", ...");
    syntax.flag("--json", o.json, "for programs");
    syntax.footer(
        "Works without a catalogue; with one, the shop's own screws come first.\n\n"
        "Examples:\n"
        "  screw \"5/16-18 socket head cap\"   screw \"M6x20 DIN912\"\n"
        "  screw \"1/4-20 x 3/4 allen\"        screw \"#8-32 phillips pan head\"\n"
        "  screw \"1/4 bsf socket cap\"        screw \"8 mm shoulder\"\n"
        "Without a form it is a socket head cap screw. A bare 1 is asked back: #1 or 1 in.");
}

} // namespace cli::commands
