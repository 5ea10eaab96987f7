// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/identify_screw.hpp"

#include <algorithm>
#include <set>
#include <tuple>

#include "match/finding.hpp"
#include "match/head_figures.hpp"
#include "match/say.hpp"

namespace match {

using length::MaybeRange;
using length::Range;

namespace {

// A row of the tables, and how far it is from the figures where they conflict.
struct Compared {
    HeadMatch match;
    int conflicts = 0;
    std::int64_t miss = 0; // sum of the misses, in millionths of the listed size
};

class Comparer {
  public:
    Comparer(const ScrewFigures& figures, length::Unit unit) : figures_(figures), unit_(unit) {}

    [[nodiscard]] Compared compare(const trade::Head& head, bool withdrawn) const {
        Compared row{{head, withdrawn, {}}, 0, 0};
        add(row, "head", figures_.head_dia, figure_range(head, HeadFigure::head));
        add(row, "height", figures_.head_height, figure_range(head, HeadFigure::height));
        add(row, "key", figures_.key, figure_range(head, HeadFigure::key));
        add(row, "screw", figures_.screw_dia, over_the_thread(head));
        if (figures_.thread)
            add_thread(row, head);
        return row;
    }

  private:
    void add(Compared& row, const char* name, const MaybeRange& measured,
             const MaybeRange& listed) const {
        if (!measured || !listed)
            return;
        const auto found = within(*measured, listed->lo, listed->hi);
        row.match.figures.push_back({name, found, say(*listed, unit_), say(*measured, unit_)});
        if (found != Verdict::fail)
            return;
        ++row.conflicts;
        row.miss += outside(*measured, listed->lo, listed->hi).nm() * 1'000'000 / listed->hi.nm();
    }
    void add_thread(Compared& row, const trade::Head& head) const {
        const auto& thread = *figures_.thread;
        const bool fits = has_thread(head, thread);
        const auto asked =
            thread.size.text + (thread.pitch.empty() ? "" : " of pitch " + thread.pitch);
        row.match.figures.push_back({"thread", fits ? Verdict::pass : Verdict::fail,
                                     figure_text(head, HeadFigure::thread, unit_), asked});
        row.conflicts += fits ? 0 : 1;
        row.miss += fits ? 0 : 1'000'000;
    }

    const ScrewFigures& figures_;
    length::Unit unit_;
};

std::set<std::string> withdrawn_series(const trade::Tables& tables) {
    std::set<std::string> names;
    for (const auto& series : tables.series())
        if (series.withdrawn)
            names.insert(series.name);
    return names;
}

// A head whose listed drive has no key cannot be the one that was measured with a key.
bool lacks_what_was_measured(const ScrewFigures& figures, const trade::Head& head) {
    return figures.key && !figure_range(head, HeadFigure::key);
}

std::vector<HeadMatch> conflicts_of(std::vector<Compared> rows, const std::vector<HeadMatch>& left,
                                    std::size_t most) {
    std::set<std::string> sizes;
    for (const auto& match : left)
        sizes.insert(match.head.size.text);
    if (!sizes.empty())
        std::erase_if(
            rows, [&](const Compared& row) { return sizes.count(row.match.head.size.text) == 0; });
    std::stable_sort(rows.begin(), rows.end(), [](const Compared& a, const Compared& b) {
        return std::tie(a.conflicts, a.miss) < std::tie(b.conflicts, b.miss);
    });
    if (rows.size() > most)
        rows.resize(most);
    std::vector<HeadMatch> conflicts;
    for (auto& row : rows)
        conflicts.push_back(std::move(row.match));
    return conflicts;
}

std::size_t pairs_told_apart(HeadFigure figure, const std::vector<HeadMatch>& left) {
    std::size_t apart = 0;
    for (std::size_t i = 0; i < left.size(); ++i)
        for (std::size_t j = i + 1; j < left.size(); ++j)
            apart += tells_apart(figure, left[i].head, left[j].head) ? 1 : 0;
    return apart;
}

std::optional<Decider> decider_of(const std::vector<HeadMatch>& left, length::Unit unit) {
    std::optional<HeadFigure> best;
    std::size_t most = 0;
    for (const auto figure : k_head_figures) {
        const auto apart = pairs_told_apart(figure, left);
        if (apart > most) {
            most = apart;
            best = figure;
        }
    }
    if (!best)
        return std::nullopt;
    Decider decider{to_text(*best), most, left.size() * (left.size() - 1) / 2, {}};
    for (const auto& match : left)
        decider.values.push_back(figure_text(match.head, *best, unit));
    return decider;
}

bool alike(const trade::Head& a, const trade::Head& b) {
    return std::none_of(k_head_figures.begin(), k_head_figures.end(),
                        [&](HeadFigure figure) { return tells_apart(figure, a, b); });
}

std::vector<std::vector<std::size_t>> alike_groups(const std::vector<HeadMatch>& left) {
    std::vector<std::vector<std::size_t>> groups;
    for (std::size_t i = 0; i < left.size(); ++i) {
        std::vector<std::size_t> group{i};
        for (std::size_t j = 0; j < left.size(); ++j)
            if (j != i && alike(left[i].head, left[j].head))
                group.push_back(j);
        std::sort(group.begin(), group.end());
        if (group.size() > 1 && std::find(groups.begin(), groups.end(), group) == groups.end())
            groups.push_back(std::move(group));
    }
    return groups;
}

} // namespace

Verdict HeadMatch::result() const {
    Verdict verdict = Verdict::pass;
    for (const auto& figure : figures)
        verdict = worse(verdict, figure.result);
    return verdict;
}

ScrewIdentity identify_screw(const ScrewFigures& figures, const trade::Tables& tables,
                             length::Unit unit, std::size_t most_conflicts) {
    const auto withdrawn = withdrawn_series(tables);
    const Comparer comparer(figures, unit);
    ScrewIdentity identity;
    std::vector<Compared> conflicts;
    for (const auto& head : tables.every_head()) {
        if (lacks_what_was_measured(figures, head))
            continue;
        auto row = comparer.compare(head, withdrawn.count(head.series) > 0);
        if (row.conflicts == 0)
            identity.left.push_back(std::move(row.match));
        else
            conflicts.push_back(std::move(row));
    }
    std::stable_sort(
        identity.left.begin(), identity.left.end(), [](const HeadMatch& a, const HeadMatch& b) {
            return std::tuple(a.result(), a.withdrawn) < std::tuple(b.result(), b.withdrawn);
        });
    identity.conflict = conflicts_of(std::move(conflicts), identity.left, most_conflicts);
    identity.decider = decider_of(identity.left, unit);
    identity.alike = alike_groups(identity.left);
    return identity;
}

} // namespace match
