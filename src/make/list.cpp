// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/list.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <set>

#include "make/cover.hpp"
#include "make/place.hpp"
#include "match/matcher.hpp"
#include "match/shelf.hpp"

namespace make {

namespace {

// Enough for every case of a real shop; past it the best found is given with its bound.
constexpr std::int64_t k_most_nodes = 500'000;

// Sorts the wishes into met, to be settled and to be made for.
struct Sorted {
    std::vector<const Wish*> open;
    std::vector<match::Report> reports; // of the open ones
    std::vector<std::int64_t> kept;     // pilots that met wishes use, ascending
};

// A measurement settles a screw only where a pilot is there already: without one it must be made
// all the same.
std::optional<match::Answer> settled_by(const Wish& wish, const match::Matcher& matcher) {
    return matcher.first_that(wish.question, [](const match::Ranked& answer) {
        return answer.kind() == match::AnswerKind::measure_first &&
               match::seat_of(answer.triple) != match::Seat::none;
    });
}

Sorted sort_out(const std::vector<Wish>& wishes, const match::Matcher& matcher, MakeList& list) {
    Sorted sorted;
    std::set<std::int64_t> kept;
    const auto keep = [&kept](const match::Answer& answer) {
        if (answer.pilot)
            kept.insert(*answer.pilot);
    };
    for (const auto& wish : wishes) {
        auto report = matcher.match(wish.question, 1);
        const auto kind =
            report.answers.empty() ? match::AnswerKind::closest : report.answers[0].kind;
        if (kind <= match::AnswerKind::after_work) {
            list.met.push_back(wish.screw);
            keep(report.answers[0]);
            continue;
        }
        if (kind == match::AnswerKind::measure_first) {
            if (auto answer = settled_by(wish, matcher)) {
                keep(*answer);
                list.settle_first.push_back({wish.screw, std::move(*answer)});
                continue;
            }
        }
        sorted.open.push_back(&wish);
        sorted.reports.push_back(std::move(report));
    }
    sorted.kept.assign(kept.begin(), kept.end());
    return sorted;
}

std::vector<Choice> choices_of(const std::vector<Offer>& offers) {
    std::map<const trade::Pilot*, int> resources;
    std::vector<Choice> choices;
    for (const auto& offer : offers) {
        Choice choice{offer.wishes, offer.ranks, -1};
        if (offer.shank->kind == PieceKind::turn_down)
            choice.resource =
                resources.try_emplace(offer.shank->owned, static_cast<int>(resources.size()))
                    .first->second;
        choices.push_back(std::move(choice));
    }
    return choices;
}

// Each covered wish goes to the chosen offer that serves it best, the first of equals.
std::vector<std::vector<int>> assign(const std::vector<Offer>& offers, const Cover& cover,
                                     std::size_t wishes) {
    std::vector<std::vector<int>> assigned(cover.chosen.size());
    for (std::size_t wish = 0; wish < wishes; ++wish) {
        int best = -1, best_rank = 0;
        for (std::size_t i = 0; i < cover.chosen.size(); ++i) {
            const auto& offer = offers[static_cast<std::size_t>(cover.chosen[i])];
            const auto it =
                std::lower_bound(offer.wishes.begin(), offer.wishes.end(), static_cast<int>(wish));
            if (it == offer.wishes.end() || *it != static_cast<int>(wish))
                continue;
            const int rank = offer.ranks[static_cast<std::size_t>(it - offer.wishes.begin())];
            if (best < 0 || rank < best_rank) {
                best = static_cast<int>(i);
                best_rank = rank;
            }
        }
        if (best >= 0)
            assigned[static_cast<std::size_t>(best)].push_back(static_cast<int>(wish));
    }
    return assigned;
}

void add_pieces(const std::vector<Offer>& offers, const Cover& cover,
                const std::vector<WishJob>& wishes, length::Unit unit, MakeList& list) {
    const auto assigned = assign(offers, cover, wishes.size());
    for (std::size_t i = 0; i < cover.chosen.size(); ++i)
        list.pieces.push_back(
            place(offers[static_cast<std::size_t>(cover.chosen[i])], assigned[i], wishes, unit));
    const auto key = [](const Piece& piece) {
        const auto shank = piece.shank ? piece.shank->lo : length::Length();
        return std::make_tuple(shank, piece.pilot.lo, piece.bodies.front().number);
    };
    std::sort(list.pieces.begin(), list.pieces.end(),
              [&key](const Piece& a, const Piece& b) { return key(a) < key(b); });
    int item = 0;
    for (auto& piece : list.pieces)
        piece.item = ++item;
    list.proven = cover.proven;
    list.bound = cover.bound;
}

void add_unmet(const Sorted& sorted, const std::vector<Offer>& offers, const Cover& cover,
               MakeList& list) {
    std::set<int> covered;
    for (const int index : cover.chosen) {
        const auto& wishes = offers[static_cast<std::size_t>(index)].wishes;
        covered.insert(wishes.begin(), wishes.end());
    }
    for (std::size_t i = 0; i < sorted.open.size(); ++i) {
        if (covered.count(static_cast<int>(i)))
            continue;
        CannotMeet cannot{sorted.open[i]->screw, sorted.reports[i].wanted, {}};
        if (!sorted.reports[i].answers.empty())
            cannot.nearest = sorted.reports[i].answers[0];
        list.cannot.push_back(std::move(cannot));
    }
}

} // namespace

MakeList make_list(const std::vector<Wish>& wishes, const match::Shop& shop,
                   const trade::Rack& rack, length::Unit unit, const Options& options) {
    MakeList list;
    const auto tools = match::load_tools(rack);
    const match::RackFor many(rack, wishes.size());
    const auto sorted = sort_out(wishes, match::Matcher(many.rack(), shop, unit), list);
    std::vector<WishJob> jobs;
    std::vector<Room> rooms;
    for (const auto* wish : sorted.open) {
        jobs.push_back({wish, std::make_unique<match::Job>(match::make_job(wish->question, shop))});
        const auto found = rooms_of(static_cast<int>(jobs.size()) - 1, jobs.back(), tools, unit);
        rooms.insert(rooms.end(), found.begin(), found.end());
    }
    const auto classes = shank_classes(rooms, tools, sorted.kept, jobs, options);
    const auto offers = offers_of(classes);
    const auto cover = least_cover(static_cast<int>(jobs.size()), choices_of(offers), k_most_nodes);
    add_pieces(offers, cover, jobs, unit, list);
    add_unmet(sorted, offers, cover, list);
    return list;
}

} // namespace make
