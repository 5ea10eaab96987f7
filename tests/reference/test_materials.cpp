// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What work materials forbid, their limits between editions, everyday names, and feeds over all
// cutters, against what is published.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "job/feed.hpp"
#include "tables.hpp"
#include "trade/material.hpp"

using trade::Matter;

namespace {

std::vector<trade::EverydayMaterial> everyday() {
    return trade::everyday_materials(tables::reference().practice());
}

trade::Material material(std::string_view text) {
    return trade::find_material(text, tables::reference().materials(), everyday());
}

std::string words(const trade::Material& material, Matter about) {
    const auto* found = material.restriction(about);
    return found ? found->words : "";
}

bool names(const std::string& text, std::string_view word) {
    return text.find(word) != std::string::npos;
}

} // namespace

TEST_CASE("magnesium is never dwelt on, nor cut or put out with water") {
    // T.O. 1-1A-9, section on machining magnesium: machine dry, a mineral oil if a coolant is
    // needed; no tool may rub; tool dwell raises the chance of ignition; water and common liquid or
    // foam extinguishers make the fire worse; metal fire powder or dry sand.
    const auto magnesium = material("magnesium");
    CHECK(magnesium.coolant == "dry, or mineral oil");
    CHECK(!magnesium.may_dwell());
    CHECK(names(words(magnesium, Matter::coolant), "mineral oil"));
    CHECK(names(words(magnesium, Matter::coolant), "never a coolant with water"));
    CHECK(names(words(magnesium, Matter::fire), "never water"));
    CHECK(names(words(magnesium, Matter::fire), "class D"));
    REQUIRE(!magnesium.restrictions.empty());
    CHECK(magnesium.restrictions.front().about == Matter::fire); // the gravest first
    CHECK(magnesium.restrictions.front().origin.source.starts_with("T.O. 1-1A-9"));
    // The same order's ceiling, 500 to 700 ft/min, over which even good tools may light the chips.
    CHECK(magnesium.speed_high <= 500);
}

TEST_CASE("titanium is a metal fire, and not dwelt on") {
    // Cutting Tool Engineering, June 2009, Tackling titanium: plenty of cutting fluid, a class D
    // extinguisher. No dwell: common practice.
    for (const auto* name : {"titanium unalloyed", "titanium Ti-6Al-4V"}) {
        const auto titanium = material(name);
        CHECK(!titanium.may_dwell());
        CHECK(names(words(titanium, Matter::fire), "class D"));
        CHECK(words(titanium, Matter::coolant).empty());
    }
}

TEST_CASE("materials that harden under a rubbing tool allow no dwell, and others do") {
    // Machinery's Handbook, Machining Monel and nickel alloys: the feed is large enough that the
    // tool does not rub. Stainless steel: common practice.
    int hardening = 0;
    for (const auto& row : tables::reference().materials()) {
        CAPTURE(row.name);
        const bool hardens = names(row.name, "stainless") || names(row.name, "nickel") ||
                             names(row.name, "titanium") || names(row.name, "magnesium");
        hardening += hardens ? 1 : 0;
        if (hardens)
            CHECK(!row.may_dwell());
        if (names(row.name, "steel") && !hardens)
            CHECK(row.may_dwell());
        if (names(row.name, "gray iron") || names(row.name, "aluminum"))
            CHECK(row.may_dwell());
    }
    CHECK(hardening == 11);
}

TEST_CASE("brass and bronze feed themselves, plastics melt, iron and laminates are dusty") {
    // Cutting Tool Technology, chapter 3: drills for brass are dubbed to lose their rake. Plastics
    // suppliers' guidelines: heat stays in the cut. Dust: common practice.
    for (const auto* name : {"free-cutting brass C360", "naval brass", "C932", "phosphor"})
        CHECK(names(words(material(name), Matter::self_feed), "dubbed"));
    CHECK(names(words(material("nylon"), Matter::heat), "melts"));
    CHECK(!material("nylon").may_dwell());
    for (const auto* name : {"class 20", "malleable", "65-45-12", "phenolic", "hardwood"})
        CHECK(!words(material(name), Matter::dust).empty());
}

TEST_CASE("leaded steel, brass and bronze say that they hold lead") {
    // C36000 (ASTM B16), C93200 (ASTM B505) and 12L14 hold lead: from memory. 29 CFR 1910.1025.
    for (const auto* name : {"12L14", "C360", "C932"}) {
        CHECK(names(words(material(name), Matter::dust), "holds lead"));
        CHECK(material(name).restrictions.back().origin.source.starts_with("29 CFR 1910.1025"));
    }
    CHECK(words(material("naval brass"), Matter::dust).empty());
}

TEST_CASE("what is poison to cut is refused, by every name it goes by") {
    // 29 CFR 1910.1024 (beryllium), 1910.1027 (cadmium), 1910.1001 (asbestos).
    for (const auto* name :
         {"beryllium copper", "BeCu", "copper, beryllium", "cadmium plated", "cad plated",
          "old friction board", "insulating board", "brake lining", "asbestos"}) {
        CAPTURE(name);
        const auto row = material(name);
        REQUIRE(row.restriction(Matter::refused));
        CHECK(row.restriction(Matter::refused)->origin.source.starts_with("29 CFR 1910.10"));
        CHECK(row.speed_high == 0);
        CHECK_THROWS((trade::check_cut_here(row)));
    }
    CHECK(!material("copper").restriction(Matter::refused));
    CHECK(!material("nickel-copper").restriction(Matter::refused));
}

TEST_CASE("limits of pressure are those of both editions of VDI 2230") {
    // VDI 2230, 2003 and 1986, as a fastener dealer's catalogue reprints them side by side.
    struct Limit {
        const char* name;
        int low;
        int high;
    };
    for (const auto& limit :
         std::initializer_list<Limit>{{"1018", 260, 490},           // St 37; S235 JRG1
                                      {"E295", 420, 710},           // St 50; St 50-2
                                      {"S355", 420, 760},           // St 50; St 52-3U
                                      {"1045 C45", 630, 700},       // Cq 45; C 45
                                      {"4140 prehard", 850, 870},   // 42CrMo4; 34CrMo4
                                      {"4340", 750, 1080},          // 30CrNiMo8; 34CrNiMo6
                                      {"8620", 900, 900},           // 16MnCr5
                                      {"304", 210, 630},            // X5CrNiMo18-10; X5CrNi18-12
                                      {"316", 210, 460},            // X5CrNiMo17-12-2
                                      {"GJL-150", 600, 600},        // GG 15
                                      {"GJL-250", 800, 900},        // GG 25; GJL-250
                                      {"GJL-350", 900, 900},        // GG 35
                                      {"65-45-12", 700, 700},       // GJS-400-15
                                      {"80-55-06", 900, 900},       // GJS-500-7
                                      {"100-70-03", 1000, 1000},    // GJS-600-3
                                      {"malleable", 480, 480},      // GGG 35.5
                                      {"6061", 230, 260},           // AlMgSi1 F28, F31
                                      {"5083", 230, 230},           // AlMg4.5Mn
                                      {"7075", 410, 410},           // AlZnMgCu1.5
                                      {"permanent-mold", 220, 220}, // GK-AlSi9Cu3
                                      {"die casting", 290, 290},    // GD-AlSi9Cu3
                                      {"A356", 380, 380},           // GK-AlSi7Mg wa
                                      {"AZ91", 140, 280},           // GK MgAl9; AZ 91
                                      {"titanium unalloyed", 300, 300},    // Titan, unlegiert
                                      {"titanium Ti-6Al-4V", 890, 890}}) { // TiAl6V4
        CAPTURE(limit.name);
        const auto row = material(limit.name);
        CHECK(row.pressure_low_mpa == limit.low);
        CHECK(row.pressure_high_mpa == limit.high);
    }
}

TEST_CASE("everyday names lead to one material, and it says by which") {
    // Common practice, no source.
    struct Everyday {
        const char* word;
        const char* material;
    };
    for (const auto& asked :
         std::initializer_list<Everyday>{{"mild steel", "low-carbon steel 1018/1020/A36 (S235)"},
                                         {"cast iron", "gray iron class 30-40 (GJL-250)"},
                                         {"grey iron", "gray iron class 30-40 (GJL-250)"},
                                         {"aluminum", "aluminum 6061/6082-T6"},
                                         {"aluminium", "aluminum 6061/6082-T6"},
                                         {"brass", "free-cutting brass C360"},
                                         {"bronze", "bronze C932 bearing"},
                                         {"stainless", "stainless 304"},
                                         {"stainless steel", "stainless 304"},
                                         {"tool steel", "tool steel O1 annealed"},
                                         {"alloy steel", "alloy steel 4140 prehard"},
                                         {"titanium", "titanium Ti-6Al-4V"},
                                         {"plastic", "acetal, nylon"},
                                         {"wood", "hardwood"}}) {
        CAPTURE(asked.word);
        CHECK(material(asked.word).name == asked.material);
        CHECK(!material(asked.word).asked_as.empty());
    }
    CHECK_THROWS((void)material("steel")); // mild or tool steel: more than a guess apart
    for (const auto& row : tables::reference().materials())
        CHECK(material(row.name).name == row.name);
}

TEST_CASE("a cutter a thousandth larger changes no feed by more than half a per cent") {
    const auto feeds = tables::reference().feeds();
    const auto percent = [](length::Length before, length::Length after) {
        return 100. * static_cast<double>((after - before).nm()) / static_cast<double>(before.nm());
    };
    for (const auto* feed_class : {"free", "general", "tough"}) {
        auto before = job::feed_for(feed_class, length::sixty_fourths(4), feeds);
        for (auto cutter = length::sixty_fourths(4); cutter <= length::sixty_fourths(128);
             cutter = cutter + length::thousandths(1)) {
            CAPTURE(feed_class);
            CAPTURE(cutter.nm());
            const auto feed = job::feed_for(feed_class, cutter, feeds);
            CHECK(percent(before.least, feed.least) >= 0);
            CHECK(percent(before.least, feed.least) < .5);
            CHECK(percent(before.most, feed.most) >= 0);
            CHECK(percent(before.most, feed.most) < .5);
            before = feed;
        }
    }
}

TEST_CASE("feeds of most materials hold what is published for counterbores") {
    // TC 9-524, chapter 4: .002 to .005 in per revolution; at the middle of the usual sizes the
    // general class has just these.
    const auto feed = job::feed_for("general", tables::in("3/8"), tables::reference().feeds());
    CHECK(feed.least == tables::in(".002"));
    CHECK(feed.most == tables::in(".005"));
}
