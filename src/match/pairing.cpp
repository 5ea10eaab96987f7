// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/pairing.hpp"

#include <algorithm>

#include "match/rules.hpp"

namespace match {

namespace {

AnswerKind next(AnswerKind kind) {
    return static_cast<AnswerKind>(static_cast<int>(kind) + 1);
}

} // namespace

Triple Pairing::with(const Runner& runner) const {
    return runners_.in(body_, runner, how_tried(tried_, runners_.pilot(runner).number), job_);
}

std::optional<AnswerKind> Pairing::kind_with(const Runner& runner) const {
    return weigh(job_, with(runner)).kind;
}

bool Pairing::would_do(const Runner& runner) const {
    const auto kind = kind_with(runner);
    return kind && *kind <= AnswerKind::measure_first;
}

bool Pairing::has_own() const {
    bool any = !tried_.empty();
    runners_.each_in_body(body_.number, [&any](const Runner&) { any = true; });
    return any;
}

std::optional<AnswerKind> Pairing::least_kind(AnswerKind at_best) const {
    for (auto kind = at_best; kind <= AnswerKind::measure_first; kind = next(kind)) {
        const auto does = [&](const Runner& runner) {
            const auto found = kind_with(runner);
            return found && *found <= kind;
        };
        if (runners_.any_at(kind, body_, does))
            return kind;
    }
    return std::nullopt;
}

bool Pairing::any(AnswerKind kind) const {
    bool found = false;
    const auto look = [&](const Runner& runner) {
        found = found || (judge_slip(job_, with(runner)).verdict != Verdict::fail &&
                          kind_with(runner) == kind);
    };
    each_own(look);
    if (!found)
        runners_.each_at(kind, body_, look);
    return found;
}

std::optional<Ranked> Pairing::best(AnswerKind kind, const Shortfall& least,
                                    const OrderKey* bound) const {
    std::optional<Ranked> best;
    each_own([&](const Runner& runner) { keep_better(runner, kind, best); });
    auto most = most_rank(kind, least, bound);
    // Where its pilot decides whether the body was made for the screw, a later rank may do better.
    const bool by_rank = made_ != Made::with_its_pilot;
    const auto keep_most = [&] {
        if (best && !(least < best->key.shortfall) && (by_rank || best->key.made == 0))
            most = std::min(most, rank_of(best->key));
    };
    keep_most();
    if (most < runners_.least_rank(kind, body_.bore))
        return best;
    runners_.each_at(kind, body_, [&](const Runner& runner) {
        if (runner.fit->at_best > kind || runner.fit->rank > most ||
            (best && best->key.shortfall < runners_.shortfall(runner)))
            return;
        keep_better(runner, kind, best);
        keep_most();
    });
    return best;
}

Rank Pairing::most_rank(AnswerKind kind, const Shortfall& least, const OrderKey* bound) const {
    if (!bound || kind < bound->kind || least < bound->shortfall)
        return k_last_rank;
    const int made = least_made(made_);
    if (made != bound->made)
        return made < bound->made ? k_last_rank : 0;
    const int size = size_rank(job_, body_);
    return size < bound->size   ? last_rank(bound->published)
           : size > bound->size ? first_rank(bound->published)
                                : rank_of(*bound);
}

void Pairing::keep_better(const Runner& runner, AnswerKind kind,
                          std::optional<Ranked>& best) const {
    const auto triple = with(runner);
    if (judge_slip(job_, triple).verdict == Verdict::fail)
        return;
    const auto weighed = weigh(job_, triple);
    if (weighed.kind != kind)
        return;
    const auto key = order_key(job_, triple, weighed);
    if (!best || key < best->key)
        best = Ranked{triple, key};
}

} // namespace match
