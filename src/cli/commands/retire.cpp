// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `retire`: a tool that is gone for good, worn out or lost. Its number is not given out again.
#include "cli/command.hpp"
#include "cli/tool.hpp"

namespace cli::commands {

namespace {

struct Options {
    std::string number;
    std::string why;
};

error::ExitCode run(const Options& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    Tool tool = find_tool(file, tool_number(options.number));
    std::visit(
        [&](auto& record) {
            if (record.retired)
                throw error::BadData("already retired: " + one_line(record, file.unit()),
                                     "counterpart unretire takes it back");
            record.retired = options.why.empty() ? "no reason given" : options.why;
        },
        tool);
    store::Change change(file, context.settings().words);
    update_tool(change, tool);
    change.commit();
    context.out() << one_line(tool, file.unit()) << '\n';
    return error::ExitCode::done;
}

} // namespace

void declare_retire(CLI::App& app, Plan& plan) {
    Options& options = chosen<Options>(app, plan, run);
    app.add_option("NUMBER", options.number, "the tool's number")->required();
    app.add_option("--why", options.why, "worn out, lost, broken, ...");
}

} // namespace cli::commands
