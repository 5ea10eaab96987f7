// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A tool with an unknown dimension is not within any span; --unknown finds it.
#include "cli/filter.hpp"

#include "cli/span.hpp"
#include "trade/text.hpp"

namespace cli {

namespace {

length::MaybeRange span_of(const std::string& text, length::Unit bare) {
    return text.empty() ? std::nullopt : length::MaybeRange(read_span(text, bare));
}

// Every value of the dimension might be the one; so it is enough that the ranges meet.
bool meets(const length::MaybeRange& asked, const trade::MaybeDimension& dimension) {
    if (!asked)
        return true;
    return dimension && dimension->range.lo <= asked->hi && dimension->range.hi >= asked->lo;
}

// `rack` finds `rack 2` and `Rack 3, hole 4`.
bool found_in(const std::string& asked, const std::string& text) {
    return asked.empty() || trade::folded(text).find(trade::folded(asked)) != std::string::npos;
}

void append(std::string& names, bool missing, const char* name) {
    if (missing)
        names += (names.empty() ? "" : ", ") + std::string(name);
}

} // namespace

void declare_filter(const Syntax& syntax, FilterOptions& o) {
    syntax.option("--set", o.set, "of this inherited set");
    syntax.option("--place", o.place, "whose place has these words in it");
    syntax.option("--kind", o.kind, "bodies of this kind: counterbore, spotfacer, ...")
        .takes("WORD");
    syntax.option("--cut", o.cut, "bodies whose cutting diameter may be in this span: 3/8 to 1/2")
        .takes("SPAN");
    syntax.option("--pilot", o.pilot, "whose pilot diameter may be in this span").takes("SPAN");
    syntax.option("--bore", o.bore, "bodies whose bore may be in this span").takes("SPAN");
    syntax.option("--shank", o.shank, "pilots whose shank may be in this span").takes("SPAN");
    syntax.option("--condition", o.condition, "in this condition: good, dull, ...").takes("WORD");
    syntax.flag("--work", o.work, "that need work");
    syntax.flag("--unknown", o.unknown, "of which a size that decides a fit is not known");
    const auto retired = syntax.flag("--retired", o.retired, "that are retired");
    syntax.flag("--all", o.all, "retired ones too").excludes(retired);
}

Filter::Filter(const FilterOptions& options, length::Unit bare)
    : options_(options), cut_(span_of(options.cut, bare)), pilot_(span_of(options.pilot, bare)),
      bore_(span_of(options.bore, bare)), shank_(span_of(options.shank, bare)) {
    if (!options.kind.empty())
        kind_ = trade::parse_body_kind(options.kind);
    if (!options.condition.empty())
        condition_ = trade::parse_condition(options.condition);
}

template <class Record>
bool Filter::wants_common(const Record& record) const {
    const bool in_hand = options_.all || record.retired.has_value() == options_.retired;
    const bool of_set =
        options_.set.empty() || trade::folded(record.set) == trade::folded(options_.set);
    return in_hand && of_set && found_in(options_.place, record.place) &&
           (!condition_ || record.condition == condition_) &&
           (!options_.work || !record.work.empty()) &&
           (!options_.unknown || !unknowns(record).empty()) && meets(pilot_, record.pilot_dia);
}

bool Filter::wants(const trade::Body& body) const {
    return wants_common(body) && !asks_of_pilots() && (!kind_ || body.kind == *kind_) &&
           meets(cut_, body.cut_dia) && meets(bore_, body.bore);
}

bool Filter::wants(const record::PilotRecord& pilot) const {
    return wants_common(pilot) && !asks_of_bodies() && meets(shank_, pilot.shank_dia);
}

std::string unknowns(const trade::Body& body) {
    std::string names;
    append(names, body.kind == trade::BodyKind::unknown, "kind");
    append(names, !body.cut_dia, "cut_dia");
    append(names, body.pilot_kind == trade::PilotKind::unknown, "pilot_kind");
    append(names, trade::taken_as_integral(body) && !body.pilot_dia, "pilot_dia");
    append(names, trade::may_take_pilot(body) && !body.bore, "bore");
    append(names, !body.reach, "reach");
    return names;
}

std::string unknowns(const trade::Pilot& pilot) {
    std::string names;
    append(names, !pilot.pilot_dia, "pilot_dia");
    append(names, !pilot.pilot_length, "pilot_length");
    append(names, !pilot.shank_dia, "shank_dia");
    append(names, !pilot.has_flat, "flat_at");
    return names;
}

} // namespace cli
