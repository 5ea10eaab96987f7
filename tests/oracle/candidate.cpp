// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The fold and the order.
#include "oracle/candidate.hpp"

#include <algorithm>

#include "oracle/made.hpp"
#include "oracle/sizes.hpp"

namespace oracle {

using match::AnswerKind;
using match::Verdict;

namespace {

constexpr int k_last = 100;

struct Tally {
    int fails = 0;
    bool any_unknown = false;
    bool cutter_unknown = false; // rule 1 or 6
    bool any_work = false;
    Fraction shortfall;
};

Tally tally(const std::vector<Ruling>& rulings) {
    Tally all;
    for (const Ruling& ruling : rulings) {
        const bool is_unknown = ruling.judged.verdict == Verdict::unknown;
        if (ruling.judged.verdict == Verdict::fail) {
            ++all.fails;
            all.shortfall = ruling.judged.shortfall;
        }
        all.any_unknown = all.any_unknown || is_unknown;
        all.any_work = all.any_work || ruling.judged.work;
        if (ruling.rule == "head in the counterbore" || ruling.rule == "teeth reach the hole") {
            all.cutter_unknown = all.cutter_unknown || is_unknown;
        }
    }
    return all;
}

bool needs_work(std::optional<trade::Condition> condition, const std::vector<std::string>& work) {
    return !work.empty() || condition == trade::Condition::dull ||
           condition == trade::Condition::dirty || condition == trade::Condition::rough;
}

bool parts_need_work(const Triple& triple) {
    const trade::Pilot* pilot = triple.pilot;
    return needs_work(triple.body->condition, triple.body->work) ||
           (pilot != nullptr && needs_work(pilot->condition, pilot->work));
}

bool near_enough(const Context& context, const Tally& all) {
    return !over_thousandths(all.shortfall, context.shop.practice.closest_share);
}

std::optional<AnswerKind> fold(const Context& context, const Triple& triple, const Tally& all) {
    if (all.fails > 1) {
        return std::nullopt;
    }
    if (all.fails == 1) {
        return near_enough(context, all) ? std::optional(AnswerKind::closest) : std::nullopt;
    }
    if (all.any_unknown) {
        return AnswerKind::measure_first;
    }
    return all.any_work || parts_need_work(triple) ? AnswerKind::after_work : AnswerKind::ready;
}

std::optional<AnswerKind> fold_without_pilot(const Context& context, const Tally& all) {
    if (all.fails > 1) {
        return std::nullopt;
    }
    if (all.fails == 1) {
        return near_enough(context, all) ? std::optional(AnswerKind::closest) : std::nullopt;
    }
    return all.cutter_unknown ? AnswerKind::measure_first : AnswerKind::make_pilot;
}

int seat_of(const Triple& triple) {
    if (triple.pilot == nullptr) {
        return is_integral(*triple.body) ? 0 : 1;
    }
    if (!triple.pilot->in_body) {
        return 1;
    }
    return triple.pilot->in_body == triple.body->number ? 0 : 2;
}

// Nobody said: taken as fair.
int rank_of(std::optional<trade::Condition> condition) {
    return static_cast<int>(condition.value_or(trade::Condition::fair));
}

int worse_condition(const Triple& triple) {
    const int body = rank_of(triple.body->condition);
    return triple.pilot == nullptr ? body : std::max(body, rank_of(triple.pilot->condition));
}

int size_rank(const Candidate& candidate) {
    return candidate.size ? static_cast<int>(*candidate.size) : k_last;
}

Candidate described(const Context& context, const Triple& triple, std::vector<Ruling> rulings,
                    AnswerKind kind, const Tally& all) {
    Candidate found;
    found.triple = triple;
    found.rulings = std::move(rulings);
    found.kind = kind;
    found.shortfall = all.shortfall;
    found.size = size_class(context.question, context.shop, trade::range_of(triple.body->cut_dia));
    found.seat = seat_of(triple);
    found.hole = hole_class(context.question, context.shop, triple.hole);
    found.made = made_rank(context, triple);
    const std::optional<Nose> nose = nose_of(triple);
    if (nose) {
        found.closeness = closeness(context.shop, triple.hole, nose->dia);
    }
    found.condition = worse_condition(triple);
    return found;
}

std::int64_t number_of_pilot(const Candidate& candidate) {
    return candidate.triple.pilot == nullptr ? 0 : candidate.triple.pilot->number;
}

bool drill_comes_before(const std::optional<trade::Drill>& a,
                        const std::optional<trade::Drill>& b) {
    if (!a || !b) {
        return a.has_value() && !b.has_value();
    }
    if (a->diameter != b->diameter) {
        return a->diameter < b->diameter;
    }
    return a->kind < b->kind;
}

} // namespace

std::optional<Candidate> with_its_pilot(const Context& context, const Triple& triple) {
    std::vector<Ruling> all = rulings(context, triple);
    const Tally counted = tally(all);
    const std::optional<AnswerKind> kind = fold(context, triple, counted);
    if (!kind) {
        return std::nullopt;
    }
    return described(context, triple, std::move(all), *kind, counted);
}

std::optional<Candidate> with_pilot_to_make(const Context& context, const Triple& triple) {
    std::vector<Ruling> all = rulings_without_pilot(context, triple);
    const Tally counted = tally(all);
    const std::optional<AnswerKind> kind = fold_without_pilot(context, counted);
    if (!kind) {
        return std::nullopt;
    }
    return described(context, triple, std::move(all), *kind, counted);
}

bool comes_before(const Candidate& a, const Candidate& b) {
    if (a.kind != b.kind) {
        return a.kind < b.kind;
    }
    if (a.kind == AnswerKind::closest && less(a.shortfall, b.shortfall)) {
        return true;
    }
    if (a.kind == AnswerKind::closest && less(b.shortfall, a.shortfall)) {
        return false;
    }
    if (a.made != b.made) {
        return a.made < b.made;
    }
    if (a.hole != b.hole) {
        return a.hole < b.hole;
    }
    if (size_rank(a) != size_rank(b)) {
        return size_rank(a) < size_rank(b);
    }
    if (a.seat != b.seat) {
        return a.seat < b.seat;
    }
    if (a.closeness != b.closeness) {
        return a.closeness && (!b.closeness || *a.closeness < *b.closeness);
    }
    if (a.condition != b.condition) {
        return a.condition < b.condition;
    }
    if (a.triple.body->number != b.triple.body->number) {
        return a.triple.body->number < b.triple.body->number;
    }
    if (number_of_pilot(a) != number_of_pilot(b)) {
        return number_of_pilot(a) < number_of_pilot(b);
    }
    return drill_comes_before(a.triple.hole.drill, b.triple.hole.drill);
}

bool would_do(const Candidate& candidate) {
    return candidate.kind == AnswerKind::ready || candidate.kind == AnswerKind::after_work ||
           candidate.kind == AnswerKind::measure_first;
}

} // namespace oracle
