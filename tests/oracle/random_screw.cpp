// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Screws of no table: sizes as they are sold, heads and holes about as large as such heads are.
#include <string>

#include <fmt/format.h>

#include "oracle/random_catalogue.hpp"

namespace oracle {

using length::Length;
using length::Range;
using length::sixty_fourths;
using length::thousandths;
using trade::SizeSystem;

namespace {

struct Named {
    std::string text;
    Length diameter;
};

Named random_size(Dice& dice, SizeSystem system) {
    switch (system) {
    case SizeSystem::number: {
        const std::int64_t n = dice.between(0, 12);
        return {fmt::format("#{}", n), thousandths(60 + 13 * n)};
    }
    case SizeSystem::metric: {
        const std::int64_t mm =
            dice.pick(std::vector<std::int64_t>{2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 27});
        return {fmt::format("M{}", mm), length::millimetres(mm)};
    }
    case SizeSystem::ba:
        return dice.pick(std::vector<Named>{{"0BA", length::micrometres(6000)},
                                            {"2BA", length::micrometres(4700)},
                                            {"4BA", length::micrometres(3600)}});
    default:
        return dice.pick(std::vector<Named>{{"1/4", sixty_fourths(16)},
                                            {"5/16", sixty_fourths(20)},
                                            {"3/8", sixty_fourths(24)},
                                            {"7/16", sixty_fourths(28)},
                                            {"1/2", sixty_fourths(32)},
                                            {"5/8", sixty_fourths(40)},
                                            {"3/4", sixty_fourths(48)},
                                            {"7/8", sixty_fourths(56)},
                                            {"1", sixty_fourths(64)},
                                            {"1-1/4", sixty_fourths(80)}});
    }
}

// To the thousandth or the hundredth of a millimetre, as tables print.
Length as_printed(Length value, SizeSystem system) {
    const Length step = system == SizeSystem::metric ? length::micrometres(10) : thousandths(1);
    return step * (value.nm() / step.nm());
}

void add_head(Dice& dice, trade::Screw& screw, Length dia, SizeSystem system) {
    const Length head = as_printed(dice.part_of(dia, screw.hex ? 1650 : 1400, 1900), system);
    const std::int64_t spread = dice.pick(std::vector<std::int64_t>{0, 10, 25, 50, 60});
    screw.head_dia = Range{as_printed(head - head * spread / 1000, system), head};
    const Length height = as_printed(dice.part_of(dia, 500, 1000), system);
    screw.head_height = Range{height - height / 40, height};
    if (dice.chance(15)) {
        const Length at = dice.part_of(head, 940, 1000);
        screw.head_dia = Range{at - length::inches_e5(50), at + length::inches_e5(50)};
        screw.head_measured = true;
    }
}

std::optional<trade::Clearance::Hole> nearest_hole(const std::vector<trade::Drill>& drills,
                                                   Length wanted, bool metric) {
    const trade::Drill* nearest = nullptr;
    for (const trade::Drill& drill : drills) {
        const bool of_kind = (drill.kind == trade::DrillKind::metric) == metric;
        if (of_kind && drill.diameter <= wanted) {
            nearest = &drill;
        }
    }
    if (nearest == nullptr) {
        return std::nullopt;
    }
    return trade::Clearance::Hole{nearest->name, nearest->diameter};
}

void add_holes(Dice& dice, trade::Screw& screw, Length dia, const std::vector<trade::Drill>& drills,
               bool metric) {
    if (screw.shoulder || dice.chance(25)) {
        return;
    }
    screw.clearance_system = metric ? "ISO 273" : "ASME B18.2.8";
    screw.close = nearest_hole(drills, dice.part_of(dia, 1030, 1070), metric);
    screw.normal = nearest_hole(drills, dice.part_of(dia, 1080, 1110), metric);
    if (dice.chance(85)) {
        screw.loose = nearest_hole(drills, dice.part_of(dia, 1130, 1230), metric);
    }
}

void add_counterbores(Dice& dice, trade::Screw& screw, SizeSystem system) {
    const Length head = screw.head_dia->hi;
    const auto row = [&](std::string rule, std::string kind, Length over) {
        trade::Counterbore found;
        found.series = screw.series;
        found.rule = std::move(rule);
        found.kind = std::move(kind);
        found.diameter = as_printed(head + over, system);
        if (dice.chance(40)) {
            found.depth_addition = as_printed(thousandths(dice.between(8, 80)), system);
        }
        screw.counterbores.push_back(found);
    };
    if (dice.chance(30)) {
        row("derived", "least cutter", sixty_fourths(1));
    }
    if (dice.chance(20)) {
        row("handbook tools", "tool", sixty_fourths(2));
    }
    if (dice.chance(10)) {
        row("wrench and clearance", screw.hex ? "socket wrench" : "other",
            dice.part_of(head, 50, 250));
    }
    if (dice.chance(35)) {
        return;
    }
    const Length over = dice.part_of(head, 40, 200);
    if (screw.hex) {
        row(system == SizeSystem::metric ? "DIN 974-2" : "washer face", "spotface", over);
    } else if (system == SizeSystem::metric) {
        row("DIN 974-1 series 1", "recommended", over);
    } else {
        row("ASME B18.3 appendix", "recommended", over);
    }
}

// An own screw: no table knows it, and its owner measured some of it.
// Of the size of the handbook's tool or near it, for a hole of the size and for larger ones.
void add_tools(Dice& dice, trade::Screw& screw, SizeSystem system) {
    const bool metric = system == SizeSystem::metric;
    const Length head = screw.head_dia->hi;
    const Length over = sixty_fourths(system == SizeSystem::number ? 1 : 2);
    Length cut = head + over;
    for (const trade::Counterbore& row : screw.counterbores) {
        cut = metric || row.kind == "tool" ? row.diameter : cut;
    }
    for (std::int64_t i = dice.between(0, 3); i > 0; --i) {
        trade::PublishedTool tool;
        tool.standard = "test tools";
        tool.size = screw.size->text;
        tool.unit = metric ? length::Unit::millimetre : length::Unit::inch;
        tool.cut_dia.listed = length::exactly(cut + thousandths(dice.between(-3, 3)));
        const Length hole = screw.size->diameter + sixty_fourths(dice.between(0, 2));
        tool.pilot_dia.listed = length::exactly(hole);
        screw.tools.push_back(tool);
    }
}

void make_own(Dice& dice, trade::Screw& screw) {
    screw.size.reset();
    screw.series.clear();
    screw.counterbores.clear();
    screw.tools.clear();
    screw.close.reset();
    screw.normal.reset();
    screw.loose.reset();
    screw.heads.clear();
    screw.hex = false;
    screw.shoulder = false;
    screw.head_measured = true;
    if (dice.chance(40)) {
        screw.screw_dia.reset();
    }
    if (dice.chance(20)) {
        screw.head_dia.reset();
    }
    if (dice.chance(25)) {
        screw.head_height.reset();
    }
}

void add_table_head(trade::Screw& screw) {
    trade::Head head;
    head.series = screw.series;
    head.form = screw.form;
    head.size = *screw.size;
    head.screw_dia = *screw.screw_dia;
    head.head_dia = *screw.head_dia;
    head.head_height_max = screw.head_height->hi;
    screw.heads.push_back(head);
}

} // namespace

trade::Screw random_screw(Dice& dice, const std::vector<trade::Drill>& all_drills) {
    const SizeSystem system = dice.weighted<SizeSystem>({{42, SizeSystem::inch},
                                                         {22, SizeSystem::number},
                                                         {33, SizeSystem::metric},
                                                         {3, SizeSystem::ba}});
    const Named size = random_size(dice, system);
    const bool metric = system == SizeSystem::metric || system == SizeSystem::ba;
    trade::Screw screw;
    screw.name = size.text + " test screw";
    screw.form = "test screw";
    screw.series = "test series";
    screw.size = trade::ScrewSize{system, size.text, size.diameter};
    screw.hex = dice.chance(12);
    screw.shoulder = !screw.hex && dice.chance(12);
    screw.form_words = {screw.form};
    const Length play = dice.pick(std::vector<Length>{Length(), Length(), thousandths(4)});
    screw.screw_dia = Range{size.diameter - play, size.diameter};
    add_head(dice, screw, size.diameter, system);
    add_holes(dice, screw, size.diameter, all_drills, metric);
    add_counterbores(dice, screw, system);
    add_tools(dice, screw, system);
    add_table_head(screw);
    if (dice.chance(9)) {
        make_own(dice, screw);
    }
    return screw;
}

} // namespace oracle
