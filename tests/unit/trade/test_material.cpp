// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "error/error.hpp"
#include "trade/material.hpp"

namespace {

std::vector<trade::Material> named(std::initializer_list<const char*> names) {
    std::vector<trade::Material> materials;
    for (const auto* name : names)
        materials.push_back({.name = name,
                             .condition = {},
                             .feed_class = {},
                             .coolant = {},
                             .pressure_basis = {},
                             .restrictions = {},
                             .asked_as = {},
                             .origin = {}});
    return materials;
}

const std::vector<trade::Material>& materials() {
    static const auto rows = named({"low-carbon steel 1018/1020/A36 (S235)",
                                    "low-carbon steel cold drawn",
                                    "medium-carbon steel 1045 (C45)",
                                    "medium-carbon steel 1045 Q and T",
                                    "alloy steel 4140 annealed",
                                    "alloy steel 4140 prehard",
                                    "stainless 304",
                                    "stainless 303",
                                    "gray iron class 20 (GJL-150)",
                                    "gray iron class 30-40 (GJL-250)",
                                    "ductile iron 60-40-18 / 65-45-12",
                                    "aluminum 6061/6082-T6",
                                    "aluminum 2024-T4",
                                    "free-cutting brass C360",
                                    "yellow brass C260 / naval brass",
                                    "titanium Ti-6Al-4V",
                                    "acetal, nylon",
                                    "hardwood",
                                    "class 30",
                                    "class 30 special"});
    return rows;
}

std::string found(const char* text) {
    return trade::find_material(text, materials()).name;
}

// `message | hint` of the refusal.
std::string refused(const char* text) {
    try {
        return "found " + found(text);
    } catch (const error::BadData& problem) {
        return std::string(problem.what()) + " | " + problem.hint();
    }
}

} // namespace

TEST_CASE("a material goes by any part of its name that is its alone") {
    struct Asked {
        const char* text;
        const char* name;
    };
    for (const auto& asked : std::initializer_list<Asked>{
             {"1018", "low-carbon steel 1018/1020/A36 (S235)"},
             {"AISI 1018", "low-carbon steel 1018/1020/A36 (S235)"},
             {"a36", "low-carbon steel 1018/1020/A36 (S235)"},
             {"S235", "low-carbon steel 1018/1020/A36 (S235)"},
             {"6061", "aluminum 6061/6082-T6"},
             {"6061-T6", "aluminum 6061/6082-T6"},
             {"6061 aluminium", "aluminum 6061/6082-T6"},
             {"  Gray IRON  class 40 ", "gray iron class 30-40 (GJL-250)"},
             {"grey iron class 30", "gray iron class 30-40 (GJL-250)"},
             {"GJL-150", "gray iron class 20 (GJL-150)"},
             {"65-45-12", "ductile iron 60-40-18 / 65-45-12"},
             {"nodular iron", "ductile iron 60-40-18 / 65-45-12"},
             {"4140 pre", "alloy steel 4140 prehard"},
             {"304 stainless", "stainless 304"},
             {"type 304", "stainless 304"},
             {"ti-6al-4v", "titanium Ti-6Al-4V"},
             {"naval brass", "yellow brass C260 / naval brass"},
             {"nylon", "acetal, nylon"},
             {"mild steel 1020", "low-carbon steel 1018/1020/A36 (S235)"}}) {
        CAPTURE(asked.text);
        CHECK(found(asked.text) == asked.name);
    }
}

TEST_CASE("the whole name is enough, and every material answers to its own") {
    CHECK(found("class 30") == "class 30");
    CHECK(found("Class  30") == "class 30");
    for (const auto& material : materials())
        CHECK(trade::find_material(material.name, materials()).name == material.name);
}

TEST_CASE("a name of several materials is refused with all of them") {
    CHECK(refused("brass") == "2 materials go by this: 'brass' | say which: free-cutting brass "
                              "C360; yellow brass C260 / naval brass");
    CHECK(refused("1045") == "2 materials go by this: '1045' | say which: medium-carbon steel "
                             "1045 (C45); medium-carbon steel 1045 Q and T");
    CHECK(refused("mild steel") == "2 materials go by this: 'mild steel' | say which: low-carbon "
                                   "steel 1018/1020/A36 (S235); low-carbon steel cold drawn");
}

TEST_CASE("a long list of materials is cut and counted") {
    const auto many = named({"iron 1", "iron 2", "iron 3", "iron 4", "iron 5", "iron 6", "iron 7",
                             "iron 8", "iron 9", "iron 10"});
    try {
        (void)trade::find_material("iron", many);
        FAIL("found");
    } catch (const error::BadData& problem) {
        CHECK(problem.hint() == "say which: iron 1; iron 2; iron 3; iron 4; iron 5; iron 6; "
                                "iron 7; iron 8; and 2 more");
    }
}

TEST_CASE("a name of no material is refused with near ones, if any is near") {
    CHECK(refused("1019") == "no such material: '1019' | near it: low-carbon steel "
                             "1018/1020/A36 (S235)");
    CHECK(refused("101") == "no such material: '101' | near it: low-carbon steel "
                            "1018/1020/A36 (S235)"); // a number must be whole
    CHECK(refused("gray iron class 35") == "no such material: 'gray iron class 35' | near it: "
                                           "gray iron class 30-40 (GJL-250)");
    CHECK(refused("stainles 305") ==
          "no such material: 'stainles 305' | near it: stainless 304; stainless 303");
    CHECK(refused("xyz") == "no such material: 'xyz' | `counterpart material list` names them all");
    CHECK(refused("10") == "no such material: '10' | `counterpart material list` names them all");
}

TEST_CASE("a text without words is refused") {
    for (const auto* text : {"", "  ", "-/()", "AISI"})
        CHECK(refused(text) == std::string("no such material: '") + text +
                                   "' | a name or a part of one: 1018, 6061, gray iron class 30");
}

TEST_CASE("an everyday name is taken as its row, which says so") {
    const std::vector<trade::EverydayMaterial> everyday{
        {"mild steel", "low-carbon steel 1018/1020/A36 (S235)"},
        {"stainless", "stainless 304"},
        {"aluminum", "aluminum 6061/6082-T6"},
        {"class 30", "stainless 303"},
        {"our plate", "low-carbon steel cold drawn", true}};
    const auto taken = [&](const char* text) {
        return trade::find_material(text, materials(), everyday);
    };
    for (const auto* text : {"mild steel", "Mild  Steel", "steel, mild", "low-carbon steel"}) {
        CAPTURE(text);
        CHECK(taken(text).name == "low-carbon steel 1018/1020/A36 (S235)");
        CHECK(taken(text).asked_as == "mild steel");
    }
    CHECK(taken("stainless").name == "stainless 304");
    CHECK(taken("stainless steel").name == "stainless 304");
    CHECK(taken("aluminium").name == "aluminum 6061/6082-T6");
    CHECK(taken("our plate").name == "low-carbon steel cold drawn");
    CHECK(taken("stainless 303").asked_as.empty());
    CHECK(taken("303").name == "stainless 303");
    CHECK(taken("class 30").name == "class 30"); // a name of the table comes first
    CHECK_THROWS_AS((void)taken("steel"), error::BadData);
}

TEST_CASE("the later of two everyday names counts: the shop's own") {
    const std::vector<trade::EverydayMaterial> everyday{
        {"mild steel", "low-carbon steel 1018/1020/A36 (S235)"},
        {"mild steel", "low-carbon steel cold drawn", true}};
    CHECK(trade::find_material("mild steel", materials(), everyday).name ==
          "low-carbon steel cold drawn");
}

TEST_CASE("an everyday name without its row is refused with the way to mend it") {
    try {
        (void)trade::find_material("mild steel", materials(), {{"mild steel", "gone"}});
        FAIL("found");
    } catch (const error::BadData& problem) {
        CHECK(problem.what() == std::string("practice: material mild steel: no such material: "
                                            "'gone'"));
        CHECK(problem.hint() ==
              "`practice set \"material mild steel\" NAME`, a name of `material list`");
    }
}

TEST_CASE("everyday names are the rows of practice that begin with material") {
    const auto everyday = trade::everyday_materials({{"head clearance", ".005 in", "", "", false},
                                                     {"material mild steel", "1018", "", "", true},
                                                     {"materials", "x", "", "", false}});
    REQUIRE(everyday.size() == 1);
    CHECK(everyday[0].word == "mild steel");
    CHECK(everyday[0].material == "1018");
    CHECK(everyday[0].own);
}

TEST_CASE("a refused material has no cutting steps, and the refusal says why") {
    auto material = materials().front();
    CHECK_NOTHROW(trade::check_cut_here(material));
    material.restrictions = {{trade::Matter::dwell, "no dwell", {"a text", "", ""}}};
    CHECK_NOTHROW(trade::check_cut_here(material));
    CHECK(!material.may_dwell());
    material.restrictions = {{trade::Matter::refused, "its dust kills", {"a law", "", ""}}};
    CHECK(material.may_dwell());
    try {
        trade::check_cut_here(material);
        FAIL("cut");
    } catch (const error::BadData& problem) {
        CHECK(problem.what() == std::string("no cutting steps for this material: "
                                            "'low-carbon steel 1018/1020/A36 (S235)'"));
        CHECK(problem.hint() == "its dust kills (a law); local rules come first");
    }
}

TEST_CASE("every matter of a material has its word") {
    using trade::Matter;
    for (const auto matter : {Matter::refused, Matter::fire, Matter::dwell, Matter::coolant,
                              Matter::self_feed, Matter::heat, Matter::dust})
        CHECK(trade::matter_of(trade::matter_word(matter)) == matter);
    CHECK(trade::matter_word(Matter::self_feed) == "self-feed");
    CHECK(trade::matter_word(Matter::dust) == "dust");
    CHECK_THROWS_AS((void)trade::matter_of("smell"), std::out_of_range);
}
