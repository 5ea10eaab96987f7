// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Answers the cut-down question by looking at every body with every pilot and hole, from the rules
// alone: what the SQL is held against. Prints the screw, the bodies that are ready and those that
// are not sure, and, for the one screw, the best in the order asked for.
// Usage: count_slowly CATALOGUE
#include <algorithm>
#include <cstdlib>
#include <iostream>
#include <tuple>

#include "speed/cut_down.hpp"
#include "store/tools.hpp"

namespace {

enum Verdict { pass, unsure, fail };

using Size = trade::MaybeDimension;

constexpr std::size_t k_shown = 20;

Verdict within(std::int64_t lo, std::int64_t hi, std::int64_t least, std::int64_t most) {
    if (hi < least || lo > most)
        return fail;
    return lo >= least && hi <= most ? pass : unsure;
}

// `a` less `b`, which must lie in [least, most].
Verdict gap(std::int64_t a_lo, std::int64_t a_hi, const Size& b, std::int64_t least,
            std::int64_t most) {
    return b ? within(a_lo - b->range.hi.nm(), a_hi - b->range.lo.nm(), least, most) : unsure;
}

template <class Tool>
bool in_hand(const Tool& tool) {
    return !tool.retired && !tool.loan && tool.condition != trade::Condition::broken;
}

struct Best {
    Verdict verdict = fail;
    int size = 9;
    std::int64_t closeness = 0;
    std::int64_t body = 0, pilot = 0;

    [[nodiscard]] auto order() const { return std::tie(verdict, size, closeness, body, pilot); }
};

class Counter {
  public:
    Counter(const speed::Limits& limits, const speed::Asked& screw,
            const std::vector<trade::Body>& bodies, const std::vector<trade::Pilot>& pilots)
        : limits_(limits), screw_(screw) {
        for (const auto& pilot : pilots)
            if (in_hand(pilot) && runs_somewhere(pilot.pilot_dia))
                pilots_.push_back(&pilot);
        for (const auto& body : bodies)
            if (in_hand(body) && head(body, {}) != fail)
                look_at(body);
        std::sort(found_.begin(), found_.end(),
                  [](const Best& a, const Best& b) { return a.order() < b.order(); });
    }

    void print(bool all) const {
        const auto ready = std::count_if(found_.begin(), found_.end(),
                                         [](const Best& best) { return best.verdict == pass; });
        std::cout << screw_.id << '|' << ready << '|'
                  << static_cast<std::ptrdiff_t>(found_.size()) - ready << '\n';
        for (std::size_t i = 0; all && i < std::min(k_shown, found_.size()); ++i)
            std::cout << screw_.id << '|' << (found_[i].verdict == pass ? "ready" : "unsure") << '|'
                      << found_[i].size << '|' << found_[i].closeness << '|' << found_[i].body
                      << '\n';
    }

  private:
    [[nodiscard]] Verdict head(const trade::Body& body, const Size& pilot) const {
        if (!body.cut_dia)
            return unsure;
        const auto lo = body.cut_dia->range.lo.nm(), hi = body.cut_dia->range.hi.nm();
        std::int64_t needed = limits_.head_clearance;
        if (pilot)
            needed = std::max(needed, screw_.screw_hi - pilot->range.lo.nm());
        if (lo + hi > screw_.twice_largest || hi - screw_.head_lo < needed)
            return fail;
        return lo - screw_.head_hi >= needed ? pass : unsure;
    }

    [[nodiscard]] int size(const trade::Body& body) const {
        if (!body.cut_dia)
            return 4;
        const auto twice = (body.cut_dia->range.lo + body.cut_dia->range.hi).nm();
        return twice < screw_.twice_small          ? 0
               : twice <= screw_.twice_tool        ? 1
               : twice <= screw_.twice_recommended ? 2
                                                   : 3;
    }

    [[nodiscard]] Verdict runs(const Size& pilot, const speed::AskedHole& hole) const {
        return gap(hole.lo, hole.hi, pilot, hole.running_least, hole.running_most);
    }

    [[nodiscard]] bool runs_somewhere(const Size& pilot) const {
        return std::any_of(screw_.holes.begin(), screw_.holes.end(),
                           [&](const auto& hole) { return runs(pilot, hole) != fail; });
    }

    void look_at(const trade::Body& body) {
        Best best;
        if (body.pilot_kind == trade::PilotKind::integral)
            over_holes(body, nullptr, best);
        if (body.pilot_kind == trade::PilotKind::removable)
            for (const auto* pilot : pilots_)
                over_holes(body, pilot, best);
        if (best.verdict != fail)
            found_.push_back(best);
    }

    void over_holes(const trade::Body& body, const trade::Pilot* pilot, Best& best) const {
        const Size& dia = pilot ? pilot->pilot_dia : body.pilot_dia;
        const Verdict without_hole = std::max(head(body, dia), slips(body, pilot));
        if (without_hole == fail)
            return;
        for (const auto& hole : screw_.holes) {
            const Verdict verdict =
                std::max({without_hole, runs(dia, hole), pilot ? teeth(body, hole) : pass});
            const std::int64_t closeness =
                dia ? std::abs(hole.twice_best - (dia->range.lo + dia->range.hi).nm()) : k_far;
            const Best here{verdict, size(body), closeness, body.number, pilot ? pilot->number : 0};
            if (verdict != fail && here.order() < best.order())
                best = here;
        }
    }

    [[nodiscard]] Verdict slips(const trade::Body& body, const trade::Pilot* pilot) const {
        if (!pilot)
            return pass;
        if (!body.bore)
            return unsure;
        return gap(body.bore->range.lo.nm(), body.bore->range.hi.nm(), pilot->shank_dia,
                   limits_.slip_least, limits_.slip_most);
    }

    static Verdict teeth(const trade::Body& body, const speed::AskedHole& hole) {
        return gap(hole.lo, hole.hi, body.bore, 0, k_far);
    }

    static constexpr std::int64_t k_far = 1'000'000'000'000;
    const speed::Limits& limits_;
    const speed::Asked& screw_;
    std::vector<const trade::Pilot*> pilots_;
    std::vector<Best> found_;
};

void count(const store::File& file) {
    const auto question = speed::cut_down(file);
    const auto bodies = store::bodies(file);
    const auto pilots = store::pilots(file);
    for (const auto& screw : question.asked)
        Counter(question.limits, screw, bodies, pilots).print(screw.id == 0);
}

} // namespace

int main(int words, char** word) {
    if (words != 2) {
        std::cerr << "usage: count_slowly CATALOGUE\n";
        return 2;
    }
    try {
        count(store::File::open(word[1], store::Access::read));
    } catch (const std::exception& problem) {
        std::cerr << "count_slowly: " << problem.what() << "\n";
        return 1;
    }
    return 0;
}
