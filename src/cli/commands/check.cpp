// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `check`: is the catalogue whole? Every value against the history, and SQLite's own checks.
#include "store/check.hpp"

#include <fmt/format.h>

#include "cli/command.hpp"
#include "cli/finding.hpp"
#include "present/json.hpp"
#include "present/text.hpp"

namespace cli::commands {

namespace {

using present::Json;
using store::Checked;
using store::Finding;

struct Options {
    bool json = false;
};

Json maybe(const std::optional<std::string>& value) {
    return value ? Json(*value) : Json(nullptr);
}

Json finding_json(const Finding& finding) {
    return {{"what", finding.what},
            {"number", finding.number ? Json(*finding.number) : Json(nullptr)},
            {"table", present::text_json(finding.table)},
            {"key", present::text_json(finding.key)},
            {"column", present::text_json(finding.column)},
            {"recorded", maybe(finding.recorded)},
            {"found", maybe(finding.found)}};
}

void print_json(const Checked& checked, const Context& context) {
    Json findings = Json::array();
    for (const Finding& finding : checked.findings)
        findings.push_back(finding_json(finding));
    context.out() << present::json_text({{"format", 1},
                                         {"whole", checked.whole()},
                                         {"rows", checked.rows},
                                         {"entries", checked.entries},
                                         {"findings", findings}});
}

void print_text(const Checked& checked, const Context& context) {
    const std::string read = fmt::format("{} row{} and {} entr{} of the history", checked.rows,
                                         checked.rows == 1 ? "" : "s", checked.entries,
                                         checked.entries == 1 ? "y" : "ies");
    if (checked.whole()) {
        context.out() << "Whole: " << read << ".\n";
        return;
    }
    for (const Finding& finding : checked.findings)
        context.out() << present::safe(line_of(finding)) << '\n';
    context.out() << "Not whole: " << checked.findings.size() << " found in " << read << ".\n";
    context.err() << "hint: `counterpart recover` writes a new file from what is good; "
                     "`counterpart restore FILE` goes back to a backup\n";
}

error::ExitCode run(const Options& options, Context& context) {
    const Checked checked = store::check(context.catalogue());
    if (options.json)
        print_json(checked, context);
    else
        print_text(checked, context);
    return checked.whole() ? error::ExitCode::done : error::ExitCode::damaged_file;
}

} // namespace

void declare_check(const Syntax& syntax, Plan& plan) {
    Options& options = chosen<Options>(syntax, plan, run);
    syntax.flag("--json", options.json, "print JSON");
    syntax.footer("Exit code 6 if anything is not as it was written; each value is named, as the "
                  "history has it and as it is.");
}

} // namespace cli::commands
