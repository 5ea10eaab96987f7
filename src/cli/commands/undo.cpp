// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `undo`: takes the newest change back, as a change of its own.
#include "cli/command.hpp"
#include "present/text.hpp"
#include "store/history.hpp"
#include "store/loans.hpp"

namespace cli::commands {

namespace {

struct Options {};

constexpr auto k_loans_stay = "loans are not part of the history and stay as they are; "
                              "counterpart loan back ends one";

// Someone who has just lent a tool means the loan.
store::Undone take_back_newest(store::File& file) {
    try {
        return store::undo(file);
    } catch (const error::NoSuchRecord& nothing) {
        throw error::NoSuchRecord(nothing.what(),
                                  store::newest_loan_time(file) ? k_loans_stay : nothing.hint());
    }
}

error::ExitCode run(const Options&, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    const store::Undone undone = take_back_newest(file);
    context.out() << "Taken back: " << present::safe(undone.words) << " (of " << undone.time << ", "
                  << undone.rows << (undone.rows == 1 ? " row)\n" : " rows)\n");
    if (const auto loan = store::newest_loan_time(file); loan && *loan >= undone.time)
        context.out() << "Mind: " << k_loans_stay << ".\n";
    return error::ExitCode::done;
}

} // namespace

void declare_undo(const Syntax& syntax, Plan& plan) {
    chosen<Options>(syntax, plan, run);
    syntax.footer("Again takes back the change before that one. Numbers are not given out again.");
}

} // namespace cli::commands
