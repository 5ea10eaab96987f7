// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `labels`: a printable sheet of labels for the rack: the tool's number and its sizes.
#include "present/labels_html.hpp"

#include <algorithm>

#include "cli/command.hpp"
#include "cli/filter.hpp"
#include "cli/inventory.hpp"
#include "cli/tool.hpp"
#include "cli/transfer/files.hpp"

namespace cli::commands {

namespace {

using present::Label;

struct Options {
    std::vector<std::string> numbers;
    FilterOptions filter; // set and place
    std::string html;
    bool letter = false;
    bool force = false;
};

// Sizes as recorded; what is not in the catalogue's unit says its own.
class Sizes {
  public:
    Sizes(length::Unit stored, length::Unit unit) : stored_(stored), unit_(unit) {}

    [[nodiscard]] std::string of(const trade::MaybeDimension& dimension) const {
        return dimension ? short_size(dimension, stored_, unit_, false) : "?";
    }

  private:
    length::Unit stored_;
    length::Unit unit_;
};

std::string pilot_or_bore(const trade::Body& body, const Sizes& sizes) {
    if (body.pilot_kind == trade::PilotKind::none)
        return "no pilot";
    if (trade::taken_as_integral(body))
        return "pilot " + sizes.of(body.pilot_dia);
    return "bore " + sizes.of(body.bore);
}

Label label_of(const trade::Body& body, const Sizes& sizes) {
    const bool named = body.kind != trade::BodyKind::unknown && body.kind != trade::BodyKind::other;
    return {std::to_string(body.number), sizes.of(body.cut_dia),
            (named ? std::string(trade::to_text(body.kind)) : "body") + ", " +
                pilot_or_bore(body, sizes),
            body.place};
}

Label label_of(const trade::Pilot& pilot, const Sizes& sizes) {
    return {std::to_string(pilot.number), sizes.of(pilot.pilot_dia),
            "pilot, shank " + sizes.of(pilot.shank_dia), pilot.place};
}

// Those asked for by number, in the order asked for, each once.
std::vector<Tool> named_tools(const std::vector<std::string>& words, const store::File& file) {
    std::vector<Tool> tools;
    std::vector<std::int64_t> seen;
    for (const std::string& word : words) {
        const std::int64_t number = tool_number(word);
        if (std::find(seen.begin(), seen.end(), number) != seen.end())
            continue;
        seen.push_back(number);
        tools.push_back(find_tool(file, number));
    }
    return tools;
}

// Those in hand of a set or place, by number.
std::vector<Tool> found_tools(const FilterOptions& options, const store::File& file) {
    const Filter filter(options, file.unit());
    std::vector<Tool> tools;
    for (const trade::Body& body : store::bodies(file))
        if (filter.wants(body))
            tools.emplace_back(body);
    for (const record::PilotRecord& pilot : pilot_records(file))
        if (filter.wants(pilot))
            tools.emplace_back(pilot);
    const auto number = [](const Tool& tool) {
        return std::visit([](const auto& record) { return record.number; }, tool);
    };
    std::sort(tools.begin(), tools.end(),
              [&](const Tool& a, const Tool& b) { return number(a) < number(b); });
    return tools;
}

void refuse_both(const Options& options) {
    if (!options.numbers.empty() && !(options.filter.set + options.filter.place).empty())
        throw error::UsageError("labels: numbers and a set or place together",
                                "name the tools by their numbers, or by --set and --place");
}

error::ExitCode run(const Options& options, Context& context) {
    refuse_both(options);
    const store::File& file = context.catalogue();
    const auto tools = options.numbers.empty() ? found_tools(options.filter, file)
                                               : named_tools(options.numbers, file);
    if (tools.empty())
        throw error::NoSuchRecord("no tool to make a label for",
                                  "counterpart list shows the tools, their sets and places");
    const Sizes sizes(file.unit(), context.unit());
    std::vector<Label> labels;
    for (const Tool& tool : tools)
        labels.push_back(
            std::visit([&](const auto& record) { return label_of(record, sizes); }, tool));
    const auto paper = options.letter ? present::Paper::letter : present::Paper::a4;
    transfer::write_whole(options.html, present::labels_html(labels, paper), options.force,
                          context);
    context.out() << labels.size() << (labels.size() == 1 ? " label" : " labels") << " in "
                  << options.html << '\n';
    return error::ExitCode::done;
}

} // namespace

void declare_labels(const Syntax& syntax, Plan& plan) {
    Options& o = chosen<Options>(syntax, plan, run);
    syntax.word("NUMBER", o.numbers, "of these tools; else of all that are not retired");
    syntax.option("--html", o.html, "the file to write, for a browser to print").required();
    syntax.flag("--letter", o.letter, "on Letter paper rather than A4");
    syntax.option("--set", o.filter.set, "of the tools of this inherited set");
    syntax.option("--place", o.filter.place, "of the tools whose place has these words in it");
    syntax.flag("--force", o.force, "replace a file that is there");
}

} // namespace cli::commands
