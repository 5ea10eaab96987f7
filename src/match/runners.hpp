// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The pilots that come into question for a job, each with each hole that it can run in, judged as
// far as they can be before any body is looked at.
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <tuple>
#include <utility>
#include <vector>

#include "match/by_shank.hpp"
#include "match/flats.hpp"
#include "match/order.hpp"
#include "match/trials.hpp"
#include "match/windows.hpp"
#include "trade/number_set.hpp"

namespace match {

// How pilots of one size and state run in one hole.
struct Fit {
    static constexpr std::uint16_t k_no_hole = UINT16_MAX;

    Rank rank = 0;          // in a body that it is not in
    std::uint16_t hole = 0; // of the job
    AnswerKind at_best{};   // in a body that has everything
};

struct Runner {
    std::uint32_t pilot = 0; // its place
    const Fit* fit = nullptr;
};

class Runners {
  public:
    // Those that can run in one of the holes; or else the misfits, which can run in none, but come
    // near.
    enum class Which { running, misfits };

    // The job's shop must outlive this.
    Runners(Which which, const Job& job, const trade::Rack& rack, const Trials& trials,
            const Windows& windows, trade::Detail detail);
    Runners(const Runners&) = delete; // the job points at the question
    Runners& operator=(const Runners&) = delete;

    // Whether those of another job are the same.
    [[nodiscard]] bool serve(Which which, const Job& job, trade::Detail detail) const;

    [[nodiscard]] const trade::PilotFacts& pilot(const Runner& runner) const {
        return pilots_[runner.pilot];
    }
    // With the hole of a job that these serve.
    [[nodiscard]] Triple in(const trade::BodyFacts& body, const Runner& runner,
                            std::optional<trade::Tried> tried, const Job& job) const {
        return {&body, &pilot(runner), hole_of(runner, job), tried};
    }

    // What the head may need at most over it, with any of them.
    [[nodiscard]] length::Length most_clearance() const { return most_clearance_; }

    // The shank that may be the longest.
    [[nodiscard]] length::Length longest_shank() const { return longest_shank_; }
    // The least rank of those that come to `kind` at best and whose shank may slip in the bore.
    [[nodiscard]] Rank least_rank(AnswerKind kind, const trade::Limits& bore) const;
    // Of a misfit: by how much no hole takes it; else 0.
    [[nodiscard]] Shortfall shortfall(const Runner& runner) const {
        return shortfalls_.empty()
                   ? Shortfall{}
                   : shortfalls_[static_cast<std::size_t>(runner.fit - fits_.data())];
    }

    // Shows those of one pilot that is tried, by its number.
    template <typename See>
    void each_of(std::int64_t pilot, const See& see) const {
        each_under(tried_, static_cast<std::int32_t>(pilot), see);
    }
    // Shows those of the pilots that are in a body.
    template <typename See>
    void each_in_body(std::int32_t body, const See& see) const {
        if (homes_.may_have(body))
            each_under(by_home_, body, see);
    }

    // Whether any will do, of those that may come to `kind` (`ready` to `measure_first`) in the
    // body by what is known of flats and shanks; of each pilot the one in the widest hole, which
    // fails in no body where another would do. What is tried in it or found in it is not regarded.
    template <typename Does>
    bool any_at(AnswerKind kind, const trade::BodyFacts& body, const Does& does) const {
        const auto at = static_cast<std::size_t>(kind);
        const auto least = std::max<std::int64_t>(1, body.bore ? (*body.bore).lo.nm() : 1);
        return any_pilot_at(kind, body, [&](const Shanked& pilot) {
            return pilot.widest[at] >= least && does(*widest_at(kind, pilot.pilot));
        });
    }
    // Shows each of those in all its holes; for `closest` those whose shank may slip in the bore.
    template <typename See>
    void each_at(AnswerKind kind, const trade::BodyFacts& body, const See& see) const {
        (void)any_pilot_at(kind, body, [&](const Shanked& pilot) {
            each_fit(pilot.pilot, see);
            return false;
        });
    }

  private:
    using Index = std::vector<std::pair<std::int32_t, std::uint32_t>>; // a number to pilots

    [[nodiscard]] static const CandidateHole* hole_of(const Runner& runner, const Job& job) {
        return runner.fit->hole == Fit::k_no_hole ? nullptr : &job.holes[runner.fit->hole];
    }
    // Shows one pilot with each of its holes.
    template <typename See>
    void each_fit(std::uint32_t pilot, const See& see) const {
        for (auto at = fits_of_[pilot].first; at < fits_of_[pilot].end; ++at)
            see(Runner{pilot, &fits_[at]});
    }
    template <typename See>
    void each_under(const Index& index, std::int32_t number, const See& see) const {
        for (auto it = std::lower_bound(index.begin(), index.end(), std::pair(number, 0U));
             it != index.end() && it->first == number; ++it)
            each_fit(it->second, see);
    }
    template <typename Does>
    bool any_pilot_at(AnswerKind kind, const trade::BodyFacts& body, const Does& does) const {
        if (kind != AnswerKind::ready && kind != AnswerKind::after_work)
            return by_shank_.any_perhaps(body.bore, practice(), does);
        const auto flats = flats_that_hold(kind, body);
        return !flats.empty() &&
               by_shank_.any_surely(body.bore, practice(), [&](const Shanked& pilot) {
                   return std::find(flats.begin(), flats.end(), pilot.flat) != flats.end() &&
                          does(pilot);
               });
    }
    void add(Which which, const trade::PilotFacts& pilot);
    void add_fits(Which which, const trade::PilotFacts& pilot);
    void add_with(const Triple& triple, std::uint16_t hole);
    void index(const Trials& trials);
    [[nodiscard]] std::optional<Runner> widest_at(AnswerKind kind, std::uint32_t pilot) const;
    [[nodiscard]] Shanked shanked(std::uint32_t pilot) const;
    [[nodiscard]] const trade::Practice& practice() const { return job_.shop->practice; }
    [[nodiscard]] static Flat flat_of(const trade::PilotFacts& pilot);
    [[nodiscard]] std::span<const Flat> flats_that_hold(AnswerKind kind,
                                                        const trade::BodyFacts& body) const;

    Which which_;
    trade::Detail detail_;
    Question question_;
    Job job_;
    length::Length most_clearance_;
    length::Length longest_shank_;
    std::vector<trade::PilotFacts> pilots_;
    struct Fits {
        std::uint32_t first;
        std::uint32_t end;
    };
    std::vector<Fits> fits_of_;         // each pilot
    std::vector<Fit> fits_;             // of pilots of a size that come together, by hole
    std::vector<Shortfall> shortfalls_; // of misfits, as `fits_`
    Index tried_;                       // by number
    Index by_home_;                     // by the number of the body that each is in
    trade::NumberSet homes_;
    ByShank by_shank_;
    mutable std::map<std::tuple<AnswerKind, std::int64_t, std::int64_t>, Rank> least_ranks_;
    Flats ready_flats_; // of the pilots that are ready at best
};

} // namespace match
