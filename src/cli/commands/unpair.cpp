// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `unpair`: a pilot comes out of its body. How it went there stays known.
#include "cli/command.hpp"
#include "cli/tool.hpp"
#include "store/tools.hpp"

namespace cli::commands {

namespace {

struct Options {
    std::string pilot;
};

error::ExitCode run(const Options& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    const auto pilot = find_pilot(file, tool_number(options.pilot));
    if (!pilot.in_body)
        throw error::BadData("in no body: " + one_line(pilot, file.unit()));
    const auto body = find_body(file, *pilot.in_body);
    store::Change change(file, context.settings().words);
    store::take_out(change, pilot.number);
    change.commit();
    context.out() << one_line(find_tool(file, pilot.number), file.unit()) << '\n'
                  << "Taken out of " << one_line(body, file.unit()) << '\n';
    return error::ExitCode::done;
}

} // namespace

void declare_unpair(const Syntax& syntax, Plan& plan) {
    Options& options = chosen<Options>(syntax, plan, run);
    syntax.word("PILOT", options.pilot, "the pilot's number").required();
}

} // namespace cli::commands
