// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a command is to the program. A command file declares its options without touching anything
// (the declare step) and names the function that does the work (the run step):
//
//     struct Options { std::string screw; };
//     error::ExitCode run(const Options& options, Context& context) { ... }
//
//     void declare_match(const Syntax& syntax, Plan& plan) {
//         Options& options = chosen<Options>(syntax, plan, run);
//         syntax.word("SCREW", options.screw, "the screw, for instance \"M8 socket head cap\"")
//             .required();
//     }
//
// A command with verbs (`work add`) calls `chosen` for each verb's syntax instead. Lengths are
// declared as strings and read in the run step: what a bare number means depends on the catalogue.
// `add_command` in CMakeLists.txt puts the command in the table.
#pragma once

#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "cli/context.hpp"
#include "cli/syntax.hpp"
#include "error/error.hpp"

namespace cli {

// What the command line asks for, set while it is parsed.
struct Plan {
    std::function<error::ExitCode(Context&)> run;
};

// Makes `run` the plan when `syntax` is the command or verb on the command line. The options live
// as long as the program parses.
template <class Options>
Options& chosen(const Syntax& syntax, Plan& plan,
                error::ExitCode (*run)(const Options& options, Context& context)) {
    auto options = std::make_shared<Options>();
    syntax.when_chosen([options, run, &plan] {
        plan.run = [options, run](Context& context) { return run(*options, context); };
    });
    return *options;
}

// Words that the shell took apart, put together again.
[[nodiscard]] inline std::string joined(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words)
        text += (text.empty() ? "" : " ") + word;
    return text;
}

// One row of the table of commands that the build generates.
struct Command {
    std::string_view name;
    std::string_view about; // one line for the listing
    std::string_view group; // the task it belongs to
    void (*declare)(const Syntax& syntax, Plan& plan);
};

// In the order of the listing.
[[nodiscard]] const std::vector<Command>& all_commands();

} // namespace cli
