// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `export`: the present records as the CSV that `import` reads. Retired tools stay behind: a row
// has no way to say so, and they would come back as tools in hand.
#include <algorithm>
#include <set>

#include "cli/command.hpp"
#include "cli/format.hpp"
#include "cli/inventory.hpp"
#include "cli/transfer/files.hpp"
#include "cli/transfer/rows.hpp"
#include "present/csv.hpp"
#include "present/text.hpp"

namespace cli::commands {

namespace {

using transfer::SeeCells;

struct Options {
    std::string file;
    bool force = false;
    bool for_spreadsheet = false;
};

// A spreadsheet reckons out what begins so, and may run it; text with an apostrophe before it stays
// text.
void defuse(std::vector<std::string>& row) {
    for (std::string& cell : row)
        if (!cell.empty() && std::string("=+-@\t\r").find(cell.front()) != std::string::npos)
            cell.insert(0, 1, '\'');
}

template <class Record>
std::size_t drop_retired(std::vector<Record>& records) {
    return std::erase_if(records, [](const Record& r) { return r.retired.has_value(); });
}

void say_left_out(std::size_t count, const Context& context) {
    if (count > 0)
        context.err() << "Left out: " << count << " retired.\n";
}

void bodies(Context& context, const SeeCells& see) {
    const store::File& file = context.catalogue();
    auto records = store::bodies(file);
    say_left_out(drop_retired(records), context);
    transfer::each_row(records, record::body_columns(), file.unit(), see);
}

// A body that stays behind cannot be named by its pilot.
void pilots(Context& context, const SeeCells& see) {
    const store::File& file = context.catalogue();
    std::set<std::int64_t> gone;
    for (const trade::Body& body : store::bodies(file))
        if (body.retired)
            gone.insert(body.number);
    auto records = pilot_records(file);
    say_left_out(drop_retired(records), context);
    for (record::PilotRecord& pilot : records) {
        if (!pilot.in_body || gone.count(*pilot.in_body) == 0)
            continue;
        pilot.in_body = std::nullopt;
        pilot.tried = std::nullopt;
    }
    transfer::each_row(records, record::pilot_columns(), file.unit(), see);
}

void screws(Context& context, const SeeCells& see) {
    const store::File& file = context.catalogue();
    transfer::each_row(store::own_screws(file), record::screw_columns(), file.unit(), see);
}

void house(Context& context, const SeeCells& see) {
    const store::File& file = context.catalogue();
    transfer::each_row(store::house(file), record::house_columns(), file.unit(), see);
}

template <void (*each_row_of)(Context&, const SeeCells&)>
error::ExitCode run(const Options& options, Context& context) {
    std::string text;
    std::size_t rows = 0;
    each_row_of(context, [&](std::vector<std::string> cells) {
        if (options.for_spreadsheet)
            defuse(cells);
        if (options.file.empty())
            print_csv_row(std::move(cells), context);
        else
            text += present::csv_row(cells);
        ++rows;
    });
    if (options.file.empty())
        return error::ExitCode::done;
    transfer::write_whole(options.file, text, options.force, context);
    const std::size_t count = rows - 1; // without the header
    context.out() << "Wrote " << count << (count == 1 ? " row to " : " rows to ")
                  << present::safe(options.file) << ".\n";
    return error::ExitCode::done;
}

template <void (*each_row_of)(Context&, const SeeCells&)>
void declare_verb(const Syntax& syntax, Plan& plan, const std::string& name,
                  const std::string& about) {
    const Syntax verb = syntax.verb(name, about);
    Options& options = chosen<Options>(verb, plan, run<each_row_of>);
    verb.option("-o,--output", options.file, "write to this file; else print").takes("FILE");
    verb.flag("--force", options.force, "replace the file if it is there");
    verb.flag("--for-spreadsheet", options.for_spreadsheet,
              "an apostrophe before each cell that a spreadsheet would take for a formula");
}

} // namespace

void declare_export(const Syntax& syntax, Plan& plan) {
    syntax.needs_verb();
    declare_verb<bodies>(syntax, plan, "bodies", "counterbores and spotfacers");
    declare_verb<pilots>(syntax, plan, "pilots", "removable pilots");
    declare_verb<screws>(syntax, plan, "screws", "screws of the shop's own");
    declare_verb<house>(syntax, plan, "house", "the house list");
}

} // namespace cli::commands
