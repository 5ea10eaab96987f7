// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `add`: one record by options that have the names of the CSV columns.
#include <utility>

#include "cli/command.hpp"
#include "cli/made_piece.hpp"
#include "cli/record/berths.hpp"
#include "cli/record/entry.hpp"
#include "cli/record/options.hpp"
#include "cli/tool.hpp"
#include "present/make_words.hpp"
#include "present/text.hpp"
#include "store/tools.hpp"

namespace cli::commands {

namespace {

using record::Cells;

struct Options {
    Cells cells;
};

struct PilotOptions {
    Cells cells;
    int item = 0; // of the make-list; 0: a pilot as found
    make::Options list;
};

struct ScrewOptions {
    std::string screw;
    Cells cells;
};

template <class Record>
Record read(const Cells& cells, const record::Columns<Record>& columns, Context& context) {
    const Measures measures(context);
    Record read;
    record::refuse_options(record::read_cells(read, columns, cells, measures.reading()));
    return read;
}

void say_added(const std::string& line, Context& context) {
    context.out() << "Added " << line << '\n';
}

error::ExitCode add_body(const Options& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    auto body = read(options.cells, record::body_columns(), context);
    record::refuse_options(record::problems_of(body, file));
    store::Change change(file, context.settings().words);
    body.number = record::add_tool(change, body);
    change.commit();
    say_added(one_line(body, file.unit()), context);
    return error::ExitCode::done;
}

// A piece of the make-list goes in several bodies: how it was tried counts for each of them.
error::ExitCode add_made_pilot(const PilotOptions& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    Cells cells = options.cells;
    const std::string tried = std::exchange(cells["tried"], "");
    auto pilot = read(cells, record::pilot_columns(), context);
    const auto piece = made_piece(options.item, pilot, options.list, context);
    complete_from(piece, pilot);
    store::Change change(file, context.settings().words);
    if (const auto problem = record::Berths(file).take(pilot))
        record::refuse_options({*problem});
    pilot.number = store::add_pilot(change, pilot);
    if (!tried.empty())
        for (const auto& body : piece.bodies)
            store::record_trial(change, {pilot.number, body.number, trade::parse_tried(tried)});
    change.commit();
    say_added(one_line(pilot, file.unit()) + "; for body " + present::body_numbers(piece), context);
    return error::ExitCode::done;
}

error::ExitCode add_pilot(const PilotOptions& options, Context& context) {
    if (options.item != 0)
        return add_made_pilot(options, context);
    store::File& file = context.catalogue(store::Access::write);
    auto pilot = read(options.cells, record::pilot_columns(), context);
    record::refuse_options(record::problems_of(pilot, file));
    store::Change change(file, context.settings().words);
    pilot.number = record::add_tool(change, pilot);
    change.commit();
    say_added(one_line(pilot, file.unit()), context);
    return error::ExitCode::done;
}

error::ExitCode add_screw(const ScrewOptions& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    Cells cells = options.cells;
    cells["screw"] = options.screw;
    const auto screw = read(cells, record::screw_columns(), context);
    store::Change change(file, context.settings().words);
    store::put_own_screw(change, screw);
    change.commit();
    std::string line = present::safe(screw.name);
    if (screw.head_dia)
        line += ", head " + shown_size(screw.head_dia, file.unit());
    if (screw.head_height)
        line += ", " + shown_size(screw.head_height, file.unit()) + " high";
    say_added(line, context);
    return error::ExitCode::done;
}

} // namespace

void declare_add(const Syntax& syntax, Plan& plan) {
    syntax.needs_verb();
    const auto body = syntax.verb("body", "a counterbore or spotfacer");
    Options& b = chosen<Options>(body, plan, add_body);
    record::declare_columns(body, record::body_columns(), {}, b.cells);

    const auto pilot = syntax.verb("pilot", "a removable pilot");
    PilotOptions& p = chosen<PilotOptions>(pilot, plan, add_pilot);
    record::declare_columns(pilot, record::pilot_columns(), {}, p.cells);
    const auto item = pilot.option("--from-list", p.item,
                                   "it is this item of the make-list, made; --tried then counts "
                                   "for every body it is for");
    pilot.flag("--sleeves", p.list.sleeves, "the list was made with --sleeves").needs(item);
    pilot.flag("--turn-down", p.list.turn_down, "the list was made with --turn-down").needs(item);

    const auto screw = syntax.verb("screw", "a screw of the shop's own, or its own figures "
                                            "for a listed one");
    ScrewOptions& s = chosen<ScrewOptions>(screw, plan, add_screw);
    screw.word("SCREW", s.screw, "what it is called: \"5/16-18 fillister\"").required();
    record::declare_columns(screw, record::screw_columns(), {"screw"}, s.cells);
}

} // namespace cli::commands
