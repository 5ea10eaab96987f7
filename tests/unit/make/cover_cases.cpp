// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cover_cases.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace cover_cases {

int between(Chance& chance, int lo, int hi) {
    const auto span = static_cast<unsigned>(hi - lo + 1);
    return lo + static_cast<int>(chance() % span);
}

Case at_random(Chance& chance, const Shape& shape) {
    Case made{shape.elements, {}};
    for (int c = 0; c < shape.choices; ++c) {
        std::map<int, int> ranks;
        const int size = between(chance, 1, shape.largest);
        for (int i = 0; i < size; ++i)
            ranks.try_emplace(between(chance, 0, shape.elements - 1),
                              between(chance, 0, shape.worst));
        make::Choice choice;
        for (const auto& [element, rank] : ranks) {
            choice.elements.push_back(element);
            choice.ranks.push_back(rank);
        }
        if (shape.resources > 0 && between(chance, 1, 10) <= shape.sharing)
            choice.resource = between(chance, 0, shape.resources - 1);
        made.choices.push_back(std::move(choice));
    }
    return made;
}

namespace {

// All in hundredths of a millimetre, but bores in microns.
struct Screw {
    int head = 0;
    int pilot_lo = 0; // of the pilots that run in any of its holes
    int pilot_hi = 0;
};

struct Body {
    int cut = 0;
    int bore = 0;
};

std::vector<Screw> screws_at_random(Chance& chance, int count) {
    const int sizes[] = {300, 350, 400,  420,  480,  500,  600,  635,  700,
                         800, 950, 1000, 1110, 1200, 1270, 1400, 1600, 1900};
    std::vector<Screw> screws;
    for (int i = 0; i < count; ++i) {
        const int size = sizes[between(chance, 0, 17)];
        const int least = size + 5 + between(chance, 0, 3) * size / 50;
        screws.push_back({size * between(chance, 135, 180) / 100, least,
                          least + 8 + between(chance, 0, 3) * size / 40});
    }
    return screws;
}

std::vector<Body> bodies_at_random(Chance& chance, int count) {
    const int bores[] = {2380, 3175, 3970, 4760, 6350, 7940, 9525};
    std::vector<Body> bodies;
    for (int i = 0; i < count; ++i) {
        const int nominal = between(chance, 0, 6);
        bodies.push_back({bores[nominal] / 10 * between(chance, 14, 36) / 10,
                          bores[nominal] + between(chance, -120, 120)});
    }
    return bodies;
}

// What a pilot of this shank and diameter serves, in the best body for each screw.
make::Choice pilot_for(const std::vector<Screw>& screws, const std::vector<Body>& bodies, int shank,
                       int pilot) {
    make::Choice choice;
    for (std::size_t s = 0; s < screws.size(); ++s) {
        const auto& screw = screws[s];
        if (pilot < screw.pilot_lo || pilot > screw.pilot_hi)
            continue;
        int rank = 4;
        for (const auto& body : bodies) {
            const bool slips = body.bore - 60 <= shank && shank <= body.bore - 15;
            const int over = body.cut * 100 / screw.head;
            if (slips && body.bore / 10 < pilot && over > 101 && over < 125)
                rank = std::min(rank, over < 104 ? 2 : over < 108 ? 1 : over < 114 ? 0 : 3);
        }
        if (rank == 4)
            continue;
        choice.elements.push_back(static_cast<int>(s));
        choice.ranks.push_back(rank);
    }
    return choice;
}

} // namespace

Case like_a_shop(Chance& chance, int screws, int bodies) {
    const auto wanted = screws_at_random(chance, screws);
    const auto owned = bodies_at_random(chance, bodies);
    std::set<int> shanks;
    for (const auto& body : owned)
        shanks.insert(body.bore - 60);
    std::set<int> pilots;
    for (const auto& screw : wanted)
        pilots.insert(screw.pilot_hi);
    Case made{screws, {}};
    std::set<std::pair<std::vector<int>, std::vector<int>>> seen;
    for (const int shank : shanks)
        for (const int pilot : pilots) {
            auto choice = pilot_for(wanted, owned, shank, pilot);
            if (!choice.elements.empty() && seen.emplace(choice.elements, choice.ranks).second)
                made.choices.push_back(std::move(choice));
        }
    return made;
}

Worth worth_of(const Case& problem, const std::vector<int>& chosen) {
    Worth worth;
    std::map<int, int> best;
    std::set<int> used;
    worth.count = static_cast<int>(chosen.size());
    for (const int c : chosen) {
        const auto& choice = problem.choices[static_cast<std::size_t>(c)];
        if (choice.resource >= 0 && !used.insert(choice.resource).second)
            worth.allowed = false;
        for (std::size_t i = 0; i < choice.elements.size(); ++i) {
            const auto [it, added] = best.try_emplace(choice.elements[i], choice.ranks[i]);
            it->second = std::min(it->second, choice.ranks[i]);
        }
    }
    worth.covered = static_cast<int>(best.size());
    for (const auto& [element, rank] : best)
        worth.total += rank;
    return worth;
}

} // namespace cover_cases
