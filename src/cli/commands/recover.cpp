// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `recover`: a new catalogue from what is left of a damaged one.
#include "store/recover.hpp"

#include <algorithm>

#include "cli/command.hpp"
#include "cli/finding.hpp"
#include "cli/transfer/files.hpp"
#include "present/text.hpp"
#include "store/new_file.hpp"

namespace cli::commands {

namespace {

namespace fs = std::filesystem;

struct Options {
    std::string output;
    bool in_place = false;
};

fs::path target(const Options& options, const Context& context) {
    if (options.in_place)
        return context.path();
    if (!options.output.empty())
        return options.output;
    return context.path().string() + ".recovered";
}

void print(const std::string& title, const std::vector<store::Finding>& findings,
           const Context& context) {
    if (!findings.empty())
        context.out() << title << '\n';
    for (const store::Finding& finding : findings)
        context.out() << "    " << present::safe(line_of(finding)) << '\n';
}

void print_lost(const store::Recovered& recovered, const Context& context) {
    if (!recovered.lost.empty())
        context.out() << "Could not be saved:\n";
    for (const std::string& lost : recovered.lost)
        context.out() << "    " << present::safe(lost) << '\n';
}

error::ExitCode run(const Options& options, Context& context) {
    const fs::path place = store::real_path(context.path());
    const auto rights = store::rights_of(place);
    transfer::drop_left_over(options.in_place ? place : target(options, context), context.err());
    const store::Recovered recovered = store::recover(context.path(), target(options, context));
    print("Mended from the history (as it is there -> as the table had it):", recovered.mended,
          context);
    print("Kept, but look it over (as in the history -> as in the table):", recovered.doubtful,
          context);
    print_lost(recovered, context);
    context.out() << "Recovered to " << present::safe(recovered.path.string()) << ": "
                  << recovered.rows << (recovered.rows == 1 ? " row" : " rows") << ", checked.\n";
    if (!recovered.history_whole)
        context.out() << "The history goes on from here; undo does not go back further.\n";
    if (!recovered.saved.empty())
        context.out() << "The damaged file: " << present::safe(recovered.saved.string()) << '\n';
    transfer::say_rights(place, rights, context.err());
    return error::ExitCode::done;
}

} // namespace

void declare_recover(const Syntax& syntax, Plan& plan) {
    Options& options = chosen<Options>(syntax, plan, run);
    const auto output = syntax
                            .option("-o,--output", options.output,
                                    "the new catalogue; else the catalogue's name and .recovered")
                            .takes("FILE");
    syntax
        .flag("--in-place", options.in_place,
              "put it in the place of the damaged one, which is saved beside it")
        .excludes(output);
}

} // namespace cli::commands
