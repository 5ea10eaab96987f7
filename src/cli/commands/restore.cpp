// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `restore`: puts a backup in the place of the catalogue, which is saved first.
#include "cli/command.hpp"
#include "present/text.hpp"
#include "store/backup.hpp"

namespace cli::commands {

namespace {

struct Options {
    std::string file;
};

error::ExitCode run(const Options& options, Context& context) {
    const store::Restored restored = store::restore(context.path(), options.file);
    context.out() << "Put back from " << present::safe(options.file) << ": " << restored.rows
                  << (restored.rows == 1 ? " row" : " rows") << ", checked.\n";
    if (!restored.saved.empty())
        context.out() << "The catalogue as it was: " << present::safe(restored.saved.string())
                      << '\n';
    return error::ExitCode::done;
}

} // namespace

void declare_restore(CLI::App& app, Plan& plan) {
    Options& options = chosen<Options>(app, plan, run);
    app.add_option("FILE", options.file, "a backup; it is only read")->required();
}

} // namespace cli::commands
