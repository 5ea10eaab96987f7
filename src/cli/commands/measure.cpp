// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `measure`: one dimension of a tool, measured. What was known before stays in the history.
#include <algorithm>
#include <type_traits>

#include "cli/command.hpp"
#include "cli/record/records.hpp"
#include "cli/record/size_cell.hpp"
#include "cli/suggest.hpp"
#include "cli/tool.hpp"
#include "store/tools.hpp"
#include "trade/text.hpp"

namespace cli::commands {

namespace {

struct Options {
    std::string number;
    std::string what;
    std::string value;
    std::vector<std::string> how;
};

template <class Record>
struct Measurable {
    std::string name;
    trade::MaybeDimension Record::*field;
    trade::Feature feature;
};

using trade::Body;
using trade::Feature;
using trade::Pilot;

const std::vector<Measurable<Body>>& body_sizes() {
    static const std::vector<Measurable<Body>> sizes = {
        {"cut_dia", &Body::cut_dia, Feature::cut_dia},
        {"pilot_dia", &Body::pilot_dia, Feature::pilot_dia},
        {"pilot_length", &Body::pilot_length, Feature::pilot_length},
        {"bore", &Body::bore, Feature::bore},
        {"bore_depth", &Body::bore_depth, Feature::bore_depth},
        {"set_screw_at", &Body::set_screw_at, Feature::set_screw_at},
        {"reach", &Body::reach, Feature::reach},
        {"shank_dia", &Body::shank_dia, Feature::shank_dia},
    };
    return sizes;
}

const std::vector<Measurable<Pilot>>& pilot_sizes() {
    static const std::vector<Measurable<Pilot>> sizes = {
        {"pilot_dia", &Pilot::pilot_dia, Feature::pilot_dia},
        {"pilot_length", &Pilot::pilot_length, Feature::pilot_length},
        {"shank_dia", &Pilot::shank_dia, Feature::pilot_shank_dia},
        {"shank_length", &Pilot::shank_length, Feature::pilot_shank_length},
        {"flat_at", &Pilot::flat_at, Feature::flat_at},
        {"flat_length", &Pilot::flat_length, Feature::flat_length},
        {"flat_depth", &Pilot::flat_depth, Feature::flat_depth},
    };
    return sizes;
}

// `cut_dia` goes by `cut dia`, `cut` and `cutting diameter` too.
template <class Record>
bool goes_by(const Measurable<Record>& size, const std::string& name) {
    const std::string plain = size.name.substr(0, size.name.rfind("_dia"));
    std::string words(trade::to_text(size.feature));
    std::replace(words.begin(), words.end(), ' ', '_');
    return name == size.name || name == plain || name == words;
}

template <class Record>
const Measurable<Record>& find_size(const std::vector<Measurable<Record>>& sizes,
                                    const std::string& what) {
    std::string name = trade::folded(what);
    std::replace(name.begin(), name.end(), ' ', '_');
    std::replace(name.begin(), name.end(), '-', '_');
    std::vector<std::string> names;
    for (const Measurable<Record>& size : sizes) {
        if (goes_by(size, name))
            return size;
        names.push_back(size.name);
    }
    std::string all;
    for (const std::string& known : names)
        all += (all.empty() ? "one of: " : ", ") + known;
    throw error::UsageError("no such dimension of this tool: " + what,
                            did_you_mean(name, names, all));
}

std::size_t trials_of(const store::File& file, std::int64_t number) {
    const auto trials = store::trials(file);
    return static_cast<std::size_t>(
        std::count_if(trials.begin(), trials.end(), [number](const trade::Trial& trial) {
            return trial.pilot == number || trial.body == number;
        }));
}

template <class Record, class Fields>
void measure(Record record, const std::vector<Measurable<Fields>>& sizes, const Options& options,
             store::Change& change, Context& context) {
    const store::File& file = change.file();
    const Measurable<Fields>& size = find_size(sizes, options.what);
    const Measures measures(context);
    trade::MaybeDimension& field = record.*size.field;
    const trade::MaybeDimension before = field;
    const record::Reading reading = measures.reading();
    field = record::read_size(options.value,
                              record::how_taken(joined(options.how), options.value, reading.bare),
                              size.feature, reading);
    if constexpr (std::is_same_v<Fields, Pilot>)
        if (record.flat_at)
            record.has_flat = true;
    record::refuse_columns(record::contradictions(record));
    const std::size_t trials = trials_of(file, record.number);
    update_tool(change, record);
    const std::size_t left = trials_of(file, record.number);
    change.commit();
    context.out() << one_line(record, file.unit()) << "\n  " << size.name << ": "
                  << known_size(field, file.unit(), context.unit())
                  << "\n  before: " << known_size(before, file.unit(), context.unit()) << '\n';
    if (left < trials)
        context.out() << "  tried pairs that no longer count: " << trials - left << '\n';
}

error::ExitCode run(const Options& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    // Begun before the tool is read, lest what another program changes meanwhile be overwritten.
    store::Change change(file, context.settings().words);
    const Tool tool = find_tool(file, tool_number(options.number));
    if (const auto* body = std::get_if<Body>(&tool))
        measure(*body, body_sizes(), options, change, context);
    else
        measure(std::get<record::PilotRecord>(tool), pilot_sizes(), options, change, context);
    return error::ExitCode::done;
}

} // namespace

void declare_measure(const Syntax& syntax, Plan& plan) {
    Options& options = chosen<Options>(syntax, plan, run);
    syntax.word("NUMBER", options.number, "the tool's number").required();
    syntax.word("WHAT", options.what, "cut_dia, bore, reach, pilot_dia, shank_dia, ...").required();
    syntax.word("VALUE", options.value, "the size, with limits if known").required();
    syntax.word("HOW", options.how,
                "caliper, micrometer, rule, pin gauge, test hole, mark, guess; else a decimal "
                "is by caliper and a fraction off a rule");
}

} // namespace cli::commands
