// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `match`: the main question. Which body, which pilot, which drill, for this screw.
#include "cli/command.hpp"
#include "cli/house.hpp"
#include "cli/question.hpp"
#include "error/error.hpp"
#include "match/matcher.hpp"
#include "match/shelf.hpp"
#include "match/tools.hpp"
#include "present/csv.hpp"
#include "present/json_lists.hpp"
#include "present/match_csv.hpp"
#include "present/match_json.hpp"
#include "present/match_text.hpp"

namespace cli::commands {

namespace {

constexpr std::size_t k_usual_answers = 20;

struct Options {
    QuestionOptions asked;
    bool house = false;
    bool pairs = false;
    bool all = false;
    bool reasons = false;
    bool json = false;
    bool csv = false;
};

void print(const Options& options, const match::Report& report, const trade::Screw& screw,
           Context& context) {
    if (options.json) {
        context.out() << present::json_text(present::match_json(report, screw));
    } else if (options.csv) {
        context.out() << present::match_csv(report, context.unit());
    } else {
        context.out() << present::match_text(report, screw,
                                             {context.unit(), context.style(), context.width(),
                                              options.all, options.reasons, options.pairs});
    }
}

bool is_met(const match::Report& report) {
    return report.counts[static_cast<std::size_t>(match::AnswerKind::ready)] +
               report.counts[static_cast<std::size_t>(match::AnswerKind::after_work)] >
           0;
}

error::ExitCode code_for(bool met) {
    return met ? error::ExitCode::done : error::ExitCode::nothing_matched;
}

error::ExitCode one(const Options& options, Context& context) {
    const SizeReader reader{context, context.practice()};
    const auto question = read_question(options.asked, reader);
    const auto shop =
        match::make_shop(context.tables(), reader.practice, context.catalogue().unit());
    const auto rack = context.rack();
    check_set(options.asked.set, rack);
    const auto most = options.all ? 0 : k_usual_answers;
    const auto report = options.pairs ? match::match_pairs(question, shop, match::load_tools(rack),
                                                           context.unit(), most)
                                      : match::match(question, shop, rack, context.unit(), most);
    print(options, report, question.screw, context);
    return code_for(is_met(report));
}

// Shows each screw of the house list, which is not empty, with its report; whether all are met.
template <typename See>
bool each_house_screw(const Options& options, Context& context, const See& see) {
    const auto practice = context.practice();
    const auto asked = house_asked(practice, context);
    const auto shop = match::make_shop(context.tables(), practice, context.catalogue().unit());
    const auto rack = context.rack();
    const match::RackFor many(rack, asked.size()); // one reading of the tools
    const match::Matcher matcher(many.rack(), shop, context.unit());
    bool all_met = true;
    for (const auto& one : asked) {
        const auto report = matcher.match(one.question, options.all ? 0 : k_usual_answers);
        all_met = all_met && is_met(report);
        see(report, one.question.screw);
    }
    return all_met;
}

error::ExitCode house(const Options& options, Context& context) {
    if (options.json) {
        std::optional<present::JsonLists> lists; // begun once nothing can be refused any more
        const bool met = each_house_screw(
            options, context, [&](const match::Report& report, const trade::Screw& screw) {
                if (!lists) {
                    lists.emplace(context.out());
                    lists->begin("house");
                }
                lists->add(present::match_json(report, screw));
            });
        lists->end();
        return code_for(met);
    }
    bool first = true;
    return code_for(each_house_screw(options, context,
                                     [&](const match::Report& report, const trade::Screw& screw) {
                                         if (!first)
                                             context.out() << '\n';
                                         first = false;
                                         print(options, report, screw, context);
                                     }));
}

error::ExitCode run(const Options& options, Context& context) {
    context.catalogue(); // first: without one there is nothing to ask
    if (options.asked.screw.empty() != options.house)
        throw error::UsageError("match: a screw, or --house for those of the house list",
                                "match \"1/4-20 socket head cap\", or match --house");
    return options.house ? house(options, context) : one(options, context);
}

} // namespace

void declare_match(const Syntax& syntax, Plan& plan) {
    Options& o = chosen<Options>(syntax, plan, run);
    syntax.word("SCREW", o.asked.screw, "size, pitch, form, series: \"5/16-18 socket head cap\"");
    const auto house =
        syntax.flag("--house", o.house, "every screw of the house list, as it is there");
    declare_question(syntax, o.asked);
    for (const char* name : {"--hole", "--series", "--head", "--washer", "--below", "--thick",
                             "--blind", "--machine", "--set"})
        house.excludes(syntax.named(name));
    syntax.flag("--pairs", o.pairs, "every body with every pilot").excludes(house);
    syntax.flag("--all", o.all, "every answer, not only the best twenty");
    syntax.flag("--reasons", o.reasons, "every rule of the best answer");
    const auto json = syntax.flag("--json", o.json, "for programs, format 1");
    syntax.flag("--csv", o.csv, "one row an answer").excludes(json).excludes(house);
    syntax.footer("Exit code 1 when nothing is ready or after work. See docs/matching.md.");
}

} // namespace cli::commands
