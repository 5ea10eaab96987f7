// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `restore`: puts a backup in the place of the catalogue, which is saved first.
#include <fmt/format.h>

#include "cli/command.hpp"
#include "cli/transfer/files.hpp"
#include "present/text.hpp"
#include "store/backup.hpp"
#include "store/new_file.hpp"

namespace cli::commands {

namespace {

struct Options {
    std::string file;
};

void print_numbers(const store::GivenNumbers& since, const Context& context) {
    if (!since.kinds.empty())
        context.out() << fmt::format(
            "Given out since that backup: {} number{}, up to {}; not given out again.\n",
            since.kinds.size(), since.kinds.size() == 1 ? "" : "s", since.kinds.rbegin()->first);
    if (!since.all)
        context.out()
            << "Which numbers the catalogue had given out cannot all be read: see that no "
               "tool carries one that comes again.\n";
}

error::ExitCode run(const Options& options, Context& context) {
    const std::filesystem::path place = store::real_path(context.path());
    const auto rights = store::rights_of(place);
    transfer::drop_left_over(place, context.err());
    const store::Restored restored = store::restore(context.path(), options.file);
    context.out() << "Put back from " << present::safe(options.file) << ": " << restored.rows
                  << (restored.rows == 1 ? " row" : " rows") << ", checked.\n";
    if (restored.another)
        context.out() << "It is another catalogue than the one that was there.\n";
    print_numbers(restored.since, context);
    if (!restored.saved.empty())
        context.out() << "The catalogue as it was: " << present::safe(restored.saved.string())
                      << '\n';
    transfer::say_rights(place, rights, context.err());
    return error::ExitCode::done;
}

} // namespace

void declare_restore(const Syntax& syntax, Plan& plan) {
    Options& options = chosen<Options>(syntax, plan, run);
    syntax.word("FILE", options.file, "a backup; it is only read").required();
}

} // namespace cli::commands
