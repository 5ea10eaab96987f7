// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/order.hpp"

#include <algorithm>
#include <cstdlib>
#include <limits>
#include <tuple>

namespace match {

namespace {

int condition_of(const Triple& triple) {
    const int body = condition_rank(triple.body->condition);
    return triple.pilot ? std::max(body, condition_rank(triple.pilot->condition)) : body;
}

constexpr int k_not_made = 2;

int made_rank(const Job& job, const Triple& triple, int published) {
    const auto made = made_by_body(job, *triple.body);
    if (made != Made::with_its_pilot)
        return least_made(made);
    if (is_listed(job.made.tools, triple.body->cut_dia, triple.pilot_dia()))
        return 0;
    return published <= static_cast<int>(Published::loose) ? 1 : k_not_made;
}

auto rest(const OrderKey& key) {
    return std::tie(key.made, key.published, key.size, key.seat, key.closeness, key.condition,
                    key.body, key.pilot, key.drill, key.drill_kind);
}

} // namespace

int seat_rank(Seat seat) {
    switch (seat) {
    case Seat::integral:
    case Seat::in_this_body:
        return 0;
    case Seat::free:
    case Seat::none:
        return 1;
    case Seat::in_other_body:
        return 2;
    }
    return 2;
}

std::int64_t closeness_of(const Triple& triple) {
    const auto pilot = triple.pilot_dia();
    if (!pilot || !triple.hole)
        return std::numeric_limits<std::int64_t>::max();
    const auto& good = triple.hole->good;
    const auto& size = triple.hole->size;
    const auto clearance = size.lo + size.hi - (pilot->lo + pilot->hi);
    return std::abs((clearance - (good.least + good.most)).nm());
}

int condition_rank(const std::optional<trade::Condition>& condition) {
    return static_cast<int>(condition.value_or(trade::Condition::fair));
}

Seat seat_of(const Triple& triple) {
    if (!triple.pilot)
        return trade::taken_as_integral(*triple.body) ? Seat::integral : Seat::none;
    if (triple.pilot->in_body == 0)
        return Seat::free;
    return triple.pilot_is_in_this_body() ? Seat::in_this_body : Seat::in_other_body;
}

std::optional<SizeClass> size_of(const Job& job, const Triple& triple) {
    if (!job.sizes || !triple.body->cut_dia)
        return std::nullopt;
    return size_class(*triple.body->cut_dia, *job.sizes, job.shop->practice);
}

int size_rank(const Job& job, const trade::BodyFacts& body) {
    constexpr int k_not_known = 4;
    const auto size = size_of(job, {&body, nullptr, nullptr, {}});
    return size ? static_cast<int>(*size) : k_not_known;
}

OrderKey order_key(const Job& job, const Triple& triple, const Weighed& weighed) {
    OrderKey key{};
    key.kind = *weighed.kind;
    if (key.kind == AnswerKind::closest)
        key.shortfall = weighed.shortfall;
    key.published = triple.hole ? static_cast<int>(triple.hole->published) : k_no_hole_published;
    key.made = made_rank(job, triple, key.published);
    key.size = size_rank(job, *triple.body);
    key.seat = seat_rank(seat_of(triple));
    key.closeness = closeness_of(triple);
    key.condition = condition_of(triple);
    key.body = triple.body->number;
    key.pilot = triple.pilot ? triple.pilot->number : 0;
    if (triple.hole && triple.hole->drill) {
        key.drill = triple.hole->drill->diameter.nm();
        key.drill_kind = static_cast<int>(triple.hole->drill->kind);
    }
    return key;
}

Made made_by_body(const Job& job, const trade::BodyFacts& body) {
    if (job.made.marked.has(body.number))
        return Made::surely;
    return is_of(job.made.cutters, body.cut_dia) ? Made::with_its_pilot : Made::not_so;
}

int least_made(Made made) {
    return made == Made::not_so ? k_not_made : 0;
}

Rank rank_of(int published, int seat, std::int64_t closeness) {
    constexpr std::int64_t most = UINT32_MAX; // 2 mm off, twice; as good as unknown
    return static_cast<Rank>(published) << 40 | static_cast<Rank>(seat) << 32 |
           static_cast<Rank>(std::min(closeness, most));
}

Rank rank_of(const OrderKey& key) {
    return rank_of(key.published, key.seat, key.closeness);
}

Rank first_rank(int published) {
    return rank_of(published, 0, 0);
}

Rank last_rank(int published) {
    return first_rank(published + 1) - 1;
}

bool operator<(const OrderKey& a, const OrderKey& b) {
    if (a.kind != b.kind)
        return a.kind < b.kind;
    if (a.shortfall < b.shortfall)
        return true;
    if (b.shortfall < a.shortfall)
        return false;
    return rest(a) < rest(b);
}

} // namespace match
