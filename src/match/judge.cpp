// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/judge.hpp"

#include "match/rules.hpp"

namespace match {

using trade::Condition;

namespace {

bool always(const Job&, const Triple&) {
    return true;
}
bool runs(const Job&, const Triple& t) {
    return !t.lacks_pilot();
}
bool has_hole(const Job&, const Triple& t) {
    return t.hole != nullptr;
}
bool has_shank(const Job&, const Triple& t) {
    return t.pilot != nullptr;
}
bool may_have_set_screw(const Job&, const Triple& t) {
    const auto by = trade::holds_by(*t.body);
    return t.pilot && (!by || *by == trade::Retention::set_screw);
}
bool has_bore(const Job&, const Triple& t) {
    return t.hole && trade::may_take_pilot(*t.body);
}
bool part_is_known(const Job& job, const Triple&) {
    return job.question->thick || job.question->blind;
}
bool machine_is_named(const Job& job, const Triple&) {
    return job.question->machine.has_value();
}

struct RuleRow {
    bool (*applies)(const Job&, const Triple&);
    Finding (*judge)(const Job&, const Triple&);
    Explanation (*explain)(const Job&, const Triple&, const Records&, length::Unit);
};

// In the order of the rules.
constexpr std::array<RuleRow, k_rules> k_rows{{
    {always, judge_head, explain_head},
    {runs, judge_running, explain_running},
    {has_hole, judge_drill, explain_drill},
    {has_shank, judge_slip, explain_slip},
    {may_have_set_screw, judge_flat, explain_flat},
    {has_bore, judge_teeth, explain_teeth},
    {always, judge_depth, explain_depth},
    {part_is_known, judge_guidance, explain_guidance},
    {always, judge_in_hand, explain_in_hand},
    {machine_is_named, judge_spindle, explain_spindle},
}};

bool tools_need_work(const Triple& triple) {
    return needs_work(*triple.body) || (triple.pilot && needs_work(*triple.pilot));
}

// A pilot yet to be made leaves only the head and the bore to be known beforehand.
bool forbids_making(const Finding& finding) {
    return finding.rule == Rule::head || finding.rule == Rule::teeth;
}

void add_condition_work(const char* what, const std::optional<Condition>& condition,
                        std::vector<std::string>& work) {
    if (condition == Condition::dull)
        work.push_back(std::string("sharpen the ") + what);
    if (condition == Condition::dirty)
        work.push_back(std::string("clean the ") + what);
    if (condition == Condition::rough)
        work.push_back(std::string("smooth the ") + what);
}

} // namespace

std::optional<AnswerKind> Scale::kind() const {
    const Shortfall limit{job_.shop->practice.closest_share, 1000};
    if (hopeless() || (failures_ == 1 && limit < weighed_.shortfall))
        return std::nullopt;
    if (failures_ == 1)
        return AnswerKind::closest;
    if (forbids_)
        return AnswerKind::measure_first;
    if (triple_.lacks_pilot())
        return AnswerKind::make_pilot;
    return weighed_.work ? AnswerKind::after_work : AnswerKind::ready;
}

Scale::Scale(const Job& job, const Triple& triple) : job_(job), triple_(triple) {
    weighed_.work = tools_need_work(triple);
}

void Scale::add(const Finding& finding) {
    weighed_.work = weighed_.work || finding.work;
    if (finding.verdict == Verdict::fail) {
        ++failures_;
        weighed_.shortfall = finding.shortfall;
    }
    if (finding.verdict == Verdict::unknown) {
        weighed_.unknown = true;
        forbids_ = forbids_ || !triple_.lacks_pilot() || forbids_making(finding);
    }
}

Weighed Scale::weighed() const {
    Weighed sum = weighed_;
    sum.kind = kind();
    return sum;
}

Weighed weigh(const Job& job, const Triple& triple) {
    Scale scale(job, triple);
    for (const auto& row : k_rows) {
        if (row.applies(job, triple))
            scale.add(row.judge(job, triple));
        if (scale.hopeless())
            break;
    }
    return scale.weighed();
}

Judged judge(const Job& job, const Triple& triple) {
    Judged judged;
    judged.triple = triple;
    Scale scale(job, triple);
    for (const auto& row : k_rows) {
        if (!row.applies(job, triple))
            continue;
        judged.findings[judged.count] = row.judge(job, triple);
        scale.add(judged.findings[judged.count++]);
    }
    judged.weighed = scale.weighed();
    return judged;
}

std::vector<std::string> work_of(const Job& job, const Judged& judged, const Records& records) {
    const auto& triple = judged.triple;
    std::vector<std::string> work = records.body->work;
    add_condition_work("cutter", triple.body->condition, work);
    if (!triple.pilot)
        return work;
    work.insert(work.end(), records.pilot->work.begin(), records.pilot->work.end());
    add_condition_work("pilot", triple.pilot->condition, work);
    add_slip_work(triple, work);
    if (may_have_set_screw(job, triple))
        add_flat_work(job, triple, work);
    return work;
}

std::vector<Reason> reasons_of(const Job& job, const Judged& judged, const Records& records,
                               length::Unit unit) {
    std::vector<Reason> reasons;
    for (std::size_t i = 0; i < judged.count; ++i) {
        const auto& finding = judged.findings[i];
        const auto& row = k_rows[static_cast<std::size_t>(finding.rule)];
        auto explanation = row.explain(job, judged.triple, records, unit);
        reasons.push_back({std::string(to_text(finding.rule)), finding.verdict,
                           std::move(explanation.need), std::move(explanation.have)});
    }
    return reasons;
}

} // namespace match
