// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/question.hpp"

#include <set>

#include "error/error.hpp"
#include "length/parse.hpp"
#include "store/lists.hpp"
#include "trade/text.hpp"

namespace cli {

using trade::Feature;
using trade::How;

namespace {

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

trade::Screw screw_of(const QuestionOptions& options, const SizeReader& reader) {
    auto& context = reader.context;
    auto screw =
        trade::resolve_screw(options.screw, options.series, context.tables(), context.own_screws());
    if (!options.head.empty()) {
        screw.head_dia = reader.read(options.head, Feature::head_dia);
        screw.head_measured = true;
    }
    return screw;
}

// Zero is a depth here: the head flush with the surface.
length::Length below_flush(const std::string& text, const SizeReader& reader) {
    return length::parse_length_or_zero(text, reader.context.unit()).value;
}

} // namespace

void declare_question(const Syntax& syntax, QuestionOptions& o) {
    syntax.option("--hole", o.hole,
                  "close, normal, loose, tap, a drill (#7, F, 9/32, 7 mm), or a measured size");
    syntax.option("--series", o.series, "which head: 1960, 1936, \"BS 2470\", \"ISO 4762\", ...");
    syntax.option("--head", o.head, "measured head diameter, with limits or calipered");
    syntax.option("--washer", o.washer, "washer series, or outside diameter [x thickness]");
    syntax.option("--below", o.below, "head so far below the surface; 0 is flush");
    syntax.option("--thick", o.thick, "the part is so thick, the hole goes through");
    syntax.option("--blind", o.blind, "the hole is so deep, from the surface");
    syntax.option("--machine", o.machine, "the machine whose spindle must take the shank");
    syntax.option("--set", o.set, "only tools of this set");
}

length::Range SizeReader::read(const std::string& text, Feature feature) const {
    return trade::read_dimension(text, How::caliper, feature, context.unit(), practice).range;
}

length::MaybeRange SizeReader::maybe(const std::string& text, Feature feature) const {
    return text.empty() ? std::nullopt : length::MaybeRange(read(text, feature));
}

match::Question read_question(const QuestionOptions& options, const SizeReader& reader) {
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
    if (!options.below.empty())
        question.below = below_flush(options.below, reader);
    question.thick = reader.maybe(options.thick, Feature::thickness);
    question.blind = reader.maybe(options.blind, Feature::thickness);
    if (!options.machine.empty())
        question.machine = machine_named(options.machine, context);
    question.set = options.set;
    return question;
}

void check_set(const std::string& set, const trade::Rack& rack) {
    if (set.empty())
        return;
    std::set<std::string> known;
    for (const auto& body : rack.bodies())
        known.insert(body.set);
    for (const auto& pilot : rack.pilots())
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

} // namespace cli
