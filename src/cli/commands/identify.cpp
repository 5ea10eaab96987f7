// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `identify`: what a tool is for, or what a screw is, from its measurements.
#include "cli/command.hpp"
#include "cli/tool.hpp"
#include "cli/tool_figures.hpp"
#include "present/identify_json.hpp"
#include "store/tools.hpp"
#include "trade/drill.hpp"
#include "trade/drill_mark.hpp"

namespace cli::commands {

using trade::Feature;

namespace {

constexpr std::size_t k_most_conflicts = 8;

struct StoredOptions {
    std::string number;
    bool all = false;
    bool reasons = false;
    bool json = false;
};

struct ToolOptions {
    std::string cut, pilot, bore, shank;
    std::string how; // empty: caliper, and mark for a drill's name
    bool reasons = false;
    bool json = false;
};

struct ScrewOptions {
    std::string head, height, key, screw, thread;
    std::string how = "caliper";
    bool json = false;
};

// Reads what is measured, all of it in one way; by caliper where none is said.
class Measured {
  public:
    Measured(const std::string& how, Context& context)
        : how_(trade::parse_how(how)), unit_(context.unit()), practice_(context.practice()),
          tables_(context.tables()) {}

    [[nodiscard]] length::MaybeRange range(const std::string& text, Feature feature) const {
        if (text.empty())
            return std::nullopt;
        if (feature == Feature::pilot_dia && !trade::number_or_letter_drill(text).empty())
            return trade::read_pilot_dia(text, how_, unit_, practice_, tables_).range;
        const auto how = how_ == trade::How::unstated ? trade::How::caliper : how_;
        return trade::read_dimension(text, how, feature, unit_, practice_).range;
    }
    [[nodiscard]] const trade::Practice& practice() const { return practice_; }

  private:
    trade::How how_;
    length::Unit unit_;
    trade::Practice practice_;
    const trade::Tables& tables_;
};

present::IdentifyLayout layout_of(const Context& context, length::Unit unit, bool reasons) {
    return {unit, context.style(), context.width(), reasons};
}

void print(const match::ToolIdentity& identity, bool json, bool reasons, Context& context) {
    if (json)
        context.out() << present::json_text(present::tool_identity_json(identity));
    else
        context.out() << present::tool_identity_text(identity,
                                                     layout_of(context, context.unit(), reasons));
}

error::ExitCode found(bool any) {
    return any ? error::ExitCode::done : error::ExitCode::nothing_matched;
}

error::ExitCode identify_measured_tool(const ToolOptions& options, Context& context) {
    if (options.cut.empty() && options.pilot.empty() && options.bore.empty())
        throw error::UsageError("identify tool: nothing to go by",
                                "give what you can of --cut, --pilot, --bore; --shank helps");
    const Measured measured(options.how, context);
    match::ToolFigures figures;
    figures.cut_dia = measured.range(options.cut, Feature::cut_dia);
    figures.pilot_dia = measured.range(options.pilot, Feature::pilot_dia);
    figures.bore = measured.range(options.bore, Feature::bore);
    figures.shank_dia = measured.range(
        options.shank, figures.loose_pilot() ? Feature::pilot_shank_dia : Feature::shank_dia);
    const match::Identifier identifier(context.tables(), measured.practice());
    const auto identity = identifier.identify(figures, context.unit());
    print(identity, options.json, options.reasons, context);
    return found(!identity.uses.empty());
}

error::ExitCode identify_stored_tool(const StoredOptions& options, Context& context) {
    const Tool tool = find_tool(context.catalogue(), tool_number(options.number));
    const auto figures = figures_of(tool, store::pilots(context.catalogue()));
    if (!figures.cut_dia && !figures.pilot_dia && !figures.bore)
        throw error::BadData("tool " + options.number + ": nothing measured to go by",
                             "measure its cutter, pilot or bore: `counterpart measure`");
    const match::Identifier identifier(context.tables(), context.practice());
    const auto identity = identifier.identify(figures, context.unit());
    if (!options.json)
        context.out() << one_line(tool, context.catalogue().unit()) << '\n';
    print(identity, options.json, options.reasons, context);
    return found(!identity.uses.empty());
}

error::ExitCode identify_every_tool(const StoredOptions& options, Context& context) {
    const auto& file = context.catalogue();
    const match::Identifier identifier(context.tables(), context.practice());
    std::vector<present::IdentifiedTool> identified;
    for (const auto& tool : unnamed_tools(file))
        identified.push_back(
            {tool.number, tool.about, identifier.identify(tool.figures, context.unit())});
    if (options.json)
        context.out() << present::json_text(present::identified_tools_json(identified));
    else
        context.out() << present::identified_tools_text(identified,
                                                        layout_of(context, context.unit(), false));
    return error::ExitCode::done;
}

error::ExitCode run(const StoredOptions& options, Context& context) {
    if (options.all && !options.number.empty())
        throw error::UsageError("identify: a number and --all: " + options.number, "one of them");
    if (options.all)
        return identify_every_tool(options, context);
    if (options.number.empty())
        throw error::UsageError("identify: nothing to identify",
                                "a tool's number, --all, `identify tool` with its measurements, or "
                                "`identify screw` with those of a screw");
    return identify_stored_tool(options, context);
}

// A key is named by its size, or measured.
length::MaybeRange key_range(const std::string& text, const std::string& how, Context& context) {
    if (text.empty())
        return std::nullopt;
    const auto reading = length::parse_reading(text, context.unit());
    if (reading.limits)
        return reading.limits;
    return trade::limits_of(reading.nominal, trade::parse_how(how), Feature::head_dia,
                            context.practice());
}

error::ExitCode identify_measured_screw(const ScrewOptions& options, Context& context) {
    const Measured measured(options.how, context);
    match::ScrewFigures figures;
    figures.head_dia = measured.range(options.head, Feature::head_dia);
    figures.head_height = measured.range(options.height, Feature::head_height);
    figures.key = key_range(options.key, options.how, context);
    figures.screw_dia = measured.range(options.screw, Feature::screw_dia);
    if (!options.thread.empty())
        figures.thread = trade::parse_thread(options.thread);
    if (!figures.head_dia && !figures.head_height && !figures.key && !figures.screw_dia &&
        !figures.thread)
        throw error::UsageError("identify screw: nothing to go by",
                                "give what you can of --head, --height, --key, and --thread or "
                                "--screw");
    const auto identity =
        match::identify_screw(figures, context.tables(), context.unit(), k_most_conflicts);
    if (options.json)
        context.out() << present::json_text(present::screw_identity_json(identity));
    else
        context.out() << present::screw_identity_text(identity,
                                                      layout_of(context, context.unit(), false));
    return found(!identity.left.empty());
}

void declare_tool(const Syntax& syntax, Plan& plan) {
    ToolOptions& o = chosen<ToolOptions>(syntax, plan, identify_measured_tool);
    syntax.option("--cut", o.cut, "cutting diameter");
    syntax.option("--pilot", o.pilot,
                  "diameter of the part that runs in the hole, or its mark: F, #7");
    syntax.option("--bore", o.bore, "hole that takes a removable pilot");
    syntax.option("--shank", o.shank, "the body's shank; without --cut and --bore, the pilot's");
    syntax.option("--how", o.how, "how measured: mark, caliper, micrometer, ...; else caliper");
    syntax.flag("--reasons", o.reasons, "the rules of every screw, not only of the first");
    syntax.flag("--json", o.json, "for programs, format 1");
}

void declare_of_screw(const Syntax& syntax, Plan& plan) {
    ScrewOptions& o = chosen<ScrewOptions>(syntax, plan, identify_measured_screw);
    syntax.option("--head", o.head, "head diameter; of a hexagon, across the corners");
    syntax.option("--height", o.height, "head height");
    syntax.option("--key", o.key, "key of the socket; of a hexagon, across the flats");
    const auto thread =
        syntax.option("--thread", o.thread, "size and pitch: 5/16-18, M8x1.25, 5/16");
    syntax.option("--screw", o.screw, "diameter over the thread, or of the shoulder")
        .excludes(thread);
    syntax.option("--how", o.how, "how measured: rule, caliper, micrometer, ...; else caliper");
    syntax.flag("--json", o.json, "for programs, format 1");
}

} // namespace

void declare_identify(const Syntax& syntax, Plan& plan) {
    const auto options = std::make_shared<StoredOptions>();
    syntax.when_chosen([syntax, options, &plan] {
        if (syntax.chosen_verb().empty())
            plan.run = [options](Context& context) { return run(*options, context); };
    });
    syntax.word("NUMBER", options->number, "a tool of the catalogue");
    syntax.flag("--all", options->all, "every tool whose kind is not known, or that bears no size");
    syntax.flag("--reasons", options->reasons, "the rules of every screw, not only of the first");
    syntax.flag("--json", options->json, "for programs, format 1");
    declare_tool(syntax.verb("tool", "a tool from its measurements"), plan);
    declare_of_screw(syntax.verb("screw", "a screw from its measurements"), plan);
    syntax.footer("Exit code 1 when nothing of the tables fits. See docs/identifying.md.");
}

} // namespace cli::commands
