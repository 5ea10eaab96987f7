// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "random_tools.hpp"

namespace {

std::string utf8(std::uint32_t point) {
    const auto byte = [](std::uint32_t value) { return static_cast<char>(value); };
    const auto tail = [byte](std::uint32_t value) { return byte(0x80U | (value & 0x3FU)); };
    if (point < 0x80)
        return {byte(point)};
    if (point < 0x800)
        return {byte(0xC0U | (point >> 6U)), tail(point)};
    if (point < 0x10000)
        return {byte(0xE0U | (point >> 12U)), tail(point >> 6U), tail(point)};
    return {byte(0xF0U | (point >> 18U)), tail(point >> 12U), tail(point >> 6U), tail(point)};
}

} // namespace

std::int64_t RandomTools::between(std::int64_t lo, std::int64_t hi) {
    return std::uniform_int_distribution<std::int64_t>(lo, hi)(engine_);
}

std::string RandomTools::text() {
    static const std::string k_awkward = "'\"\\\n\r\t;,%|\x7f\x01";
    std::string made;
    for (auto left = between(0, 12); left > 0; --left) {
        const auto which = between(0, 3);
        if (which == 0)
            made += k_awkward[static_cast<std::size_t>(
                between(0, static_cast<std::int64_t>(k_awkward.size()) - 1))];
        else if (which == 1)
            made += utf8(static_cast<std::uint32_t>(between(1, 0xD7FF)));
        else if (which == 2)
            made += utf8(static_cast<std::uint32_t>(between(0xE000, 0x10FFFF)));
        else
            made += static_cast<char>(between('a', 'z'));
    }
    return made;
}

trade::MaybeDimension RandomTools::dimension() {
    if (!chance(70))
        return std::nullopt;
    const auto lo = between(1, 5'000'000'000);
    return trade::Dimension{
        text(),
        word(trade::How::guess),
        {length::Length::from_nm(lo), length::Length::from_nm(lo + between(0, 5'000'000))}};
}

std::vector<std::string> RandomTools::work() {
    std::vector<std::string> tasks;
    for (auto left = between(0, 3); left > 0; --left)
        tasks.push_back(text());
    return tasks;
}

trade::Body RandomTools::body() {
    trade::Body body;
    body.set = text();
    body.kind = word(trade::BodyKind::unknown);
    body.cut_dia = dimension();
    body.flutes = maybe(between(1, 8));
    body.pilot_kind = word(trade::PilotKind::unknown);
    body.pilot_dia = dimension();
    body.pilot_length = dimension();
    body.fluted = maybe(chance(50));
    body.bore = dimension();
    body.bore_depth = dimension();
    body.retention = maybe(word(trade::Retention::other));
    body.set_screw = text();
    body.set_screw_at = dimension();
    body.reach = dimension();
    body.shank_dia = dimension();
    body.shank_kind = text();
    body.material = text();
    body.condition = maybe(word(trade::Condition::broken));
    body.work = work();
    body.marking = text();
    body.place = text();
    body.note = text();
    body.retired = chance(10) ? std::optional(text()) : std::nullopt;
    return body;
}

trade::Pilot RandomTools::pilot() {
    trade::Pilot pilot;
    pilot.set = text();
    pilot.pilot_dia = dimension();
    pilot.pilot_length = dimension();
    pilot.fluted = maybe(chance(50));
    pilot.shank_dia = dimension();
    pilot.shank_length = dimension();
    pilot.has_flat = maybe(chance(50));
    pilot.flat_at = dimension();
    pilot.flat_length = dimension();
    pilot.flat_depth = dimension();
    pilot.material = text();
    pilot.condition = maybe(word(trade::Condition::broken));
    pilot.work = work();
    pilot.place = text();
    pilot.note = text();
    pilot.retired = chance(10) ? std::optional(text()) : std::nullopt;
    return pilot;
}

trade::OwnScrew RandomTools::screw() {
    return {"screw " + std::to_string(between(1, 5)) + text(),
            dimension(),
            dimension(),
            dimension(),
            text(),
            text(),
            text()};
}
