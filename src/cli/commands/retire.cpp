// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `retire`: a tool that is gone for good, worn out or lost. Its number is not given out again.
#include "cli/command.hpp"
#include "cli/tool.hpp"
#include "store/tools.hpp"

namespace cli::commands {

namespace {

struct Options {
    std::string number;
    std::string why;
};

error::ExitCode run(const Options& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    const std::int64_t number = tool_number(options.number);
    store::Change change(file, context.settings().words);
    Tool tool = find_tool(file, number);
    std::visit(
        [&](auto& record) {
            if (record.retired)
                throw error::BadData("already retired: " + one_line(record, file.unit()),
                                     "counterpart unretire takes it back");
            record.retired = options.why.empty() ? "no reason given" : options.why;
        },
        tool);
    update_tool(change, tool);
    change.commit();
    context.out() << one_line(tool, file.unit()) << '\n';
    for (const trade::Pilot& pilot : store::pilots(file))
        if (pilot.in_body == number && !pilot.retired)
            context.out() << "Still in it: " << one_line(pilot, file.unit()) << '\n';
    return error::ExitCode::done;
}

} // namespace

void declare_retire(const Syntax& syntax, Plan& plan) {
    Options& options = chosen<Options>(syntax, plan, run);
    syntax.word("NUMBER", options.number, "the tool's number").required();
    syntax.option("--why", options.why, "worn out, lost, broken, ...");
}

} // namespace cli::commands
