// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `start`: makes a new, empty catalogue.
#include "cli/command.hpp"
#include "cli/transfer/files.hpp"
#include "present/text.hpp"

namespace cli::commands {

namespace {

struct Options {};

// The usual place is ours to make; a folder that the user named is not.
void make_usual_folder(const Context& context) {
    if (context.named())
        return;
    std::error_code ignored; // store::File::create says what is wrong
    std::filesystem::create_directories(context.path().parent_path(), ignored);
}

error::ExitCode run(const Options&, Context& context) {
    const length::Unit unit = context.settings().units.value_or(length::Unit::inch);
    make_usual_folder(context);
    transfer::drop_left_over(context.path(), context.err());
    const store::File file = store::File::create(context.path(), unit);
    context.out() << "Made the catalogue " << present::safe(context.path().string())
                  << ", bare numbers in "
                  << (file.unit() == length::Unit::inch ? "inches" : "millimetres") << ".\n";
    return error::ExitCode::done;
}

} // namespace

void declare_start(const Syntax& syntax, Plan& plan) {
    chosen<Options>(syntax, plan, run);
    syntax.footer("Bare numbers in the catalogue are inches, or millimetres with --units mm.");
}

} // namespace cli::commands
