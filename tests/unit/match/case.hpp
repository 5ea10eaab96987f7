// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One body with one pilot and one hole, put to one rule at a time.
#pragma once

#include "bench.hpp"
#include "match/rules.hpp"

namespace bench {

// A triple whose hole is the close one, kept together with what it points to.
struct Case {
    match::Question question;
    match::Shop shop = bench::shop();
    trade::Body body;
    trade::Pilot pilot;
    bool with_pilot = false;
    std::optional<trade::Tried> tried;
    std::optional<Range> hole; // given as measured
    const trade::Body* home = nullptr;

    template <class Judge>
    match::Finding judge(Judge by_rule) {
        if (hole)
            question.hole = {match::HoleKind::measured, "", {}, *hole, false};
        const auto job = match::make_job(question, shop);
        const match::CandidateHole* close = nullptr;
        for (const auto& candidate : job.holes)
            if (hole || candidate.published == match::Published::close)
                close = &candidate;
        const auto body_facts = trade::facts_of(body);
        const auto pilot_facts = trade::facts_of(pilot, home);
        return by_rule(job, {&body_facts, with_pilot ? &pilot_facts : nullptr, close, tried});
    }
};

inline Case integral() {
    Case c;
    c.question = question(newer());
    c.body = integral_body();
    return c;
}

inline Case removable() {
    auto c = integral();
    c.body = removable_body();
    c.pilot = pilot();
    c.with_pilot = true;
    return c;
}

} // namespace bench
