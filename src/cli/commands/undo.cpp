// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `undo`: takes the newest change back, as a change of its own.
#include "cli/command.hpp"
#include "present/text.hpp"
#include "store/history.hpp"

namespace cli::commands {

namespace {

struct Options {};

error::ExitCode run(const Options&, Context& context) {
    const store::Undone undone = store::undo(context.catalogue(store::Access::write));
    context.out() << "Taken back: " << present::safe(undone.words) << " (of " << undone.time << ", "
                  << undone.rows << (undone.rows == 1 ? " row)\n" : " rows)\n");
    return error::ExitCode::done;
}

} // namespace

void declare_undo(CLI::App& app, Plan& plan) {
    chosen<Options>(app, plan, run);
    app.footer("Again takes back the change before that one. Numbers are not given out again.");
}

} // namespace cli::commands
