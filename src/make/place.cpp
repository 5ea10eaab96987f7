// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "make/place.hpp"

#include <algorithm>
#include <map>
#include <tuple>

#include "length/grid.hpp"
#include "make/fit.hpp"

namespace make {

using length::Length;
using length::Range;

namespace {

// Slip that is aimed at: the whole tolerance on the close side of good.
constexpr Length k_shank_width = length::inches_e5(50);

bool better(const Room& a, const Room& b) {
    const auto key = [](const Room& room) {
        const auto drill = room.hole->drill ? room.hole->drill->diameter : Length();
        return std::make_tuple(room.size, room.hole->published, room.body->number, drill);
    };
    return key(a) < key(b);
}

// The best room of each assigned wish.
std::vector<const Room*> rooms_for(const Offer& offer, const std::vector<int>& assigned) {
    std::map<int, const Room*> best;
    for (const auto* room : offer.rooms) {
        if (!std::binary_search(assigned.begin(), assigned.end(), room->wish))
            continue;
        auto& kept = best[room->wish];
        if (!kept || better(*room, *kept))
            kept = room;
    }
    std::vector<const Room*> rooms;
    for (const auto& [wish, room] : best)
        rooms.push_back(room);
    return rooms;
}

Range intersection(const Range& a, const Range& b) {
    return {std::max(a.lo, b.lo), std::min(a.hi, b.hi)};
}

Length mean_of_aims(const std::vector<const Room*>& rooms) {
    std::int64_t sum = 0;
    for (const auto* room : rooms)
        sum += middle(room->aim).nm();
    return Length::from_nm(sum / static_cast<std::int64_t>(rooms.size()));
}

// The limits that suit every hole, where they are no closer than those of a piece for one of them.
length::MaybeRange common_aim(const std::vector<const Room*>& rooms, const Range& limits) {
    Range aim = limits;
    Length width = k_pilot_tolerance;
    for (const auto* room : rooms) {
        aim = intersection(aim, room->aim);
        width = std::min(width, room->aim.hi - room->aim.lo);
    }
    if (aim.hi - aim.lo < width)
        return std::nullopt;
    return aim;
}

Range pilot_limits(const Offer& offer, const std::vector<const Room*>& rooms, Length step) {
    Range limits = rooms.front()->pilot;
    for (const auto* room : rooms)
        limits = intersection(limits, room->pilot);
    if (offer.shank->pilot_limits)
        limits = inward(intersection(limits, *offer.shank->pilot_limits), step);
    if (const auto aim = common_aim(rooms, limits))
        return *aim;
    return around(mean_of_aims(rooms), k_pilot_tolerance, limits, step);
}

length::MaybeRange shank_limits(const Offer& offer, const std::vector<const Room*>& rooms,
                                Length step) {
    if (offer.shank->kind != PieceKind::pilot || !rooms.front()->shank)
        return std::nullopt;
    Range limits = *rooms.front()->shank;
    for (const auto* room : rooms)
        limits = intersection(limits, *room->shank);
    return around(limits.hi, k_shank_width, limits, step);
}

bool holds(const Room& room, const Piece& piece) {
    const auto within = [](const Range& inner, const Range& outer) {
        return outer.lo <= inner.lo && inner.hi <= outer.hi;
    };
    return within(piece.pilot, room.pilot) &&
           (!piece.shank || (room.shank && within(*piece.shank, *room.shank)));
}

// The best room of every wish and body that the finished piece fits.
std::vector<const Room*> served_rooms(const Offer& offer, const Piece& piece) {
    std::map<std::pair<int, std::int64_t>, const Room*> best;
    for (const auto* room : offer.shank->rooms) {
        if (!holds(*room, piece))
            continue;
        auto& kept = best[{room->wish, room->body->number}];
        if (!kept || better(*room, *kept))
            kept = room;
    }
    std::vector<const Room*> rooms;
    for (const auto& [key, room] : best)
        rooms.push_back(room);
    return rooms;
}

} // namespace

Piece place(const Offer& offer, const std::vector<int>& assigned,
            const std::vector<WishJob>& wishes, length::Unit unit) {
    const Length step = fine_step(unit);
    const auto rooms = rooms_for(offer, assigned);
    Piece piece;
    piece.kind = offer.shank->kind;
    if (offer.shank->owned)
        piece.owned = *offer.shank->owned;
    piece.pilot = pilot_limits(offer, rooms, step);
    piece.shank = shank_limits(offer, rooms, step);
    std::map<std::int64_t, const trade::Body*> bodies;
    for (const auto* room : served_rooms(offer, piece)) {
        piece.serves.push_back({wishes[static_cast<std::size_t>(room->wish)].wish->screw,
                                room->body->number, room->hole->drill, room->hole->hole, room->size,
                                room->hole->reamed});
        bodies[room->body->number] = room->body;
    }
    for (const auto& [number, body] : bodies)
        piece.bodies.push_back(*body);
    return piece;
}

} // namespace make
