// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The pilots that can run in a hole of the job: each pilot with each such hole, before any body.
#pragma once

#include <algorithm>
#include <array>
#include <cstdint>
#include <span>
#include <unordered_map>
#include <vector>

#include "match/by_shank.hpp"
#include "match/order.hpp"
#include "match/windows.hpp"

namespace match {

struct Runner {
    std::uint32_t pilot = 0; // of Runners::pilots
    std::uint16_t hole = 0;  // of the job
    AnswerKind at_best{};    // in a body that has everything
    int seat = 0;            // in a body that it is not in
    std::int64_t closeness = 0;
};

class Runners {
  public:
    // `job` must outlive this.
    Runners(const Job& job, const trade::Rack& rack, const Windows& windows, trade::Detail detail);

    [[nodiscard]] const std::vector<Runner>& all() const { return all_; } // by pilot, hole
    [[nodiscard]] const trade::PilotFacts& pilot(const Runner& runner) const {
        return pilots_[runner.pilot];
    }
    [[nodiscard]] Triple in(const trade::BodyFacts& body, const Runner& runner,
                            std::optional<trade::Tried> tried) const {
        return {&body, &pilot(runner), &job_.holes[runner.hole], tried};
    }

    // Of `all`, in the order of answers: seat, published hole, closeness.
    [[nodiscard]] const std::vector<std::uint32_t>& in_order() const { return in_order_; }
    // Of one pilot, by its number.
    [[nodiscard]] std::span<const Runner> of(std::int64_t pilot) const;
    // The numbers of the pilots that are in a body.
    template <typename See>
    void each_in_body(std::int32_t body, const See& see) const {
        const auto [first, last] = by_home_.equal_range(body);
        for (auto it = first; it != last; ++it)
            see(pilots_[it->second].number);
    }

    // Those that may come to `kind` or better in the body, by what is known of the flat and of the
    // shank: `ready` to `measure_first`. Those tried in it or found in it are not regarded.
    template <typename See>
    bool any_at(AnswerKind kind, const trade::BodyFacts& body, const See& see) const {
        const auto any_of = [&](std::span<const std::uint32_t> some) {
            return std::any_of(some.begin(), some.end(),
                               [&](std::uint32_t at) { return see(all_[at]); });
        };
        if (kind == AnswerKind::measure_first)
            return any_of(every_.unknown()) || any_of(every_.perhaps(body.bore, practice()));
        const auto& lists = kind == AnswerKind::ready ? ready_ : after_work_;
        for (const auto flat : flats_that_hold(kind, body))
            if (any_of(lists[static_cast<std::size_t>(flat)].surely(body.bore, practice())))
                return true;
        return false;
    }

  private:
    // What is known of the flat on a pilot's shank.
    enum class Flat { none, measured, not_measured };
    static constexpr std::size_t k_flats = 3;

    void add(const trade::PilotFacts& pilot);
    void index();
    [[nodiscard]] const trade::Practice& practice() const { return job_.shop->practice; }
    [[nodiscard]] static Flat flat_of(const trade::PilotFacts& pilot);
    [[nodiscard]] static std::span<const Flat> flats_that_hold(AnswerKind kind,
                                                               const trade::BodyFacts& body);

    const Job& job_;
    std::vector<trade::PilotFacts> pilots_;
    std::vector<std::uint32_t> first_; // runner of each pilot, and the end
    std::vector<Runner> all_;
    std::vector<std::uint32_t> in_order_;
    std::unordered_map<std::int32_t, std::uint32_t> by_number_; // pilots
    std::unordered_multimap<std::int32_t, std::uint32_t> by_home_;
    std::array<ByShank, k_flats> ready_;      // that are ready at best
    std::array<ByShank, k_flats> after_work_; // or after work
    ByShank every_;
};

} // namespace match
