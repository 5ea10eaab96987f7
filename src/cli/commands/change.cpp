// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `change`: new values for some columns of a tool.
#include <algorithm>

#include "cli/command.hpp"
#include "cli/record/options.hpp"
#include "cli/tool.hpp"
#include "present/text.hpp"

namespace cli::commands {

namespace {

using record::Cells;

// `number` is the tool's for good; where a pilot is, `pair` says.
const std::vector<std::string> k_not_here = {"number", "in_body", "tried"};

struct Options {
    std::string number;
    Cells cells;
};

template <class Record>
void refuse_foreign(const Cells& cells, const record::Columns<Record>& columns,
                    const std::string& kind) {
    const std::vector<std::string> known = record::names_of(columns);
    for (const auto& [name, cell] : cells)
        if (std::find(known.begin(), known.end(), name) == known.end())
            throw error::UsageError("a " + kind + " has no " + record::option_name(name),
                                    "counterpart add " + kind + " --help shows what it has");
}

// `cut_dia: 7/16 -> .437`, a line for every cell that is not as it was.
template <class Record>
std::string differences(const Record& before, const Record& after,
                        const record::Columns<Record>& columns, length::Unit stored) {
    std::string text;
    for (const auto& column : columns) {
        const std::string was = column.cell(before, stored);
        const std::string is = column.cell(after, stored);
        if (was != is)
            text += "  " + column.name + ": " + (was.empty() ? "not known" : present::safe(was)) +
                    " -> " + (is.empty() ? "not known" : present::safe(is)) + '\n';
    }
    return text;
}

template <class Record>
void change_record(const Record& before, const record::Columns<Record>& columns,
                   const std::string& kind, const Cells& cells, store::Change& change,
                   Context& context) {
    refuse_foreign(cells, columns, kind);
    const store::File& file = change.file();
    const Measures measures(context);
    Record after = before;
    record::refuse_options(record::read_cells(after, columns, cells, measures.reading()));
    record::refuse_options(record::contradictions(after));
    context.out() << one_line(after, file.unit()) << '\n';
    if (after == before) {
        context.out() << "  nothing to change\n";
        return;
    }
    update_tool(change, after);
    change.commit();
    context.out() << differences(before, after, columns, file.unit());
}

error::ExitCode run(const Options& options, Context& context) {
    if (options.cells.empty())
        throw error::UsageError("nothing to change is named",
                                "for instance --cut-dia .437 --cut-how micrometer");
    store::File& file = context.catalogue(store::Access::write);
    // Begun before the tool is read, lest what another program changes meanwhile be overwritten.
    store::Change change(file, context.settings().words);
    const Tool tool = find_tool(file, tool_number(options.number));
    if (const auto* body = std::get_if<trade::Body>(&tool))
        change_record(*body, record::body_columns(), "body", options.cells, change, context);
    else
        change_record(std::get<record::PilotRecord>(tool), record::pilot_columns(), "pilot",
                      options.cells, change, context);
    return error::ExitCode::done;
}

} // namespace

void declare_change(const Syntax& syntax, Plan& plan) {
    Options& options = chosen<Options>(syntax, plan, run);
    syntax.word("NUMBER", options.number, "the tool's number").required();
    record::declare_columns(syntax, record::body_columns(), k_not_here, options.cells);
    record::declare_columns(syntax, record::pilot_columns(), k_not_here, options.cells);
    syntax.footer("An empty value (--reach \"\") makes it not known. Where a pilot is: see pair.");
}

} // namespace cli::commands
