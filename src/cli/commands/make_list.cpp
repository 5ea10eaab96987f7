// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `make-list`: the least to make so that every house screw that can be met is met.
#include <filesystem>

#include "cli/calendar.hpp"
#include "cli/command.hpp"
#include "cli/make_request.hpp"
#include "cli/transfer/files.hpp"
#include "present/drawing_svg.hpp"
#include "present/make_html.hpp"
#include "present/make_json.hpp"
#include "present/make_text.hpp"

namespace cli::commands {

namespace {

struct Options {
    MakeRequest request;
    std::string drawings; // folder for an SVG a piece
    std::string sheet;    // file for the printable sheet
    std::string steel;    // empty: the usual one
    bool soft = false;    // as without it
    bool hardened = false;
    bool letter = false;
    bool both_units = false;
    bool force = false;
    bool json = false;
    bool csv = false;
};

make::Treatment treatment_of(const Options& options) {
    make::Treatment treatment;
    treatment.hardened = options.hardened;
    if (options.steel.empty())
        return treatment;
    treatment.steel = make::steel_named(options.steel);
    if (!treatment.steel)
        throw error::UsageError("no steel for pilots: '" + options.steel + "'", "O1, W1 or silver");
    return treatment;
}

void write_drawings(const Options& options, const make::MakeList& list, const TurningPlan& plan,
                    const drawing::Lettering& lettering, Context& context) {
    const std::filesystem::path folder(options.drawings);
    for (std::size_t i = 0; i < list.pieces.size(); ++i) {
        const auto& piece = list.pieces[i];
        const auto path = folder / ("item-" + std::to_string(piece.item) + ".svg");
        const auto drawing = make::draw(piece, plan.specs[i], lettering, today());
        transfer::write_whole(path, present::svg_file(drawing), options.force, context);
        context.err() << "Wrote " << path.string() << ".\n";
    }
}

void write_sheet(const Options& options, const make::MakeList& list, const TurningPlan& plan,
                 const drawing::Lettering& lettering, Context& context) {
    const present::Sheet sheet{options.letter ? present::Paper::letter : present::Paper::a4,
                               lettering, today()};
    transfer::write_whole(options.sheet, present::make_html(list, plan.specs, plan.bars, sheet),
                          options.force, context);
    context.err() << "Wrote " << options.sheet << ".\n";
}

error::ExitCode run(const Options& options, Context& context) {
    const auto treatment = treatment_of(options);
    const auto list = make_list_for(options.request, context);
    const auto plan = plan_for(list, treatment, context);
    const drawing::Lettering lettering{context.unit(), options.both_units};
    if (!options.drawings.empty())
        write_drawings(options, list, plan, lettering, context);
    if (!options.sheet.empty())
        write_sheet(options, list, plan, lettering, context);
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

void declare_make_list(const Syntax& syntax, Plan& plan) {
    Options& o = chosen<Options>(syntax, plan, run);
    syntax.option("--for", o.request.screws, "these screws instead of the house list");
    syntax.option("--hole", o.request.hole, "the hole they all go through: close, F, 9/32, ...");
    syntax.flag("--sleeves", o.request.options.sleeves,
                "a sleeve over an owned pilot counts as a piece");
    syntax.flag("--turn-down", o.request.options.turn_down,
                "an owned soft pilot that no screw needs may be turned smaller");
    const auto hardened =
        syntax.flag("--hardened", o.hardened, "new pilots are hardened, drawn and ground");
    syntax.flag("--soft", o.soft, "new pilots are left soft, for a short run (the default)")
        .excludes(hardened);
    syntax.option("--steel", o.steel, "what new pilots are made of: O1 (the default), W1, silver");
    syntax.option("--drawings", o.drawings, "a drawing a piece into this folder, SVG");
    syntax.option("--html", o.sheet, "the printable sheet into this file");
    syntax.flag("--letter", o.letter, "the sheet on Letter paper rather than A4");
    syntax.flag("--both-units", o.both_units, "the other unit too, in brackets");
    syntax.flag("--force", o.force, "replace drawings and sheet that are there");
    const auto json = syntax.flag("--json", o.json, "for programs, format 1");
    syntax.flag("--csv", o.csv, "one row a piece").excludes(json);
    syntax.footer("See docs/making-pilots.md.");
}

} // namespace cli::commands
