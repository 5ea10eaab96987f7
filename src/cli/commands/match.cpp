// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `match`: the main question. Which body, which pilot, which drill, for this screw.
#include <set>

#include "cli/command.hpp"
#include "match/tools.hpp"
#include "present/csv.hpp"
#include "present/match_csv.hpp"
#include "present/match_json.hpp"
#include "present/match_text.hpp"
#include "store/lists.hpp"
#include "trade/dimension.hpp"
#include "trade/text.hpp"

namespace cli::commands {

using trade::Feature;
using trade::How;

namespace {

constexpr std::size_t k_usual_answers = 20;

struct Options {
    std::string screw;
    std::string hole, series, head, washer, below, thick, blind, machine, set;
    bool pairs = false;
    bool all = false;
    bool reasons = false;
    bool json = false;
    bool csv = false;
};

// What the options are read with.
struct Reader {
    Context& context;
    trade::Practice practice;

    [[nodiscard]] length::Range calipered(const std::string& text, Feature feature) const {
        return trade::read_dimension(text, How::caliper, feature, context.unit(), practice).range;
    }
    [[nodiscard]] length::MaybeRange maybe(const std::string& text, Feature feature) const {
        return text.empty() ? std::nullopt : length::MaybeRange(calipered(text, feature));
    }
};

trade::Machine machine_named(const std::string& name, Context& context) {
    std::string known;
    for (auto& machine : store::machines(context.catalogue())) {
        if (trade::folded(machine.name) == trade::folded(name))
            return machine;
        known += (known.empty() ? "" : ", ") + machine.name;
    }
    throw error::NoSuchRecord("no such machine: '" + name + "'",
                              known.empty() ? "add it with `counterpart machine add`"
                                            : "machines: " + known);
}

trade::Screw screw_of(const Options& options, const Reader& reader) {
    auto& context = reader.context;
    auto screw =
        trade::resolve_screw(options.screw, options.series, context.tables(), context.own_screws());
    if (!options.head.empty()) {
        screw.head_dia = reader.calipered(options.head, Feature::head_dia);
        screw.head_measured = true;
    }
    return screw;
}

// Zero is a depth here: the head flush with the surface.
length::Length below_flush(const std::string& text, const Reader& reader) {
    if (text.empty())
        return reader.practice.below_flush;
    if (trade::folded(text) == "0")
        return {};
    return length::parse_length(text, reader.context.unit()).value;
}

match::Question question_of(const Options& options, const Reader& reader) {
    auto& context = reader.context;
    match::Question question;
    question.screw = screw_of(options, reader);
    const auto unit = context.unit();
    if (!options.hole.empty())
        question.hole = match::parse_hole(options.hole, question.screw, context.tables(),
                                          reader.practice, unit);
    if (!options.washer.empty())
        question.washer = match::parse_washer(options.washer, question.screw, context.tables(),
                                              reader.practice, unit);
    question.below = below_flush(options.below, reader);
    question.thick = reader.maybe(options.thick, Feature::thickness);
    question.blind = reader.maybe(options.blind, Feature::thickness);
    if (!options.machine.empty())
        question.machine = machine_named(options.machine, context);
    question.set = options.set;
    return question;
}

// A set that no tool is in is a slip of the pen, not an empty answer.
void check_set(const std::string& set, const match::Tools& tools) {
    if (set.empty())
        return;
    std::set<std::string> known;
    for (const auto& body : tools.bodies)
        known.insert(body.set);
    for (const auto& pilot : tools.pilots)
        known.insert(pilot.set);
    known.erase("");
    for (const auto& name : known)
        if (trade::folded(name) == trade::folded(set))
            return;
    std::string names;
    for (const auto& name : known)
        names += (names.empty() ? "" : ", ") + name;
    throw error::NoSuchRecord("no tool is in the set: '" + set + "'",
                              names.empty() ? "no tool has a set" : "sets: " + names);
}

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

error::ExitCode run(const Options& options, Context& context) {
    context.catalogue(); // first: without one there is nothing to ask
    const Reader reader{context, context.practice()};
    const auto question = question_of(options, reader);
    const auto shop =
        match::make_shop(context.tables(), reader.practice, context.catalogue().unit());
    const auto tools = match::load_tools(context.rack());
    check_set(options.set, tools);
    const auto report = match::match(question, shop, tools, context.unit(),
                                     options.all ? 0 : k_usual_answers, options.pairs);
    print(options, report, question.screw, context);
    const auto usable = report.counts[static_cast<std::size_t>(match::AnswerKind::ready)] +
                        report.counts[static_cast<std::size_t>(match::AnswerKind::after_work)];
    return usable > 0 ? error::ExitCode::done : error::ExitCode::nothing_matched;
}

} // namespace

void declare_match(CLI::App& app, Plan& plan) {
    Options& o = chosen<Options>(app, plan, run);
    app.add_option("SCREW", o.screw, "size, pitch, form, series: \"5/16-18 socket head cap\"")
        ->required();
    app.add_option("--hole", o.hole, "close, normal, loose, tap, a drill, or a measured size");
    app.add_option("--series", o.series, "which head: 1960, 1936, \"BS 2470\", \"ISO 4762\", ...");
    app.add_option("--head", o.head, "measured head diameter, with limits or calipered");
    app.add_option("--washer", o.washer, "washer series, or outside diameter [x thickness]");
    app.add_option("--below", o.below, "head so far below the surface; 0 is flush");
    app.add_option("--thick", o.thick, "the part is so thick, the hole goes through");
    app.add_option("--blind", o.blind, "the hole is so deep, from the surface");
    app.add_option("--machine", o.machine, "the machine whose spindle must take the shank");
    app.add_option("--set", o.set, "only tools of this set");
    app.add_flag("--pairs", o.pairs, "every body with every pilot");
    app.add_flag("--all", o.all, "every answer, not only the best twenty");
    app.add_flag("--reasons", o.reasons, "every rule of the best answer");
    auto* json = app.add_flag("--json", o.json, "for programs, format 1");
    app.add_flag("--csv", o.csv, "one row an answer")->excludes(json);
    app.footer("Exit code 1 when nothing is ready or after work. See docs/matching.md.");
}

} // namespace cli::commands
