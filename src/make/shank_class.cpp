// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <algorithm>
#include <set>

#include "make/offer.hpp"
#include "make/spec_dimensions.hpp"
#include "match/best.hpp"
#include "match/rules.hpp"
#include "trade/text.hpp"

namespace make {

using length::Length;

namespace {

std::vector<ShankClass> shared_bores(const std::vector<Room>& rooms) {
    std::set<Length> starts;
    for (const auto& room : rooms)
        if (room.shank)
            starts.insert(room.shank->lo);
    std::vector<ShankClass> classes;
    for (const Length start : starts) {
        ShankClass shank;
        for (const auto& room : rooms)
            if (room.shank && room.shank->lo <= start &&
                start + k_shank_tolerance <= room.shank->hi)
                shank.rooms.push_back(&room);
        classes.push_back(std::move(shank));
    }
    return classes;
}

// A bore not known well enough is fitted by trying, so its pilot is for that body alone.
std::vector<ShankClass> to_suit(const std::vector<Room>& rooms) {
    std::map<std::int64_t, ShankClass> by_body;
    for (const auto& room : rooms)
        if (!room.shank)
            by_body[room.body->number].rooms.push_back(&room);
    std::vector<ShankClass> classes;
    for (auto& [body, shank] : by_body)
        classes.push_back(std::move(shank));
    return classes;
}

bool in_hand(const match::Job& job, const match::Triple& triple) {
    return match::judge_in_hand(job, triple).verdict == match::Verdict::pass;
}

bool goes_in(const match::Job& job, const match::Triple& triple) {
    const bool screwed =
        !triple.body->retention || *triple.body->retention == trade::Retention::set_screw;
    return match::judge_slip(job, triple).verdict == match::Verdict::pass && in_hand(job, triple) &&
           (!screwed || match::judge_flat(job, triple).verdict == match::Verdict::pass);
}

ShankClass of_owned(const trade::Pilot& pilot, PieceKind kind, const std::vector<Room>& rooms,
                    const match::Tools& tools, const std::vector<WishJob>& wishes) {
    ShankClass shank{kind, &pilot, {}, {}};
    std::map<std::int64_t, bool> fits;
    for (const auto& room : rooms) {
        const auto body = room.body->number;
        if (!fits.count(body))
            fits[body] =
                goes_in(*wishes[static_cast<std::size_t>(room.wish)].job,
                        match::with_pilot(tools, tools.facts(*room.body), tools.facts(pilot)));
        if (fits[body])
            shank.rooms.push_back(&room);
    }
    return shank;
}

bool is_soft(const trade::Pilot& pilot) {
    const auto material = trade::folded(pilot.material);
    for (const std::string_view word :
         {"unhardened", "soft", "mild", "brass", "bronze", "aluminium", "aluminum"})
        if (material.find(word) != std::string::npos)
            return true;
    return false;
}

void add_owned(const std::vector<Room>& rooms, const match::Tools& tools,
               const std::vector<std::int64_t>& kept, const std::vector<WishJob>& wishes,
               const Options& options, std::vector<ShankClass>& classes) {
    for (const auto& pilot : tools.pilots) {
        if (!pilot.pilot_dia)
            continue;
        const auto& dia = pilot.pilot_dia->range;
        const bool surplus = !std::binary_search(kept.begin(), kept.end(), pilot.number);
        if (options.turn_down && surplus && is_soft(pilot)) {
            auto shank = of_owned(pilot, PieceKind::turn_down, rooms, tools, wishes);
            shank.pilot_limits = length::Range{Length::from_nm(1), dia.lo - Length::from_nm(1)};
            classes.push_back(std::move(shank));
        }
        if (options.sleeves) {
            auto shank = of_owned(pilot, PieceKind::sleeve, rooms, tools, wishes);
            const Length least = dia.hi + k_sleeve_slide_most + k_sleeve_wall * 2;
            shank.pilot_limits = length::Range{least, least * 100};
            classes.push_back(std::move(shank));
        }
    }
}

} // namespace

std::vector<ShankClass> shank_classes(const std::vector<Room>& rooms, const match::Tools& tools,
                                      const std::vector<std::int64_t>& kept,
                                      const std::vector<WishJob>& wishes, const Options& options) {
    auto classes = shared_bores(rooms);
    for (auto& shank : to_suit(rooms))
        classes.push_back(std::move(shank));
    if (options.sleeves || options.turn_down)
        add_owned(rooms, tools, kept, wishes, options, classes);
    return classes;
}

} // namespace make
