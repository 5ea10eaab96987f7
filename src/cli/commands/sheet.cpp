// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `sheet`: from the answer to a good hole, for one screw or for the lines of a job.
#include <filesystem>

#include "cli/command.hpp"
#include "cli/sheet_request.hpp"
#include "cli/transfer/files.hpp"
#include "present/sheet_html.hpp"
#include "present/sheet_json.hpp"
#include "present/sheet_text.hpp"

namespace cli::commands {

namespace {

struct Options {
    SheetRequest request;
    std::string job;  // CSV file
    std::string html; // file for the printable sheets
    bool letter = false;
    bool both_units = false;
    bool force = false;
    bool explain = false;
    bool json = false;
};

void write_html(const Options& options, const std::vector<job::Sheet>& sheets,
                const job::Plan* plan, Context& context) {
    if (options.html.empty())
        return;
    const auto paper = options.letter ? present::Paper::letter : present::Paper::a4;
    const auto html =
        present::sheet_html(sheets, plan, paper, {context.unit(), options.both_units});
    transfer::write_whole(options.html, html, options.force, context);
    context.err() << "Wrote " << options.html << ".\n";
}

error::ExitCode exit_for(const std::vector<job::Sheet>& sheets) {
    for (const auto& sheet : sheets)
        if (!sheet.usable())
            return error::ExitCode::nothing_matched;
    return error::ExitCode::done;
}

present::SheetLayout layout_of(const Options& options, const Context& context, length::Unit unit) {
    return {unit, context.style(), context.width(), options.explain};
}

error::ExitCode one(const Options& options, Context& context) {
    const std::vector<job::Sheet> sheets{SheetMaker(context).make(options.request)};
    write_html(options, sheets, nullptr, context);
    if (options.json)
        context.out() << present::json_text(present::sheet_json(sheets.front()));
    else
        context.out() << present::sheet_text(sheets.front(),
                                             layout_of(options, context, context.unit()));
    return exit_for(sheets);
}

error::ExitCode many(const Options& options, Context& context) {
    transfer::Mistakes mistakes;
    const auto text = transfer::read_whole(options.job);
    const auto sheets = SheetMaker(context).make_job(text, options.request, mistakes);
    if (!mistakes.empty()) {
        mistakes.print(options.job, context.err());
        return error::ExitCode::bad_data;
    }
    const auto plan = job::plan_job(sheets);
    write_html(options, sheets, &plan, context);
    if (options.json) {
        context.out() << present::json_text(present::job_json(plan, sheets));
        return exit_for(sheets);
    }
    const auto layout = layout_of(options, context, context.unit());
    context.out() << present::plan_text(plan, sheets, layout);
    for (const auto& sheet : sheets)
        context.out() << '\n' << present::sheet_text(sheet, layout);
    return exit_for(sheets);
}

error::ExitCode run(const Options& options, Context& context) {
    context.catalogue(); // first: without one there is nothing to ask
    if (options.request.asked.screw.empty() == options.job.empty())
        throw error::UsageError("sheet: a screw, or --job with a file of many",
                                "sheet \"1/4-20 socket head cap\", or sheet --job FILE.csv");
    return options.job.empty() ? one(options, context) : many(options, context);
}

} // namespace

void declare_sheet(const Syntax& syntax, Plan& plan) {
    Options& o = chosen<Options>(syntax, plan, run);
    auto& r = o.request;
    syntax.word("SCREW", r.asked.screw, "size, pitch, form, series: \"5/16-18 socket head cap\"");
    syntax.option("--job", o.job,
                  "CSV of many lines: part, screw, count, material, thickness, "
                  "notes");
    syntax.option("--body", r.body, "this body rather than the best").takes("NUMBER");
    syntax.option("--pilot", r.pilot, "with this pilot").takes("NUMBER");
    declare_question(syntax, r.asked);
    syntax.option("--material", r.material, "what is cut, as `material list` has it");
    syntax.option("--count", r.count, "how many holes");
    syntax.option("--edge", r.edge, "from the hole's axis to the edge of the part");
    syntax.option("--torque", r.torque, "seating torque: \"17 ft-lb\", \"23 N m\"");
    syntax.option("--grade", r.grade, "grade of the screw: \"grade 5\", 8.8, A2-70");
    syntax.option("--surface", r.surface, "of the threads: \"dry steel\", oiled, ...");
    syntax.option("--on", r.on, "drill press, mill or lathe: which other ways come first");
    syntax.flag("--explain", o.explain, "formula, inputs and source of every figure");
    syntax.option("--html", o.html, "printable sheets into this file, a page each");
    syntax.flag("--letter", o.letter, "on Letter paper rather than A4");
    syntax.flag("--both-units", o.both_units, "on the drawing the other unit too");
    syntax.flag("--force", o.force, "replace a file that is there");
    syntax.flag("--json", o.json, "for programs, format 2");
    syntax.footer(
        "Exit code 1 when a line is neither ready nor after work. See docs/at-the-machine.md.");
}

} // namespace cli::commands
