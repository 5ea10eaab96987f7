// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/to_measure.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "match/best.hpp"
#include "match/jobs.hpp"

namespace match {

using length::Length;
using length::MaybeRange;
using length::Range;

namespace {

constexpr std::int64_t k_steps = 8; // values tried across present limits, ends included

struct Key {
    std::int64_t tool;
    std::int64_t body;
    Quantity what;

    [[nodiscard]] auto tied() const { return std::tie(tool, body, what); }
    friend bool operator<(const Key& a, const Key& b) { return a.tied() < b.tied(); }
};

struct Found {
    MaybeRange known;
    std::set<std::size_t> settles, helps;
};

std::vector<Length> across(const Range& range) {
    std::vector<Length> values;
    for (std::int64_t i = 0; i <= k_steps; ++i)
        values.push_back(range.lo + (range.hi - range.lo) * i / k_steps);
    return values;
}

trade::Limits as_measured(Length value) {
    return length::exactly(value);
}

// A body with one pilot, or with its own, apart from the rest of the catalogue.
class Pair {
  public:
    explicit Pair(const Triple& triple) : body_(*triple.body), tried_(triple.tried) {
        if (triple.pilot)
            pilot_ = *triple.pilot;
    }

    trade::BodyFacts& body() { return body_; }
    std::optional<trade::PilotFacts>& pilot() { return pilot_; }
    void try_it(trade::Tried how) { tried_ = how; }

    // Ready or after work.
    [[nodiscard]] bool does(const Job& job) const {
        const Triple triple{&body_, pilot_ ? &*pilot_ : nullptr, nullptr, tried_};
        if (!pilot_ && trade::may_take_pilot(body_))
            return false;
        const auto pair =
            pilot_ ? pair_of(job, triple, alone(job, body_)) : over_holes(job, triple);
        return pair && pair->kind() <= AnswerKind::after_work;
    }

  private:
    trade::BodyFacts body_;
    std::optional<trade::PilotFacts> pilot_;
    std::optional<trade::Tried> tried_;
};

std::set<Quantity> open_questions(const Judged& judged) {
    std::set<Quantity> open;
    for (std::size_t i = 0; i < judged.count; ++i) {
        if (judged.findings[i].verdict != Verdict::unknown)
            continue;
        switch (judged.findings[i].rule) {
        case Rule::head:
            open.insert({Quantity::cut_dia, Quantity::head});
            break;
        case Rule::running:
            open.insert(Quantity::pilot_dia);
            break;
        case Rule::slip:
        case Rule::flat:
            open.insert(Quantity::trial);
            break;
        case Rule::teeth:
            open.insert(Quantity::bore);
            break;
        case Rule::depth:
            open.insert(Quantity::reach);
            break;
        default:
            break; // the screw's or the part's own, not a tool's
        }
    }
    return open;
}

// The head of each screw is a thing of its own.
Key key_of(const Triple& triple, Quantity what, std::size_t screw) {
    const auto body = triple.body->number;
    if (what == Quantity::head)
        return {0, static_cast<std::int64_t>(screw), what};
    if (what == Quantity::trial && triple.pilot)
        return {triple.pilot->number, body, what};
    if (what == Quantity::pilot_dia && triple.pilot)
        return {triple.pilot->number, 0, what};
    return {body, 0, what};
}

MaybeRange known_of(const Job& job, const Triple& triple, Quantity what) {
    switch (what) {
    case Quantity::cut_dia:
        return triple.body->cut_dia;
    case Quantity::pilot_dia:
        return triple.pilot_dia();
    case Quantity::bore:
        return triple.body->bore;
    case Quantity::reach:
        return triple.body->reach;
    case Quantity::head:
        return job.head;
    case Quantity::trial:
        break;
    }
    return std::nullopt;
}

// Values worth trying where nothing is known: what the job would want.
std::vector<Length> wanted_values(const Job& job, const Triple& triple, Quantity what) {
    if (what == Quantity::cut_dia && job.sizes)
        return {job.sizes->tool, job.sizes->published};
    if (what == Quantity::reach && job.depth)
        return {*job.depth};
    std::vector<Length> values;
    if (what == Quantity::pilot_dia)
        for (const auto& hole : job.holes)
            values.push_back((hole.size.lo + hole.size.hi - hole.good.least - hole.good.most) / 2);
    if (what == Quantity::bore && triple.pilot && triple.pilot->shank_dia) {
        const Range shank = *triple.pilot->shank_dia;
        values.push_back(shank.hi + job.shop->practice.good_slip_least);
    }
    if (what == Quantity::bore)
        for (const auto& hole : job.holes)
            values.push_back(hole.size.lo);
    return values;
}

void set(Pair& pair, Quantity what, Length value) {
    if (what == Quantity::cut_dia)
        pair.body().cut_dia = as_measured(value);
    if (what == Quantity::bore)
        pair.body().bore = as_measured(value);
    if (what == Quantity::reach)
        pair.body().reach = as_measured(value);
    if (what == Quantity::pilot_dia)
        (pair.pilot() ? pair.pilot()->pilot_dia : pair.body().pilot_dia) = as_measured(value);
}

bool head_settles(const Job& job, const Pair& pair) {
    Question question = *job.question;
    question.screw.head_dia = length::exactly(question.screw.head_dia->lo);
    return pair.does(make_job(question, *job.shop));
}

bool could_settle(const Job& job, const Triple& triple, Quantity what) {
    Pair pair(triple);
    if (what == Quantity::trial) {
        pair.try_it(trade::Tried::slides_and_holds);
        return pair.does(job);
    }
    if (what == Quantity::head)
        return job.question->screw.head_dia && head_settles(job, pair);
    const auto known = known_of(job, triple, what);
    for (const auto value : known ? across(*known) : wanted_values(job, triple, what)) {
        set(pair, what, value);
        if (pair.does(job))
            return true;
    }
    return false;
}

// The measure-first pairs of a screw that nothing serves better.
std::vector<Ranked> open_pairs(const Job& job, const Tools& tools) {
    const auto pilots = all_pilots(tools);
    std::vector<Ranked> open;
    for (const auto& body : tools.body_facts) {
        for (const auto& pair : pairs_of(job, tools, pilots, body)) {
            if (pair.kind() <= AnswerKind::after_work)
                return {};
            if (pair.kind() == AnswerKind::measure_first)
                open.push_back(pair);
        }
    }
    return open;
}

std::vector<ToMeasure> in_order(const std::map<Key, Found>& found) {
    std::vector<ToMeasure> list;
    for (const auto& [key, about] : found) {
        ToMeasure one{
            key.tool, key.what == Quantity::head ? 0 : key.body, key.what, about.known, {}, {}};
        one.settles.assign(about.settles.begin(), about.settles.end());
        std::set_difference(about.helps.begin(), about.helps.end(), about.settles.begin(),
                            about.settles.end(), std::back_inserter(one.helps));
        list.push_back(std::move(one));
    }
    std::stable_sort(list.begin(), list.end(), [](const ToMeasure& a, const ToMeasure& b) {
        const auto worth = [](const ToMeasure& m) {
            return std::tuple(m.settles.size(), m.helps.size(), m.what != Quantity::head);
        };
        return worth(a) > worth(b);
    });
    return list;
}

} // namespace

std::string_view to_text(Quantity what) {
    switch (what) {
    case Quantity::cut_dia:
        return "cut_dia";
    case Quantity::pilot_dia:
        return "pilot_dia";
    case Quantity::bore:
        return "bore";
    case Quantity::reach:
        return "reach";
    case Quantity::trial:
        return "trial";
    case Quantity::head:
        return "head";
    }
    return {};
}

std::vector<ToMeasure> to_measure(const std::vector<Asked>& asked, const Shop& shop,
                                  const Tools& tools) {
    std::map<Key, Found> found;
    for (std::size_t at = 0; at < asked.size(); ++at) {
        const Job job = make_job(asked[at].question, shop);
        for (const auto& pair : open_pairs(job, tools)) {
            const auto& triple = pair.triple;
            for (const auto what : open_questions(judge(job, triple))) {
                auto& about = found[key_of(triple, what, at)];
                about.known = known_of(job, triple, what);
                about.helps.insert(at);
                if (about.settles.count(at) == 0 && could_settle(job, triple, what))
                    about.settles.insert(at);
            }
        }
    }
    return in_order(found);
}

} // namespace match
