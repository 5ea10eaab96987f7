// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/search.hpp"

#include <algorithm>
#include <limits>

#include "match/finder.hpp"

namespace match {

namespace {

constexpr auto k_all = std::numeric_limits<std::size_t>::max();

// The first in the order of answers, up to a number of them.
class First {
  public:
    explicit First(std::size_t most) : most_(most) {}

    [[nodiscard]] bool full() const { return found_.size() >= most_; }
    // The key that another must come before to be kept; nullptr while there is room.
    [[nodiscard]] const OrderKey* bound() const {
        return full() ? &found_.front().ranked.key : nullptr;
    }

    void keep(const trade::BodyFacts& body, const Ranked& ranked) {
        if (full()) {
            if (!(ranked.key < *bound()))
                return;
            std::pop_heap(found_.begin(), found_.end(), before);
            found_.pop_back();
        }
        const auto* pilot = ranked.triple.pilot;
        found_.push_back({body, pilot ? std::optional(*pilot) : std::nullopt, ranked, 0});
        std::push_heap(found_.begin(), found_.end(), before);
    }

    [[nodiscard]] std::vector<Found> in_order() && {
        std::sort(found_.begin(), found_.end(), before);
        return std::move(found_);
    }

  private:
    static bool before(const Found& a, const Found& b) { return a.ranked.key < b.ranked.key; }

    std::size_t most_;
    std::vector<Found> found_; // a heap, the last of them first
};

// What the key of a body can be at the least.
OrderKey least_key(const Job& job, const trade::BodyFacts& body, const Outcome& outcome) {
    OrderKey key = outcome.least;
    key.made = least_made(made_by_body(job, body));
    key.size = size_rank(job, body);
    key.condition = condition_rank(body.condition);
    key.body = body.number;
    return key;
}

class Searcher {
  public:
    Searcher(const Job& job, KeptRunners& kept, std::size_t most)
        : job_(job), rack_(kept.rack()), windows_(windows_of(job)),
          detail_(detail_for(*job.question)), finder_(job, windows_, kept), first_(most),
          closest_(most == k_all ? k_all : k_most_closest), most_(most) {}

    // The likeliest first, so that the others are soon known to come after the last that is shown.
    Findings search() {
        using trade::PilotKind;
        const auto& cut = windows_.fitting_cut;
        const auto see = [this](const trade::BodyFacts& body) { this->see(body); };
        rack_.by_cutter(PilotKind::integral, cut, detail_, see);
        // A pilot that runs makes up for a cutter that misses.
        rack_.by_pilot(windows_.running_pilot, detail_, [&](const trade::BodyFacts& body) {
            if (!cut.takes(body.cut_dia) && windows_.near_cut.takes(body.cut_dia))
                see(body);
        });
        rack_.by_cutter(PilotKind::none, cut, detail_, see);
        for (const auto kind : {PilotKind::removable, PilotKind::unknown})
            rack_.by_cutter(kind, windows_.near_cut, detail_, see);
        collect();
        return std::move(findings_);
    }

  private:
    void count(AnswerKind kind) { ++findings_.counts[static_cast<std::size_t>(kind)]; }

    First& kept(AnswerKind kind) { return kind == AnswerKind::closest ? closest_ : first_; }
    [[nodiscard]] bool shown(AnswerKind kind) const {
        return kind != AnswerKind::closest || !first_.full();
    }

    void see(const trade::BodyFacts& body) {
        const auto outcome = finder_.outcome_of(body);
        if (!outcome)
            return;
        const auto kind = outcome->kind();
        count(kind);
        if (!shown(kind))
            return;
        const auto* bound = kept(kind).bound();
        if (bound && (bound->kind < kind || !(least_key(job_, body, *outcome) < *bound)))
            return;
        if (const auto ranked = finder_.best_of(body, *outcome, bound))
            kept(kind).keep(body, *ranked);
    }

    void collect() {
        auto& found = findings_.first;
        found = std::move(first_).in_order();
        auto closest = std::move(closest_).in_order();
        for (std::size_t i = 0; i < closest.size() && found.size() < most_; ++i)
            found.push_back(std::move(closest[i]));
        for (auto& one : found) {
            one.settle();
            if (one.pilot && one.ranked.kind() <= AnswerKind::measure_first)
                one.other_pilots = finder_.pilots_that_do(one.body) - 1;
        }
    }

    const Job& job_;
    const trade::Rack& rack_;
    Windows windows_;
    trade::Detail detail_;
    Finder finder_;
    First first_;
    First closest_;
    std::size_t most_;
    Findings findings_;
};

} // namespace

void Found::settle() {
    auto& triple = ranked.triple;
    triple.body = &body;
    triple.pilot = pilot ? &*pilot : nullptr;
}

Findings search(const Job& job, KeptRunners& kept, std::size_t most) {
    return Searcher(job, kept, most == 0 ? k_all : most).search();
}

Findings search(const Job& job, const trade::Rack& rack, const Trials& trials, std::size_t most) {
    KeptRunners none(rack, trials);
    return search(job, none, most);
}

} // namespace match
