// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The pilots that come into question for a job, each with each hole that it can run in, judged as
// far as they can be before any body is looked at.
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <span>
#include <unordered_map>
#include <vector>

#include "match/by_shank.hpp"
#include "match/flats.hpp"
#include "match/order.hpp"
#include "match/windows.hpp"

namespace match {

struct Runner {
    static constexpr std::uint16_t k_no_hole = UINT16_MAX;

    std::uint32_t pilot = 0;    // its place
    std::int32_t closeness = 0; // unknown: the most
    std::uint16_t hole = 0;     // of the job
    AnswerKind at_best{};       // in a body that has everything
    std::uint8_t seat = 0;      // in a body that it is not in
    std::uint8_t published = 0;
};

class Runners {
  public:
    // Those that can run in one of the holes; or else the misfits, which can run in none, but come
    // near.
    enum class Which { running, misfits };

    // `job` must outlive this.
    Runners(Which which, const Job& job, const trade::Rack& rack, const Windows& windows,
            trade::Detail detail);

    [[nodiscard]] const trade::PilotFacts& pilot(const Runner& runner) const {
        return pilots_[runner.pilot];
    }
    [[nodiscard]] Triple in(const trade::BodyFacts& body, const Runner& runner,
                            std::optional<trade::Tried> tried) const {
        const bool none = runner.hole == Runner::k_no_hole;
        return {&body, &pilot(runner), none ? nullptr : &job_.holes[runner.hole], tried};
    }

    // What the head may need at most over it, with any of them.
    [[nodiscard]] length::Length most_clearance() const { return most_clearance_; }

    // Shows all, each with the least key, but for the size and number of the body, that it can give
    // one; by these keys, until told that no more are wanted.
    template <typename Go>
    void in_order(const Go& go) const {
        for (const auto at : in_order_)
            if (!go(all_[at], least_key(at)))
                return;
    }
    // Shows those of one pilot, by its number.
    template <typename See>
    void each_of(std::int64_t pilot, const See& see) const {
        const auto found = std::lower_bound(
            by_number_.begin(), by_number_.end(), pilot,
            [](const auto& one, std::int64_t wanted) { return one.first < wanted; });
        if (found != by_number_.end() && found->first == pilot)
            each_at(found->second, see);
    }
    // Shows those of the pilots that are in a body.
    template <typename See>
    void each_in_body(std::int32_t body, const See& see) const {
        const auto [first, last] = by_home_.equal_range(body);
        for (auto it = first; it != last; ++it)
            each_at(it->second, see);
    }

    // Whether any will do, of those that may come to `kind` (`ready` to `measure_first`) in the
    // body by what is known of flats and shanks. What is tried in it or found in it is not
    // regarded.
    template <typename Does>
    bool any_at(AnswerKind kind, const trade::BodyFacts& body, const Does& does) const {
        const auto does_at = [&](std::uint32_t at) { return does(all_[at]); };
        if (kind == AnswerKind::measure_first)
            return usable_.any_perhaps(body.bore, practice(), does_at);
        const auto& lists = kind == AnswerKind::ready ? ready_ : after_work_;
        const auto flats = flats_that_hold(kind, body);
        return std::any_of(flats.begin(), flats.end(), [&](Flat flat) {
            return lists[static_cast<std::size_t>(flat)].any_surely(body.bore, practice(), does_at);
        });
    }

  private:
    // What is known of the flat on a pilot's shank.
    enum class Flat { none, measured, not_measured };
    static constexpr std::size_t k_flats = 3;

    template <typename See>
    void each_at(std::uint32_t pilot, const See& see) const {
        for (auto i = first_[pilot]; i < first_[pilot + 1]; ++i)
            see(all_[i]);
    }
    void add(Which which, const trade::PilotFacts& pilot);
    void add_with(const Triple& triple, std::uint16_t hole);
    void index();
    void index_pilot(std::uint32_t pilot);
    void put_in_order();
    [[nodiscard]] OrderKey least_key(std::uint32_t at) const;
    [[nodiscard]] const trade::Practice& practice() const { return job_.shop->practice; }
    [[nodiscard]] static Flat flat_of(const trade::PilotFacts& pilot);
    [[nodiscard]] std::span<const Flat> flats_that_hold(AnswerKind kind,
                                                        const trade::BodyFacts& body) const;

    const Job& job_;
    length::Length most_clearance_;
    std::vector<trade::PilotFacts> pilots_;
    std::vector<std::uint32_t> first_; // runner of each pilot, and the end
    std::vector<Runner> all_;          // by pilot, hole
    std::vector<std::uint32_t> in_order_;
    std::vector<Shortfall> shortfalls_;                             // of misfits, as `all_`
    std::vector<std::pair<std::int32_t, std::uint32_t>> by_number_; // pilots
    std::unordered_multimap<std::int32_t, std::uint32_t> by_home_;
    // Of each pilot the runner in the widest hole, which fails in no body where another would do.
    std::array<ByShank, k_flats> ready_;      // those that are ready at best, by flat
    std::array<ByShank, k_flats> after_work_; // or after work
    ByShank usable_;                          // all that are in hand
    Flats ready_flats_;                       // of those that are ready at best
};

} // namespace match
