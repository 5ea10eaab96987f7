// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/run.hpp"

#include "length/print.hpp"
#include "trade/conversion.hpp"

namespace job {

using length::as_mm;
using length::exactly;
using length::Range;

namespace {

// Seconds.
constexpr Measure k_setting_up{Kind::time, 300, 900};
constexpr Measure k_handling{Kind::time, 30, 90}; // clamp, enter, gauge, clear chips
constexpr double k_seconds = 60;

Measure feet(int low, int high) {
    return {Kind::surface_speed, low * trade::k_metres_in_foot, high * trade::k_metres_in_foot};
}

Measure counted(double count) {
    return {Kind::number, count, count};
}

} // namespace

Figure surface_speed(const trade::Material& material) {
    return {"surface speed",
            feet(material.speed_low, material.speed_high),
            "half of a drill's speed to eight tenths",
            {{"material", material.name},
             {"a drill's", feet(material.drill_speed, material.drill_speed)}},
            material.origin.source + "; counterbores: TC 9-524 and a tool maker's guide"};
}

Figure turns(const Figure& surface_speed, const Range& cutter) {
    const auto& speed = std::get<Measure>(surface_speed.value);
    return {"spindle speed",
            Measure{Kind::rotation, turns_a_minute(speed.lo, cutter.hi),
                    turns_a_minute(speed.hi, cutter.lo)},
            "surface speed / (pi x cutter)",
            {{surface_speed.name, surface_speed.value}, {"cutter", cutter}},
            "definition; Machinery's Handbook has 12 V / (pi D)"};
}

Figure machine_turns(const trade::Machine& machine, const Figure& turns,
                     const MachineSpeed& speed) {
    const double set = speed.turns;
    return {"set " + machine.name + " to",
            Measure{Kind::rotation, set, set},
            speed.too_fast ? "slowest of the machine, still too fast"
                           : "nearest of the machine's speeds not over the spindle speed",
            {{turns.name, turns.value}},
            "common practice"};
}

Figure drill_turns(const trade::Material& material, const trade::Drill& drill) {
    const auto speed = feet(material.drill_speed, material.drill_speed);
    const double turning = turns_a_minute(speed.lo, drill.diameter);
    return {"spindle speed for the drill, at most",
            Measure{Kind::rotation, turning, turning},
            "surface speed / (pi x drill)",
            {{"surface speed", speed}, {"drill " + drill.name, exactly(drill.diameter)}},
            material.origin.source};
}

Figure feed_a_turn(const trade::Feed& feed, const trade::Material& material) {
    return {"feed per revolution",
            Range{feed.least, feed.most},
            "in proportion between the middles of the published bands, at the cutter's middle",
            {{"class of " + material.name, feed.feed_class}},
            feed.origin.source + " (" + feed.origin.confidence + ")"};
}

std::string hand_feed_words(const trade::Material& material) {
    constexpr auto k_start = "by hand: firm until chips form, ";
    return std::string(k_start) +
           (material.may_dwell()
                ? "steady, ease before depth; dwell one or two turns to flatten the floor"
                : "then keep feeding to the stop and straight out: no dwell");
}

Figure time_for(int count, length::Length depth, const Figure& feed, const Figure& turns) {
    const auto& a_turn = std::get<Range>(feed.value);
    const auto& rate = std::get<Measure>(turns.value);
    const double fast = as_mm(depth) / (as_mm(a_turn.hi) * rate.hi) * k_seconds;
    const double slow = as_mm(depth) / (as_mm(a_turn.lo) * rate.lo) * k_seconds;
    return {"time, roughly",
            Measure{Kind::time, k_setting_up.lo + count * (fast + k_handling.lo),
                    k_setting_up.hi + count * (slow + k_handling.hi)},
            "setting up + holes x (depth / (feed x spindle speed) + handling)",
            {{"holes", counted(count)},
             {"depth", exactly(depth)},
             {feed.name, feed.value},
             {turns.name, turns.value},
             {"setting up", k_setting_up},
             {"handling a hole", k_handling}},
            "common practice, rough; drilling is not in it"};
}

} // namespace job
