// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The shares and offsets here are our own invention, near to what a mixed lot of used tools shows.
#include "speed/large_shop.hpp"

#include <algorithm>
#include <cstdlib>

#include "length/print.hpp"
#include "match/size_class.hpp"
#include "trade/screw.hpp"

namespace speed {

using length::inches_e5;
using length::Length;
using length::micrometres;
using length::sixty_fourths;
using trade::Feature;
using trade::How;

namespace {

Length rounded(Length value, Length grid) {
    return Length::from_nm((value.nm() + grid.nm() / 2) / grid.nm() * grid.nm());
}

// A size that a maker would grind a cutter to.
Length made_size(Length value, const trade::Screw& screw) {
    switch (screw.size->system) {
    case trade::SizeSystem::metric:
        return rounded(value, micrometres(500));
    case trade::SizeSystem::inch:
        return rounded(value, sixty_fourths(1));
    default:
        return rounded(value, length::thousandths(1));
    }
}

bool is_common(const trade::Screw& screw) {
    const Length size = screw.size->diameter;
    return size >= length::thousandths(112) && size <= length::thousandths(500);
}

// Screws from #2 to 1 in that clearance holes are listed for.
std::vector<Wish> wishes_of(const trade::Tables& tables, const trade::Practice& practice) {
    std::vector<Wish> wishes;
    for (const auto& head : tables.every_head()) {
        const auto screw = trade::listed_screw(head, tables);
        const Length size = screw.size->diameter;
        if (!screw.normal || !screw.close || !screw.loose || size < length::thousandths(86) ||
            size > length::thousandths(1000))
            continue;
        const auto targets = match::size_targets(screw, head.head_dia.hi, nullptr, practice);
        const bool metric = screw.size->system == trade::SizeSystem::metric;
        wishes.push_back({metric ? length::Unit::millimetre : length::Unit::inch,
                          made_size(targets.tool, screw),
                          made_size(targets.published, screw),
                          {screw.close->diameter, screw.normal->diameter, screw.loose->diameter},
                          is_common(screw) ? 4 : 1});
    }
    return wishes;
}

// What the instrument can tell apart.
Length grid_of(How how, length::Unit unit) {
    if (unit == length::Unit::millimetre)
        return how == How::caliper || how == How::unstated ? micrometres(20) : micrometres(5);
    return how == How::caliper || how == How::unstated ? length::thousandths(1) : inches_e5(10);
}

} // namespace

LargeShop::LargeShop(const trade::Tables& tables, trade::Practice practice, Form form,
                     std::uint64_t seed)
    : dice_(seed), practice_(std::move(practice)), form_(form),
      wishes_(wishes_of(tables, practice_)) {
    for (std::size_t i = 0; i < wishes_.size(); ++i)
        by_weight_.insert(by_weight_.end(), static_cast<std::size_t>(wishes_[i].weight), i);
}

const std::vector<Length>& LargeShop::bores() {
    static const std::vector<Length> k_bores = {
        micrometres(3000), sixty_fourths(8),  micrometres(4000), sixty_fourths(10),
        sixty_fourths(12), micrometres(5000), micrometres(6000), sixty_fourths(16),
        sixty_fourths(20), micrometres(8000), sixty_fourths(24), micrometres(10000)};
    return k_bores;
}

std::optional<std::size_t> LargeShop::bore_of(const trade::Body& body) {
    if (body.pilot_kind != trade::PilotKind::removable || !body.bore)
        return std::nullopt;
    const Length middle = (body.bore->range.lo + body.bore->range.hi) / 2;
    const auto apart = [middle](Length bore) { return std::abs((bore - middle).nm()); };
    const auto nearest = std::min_element(bores().begin(), bores().end(),
                                          [&](Length a, Length b) { return apart(a) < apart(b); });
    return static_cast<std::size_t>(nearest - bores().begin());
}

const Wish& LargeShop::wish() {
    return wishes_[dice_.pick(by_weight_)];
}

trade::Dimension LargeShop::nominal(Length size, Feature feature, length::Unit unit) {
    const std::string fraction = length::as_fraction(size);
    const std::string text =
        unit == length::Unit::inch && !fraction.empty() ? fraction : length::with_unit(size, unit);
    return trade::read_dimension(text, How::mark, feature, length::Unit::inch, practice_);
}

How LargeShop::how_measured(Feature feature) {
    const bool fine = feature != Feature::cut_dia;
    return dice_.weighted<How>({{fine ? 12 : 42, How::caliper},
                                {fine ? 5 : 12, How::unstated},
                                {feature == Feature::bore ? 0 : 46, How::micrometer},
                                {feature == Feature::bore ? 70 : 0, How::pin_gauge}});
}

// `lo_e5` to `hi_e5` hundred-thousandths of an inch from nominal; anywhere about it when spread.
Length LargeShop::actual(Length nominal, std::int64_t lo_e5, std::int64_t hi_e5) {
    const Length off = inches_e5((dice_.between(lo_e5, hi_e5) + dice_.between(lo_e5, hi_e5)) / 2);
    return form_ == Form::clustered
               ? nominal + off
               : nominal + off + Length::from_nm(dice_.between(-380'000, 380'000));
}

trade::MaybeDimension LargeShop::reading(Length size, Feature feature, length::Unit unit, How how) {
    if (dice_.chance(5))
        return std::nullopt;
    if (form_ == Form::spread)
        return trade::read_dimension(length::with_unit(size, length::Unit::millimetre), how,
                                     feature, length::Unit::inch, practice_);
    const Length seen = rounded(size, grid_of(how, unit));
    std::string text =
        unit == length::Unit::inch ? length::to_text(seen, unit) : length::with_unit(seen, unit);
    if (how == How::micrometer && unit == length::Unit::inch && dice_.chance(10))
        text += " +-.0001";
    return trade::read_dimension(text, how, feature, length::Unit::inch, practice_);
}

std::optional<trade::Condition> LargeShop::condition() {
    using trade::Condition;
    return dice_.weighted<std::optional<Condition>>({{60, Condition::good},
                                                     {26, Condition::fair},
                                                     {6, Condition::dull},
                                                     {3, Condition::dirty},
                                                     {1, Condition::rough},
                                                     {1, Condition::broken},
                                                     {3, std::nullopt}});
}

trade::Tried LargeShop::tried() {
    using trade::Tried;
    return dice_.weighted<Tried>({{50, Tried::slides_and_holds},
                                  {30, Tried::slides},
                                  {10, Tried::binds},
                                  {5, Tried::loose},
                                  {5, Tried::will_not_go}});
}

void LargeShop::add_own_pilot(trade::Body& body, const Wish& wish) {
    body.pilot_kind = trade::PilotKind::integral;
    const Length pilot = actual(dice_.pick(wish.holes), -500, -50);
    body.pilot_dia =
        reading(pilot, Feature::pilot_dia, wish.unit, how_measured(Feature::pilot_dia));
    if (dice_.chance(60))
        body.pilot_length = nominal(sixty_fourths(dice_.between(12, 32)), Feature::pilot_length,
                                    length::Unit::inch);
}

// A bore of about half the smallest hole, as the cutter leaves room for.
void LargeShop::add_bore(trade::Body& body, const Wish& wish) {
    body.pilot_kind = trade::PilotKind::removable;
    const Length room = wish.holes.front() * dice_.between(45, 95) / 100;
    std::size_t at = 0;
    while (at + 1 < bores().size() && bores()[at + 1] <= room)
        ++at;
    const Length bore = actual(bores()[at], 0, 90);
    body.bore = reading(bore, Feature::bore, wish.unit, how_measured(Feature::bore));
    body.bore_depth =
        nominal(sixty_fourths(dice_.between(40, 56)), Feature::bore_depth, length::Unit::inch);
    body.retention = trade::Retention::set_screw;
    body.set_screw = wish.unit == length::Unit::inch ? "#8-32" : "M4";
    if (dice_.chance(80))
        body.set_screw_at = nominal(sixty_fourths(dice_.between(14, 18)), Feature::set_screw_at,
                                    length::Unit::inch);
}

trade::Body LargeShop::body(std::int64_t number) {
    const Wish& made_for = wish();
    trade::Body body;
    body.number = number;
    body.set = "lot " + std::to_string(dice_.between(1, 60));
    body.kind = dice_.chance(4) ? trade::BodyKind::spotfacer : trade::BodyKind::counterbore;
    const Length cut = dice_.chance(65) ? made_for.tool : made_for.published;
    if (form_ == Form::clustered && dice_.chance(20))
        body.cut_dia = nominal(cut, Feature::cut_dia, made_for.unit);
    else
        body.cut_dia = reading(actual(cut, -200, 60), Feature::cut_dia, made_for.unit,
                               how_measured(Feature::cut_dia));
    body.flutes = dice_.between(2, 4);
    if (dice_.chance(60))
        add_own_pilot(body, made_for);
    else
        add_bore(body, made_for);
    if (dice_.chance(50))
        body.reach =
            nominal(sixty_fourths(dice_.between(24, 96)), Feature::reach, length::Unit::inch);
    body.shank_kind = "straight";
    body.material = "high-speed steel";
    body.condition = condition();
    if (dice_.chance(3))
        body.work = {"sharpen"};
    body.place = "cabinet " + std::to_string(number / 400 + 1) + ", hole " +
                 std::to_string(number % 400 + 1);
    if (dice_.chance(2))
        body.retired = "worn out";
    return body;
}

// Where the set screw of most bodies bears.
void LargeShop::add_flat(trade::Pilot& pilot) {
    const std::int64_t shank = dice_.between(28, 44);
    pilot.shank_length =
        nominal(sixty_fourths(shank), Feature::pilot_shank_length, length::Unit::inch);
    pilot.has_flat = dice_.chance(80);
    if (!*pilot.has_flat)
        return;
    pilot.flat_at = nominal(sixty_fourths(shank - 24), Feature::flat_at, length::Unit::inch);
    pilot.flat_length = nominal(sixty_fourths(16), Feature::flat_length, length::Unit::inch);
}

trade::Pilot LargeShop::pilot(std::int64_t number, std::size_t& bore) {
    const Wish& made_for = wish();
    trade::Pilot pilot;
    pilot.number = number;
    pilot.set = "lot " + std::to_string(dice_.between(1, 60));
    const Length hole = dice_.pick(made_for.holes);
    pilot.pilot_dia = reading(actual(hole, -500, -50), Feature::pilot_dia, made_for.unit,
                              how_measured(Feature::pilot_dia));
    const Length room = hole * dice_.between(45, 95) / 100;
    bore = 0;
    while (bore + 1 < bores().size() && bores()[bore + 1] <= room)
        ++bore;
    pilot.shank_dia = reading(actual(bores()[bore], -100, -10), Feature::pilot_shank_dia,
                              made_for.unit, how_measured(Feature::pilot_shank_dia));
    pilot.pilot_length =
        nominal(sixty_fourths(dice_.between(12, 32)), Feature::pilot_length, length::Unit::inch);
    add_flat(pilot);
    pilot.material = "silver steel";
    pilot.condition = condition();
    if (dice_.chance(2))
        pilot.work = {"polish the pilot"};
    pilot.place = "tin " + std::to_string(number % 500 + 1);
    if (dice_.chance(1))
        pilot.retired = "bent";
    return pilot;
}

} // namespace speed
