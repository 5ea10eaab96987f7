// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `pair`: a pilot goes into a body, and how it went. One that will not go in is only noted.
#include <algorithm>

#include "cli/command.hpp"
#include "cli/tool.hpp"
#include "store/tools.hpp"

namespace cli::commands {

namespace {

struct Options {
    std::string pilot;
    std::string body;
    std::string tried;
};

void say_who_came_out(const store::File& file, std::int64_t pilot, std::int64_t body,
                      const Context& context) {
    for (const trade::Pilot& other : store::pilots(file))
        if (other.in_body == body && other.number != pilot)
            context.out() << "Taken out: " << one_line(other, file.unit()) << '\n';
}

error::ExitCode run(const Options& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    const auto pilot = find_pilot(file, tool_number(options.pilot));
    const auto body = find_body(file, tool_number(options.body));
    std::optional<trade::Tried> tried;
    if (!options.tried.empty())
        tried = trade::parse_tried(options.tried);
    if (!trade::may_take_pilot(body))
        throw error::BadData("this body takes no removable pilot: " + one_line(body, file.unit()));
    const bool goes_in = tried != trade::Tried::will_not_go;
    store::Change change(file, context.settings().words);
    if (goes_in) {
        say_who_came_out(file, pilot.number, body.number, context);
        store::put_in_body(change, pilot.number, body.number);
    }
    if (tried)
        store::record_trial(change, {pilot.number, body.number, *tried});
    change.commit();
    context.out() << one_line(find_tool(file, pilot.number), file.unit()) << '\n'
                  << one_line(body, file.unit()) << '\n';
    if (tried)
        context.out() << "Tried: " << trade::to_text(*tried) << ".\n";
    return error::ExitCode::done;
}

} // namespace

void declare_pair(const Syntax& syntax, Plan& plan) {
    Options& options = chosen<Options>(syntax, plan, run);
    syntax.word("PILOT", options.pilot, "the pilot's number").required();
    syntax.word("BODY", options.body, "the body's number").required();
    syntax
        .option("--tried", options.tried,
                "how it went: slides and holds, slides, binds, loose, will not go")
        .takes("WORD");
}

} // namespace cli::commands
