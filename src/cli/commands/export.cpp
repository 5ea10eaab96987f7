// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `export`: the present records as the CSV that `import` reads. Retired tools stay behind: a row
// has no way to say so, and they would come back as tools in hand.
#include <CLI/CLI.hpp>
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

using Rows = std::vector<std::vector<std::string>>;

struct Options {
    std::string file;
    bool force = false;
    bool for_spreadsheet = false;
};

// A spreadsheet reckons out what begins so, and may run it; text with an apostrophe before it stays
// text.
void defuse(Rows& rows) {
    for (auto& row : rows)
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

Rows bodies(Context& context) {
    const store::File& file = context.catalogue();
    auto records = store::bodies(file);
    say_left_out(drop_retired(records), context);
    return transfer::csv_rows(records, record::body_columns(), file.unit());
}

// A body that stays behind cannot be named by its pilot.
Rows pilots(Context& context) {
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
    return transfer::csv_rows(records, record::pilot_columns(), file.unit());
}

Rows screws(Context& context) {
    const store::File& file = context.catalogue();
    return transfer::csv_rows(store::own_screws(file), record::screw_columns(), file.unit());
}

Rows house(Context& context) {
    const store::File& file = context.catalogue();
    return transfer::csv_rows(store::house(file), record::house_columns(), file.unit());
}

template <Rows (*rows_of)(Context&)>
error::ExitCode run(const Options& options, Context& context) {
    Rows rows = rows_of(context);
    if (options.for_spreadsheet)
        defuse(rows);
    if (options.file.empty()) {
        print_csv(rows, context);
        return error::ExitCode::done;
    }
    std::string text;
    for (const auto& row : rows)
        text += present::csv_row(row);
    transfer::write_whole(options.file, text, options.force, context);
    const std::size_t count = rows.size() - 1;
    context.out() << "Wrote " << count << (count == 1 ? " row to " : " rows to ")
                  << present::safe(options.file) << ".\n";
    return error::ExitCode::done;
}

template <Rows (*rows_of)(Context&)>
void declare_verb(CLI::App& app, Plan& plan, const std::string& name, const std::string& about) {
    CLI::App* verb = app.add_subcommand(name, about);
    Options& options = chosen<Options>(*verb, plan, run<rows_of>);
    verb->add_option("-o,--output", options.file, "write to this file; else print")
        ->type_name("FILE");
    verb->add_flag("--force", options.force, "replace the file if it is there");
    verb->add_flag("--for-spreadsheet", options.for_spreadsheet,
                   "an apostrophe before each cell that a spreadsheet would take for a formula");
}

} // namespace

void declare_export(CLI::App& app, Plan& plan) {
    app.require_subcommand(1);
    declare_verb<bodies>(app, plan, "bodies", "counterbores and spotfacers");
    declare_verb<pilots>(app, plan, "pilots", "removable pilots");
    declare_verb<screws>(app, plan, "screws", "screws of the shop's own");
    declare_verb<house>(app, plan, "house", "the house list");
}

} // namespace cli::commands
