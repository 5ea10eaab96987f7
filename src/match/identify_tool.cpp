// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/identify_tool.hpp"

#include <algorithm>
#include <tuple>

#include "match/best.hpp"

namespace match {

namespace {

constexpr std::int64_t k_body = 1;
constexpr std::int64_t k_pilot = 2;

trade::MaybeDimension dimension(const length::MaybeRange& range) {
    return range ? trade::MaybeDimension({"", trade::How::unstated, *range}) : std::nullopt;
}

// The tool as a catalogue of its own. A pilot seen in a bore, or loose, goes in its body: what is
// asked is the holes it runs in.
Tools tools_of(const ToolFigures& figures) {
    trade::Body body;
    body.number = k_body;
    body.kind =
        figures.kind == trade::BodyKind::unknown ? trade::BodyKind::counterbore : figures.kind;
    body.cut_dia = dimension(figures.cut_dia);
    body.bore = dimension(figures.bore);
    std::vector<trade::Pilot> pilots;
    std::vector<trade::Trial> trials;
    if (figures.pilot_dia && (figures.bore || figures.loose_pilot())) {
        body.pilot_kind = trade::PilotKind::removable;
        trade::Pilot pilot;
        pilot.number = k_pilot;
        pilot.pilot_dia = dimension(figures.pilot_dia);
        pilot.in_body = k_body;
        pilots.push_back(pilot);
        trials.push_back({k_pilot, k_body, trade::Tried::slides_and_holds});
    } else if (figures.pilot_dia) {
        body.pilot_kind = trade::PilotKind::integral;
        body.pilot_dia = dimension(figures.pilot_dia);
    } else {
        body.pilot_kind = trade::PilotKind::removable;
    }
    return make_tools({body}, std::move(pilots), trials);
}

// Whether the rule is about a figure that is given; the others say nothing of this tool.
bool counts(Rule rule, const ToolFigures& figures) {
    switch (rule) {
    case Rule::head:
        return figures.cut_dia.has_value();
    case Rule::running:
    case Rule::drill:
        return figures.pilot_dia.has_value();
    case Rule::teeth:
        return figures.bore.has_value();
    default:
        return false;
    }
}

Surety surety_of(const Judged& judged, const ToolFigures& figures) {
    for (std::size_t i = 0; i < judged.count; ++i)
        if (counts(judged.findings[i].rule, figures) && judged.findings[i].verdict != Verdict::pass)
            return Surety::may_serve;
    return Surety::serves;
}

// With its pilot, where one is given: that it could be swapped for another says nothing of this
// one.
std::optional<Ranked> best_with(const Job& job, const Tools& tools, const ToolFigures& figures) {
    const auto& body = tools.body_facts.front();
    const auto pilots = all_pilots(tools);
    if (!figures.pilot_dia)
        return best_of(job, tools, pilots, body).best;
    const auto pairs = pairs_of(job, tools, pilots, body); // one at most
    return pairs.empty() ? std::nullopt : std::optional(pairs.front());
}

std::vector<Reason> reasons_that_count(const Job& job, const Judged& judged, const Tools& tools,
                                       const ToolFigures& figures, length::Unit unit) {
    auto reasons = reasons_of(job, judged, tools.records(judged.triple), unit);
    std::vector<Reason> kept;
    for (std::size_t i = 0; i < judged.count; ++i)
        if (counts(judged.findings[i].rule, figures))
            kept.push_back(std::move(reasons[i]));
    return kept;
}

std::string hole_word(const Job& job, const CandidateHole& hole) {
    if (job.question->hole.tapped)
        return "tap";
    switch (hole.published) {
    case Published::close:
        return "close";
    case Published::normal:
        return "normal";
    case Published::loose:
        return "loose";
    case Published::other:
    case Published::size_on_size:
        break;
    }
    return {};
}

// Cheap, before any rule: the cutter is under the head, or more than twice it.
bool out_of_the_question(const Job& job, const ToolFigures& figures) {
    return figures.cut_dia && job.head &&
           (figures.cut_dia->hi < job.head->lo || figures.cut_dia->lo > job.head->hi * 2);
}

ToolUse use_of(const Job& job, const Judged& judged, const Tools& tools, const ToolFigures& figures,
               length::Unit unit) {
    const auto& screw = job.question->screw;
    ToolUse use;
    use.screw = screw.name;
    use.size = screw.size->text;
    use.form = screw.form;
    use.series = screw.series;
    use.shoulder = screw.shoulder;
    if (figures.pilot_dia && judged.triple.hole) {
        use.hole = hole_word(job, *judged.triple.hole);
        use.drill = judged.triple.hole->drill;
    }
    use.class_of_size = size_of(job, judged.triple);
    use.surety = surety_of(judged, figures);
    use.reasons = reasons_that_count(job, judged, tools, figures, unit);
    return use;
}

bool of_usual_size(const ToolUse& use) {
    return use.class_of_size == SizeClass::recommended || use.class_of_size == SizeClass::tool_size;
}

bool names(const Likeness& likeness, const ToolUse& use) {
    return !use.shoulder && likeness.size == use.size &&
           (likeness.hole == "tapping") == (use.hole == "tap");
}

bool clears_the_head(const ToolUse& use) {
    return use.class_of_size && use.class_of_size != SizeClass::large && !use.reasons.empty() &&
           use.reasons.front().result == Verdict::pass;
}

void settle_surety(ToolUse& use, const ToolFigures& figures,
                   const std::vector<Likeness>& published) {
    if (figures.cut_dia && !clears_the_head(use))
        return;
    if (std::any_of(published.begin(), published.end(),
                    [&](const Likeness& likeness) { return names(likeness, use); }))
        use.surety = Surety::made_for;
}

void add_once(std::vector<std::string>& names, const std::string& name) {
    if (std::find(names.begin(), names.end(), name) == names.end())
        names.push_back(name);
}

// The lesser is the likelier.
auto likelihood(const ToolUse& use, const ToolFigures& figures) {
    const bool made = use.surety == Surety::made_for;
    return std::tuple(use.surety, !made && figures.pilot_dia && use.hole.empty(),
                      figures.cut_dia && !of_usual_size(use));
}

void put_in_order(ToolIdentity& identity, const ToolFigures& figures) {
    const auto key = [&](const ToolUse& use) { return likelihood(use, figures); };
    std::stable_sort(identity.uses.begin(), identity.uses.end(),
                     [&](const ToolUse& a, const ToolUse& b) {
                         return std::tuple(key(a), a.withdrawn) < std::tuple(key(b), b.withdrawn);
                     });
    identity.best = static_cast<std::size_t>(
        std::count_if(identity.uses.begin(), identity.uses.end(),
                      [&](const ToolUse& use) { return key(use) == key(identity.uses.front()); }));
}

} // namespace

std::string_view to_text(Surety surety) {
    switch (surety) {
    case Surety::made_for:
        return "made for";
    case Surety::serves:
        return "serves";
    case Surety::may_serve:
        return "may serve";
    }
    return {};
}

Identifier::Identifier(const trade::Tables& tables, const trade::Practice& practice)
    : tables_(tables), shop_(shop_with_every_drill(tables, practice)),
      jobs_(with_holes(listed_questions(tables), {"close", "normal", "loose", "tap"},
                       shop_),
            shop_) {
    for (const auto& series : tables.series())
        if (series.withdrawn)
            withdrawn_.push_back(series.name);
    for (std::size_t at = 0; at < jobs_.size(); ++at) {
        if (jobs_[at].question->hole.kind == HoleKind::chosen)
            by_screw_.push_back({at, at});
        by_screw_.back().end = at + 1;
    }
}

ToolIdentity Identifier::identify(const ToolFigures& figures, length::Unit unit) const {
    const Tools tools = tools_of(figures);
    const auto use_for = [&](const Job& job) -> std::optional<ToolUse> {
        const auto found = best_with(job, tools, figures);
        if (!found || found->kind() == AnswerKind::closest)
            return std::nullopt;
        return use_of(job, judge(job, found->triple), tools, figures, unit);
    };
    ToolIdentity identity;
    identity.published = likenesses(figures, tables_, shop_.practice, unit);
    for (const auto& screw : by_screw_) {
        if (out_of_the_question(jobs_[screw.any], figures))
            continue;
        const auto before = identity.uses.size();
        for (std::size_t at = screw.any + 1; figures.pilot_dia && at < screw.end; ++at)
            if (auto use = use_for(jobs_[at]))
                identity.uses.push_back(std::move(*use));
        if (identity.uses.size() == before)
            if (auto use = use_for(jobs_[screw.any]))
                identity.uses.push_back(std::move(*use));
    }
    for (auto& use : identity.uses) {
        use.withdrawn =
            std::find(withdrawn_.begin(), withdrawn_.end(), use.series) != withdrawn_.end();
        settle_surety(use, figures, identity.published);
    }
    put_in_order(identity, figures);
    return identity;
}

std::vector<std::string> likely_sizes(const ToolIdentity& identity) {
    std::vector<std::string> sizes;
    for (std::size_t i = 0; i < identity.best; ++i)
        add_once(sizes, identity.uses[i].size);
    return sizes;
}

std::vector<LikelyForm> likely_heads(const ToolIdentity& identity) {
    std::vector<LikelyForm> forms;
    for (std::size_t i = 0; i < identity.best; ++i) {
        const auto& use = identity.uses[i];
        auto form = std::find_if(forms.begin(), forms.end(),
                                 [&](const LikelyForm& known) { return known.form == use.form; });
        if (form == forms.end())
            form = forms.insert(form, {use.form, {}});
        add_once(form->series, use.series);
    }
    return forms;
}

} // namespace match
