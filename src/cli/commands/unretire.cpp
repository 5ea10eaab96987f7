// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `unretire`: a retired tool is in hand again.
#include "cli/command.hpp"
#include "cli/tool.hpp"

namespace cli::commands {

namespace {

struct Options {
    std::string number;
};

error::ExitCode run(const Options& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    store::Change change(file, context.settings().words);
    Tool tool = find_tool(file, tool_number(options.number));
    std::visit(
        [&](auto& record) {
            if (!record.retired)
                throw error::BadData("not retired: " + one_line(record, file.unit()));
            record.retired = std::nullopt;
        },
        tool);
    update_tool(change, tool);
    change.commit();
    context.out() << one_line(tool, file.unit()) << '\n';
    return error::ExitCode::done;
}

} // namespace

void declare_unretire(const Syntax& syntax, Plan& plan) {
    Options& options = chosen<Options>(syntax, plan, run);
    syntax.word("NUMBER", options.number, "the tool's number").required();
}

} // namespace cli::commands
