// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `import`: a CSV file into the catalogue: all of it or nothing, or with --rejects the rows that
// are right. A trial that goes wrong is taken back as a whole and made again without the rows that
// were wrong, so that what is written was right together.
#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "cli/command.hpp"
#include "cli/tool.hpp"
#include "cli/transfer/files.hpp"
#include "cli/transfer/progress.hpp"
#include "cli/transfer/rejects.hpp"
#include "cli/transfer/take_in.hpp"
#include "present/csv.hpp"
#include "present/table.hpp"
#include "present/text.hpp"
#include "store/column_maps.hpp"

namespace cli::commands {

namespace {

using transfer::ColumnMap;
using transfer::SheetRow;

enum class What { bodies, pilots, screws, house };

constexpr const char* k_kinds[] = {"bodies", "pilots", "screws", "house"};

struct Options {
    std::string file;
    std::string map;     // file of their column names
    std::string rejects; // file to write
    bool dry_run = false;
};

// One file on its way in.
struct Intake {
    What what;
    transfer::Input& input;
    transfer::Progress& progress;
    std::vector<std::string> header;
    ColumnMap map;
    bool map_is_new = false;
    std::size_t unreadable = 0;     // rows, and the header, that cannot
    std::size_t count = 0;          // rows that can be tried
    std::set<std::size_t> left_out; // of them, because they were wrong
    transfer::Mistakes mistakes;    // of every row that was tried
    bool readable = true;           // as CSV, with columns of ours

    [[nodiscard]] std::string kind() const { return k_kinds[static_cast<int>(what)]; }
};

// What came of trying the rows once.
struct Trial {
    std::string taken; // in words
    std::vector<transfer::TakenRow> rows;
    transfer::Mistakes mistakes;
};

std::string counted(std::size_t count, const std::string& one, const std::string& many) {
    return fmt::format("{} {}", count, count == 1 ? one : many);
}

std::string with_numbers(const std::string& text, const std::vector<std::int64_t>& numbers) {
    if (numbers.empty())
        return text;
    if (numbers.size() == 1)
        return fmt::format("{}, number {}", text, numbers.front());
    return fmt::format("{}, numbers {} to {}", text, numbers.front(), numbers.back());
}

std::vector<std::string> columns_of(What what) {
    switch (what) {
    case What::bodies:
        return record::names_of(record::body_columns());
    case What::pilots:
        return record::names_of(record::pilot_columns());
    case What::screws:
        return record::names_of(record::screw_columns());
    case What::house:
        break;
    }
    return record::names_of(record::house_columns());
}

// What was taken in, in words.
std::string take_in(What what, const transfer::Rows& rows, transfer::Destination& to,
                    Context& context) {
    if (what == What::bodies) {
        const auto numbers = transfer::take_in_bodies(rows, to);
        return with_numbers(counted(numbers.size(), "body", "bodies"), numbers);
    }
    if (what == What::pilots) {
        const auto numbers = transfer::take_in_pilots(rows, to);
        return with_numbers(counted(numbers.size(), "pilot", "pilots"), numbers);
    }
    if (what == What::screws)
        return counted(transfer::take_in_screws(rows, to), "screw", "screws");
    return counted(transfer::take_in_house(rows, to, context.tables()), "screw", "screws") +
           " of the house list";
}

// The map asked for, else the one that the catalogue has for this header.
void choose_map(Intake& intake, const Options& options, const store::File& file) {
    if (!options.map.empty()) {
        intake.map =
            transfer::read_column_map(transfer::read_whole(options.map), columns_of(intake.what));
        transfer::refuse_other_columns(intake.map, intake.header);
        intake.map_is_new = true;
    } else if (const auto ours =
                   store::column_map(file, intake.kind(), transfer::header_key(intake.header))) {
        intake.map = transfer::map_from(*ours, intake.header);
    }
}

present::CsvSource source_of(const Intake& intake) {
    intake.input.rewind();
    return [&input = intake.input](char* to, std::size_t most) { return input.read(to, most); };
}

// Shows the rows that are not left out; what is wrong with the file goes into `mistakes`.
void each_row(const Intake& intake, transfer::Mistakes& mistakes, const transfer::SeeRow& see) {
    const bool of_tools = intake.what == What::bodies || intake.what == What::pilots;
    const transfer::Header header{columns_of(intake.what), of_tools ? "" : "screw", intake.map};
    transfer::read_sheet(source_of(intake), header, mistakes, [&](const SheetRow& row) {
        intake.progress.at(row.row);
        if (intake.left_out.count(row.row) == 0)
            see(row);
    });
}

void read_intake(Intake& intake, const Options& options, const store::File& file) {
    intake.header = present::CsvReader(source_of(intake)).header();
    choose_map(intake, options, file);
    each_row(intake, intake.mistakes, [&](const SheetRow&) { ++intake.count; });
    intake.unreadable = intake.mistakes.by_row().size();
    intake.readable = intake.mistakes.empty();
}

Trial try_rows(const Intake& intake, store::Change& change, bool tell, Context& context) {
    Trial trial;
    const Measures measures(context);
    transfer::Destination to{context.catalogue(store::Access::write), change, measures.reading(),
                             trial.mistakes, tell ? &trial.rows : nullptr};
    const transfer::Rows rows = [&intake](const transfer::SeeRow& see) {
        transfer::Mistakes told_already;
        each_row(intake, told_already, see);
    };
    trial.taken = take_in(intake.what, rows, to, context);
    intake.progress.done();
    if (intake.map_is_new)
        store::put_column_map(change, intake.kind(), transfer::header_key(intake.header),
                              transfer::ours_in_order(intake.map, intake.header));
    return trial;
}

// Leaves out the rows that were wrong; false when none is left.
bool drop_rows(Intake& intake, const transfer::Mistakes& mistakes) {
    for (const auto& [row, problem] : mistakes.by_row())
        intake.left_out.insert(row);
    return intake.left_out.size() < intake.count;
}

void say_map(const Intake& intake, const Context& context) {
    const std::string words = transfer::in_words(intake.map, intake.header);
    if (!words.empty())
        context.out() << (intake.map_is_new ? "Columns: " : "Columns, by the map saved for them: ")
                      << words << ".\n";
}

// A row a row of the file: the number it would get and what it is, or what is wrong.
std::string trial_table(const Intake& intake, const Trial& trial, const Context& context) {
    struct Line {
        std::size_t row;
        std::vector<std::string> cells;
    };
    std::vector<Line> lines;
    for (const auto& [row, number, what] : trial.rows)
        lines.push_back(
            {row, {std::to_string(row), number == 0 ? "" : std::to_string(number), what}});
    const auto wrong = intake.mistakes.by_row();
    const std::size_t right = intake.count - (wrong.size() - intake.unreadable);
    const std::size_t more = right - trial.rows.size();
    for (const auto& [row, problem] : wrong)
        lines.push_back({row, {std::to_string(row), "", "wrong: " + problem}});
    std::stable_sort(lines.begin(), lines.end(),
                     [](const Line& a, const Line& b) { return a.row < b.row; });
    present::Table table({{"row", true}, {"number", true}, {"what it is"}});
    for (const Line& line : lines)
        table.add(line.cells);
    return (table.empty() ? "" : table.text(context.width(), context.style())) +
           (more == 0 ? "" : fmt::format("and {} more rows that are right\n", more));
}

error::ExitCode tell_of_trial(const Intake& intake, const Trial& trial, const Options& options,
                              const Context& context) {
    context.out() << trial_table(intake, trial, context);
    if (intake.mistakes.empty()) {
        context.out() << "Nothing wrong: " << trial.taken << ". Nothing was written.\n";
        return error::ExitCode::done;
    }
    intake.mistakes.print(options.file, context.err());
    context.out() << counted(intake.mistakes.by_row().size(), "row is", "rows are")
                  << " wrong. Nothing was written.\n";
    return error::ExitCode::bad_data;
}

// How to go on when nothing went in.
std::string next_step(const Intake& intake, const Options& options, bool rejects_written) {
    if (rejects_written)
        return "mend " + present::safe(options.rejects) + " and import that";
    const auto wrong = intake.mistakes.by_row();
    const auto header = wrong.find(1);
    const bool unknown =
        header != wrong.end() && header->second.find("unknown column") != std::string::npos;
    return unknown && options.map.empty()
               ? "mend the file, or say with --map what its columns are called here"
               : "mend the file and import it again";
}

[[noreturn]] void refuse(const Intake& intake, const Options& options, bool rejects_written,
                         const Context& context) {
    intake.mistakes.print(options.file, context.err());
    throw error::BadData(
        "nothing was imported: " + counted(intake.mistakes.count(), "mistake", "mistakes") +
            " in " + options.file,
        next_step(intake, options, rejects_written));
}

void write_rejects(const Intake& intake, const Options& options, const Context& context) {
    transfer::write_whole(options.rejects,
                          transfer::rejects_csv(source_of(intake), intake.mistakes.by_row()), false,
                          context);
}

error::ExitCode finish(const Intake& intake, const Trial& trial, store::Change& change,
                       const Options& options, Context& context) {
    const auto rejected = intake.mistakes.by_row();
    if (!rejected.empty())
        write_rejects(intake, options, context);
    change.commit();
    context.out() << "Imported " << trial.taken << ".\n";
    if (rejected.empty())
        return error::ExitCode::done;
    intake.mistakes.print(options.file, context.err());
    context.out() << counted(rejected.size(), "row was", "rows were")
                  << " rejected: mend what is in " << present::safe(options.rejects)
                  << " and import that.\n";
    return error::ExitCode::done;
}

template <What what>
error::ExitCode run(const Options& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    transfer::Input input(options.file);
    transfer::Progress progress;
    Intake intake{what, input, progress, {}, {}, false, 0, 0, {}, {}, true};
    read_intake(intake, options, file);
    const bool may_reject = !options.rejects.empty() && intake.readable;
    say_map(intake, context);
    while (true) {
        store::Change change(context.catalogue(store::Access::write), context.settings().words);
        const Trial trial = try_rows(intake, change, options.dry_run, context);
        intake.mistakes.add(trial.mistakes);
        const bool right = intake.readable && trial.mistakes.empty();
        if (!right && may_reject && drop_rows(intake, trial.mistakes))
            continue;
        if (options.dry_run)
            return tell_of_trial(intake, trial, options, context);
        if (right)
            return finish(intake, trial, change, options, context);
        if (may_reject)
            write_rejects(intake, options, context);
        refuse(intake, options, may_reject, context);
    }
}

template <What what>
void declare_verb(const Syntax& syntax, Plan& plan, const std::string& name,
                  const std::string& about) {
    const Syntax verb = syntax.verb(name, about);
    Options& options = chosen<Options>(verb, plan, run<what>);
    verb.word("FILE", options.file, "a CSV file, its first row naming the columns").required();
    verb.option("--map", options.map, "a file that says what its columns are called here")
        .takes("MAPFILE");
    verb.option("--rejects", options.rejects,
                "take in the rows that are right, write the others into this file")
        .takes("FILE");
    verb.flag("--dry-run", options.dry_run, "show what would happen, write nothing");
}

} // namespace

void declare_import(const Syntax& syntax, Plan& plan) {
    syntax.needs_verb();
    declare_verb<What::bodies>(syntax, plan, "bodies", "counterbores and spotfacers");
    declare_verb<What::pilots>(syntax, plan, "pilots", "removable pilots");
    declare_verb<What::screws>(syntax, plan, "screws", "screws of the shop's own");
    declare_verb<What::house>(syntax, plan, "house", "the house list");
}

} // namespace cli::commands
