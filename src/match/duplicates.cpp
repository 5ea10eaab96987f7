// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Every answer rests on a body with a pilot, or on a body alone. While one such pair of the best
// kind is whole the answer stands, and taking tools away never makes a better one: so what can go
// is found without matching again.
#include "match/duplicates.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "match/best.hpp"

namespace match {

namespace {

using Number = std::int64_t;

// The pairs of the best kind that a question has.
struct Support {
    struct Pair {
        Number body = 0;
        Number pilot = 0; // 0: none
    };
    std::vector<Pair> pairs; // none: nothing to lose
    bool locked = false;     // none of these tools can go
};

struct Survey {
    std::vector<Support> supports;                          // by question
    std::map<Number, std::vector<std::size_t>> served;      // questions by tool, ascending
    std::map<Number, std::vector<std::size_t>> supports_of; // questions whose pairs hold the tool
};

void note(std::map<Number, std::vector<std::size_t>>& questions, Number tool,
          std::size_t question) {
    auto& list = questions[tool];
    if (list.empty() || list.back() != question)
        list.push_back(question);
}

class Surveyor {
  public:
    Surveyor(const Jobs& jobs, std::size_t house, const Tools& tools)
        : jobs_(jobs), house_(house), tools_(tools), pilots_(all_pilots(tools)) {}

    [[nodiscard]] Survey survey() const {
        Survey survey;
        for (std::size_t question = 0; question < jobs_.size(); ++question)
            look_at(question, survey);
        return survey;
    }

  private:
    void look_at(std::size_t question, Survey& survey) const {
        std::optional<AnswerKind> best;
        Support support;
        const auto consider = [&](const Ranked& ranked) {
            const auto& triple = ranked.triple;
            const auto kind = ranked.kind();
            const Support::Pair pair{triple.body->number, triple.pilot ? triple.pilot->number : 0};
            if (kind <= AnswerKind::after_work) {
                note(survey.served, pair.body, question);
                if (pair.pilot != 0)
                    note(survey.served, pair.pilot, question);
            }
            if (kind == AnswerKind::closest || (best && *best < kind))
                return;
            if (!best || kind < *best)
                support.pairs.clear();
            best = kind;
            support.pairs.push_back(pair);
        };
        for (const auto& body : tools_.body_facts)
            each_answer(jobs_[question], body, consider);
        const bool counts = question < house_ || (best && *best <= AnswerKind::after_work);
        if (!counts)
            support.pairs.clear();
        support.locked = best == AnswerKind::measure_first;
        for (const auto& pair : support.pairs) {
            note(survey.supports_of, pair.body, question);
            if (pair.pilot != 0)
                note(survey.supports_of, pair.pilot, question);
        }
        survey.supports.push_back(std::move(support));
    }

    // Every pair; the body without a pilot only where no pilot would do, as in an answer.
    template <typename Consider>
    void each_answer(const Job& job, const trade::BodyFacts& body, const Consider& consider) const {
        bool one_does = false;
        for (const auto& pair : pairs_of(job, tools_, pilots_, body)) {
            one_does = one_does || would_do(pair);
            consider(pair);
        }
        if (one_does || !trade::may_take_pilot(body))
            return;
        if (const auto alone = best_of(job, tools_, {}, body).best)
            consider(*alone);
    }

    const Jobs& jobs_;
    std::size_t house_;
    const Tools& tools_;
    Pilots pilots_;
};

// How good a tool is to keep; the lesser is better.
struct Worth {
    int condition = 0;
    bool work = false;
    int unknown = 0;        // dimensions
    std::int64_t doubt = 0; // nm between the limits of the known ones
    Number number = 0;

    [[nodiscard]] auto key() const { return std::tie(condition, work, unknown, doubt, number); }
};

template <typename Tool>
Worth worth_of(const Tool& tool, std::initializer_list<const trade::MaybeDimension*> dimensions) {
    Worth worth{static_cast<int>(tool.condition.value_or(trade::Condition::fair)),
                !tool.work.empty(), 0, 0, tool.number};
    for (const auto* dimension : dimensions) {
        if (*dimension)
            worth.doubt += ((*dimension)->range.hi - (*dimension)->range.lo).nm();
        else
            ++worth.unknown;
    }
    return worth;
}

Worth worth_of(const trade::Body& body) {
    if (trade::taken_as_integral(body))
        return worth_of(body, {&body.cut_dia, &body.pilot_dia, &body.pilot_length, &body.reach,
                               &body.shank_dia});
    return worth_of(body, {&body.cut_dia, &body.bore, &body.bore_depth, &body.set_screw_at,
                           &body.reach, &body.shank_dia});
}

Worth worth_of(const trade::Pilot& pilot) {
    return worth_of(pilot, {&pilot.pilot_dia, &pilot.pilot_length, &pilot.shank_dia,
                            &pilot.shank_length, &pilot.flat_at});
}

std::map<Number, Worth> worths_of(const Tools& tools) {
    std::map<Number, Worth> worths;
    for (const auto& body : tools.bodies)
        worths[body.number] = worth_of(body);
    for (const auto& pilot : tools.pilots)
        worths[pilot.number] = worth_of(pilot);
    return worths;
}

std::vector<AlikeTools> alike_tools(const Survey& survey, const std::map<Number, Worth>& worths,
                                    const Tools& tools) {
    std::map<std::pair<bool, std::vector<std::size_t>>, std::vector<Number>> by_use;
    for (const auto& [number, questions] : survey.served)
        by_use[{tools.body(number) == nullptr, questions}].push_back(number);
    std::vector<AlikeTools> groups;
    for (auto& [use, numbers] : by_use) {
        if (numbers.size() < 2)
            continue;
        std::sort(numbers.begin(), numbers.end(),
                  [&](Number a, Number b) { return worths.at(a).key() < worths.at(b).key(); });
        groups.push_back({use.first, numbers, use.second});
    }
    std::sort(groups.begin(), groups.end(), [](const AlikeTools& a, const AlikeTools& b) {
        return a.tools.front() < b.tools.front();
    });
    return groups;
}

bool stands_without(const Support& support, const std::set<Number>& gone) {
    const auto whole = [&](const Support::Pair& pair) {
        return gone.count(pair.body) == 0 && gone.count(pair.pilot) == 0;
    };
    if (support.pairs.empty())
        return true;
    return support.locked ? std::all_of(support.pairs.begin(), support.pairs.end(), whole)
                          : std::any_of(support.pairs.begin(), support.pairs.end(), whole);
}

// Whether all stands without `gone`, of the questions that `tool` has a part in.
bool can_go(Number tool, const std::set<Number>& gone, const Survey& survey) {
    const auto found = survey.supports_of.find(tool);
    return found == survey.supports_of.end() ||
           std::all_of(found->second.begin(), found->second.end(), [&](std::size_t question) {
               return stands_without(survey.supports[question], gone);
           });
}

} // namespace

Duplicates find_duplicates(const Jobs& jobs, std::size_t house, const Tools& tools) {
    const Survey survey = Surveyor(jobs, house, tools).survey();
    const auto worths = worths_of(tools);
    Duplicates result;
    result.alike = alike_tools(survey, worths, tools);
    std::vector<Number> worst_first;
    for (const auto& entry : survey.served) {
        if (can_go(entry.first, {entry.first}, survey)) {
            result.each_can_go.push_back(entry.first);
            worst_first.push_back(entry.first);
        }
    }
    std::sort(worst_first.begin(), worst_first.end(),
              [&](Number a, Number b) { return worths.at(b).key() < worths.at(a).key(); });
    std::set<Number> gone;
    for (const auto number : worst_first) {
        gone.insert(number);
        if (!can_go(number, gone, survey))
            gone.erase(number);
    }
    result.can_go_at_once.assign(gone.begin(), gone.end());
    return result;
}

} // namespace match
