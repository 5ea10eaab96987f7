// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/offer.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace make {

using length::Length;

namespace {

// Where the least diameter of a piece may lie for the room: all that it needs of it must be left.
length::MaybeRange starts_in(const Room& room, const ShankClass& shank) {
    Length lo = room.pilot.lo;
    Length hi = room.pilot.hi;
    if (shank.pilot_limits) {
        lo = std::max(lo, shank.pilot_limits->lo);
        hi = std::min(hi, shank.pilot_limits->hi);
    }
    if (lo + room.tolerance() > hi)
        return std::nullopt;
    return length::Range{lo, hi - room.tolerance()};
}

struct Start {
    length::Range range;
    const Room* room;
};

std::vector<Start> starts_of(const ShankClass& shank) {
    std::vector<Start> starts;
    for (const auto* room : shank.rooms)
        if (const auto range = starts_in(*room, shank))
            starts.push_back({*range, room});
    std::sort(starts.begin(), starts.end(),
              [](const Start& a, const Start& b) { return a.range.lo < b.range.lo; });
    return starts;
}

Offer offer_at(const ShankClass& shank, Length at, const std::vector<const Start*>& here) {
    Offer offer{&shank, at, {}, {}, {}, 0};
    std::map<int, std::pair<int, int>> best; // by wish: size class, then published hole
    for (const auto* start : here) {
        offer.rooms.push_back(start->room);
        const std::pair<int, int> rank{static_cast<int>(start->room->size),
                                       static_cast<int>(start->room->hole->published)};
        const auto [it, added] = best.try_emplace(start->room->wish, rank);
        if (!added)
            it->second = std::min(it->second, rank);
    }
    for (const auto& [wish, rank] : best) {
        offer.wishes.push_back(wish);
        offer.ranks.push_back(rank.first);
        offer.published += rank.second;
    }
    return offer;
}

// Sweeps the diameters upward. A piece is worth placing only where the next thing that happens is
// that a room is left behind: anywhere earlier it would fit no more rooms.
void sweep(const ShankClass& shank, std::vector<Offer>& offers) {
    const auto starts = starts_of(shank);
    std::vector<const Start*> here;
    for (std::size_t i = 0; i < starts.size(); ++i) {
        const Length at = starts[i].range.lo;
        std::erase_if(here, [at](const Start* start) { return start->range.hi < at; });
        here.push_back(&starts[i]);
        const auto first_end = (*std::min_element(here.begin(), here.end(), [](auto* a, auto* b) {
                                   return a->range.hi < b->range.hi;
                               }))->range.hi;
        const bool last = i + 1 == starts.size();
        if (last || starts[i + 1].range.lo > first_end)
            offers.push_back(offer_at(shank, at, here));
    }
}

} // namespace

int effort(PieceKind kind) {
    switch (kind) {
    case PieceKind::turn_down:
        return 0;
    case PieceKind::sleeve:
        return 1;
    case PieceKind::pilot:
        return 2;
    }
    return 2;
}

std::vector<Offer> offers_of(const std::vector<ShankClass>& classes) {
    std::vector<Offer> all;
    for (const auto& shank : classes)
        sweep(shank, all);
    std::stable_sort(all.begin(), all.end(), [](const Offer& a, const Offer& b) {
        const auto key = [](const Offer& offer) {
            return std::make_pair(effort(offer.shank->kind), offer.published);
        };
        return key(a) < key(b);
    });
    // Of new pieces that serve the same, the first stands for all; an owned pilot is its own.
    std::set<std::tuple<const trade::Pilot*, std::vector<int>, std::vector<int>>> seen;
    std::vector<Offer> offers;
    for (auto& offer : all) {
        const auto* owned =
            offer.shank->kind == PieceKind::turn_down ? offer.shank->owned : nullptr;
        if (seen.emplace(owned, offer.wishes, offer.ranks).second)
            offers.push_back(std::move(offer));
    }
    return offers;
}

} // namespace make
