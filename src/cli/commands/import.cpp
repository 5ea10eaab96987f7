// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `import`: a CSV file into the catalogue, all of it or nothing.
#include <fmt/format.h>

#include "cli/command.hpp"
#include "cli/tool.hpp"
#include "cli/transfer/files.hpp"
#include "cli/transfer/take_in.hpp"

namespace cli::commands {

namespace {

enum class What { bodies, pilots, screws, house };

struct Options {
    std::string file;
    bool dry_run = false;
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

std::vector<transfer::SheetRow> read_rows(What what, const std::string& text,
                                          transfer::Mistakes& mistakes) {
    switch (what) {
    case What::bodies:
        return transfer::read_sheet(text, record::names_of(record::body_columns()), "", mistakes);
    case What::pilots:
        return transfer::read_sheet(text, record::names_of(record::pilot_columns()), "", mistakes);
    case What::screws:
        return transfer::read_sheet(text, record::names_of(record::screw_columns()), "screw",
                                    mistakes);
    case What::house:
        break;
    }
    return transfer::read_sheet(text, record::names_of(record::house_columns()), "screw", mistakes);
}

// What was taken in, in words.
std::string take_in(What what, const std::vector<transfer::SheetRow>& rows,
                    transfer::Destination& to, Context& context) {
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

void refuse_mistakes(const transfer::Mistakes& mistakes, const Options& options,
                     const Context& context) {
    if (mistakes.empty())
        return;
    mistakes.print(options.file, context.err());
    throw error::BadData(
        "nothing was imported: " + counted(mistakes.count(), "mistake", "mistakes") + " in " +
            options.file,
        "mend the file and import it again");
}

template <What what>
error::ExitCode run(const Options& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    const Measures measures(context);
    transfer::Mistakes mistakes;
    const auto rows = read_rows(what, transfer::read_whole(options.file), mistakes);
    store::Change change(file, context.settings().words);
    transfer::Destination to{file, change, measures.reading(), mistakes};
    const std::string taken = take_in(what, rows, to, context);
    refuse_mistakes(mistakes, options, context);
    if (options.dry_run) {
        context.out() << "Nothing wrong: " << taken << ". Nothing was written.\n";
        return error::ExitCode::done;
    }
    change.commit();
    context.out() << "Imported " << taken << ".\n";
    return error::ExitCode::done;
}

template <What what>
void declare_verb(CLI::App& app, Plan& plan, const std::string& name, const std::string& about) {
    CLI::App* verb = app.add_subcommand(name, about);
    Options& options = chosen<Options>(*verb, plan, run<what>);
    verb->add_option("FILE", options.file, "a CSV file, its first row naming the columns")
        ->required();
    verb->add_flag("--dry-run", options.dry_run, "check everything, write nothing");
}

} // namespace

void declare_import(CLI::App& app, Plan& plan) {
    app.require_subcommand(1);
    declare_verb<What::bodies>(app, plan, "bodies", "counterbores and spotfacers");
    declare_verb<What::pilots>(app, plan, "pilots", "removable pilots");
    declare_verb<What::screws>(app, plan, "screws", "screws of the shop's own");
    declare_verb<What::house>(app, plan, "house", "the house list");
}

} // namespace cli::commands
