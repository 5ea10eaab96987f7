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

// Feet a minute: a pilot rubs, so it is held to what a plain bearing with a little oil bears.
constexpr double k_pilot_speed = 65;
constexpr double k_carbon_share = 0.5;

Measure feet(double low, double high) {
    return {Kind::surface_speed, low * trade::k_metres_in_foot, high * trade::k_metres_in_foot};
}

Measure counted(double count) {
    return {Kind::number, count, count};
}

Figure table_speed(const trade::Material& material) {
    return {"surface speed",
            feet(material.speed_low, material.speed_high),
            "half of a drill's speed to eight tenths",
            {{"material", material.name},
             {"a drill's", feet(material.drill_speed, material.drill_speed)}},
            material.origin.source + "; counterbores: TC 9-524 and a tool maker's guide"};
}

Figure carbon_speed(const trade::Material& material) {
    return {"surface speed",
            feet(material.speed_low * k_carbon_share, material.speed_high * k_carbon_share),
            "share of high-speed steel's",
            {{"high-speed steel's", feet(material.speed_low, material.speed_high)},
             {"share", counted(k_carbon_share)}},
            material.origin.source +
                "; one half for carbon steel: NAVEDTRA 14345, on drills, and common practice"};
}

Figure named(Figure figure, const std::string& steel) {
    figure.name += ", " + steel;
    return figure;
}

} // namespace

std::vector<Figure> surface_speeds(const trade::Material& material, Steel steel) {
    switch (steel) {
    case Steel::high_speed:
    case Steel::carbide:
        return {table_speed(material)};
    case Steel::carbon:
        return {carbon_speed(material)};
    case Steel::unknown:
        break;
    }
    return {named(carbon_speed(material), "carbon steel"),
            named(table_speed(material), "high-speed steel")};
}

std::string steel_words(Steel steel) {
    switch (steel) {
    case Steel::high_speed:
        return {};
    case Steel::carbon:
        return "the cutter is of carbon steel: half of high-speed steel's speed; it softens once "
               "it blues";
    case Steel::carbide:
        return "carbide: the speed is high-speed steel's, its maker may give more; brittle: rigid "
               "machine, steady feed, never stopped in the cut";
    case Steel::unknown:
        break;
    }
    return "what the cutter is made of is not recorded: run it as carbon steel until you know";
}

Figure turns(const Figure& surface_speed, const Range& cutter) {
    const auto& speed = std::get<Measure>(surface_speed.value);
    const auto steel = surface_speed.name.find(',');
    return {"spindle speed" +
                (steel == std::string::npos ? std::string() : surface_speed.name.substr(steel)),
            Measure{Kind::rotation, turns_a_minute(speed.lo, cutter.hi),
                    turns_a_minute(speed.hi, cutter.lo)},
            "surface speed / (pi x cutter)",
            {{surface_speed.name, surface_speed.value}, {"cutter", cutter}},
            "definition; Machinery's Handbook has 12 V / (pi D)"};
}

Figure pilot_turns(const Range& pilot) {
    const auto speed = feet(k_pilot_speed, k_pilot_speed);
    const double most = turns_a_minute(speed.lo, pilot.hi);
    return {"at most, for the pilot",
            Measure{Kind::rotation, most, most},
            "surface speed of a plain bearing with a little oil / (pi x pilot)",
            {{"surface speed", speed}, {"pilot", pilot}},
            "common practice"};
}

Figure machine_turns(const trade::Machine& machine, const Figure& turns,
                     const MachineSpeed& speed) {
    const double set = speed.turns;
    return {"set " + machine.name + " to",
            Measure{Kind::rotation, set, set},
            speed.too_fast ? "slowest of the machine, still too fast"
                           : "highest of the machine's speeds not over the low end, nor over the "
                             "pilot's",
            {{turns.name, turns.value}},
            "common practice",
            Grain::set};
}

Figure drill_turns(const trade::Material& material, const trade::Drill& drill) {
    const auto speed = feet(material.drill_speed, material.drill_speed);
    const double turning = turns_a_minute(speed.lo, drill.diameter);
    return {"drill's speed, at most",
            Measure{Kind::rotation, turning, turning},
            "surface speed / (pi x drill), the drill of high-speed steel",
            {{"surface speed", speed}, {"drill " + drill.name, exactly(drill.diameter)}},
            material.origin.source};
}

Figure feed_a_turn(const trade::Feed& feed, const trade::Material& material) {
    return {"feed per revolution",
            Range{feed.least, feed.most},
            "in proportion between the middles of the published bands, at the cutter's middle",
            {{"class of " + material.name, feed.feed_class}},
            feed.origin.source + " (" + feed.origin.confidence + ")",
            Grain::close};
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
    return {"time",
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
