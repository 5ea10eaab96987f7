// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `duplicates`: tools that do the same, and what can go without any screw being served worse.
#include "match/duplicates.hpp"

#include "cli/command.hpp"
#include "cli/house.hpp"
#include "cli/tool.hpp"
#include "present/duplicates_text.hpp"

namespace cli::commands {

namespace {

struct Options {
    bool json = false;
};

// The house list as it stands, then every listed screw through each of its holes.
struct Questions {
    std::vector<match::Question> list;
    present::DuplicatesNames names;
};

Questions questions_of(const match::Shop& shop, Context& context) {
    Questions questions;
    const HouseReader reader(shop.practice, context);
    for (const auto& row : store::house(context.catalogue())) {
        questions.list.push_back(reader.listed(row));
        questions.names.house.push_back(row.screw + (row.hole.empty() ? "" : ", hole " + row.hole));
    }
    const auto listed = match::with_holes(match::listed_questions(context.tables()),
                                          {"close", "normal", "loose", "tap"}, shop);
    for (const auto& question : listed) {
        questions.list.push_back(question);
        questions.names.listed.push_back(question.screw.name + " " + question.screw.series);
    }
    questions.names.tool = [&context](std::int64_t number) {
        const auto& file = context.catalogue();
        return one_line(find_tool(file, number), file.unit());
    };
    return questions;
}

error::ExitCode run(const Options& options, Context& context) {
    const auto stored = context.catalogue().unit();
    const auto shop = match::make_shop(context.tables(), context.practice(), stored);
    auto questions = questions_of(shop, context);
    const auto tools = match::load_tools(context.rack());
    const match::Jobs jobs(std::move(questions.list), shop);
    const auto found = match::find_duplicates(jobs, questions.names.house.size(), tools);
    if (options.json)
        context.out() << present::json_text(present::duplicates_json(found, questions.names));
    else
        context.out() << present::duplicates_text(found, questions.names, context.style(),
                                                  context.width());
    return error::ExitCode::done;
}

} // namespace

void declare_duplicates(const Syntax& syntax, Plan& plan) {
    Options& o = chosen<Options>(syntax, plan, run);
    syntax.flag("--json", o.json, "for programs, format 1");
    syntax.footer("Looked at: the house list, and every screw of the tables through each of its "
                  "holes. See docs/identifying.md.");
}

} // namespace cli::commands
