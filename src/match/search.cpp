// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/search.hpp"

#include <algorithm>

#include "match/finder.hpp"

namespace match {

namespace {

// The first in the order of answers, up to a number of them.
class First {
  public:
    explicit First(std::size_t most) : most_(most) {}

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
        const auto* pilot = ranked.judged.triple.pilot;
        found_.push_back({body, pilot ? std::optional(*pilot) : std::nullopt, ranked, 0});
        if (most_ != 0)
            std::push_heap(found_.begin(), found_.end(), before);
    }

    [[nodiscard]] std::vector<Found> in_order() && {
        std::sort(found_.begin(), found_.end(), before);
        for (auto& found : found_)
            found.settle();
        return std::move(found_);
    }

  private:
    static bool before(const Found& a, const Found& b) { return a.ranked.key < b.ranked.key; }
    [[nodiscard]] bool full() const { return most_ != 0 && found_.size() >= most_; }

    std::size_t most_;
    std::vector<Found> found_; // the last of them first, once there may be too many
};

// What the key of a body can be at the least.
OrderKey least_key(const Job& job, const trade::BodyFacts& body, AnswerKind kind) {
    OrderKey key{};
    key.kind = kind;
    const auto size = size_of(job, {&body, nullptr, nullptr, {}});
    key.size = size ? static_cast<int>(*size) : k_size_not_known;
    return key;
}

class Searcher {
  public:
    Searcher(const Job& job, const trade::Rack& rack, const Trials& trials, std::size_t most)
        : job_(job), rack_(rack), windows_(windows_of(job)), detail_(detail_for(*job.question)),
          finder_(job, rack, trials), first_(most) {}

    Findings search() {
        using trade::PilotKind;
        // An integral pilot that runs makes up for a cutter that misses, or the other way round.
        rack_.by_pilot(windows_.running_pilot, detail_, [this](const trade::BodyFacts& body) {
            if (windows_.near_cut.takes(body.cut_dia))
                see_whole(body);
        });
        rack_.by_cutter(PilotKind::integral, windows_.fitting_cut, detail_,
                        [this](const trade::BodyFacts& body) {
                            if (!windows_.running_pilot.takes(body.pilot_dia))
                                see_whole(body);
                        });
        rack_.by_cutter(PilotKind::none, windows_.fitting_cut, detail_,
                        [this](const trade::BodyFacts& body) { see_whole(body); });
        rack_.by_cutter(PilotKind::removable, windows_.near_cut, detail_,
                        [this](const trade::BodyFacts& body) { see_seat(body); });
        rack_.by_cutter(PilotKind::unknown, windows_.near_cut, detail_,
                        [this](const trade::BodyFacts& body) {
                            trade::may_take_pilot(body) ? see_seat(body) : see_whole(body);
                        });
        findings_.first = std::move(first_).in_order();
        for (auto& found : findings_.first)
            if (found.pilot && *found.ranked.judged.kind <= AnswerKind::measure_first)
                found.other_pilots = finder_.pilots_that_do(found.body) - 1;
        return std::move(findings_);
    }

  private:
    void count(AnswerKind kind) { ++findings_.counts[static_cast<std::size_t>(kind)]; }

    // A body in one piece with its pilot, or without any.
    void see_whole(const trade::BodyFacts& body) {
        const auto ranked = over_holes(job_, {&body, nullptr, nullptr, {}});
        if (!ranked)
            return;
        count(*ranked->judged.kind);
        first_.keep(body, *ranked);
    }

    // A body that may take a pilot.
    void see_seat(const trade::BodyFacts& body) {
        const auto outcome = finder_.outcome_of(body);
        if (!outcome)
            return;
        count(outcome->kind);
        const auto* bound = first_.bound();
        if (bound && !(least_key(job_, body, outcome->kind) < *bound))
            return;
        if (const auto ranked = finder_.best_of(body, *outcome, bound))
            first_.keep(body, *ranked);
    }

    const Job& job_;
    const trade::Rack& rack_;
    Windows windows_;
    trade::Detail detail_;
    Finder finder_;
    First first_;
    Findings findings_;
};

} // namespace

void Found::settle() {
    auto& triple = ranked.judged.triple;
    triple.body = &body;
    triple.pilot = pilot ? &*pilot : nullptr;
}

Findings search(const Job& job, const trade::Rack& rack, const Trials& trials, std::size_t most) {
    return Searcher(job, rack, trials, most).search();
}

} // namespace match
