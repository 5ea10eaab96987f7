// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `gauge`: the cutting diameter from what can be read of a cutter that a caliper cannot span.
#include <charconv>

#include "cli/command.hpp"
#include "cli/gauging.hpp"
#include "trade/text.hpp"

namespace cli::commands {

namespace {

struct JawsOptions {
    GaugeOptions common;
    std::string flutes;
    std::string least;
    std::string most;
};

struct ChordOptions {
    GaugeOptions common;
    std::string flutes;
    std::string skip;
    std::string chord;
};

struct AnvilOptions {
    GaugeOptions common;
    std::string flutes;
    std::string angle;
    std::string reading;
    std::string master;
    std::string master_reading;
};

struct PilotOptions {
    GaugeOptions common;
    std::string pilot;
    std::string reading;
    std::string runout;
};

struct HoleOptions {
    GaugeOptions common;
    std::string hole;
    std::string runout;
    std::string clearance;
};

error::ExitCode jaws(const JawsOptions& options, Context& context) {
    const Gauging gauging(options.common, context);
    const job::JawReadings readings{gauging.flutes(options.flutes),
                                    gauging.maybe_reading(options.least),
                                    gauging.maybe_reading(options.most)};
    const job::Gauged gauged = job::gauge_jaws(readings, gauging.unit());
    return gauging.finish(gauged, gauging.how(options.most.empty() ? options.least : options.most),
                          readings.flutes);
}

int skipped(const std::string& text) {
    int value = 0;
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (problem != std::errc() || end != text.data() + text.size() || value < 0)
        throw error::BadData("not a number of corners to skip: '" + text + "'",
                             "0 for neighbours, 1 for every second corner");
    return value;
}

error::ExitCode chord(const ChordOptions& options, Context& context) {
    const Gauging gauging(options.common, context);
    const job::ChordReading reading{gauging.flutes(options.flutes),
                                    options.skip.empty() ? 0 : skipped(options.skip),
                                    gauging.reading(options.chord)};
    return gauging.finish(job::gauge_chord(reading), gauging.how(options.chord), reading.flutes);
}

// `60`, `128.57`, `60 deg`.
double angle_of(const std::string& text) {
    std::string_view figure = trade::trimmed(text);
    constexpr std::string_view k_unit = "deg";
    if (figure.size() > k_unit.size() && figure.substr(figure.size() - k_unit.size()) == k_unit)
        figure = trade::trimmed(figure.substr(0, figure.size() - k_unit.size()));
    double value = 0;
    const auto [end, problem] = std::from_chars(figure.data(), figure.data() + figure.size(), value,
                                                std::chars_format::fixed);
    if (problem != std::errc() || end != figure.data() + figure.size())
        throw error::BadData("not an angle: '" + text + "'", "degrees: 60, 108, 128.57");
    return value;
}

std::optional<job::Master> master_of(const AnvilOptions& options, const Gauging& gauging) {
    if (options.master.empty())
        return std::nullopt;
    return job::Master{gauging.reading(options.master), gauging.reading(options.master_reading)};
}

error::ExitCode anvil(const AnvilOptions& options, Context& context) {
    const Gauging gauging(options.common, context);
    const job::AnvilReading reading{gauging.flutes(options.flutes), angle_of(options.angle),
                                    gauging.reading(options.reading), master_of(options, gauging)};
    return gauging.finish(job::gauge_anvil(reading, gauging.unit()), gauging.how(options.reading),
                          reading.flutes);
}

error::ExitCode pilot(const PilotOptions& options, Context& context) {
    const Gauging gauging(options.common, context);
    const job::PilotReading reading{gauging.reading(options.pilot),
                                    gauging.reading(options.reading),
                                    gauging.allowance(options.runout)};
    return gauging.finish(job::gauge_over_pilot(reading, gauging.unit()),
                          gauging.how(options.reading), std::nullopt);
}

error::ExitCode hole(const HoleOptions& options, Context& context) {
    const Gauging gauging(options.common, context);
    const job::HoleReading reading{gauging.reading(options.hole), gauging.allowance(options.runout),
                                   gauging.allowance(options.clearance)};
    return gauging.finish(job::gauge_hole(reading, gauging.unit()), trade::How::test_hole,
                          std::nullopt);
}

void need_flutes(const Syntax& syntax, std::string& flutes) {
    syntax.option("--flutes", flutes, "cutting edges, evenly spaced").takes("COUNT").required();
}

Option take_size(const Syntax& syntax, const char* name, std::string& size, const char* about) {
    return syntax.option(name, size, about).takes("SIZE");
}

void declare_jaws(const Syntax& syntax, Plan& plan) {
    JawsOptions& o = chosen<JawsOptions>(syntax, plan, jaws);
    need_flutes(syntax, o.flutes);
    take_size(syntax, "--least", o.least, "smallest reading as the tool is turned");
    take_size(syntax, "--most", o.most, "largest reading as the tool is turned");
    declare_gauge_options(syntax, o.common);
}

void declare_chord(const Syntax& syntax, Plan& plan) {
    ChordOptions& o = chosen<ChordOptions>(syntax, plan, chord);
    syntax.word("CHORD", o.chord, "from a corner to the same corner of another land").required();
    need_flutes(syntax, o.flutes);
    syntax.option("--skip", o.skip, "corners between the two; else 0, neighbours").takes("COUNT");
    declare_gauge_options(syntax, o.common);
}

void declare_anvil(const Syntax& syntax, Plan& plan) {
    AnvilOptions& o = chosen<AnvilOptions>(syntax, plan, anvil);
    need_flutes(syntax, o.flutes);
    syntax.option("--angle", o.angle, "degrees between the faces of the V")
        .takes("DEGREES")
        .required();
    take_size(syntax, "--reading", o.reading, "largest reading as the tool is rocked").required();
    const auto master = take_size(syntax, "--master", o.master,
                                  "diameter of a round pin; without it the instrument reads round "
                                  "pieces directly");
    const auto on_master =
        take_size(syntax, "--master-reading", o.master_reading, "reading on that pin");
    master.needs(on_master);
    on_master.needs(master);
    declare_gauge_options(syntax, o.common);
}

void declare_pilot(const Syntax& syntax, Plan& plan) {
    PilotOptions& o = chosen<PilotOptions>(syntax, plan, pilot);
    take_size(syntax, "--pilot", o.pilot, "diameter of the pilot or of a concentric shank")
        .required();
    take_size(syntax, "--reading", o.reading, "from a tip to the far side of the pilot").required();
    take_size(syntax, "--runout", o.runout, "of the tips about the pilot, full indicator reading");
    declare_gauge_options(syntax, o.common);
}

void declare_hole(const Syntax& syntax, Plan& plan) {
    HoleOptions& o = chosen<HoleOptions>(syntax, plan, hole);
    take_size(syntax, "--hole", o.hole, "the hole that it cut in scrap").required();
    take_size(syntax, "--runout", o.runout, "the most that the cutter may have run out");
    take_size(syntax, "--clearance", o.clearance, "the most play of the pilot in its hole");
    declare_gauge_options(syntax, o.common);
}

} // namespace

void declare_gauge(const Syntax& syntax, Plan& plan) {
    syntax.needs_verb();
    declare_jaws(syntax.verb("jaws", "between flat jaws: smallest and largest"), plan);
    declare_chord(syntax.verb("chord", "from a corner to that of another land"), plan);
    declare_anvil(syntax.verb("anvil", "in a V under a flat spindle"), plan);
    declare_pilot(syntax.verb("pilot", "from a tip over the pilot or the shank"), plan);
    declare_hole(syntax.verb("hole", "by a hole that it cut"), plan);
}

} // namespace cli::commands
