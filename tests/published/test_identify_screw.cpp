// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Every head of the tables, put to identification by its own figures.
#include <doctest/doctest.h>

#include <algorithm>

#include "match/identify_screw.hpp"
#include "store/reference.hpp"

using length::Range;
using match::HeadMatch;
using match::ScrewFigures;
using match::ScrewIdentity;

namespace {

const HeadMatch* find(const std::vector<HeadMatch>& matches, const trade::Head& head) {
    const auto found = std::find_if(matches.begin(), matches.end(), [&](const HeadMatch& match) {
        return match.head.series == head.series && match.head.size == head.size;
    });
    return found == matches.end() ? nullptr : &*found;
}

trade::Thread thread_of(const trade::Head& head) {
    return {head.size, head.pitches.empty() ? "" : trade::canonical_pitch(head.pitches.front()),
            std::nullopt};
}

Range heights(const trade::Head& head) {
    const auto most = head.head_height_max;
    return {head.head_height_min.value_or(length::Length::from_nm(most.nm() * 94 / 100)), most};
}

bool overlap(const Range& a, const Range& b) {
    return a.lo <= b.hi && b.lo <= a.hi;
}

ScrewIdentity identify(const ScrewFigures& figures, const store::Reference& tables) {
    return match::identify_screw(figures, tables, length::Unit::inch, 8);
}

bool is_alike(const ScrewIdentity& identity, const std::string& a, const std::string& b) {
    return std::any_of(identity.alike.begin(), identity.alike.end(), [&](const auto& group) {
        const auto has = [&](const std::string& series) {
            return std::any_of(group.begin(), group.end(), [&](std::size_t at) {
                return identity.left[at].head.series == series;
            });
        };
        return has(a) && has(b);
    });
}

} // namespace

TEST_CASE("every head of the tables is found from its own limits, with those it overlaps") {
    const store::Reference tables;
    const auto heads = tables.every_head();
    CHECK(heads.size() == 476);
    for (const auto& head : heads) {
        CAPTURE(head.series);
        CAPTURE(head.size.text);
        ScrewFigures figures;
        figures.head_dia = head.head_dia;
        figures.head_height = heights(head);
        figures.thread = thread_of(head);
        const auto identity = identify(figures, tables);
        const auto* own = find(identity.left, head);
        REQUIRE(own);
        CHECK(own->result() == match::Verdict::pass);
        for (const auto& other : heads) {
            CAPTURE(other.series);
            if (other.size != head.size || other.series == head.series || !other.thread.empty())
                continue;
            const auto& pitches = other.pitches;
            const bool pitch = pitches.empty() || figures.thread->pitch.empty() ||
                               std::any_of(pitches.begin(), pitches.end(), [&](const auto& p) {
                                   return trade::canonical_pitch(p) == figures.thread->pitch;
                               });
            const bool fits = pitch && overlap(other.head_dia, head.head_dia) &&
                              overlap(heights(other), heights(head));
            CHECK((find(identity.left, other) != nullptr) == fits);
        }
    }
}

TEST_CASE("every head is found from the middle of its limits by caliper, without its thread") {
    const store::Reference tables;
    for (const auto& head : tables.every_head()) {
        CAPTURE(head.series);
        CAPTURE(head.size.text);
        const auto about = [](length::Length value) {
            return Range{value - length::thousandths(1), value + length::thousandths(1)};
        };
        ScrewFigures figures;
        figures.head_dia = about((head.head_dia.lo + head.head_dia.hi) / 2);
        figures.head_height = about(head.head_height_max);
        figures.screw_dia = about(head.screw_dia.hi - length::thousandths(2));
        const auto identity = identify(figures, tables);
        CHECK(find(identity.left, head));
        for (const auto& match : identity.conflict)
            CHECK(match.result() == match::Verdict::fail);
        if (identity.decider)
            CHECK(identity.decider->values.size() == identity.left.size());
    }
}

// ASME B18.3: 5/16 older .437 head and 7/32 key, newer .469 head and 1/4 key; 3/8 share one head.
TEST_CASE("key or head tells the patterns of 5/16 apart, and nothing those of 3/8") {
    const store::Reference tables;
    ScrewFigures figures;
    figures.thread = trade::parse_thread("5/16-18");
    figures.key = length::exactly(length::sixty_fourths(14));
    auto identity = identify(figures, tables);
    const auto has = [&](const std::string& series) {
        return std::any_of(identity.left.begin(), identity.left.end(), [&](const HeadMatch& match) {
            return match.head.series == series && match.head.form == "socket head cap";
        });
    };
    CHECK(has("ASA B18.3 1936"));
    CHECK(has("BS 2470"));
    CHECK(!has("ASME B18.3 1960"));
    const auto newer =
        std::find_if(identity.conflict.begin(), identity.conflict.end(),
                     [](const HeadMatch& m) { return m.head.series == "ASME B18.3 1960"; });
    REQUIRE(newer != identity.conflict.end());
    CHECK(newer->figures.front().rule == "key");
    CHECK(newer->figures.front().result == match::Verdict::fail);

    figures.thread = trade::parse_thread("3/8-16");
    figures.key = length::exactly(length::sixty_fourths(20));
    figures.head_dia = length::exactly(length::thousandths(558));
    figures.head_height = length::exactly(length::thousandths(373));
    identity = identify(figures, tables);
    CHECK(has("ASA B18.3 1936"));
    CHECK(has("ASME B18.3 1960"));
    CHECK(is_alike(identity, "ASME B18.3 1960", "ASA B18.3 1936"));
}

TEST_CASE("of the two 5/16 heads that a thread leaves, the head decides") {
    const store::Reference tables;
    ScrewFigures figures;
    figures.thread = trade::parse_thread("5/16-24");
    figures.head_height = length::exactly(length::thousandths(310));
    figures.key = Range{length::thousandths(200), length::thousandths(260)}; // either key
    auto identity = identify(figures, tables);
    std::erase_if(identity.left,
                  [](const HeadMatch& m) { return m.head.form != "socket head cap"; });
    REQUIRE(identity.decider);
    CHECK(identity.decider->what == "head");
    CHECK(identity.decider->apart > 0);
}

TEST_CASE("figures of no head leave none, and the nearest are named with what is against them") {
    const store::Reference tables;
    ScrewFigures figures;
    figures.thread = trade::parse_thread("5/16-18");
    figures.head_dia = length::exactly(length::thousandths(900));
    const auto identity = identify(figures, tables);
    CHECK(identity.left.empty());
    CHECK(!identity.decider);
    REQUIRE(identity.conflict.size() == 8);
    CHECK(identity.conflict.front().head.size.text == "5/16");
}
