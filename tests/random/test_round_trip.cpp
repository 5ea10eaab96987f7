// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Random catalogues out and in again: the second export is the first, byte for byte.
#include <doctest/doctest.h>

#include "session.hpp"

using session::Dice;
using session::Folder;
using session::Words;

namespace {

std::string quoted(const std::string& cell) {
    std::string text = "\"";
    for (const char character : cell)
        text += character == '"' ? std::string("\"\"") : std::string(1, character);
    return text + "\"";
}

// A cell of text that is awkward, plain or empty.
std::string text(Dice& dice) {
    if (dice.chance(30))
        return {};
    return quoted(dice.chance(70) ? dice.awkward_text() : "plain");
}

std::string size(Dice& dice, const std::vector<std::string>& sizes) {
    return dice.chance(25) ? std::string() : dice.one_of(sizes);
}

// Sizes as people write them; bare numbers are in the catalogue's unit.
struct Sizes {
    std::vector<std::string> cutters, pilots, bores, heights;
};
const Sizes k_inches{{"7/16", "0.500", ".5935 +-.0002", "12 mm", "go .4990 no-go .5010", ".375 in"},
                     {".2640", "17/64", "6.6 mm", ".3270 +.0002 -.0003", "1/4", "F", "#7"},
                     {"1/4", ".2503", "6 mm", ".1875 +-.0002"},
                     {".25", "3/16"}};
const Sizes k_millimetres{{"15", "11.5 +-0.02", "1/2 in", "go 9.98 no-go 10.02", "18.00"},
                          {"6.6", "17/64 in", ".2640 in", "8.9 +0.01 -0.02", "#7", "letter F"},
                          {"6", "4.005", "1/4 in", "5 +-0.01"},
                          {"8", "4.5"}};

const std::vector<std::string> k_how{"", "mark", "caliper", "micrometer", "guess"};

// A size, and how it is known where it is there; a drill's name is a mark.
std::string sized(Dice& dice, const std::vector<std::string>& sizes) {
    const auto cell = size(dice, sizes);
    if (cell.empty())
        return ",";
    const bool drill = cell == "F" || cell == "#7" || cell == "letter F";
    return cell + "," + (drill ? (dice.chance(50) ? "mark" : "") : dice.one_of(k_how));
}

std::string bodies(Dice& dice, const Sizes& sizes, int count) {
    std::string csv = "number,set,kind,cut_dia,cut_how,flutes,pilot_kind,pilot_dia,bore,bore_how,"
                      "condition,work,marking,place,note\n";
    for (int number = 1; number <= count; ++number) {
        const bool removable = dice.chance(50);
        csv += std::to_string(number * 2) + "," + text(dice) + "," +
               dice.one_of<std::string>({"counterbore", "spotfacer", "other", "unknown"}) + "," +
               sized(dice, sizes.cutters) + "," + (dice.chance(50) ? "3" : "") + "," +
               (removable ? "removable,," + sized(dice, sizes.bores)
                          : "integral," + size(dice, sizes.pilots) + ",,") +
               "," + dice.one_of<std::string>({"", "good", "dull", "rough"}) + "," +
               dice.one_of<std::string>({"", "sharpen", "sharpen; clean the bore"}) + "," +
               text(dice) + "," + text(dice) + "," + text(dice) + "\n";
    }
    return csv;
}

std::string pilots(Dice& dice, const Sizes& sizes, int count) {
    std::string csv = "number,set,pilot_dia,pilot_how,shank_dia,shank_how,flat_at,place,note\n";
    for (int number = 1; number <= count; ++number)
        csv += std::to_string(number * 2 + 1001) + "," + text(dice) + "," +
               sized(dice, sizes.pilots) + "," + sized(dice, sizes.bores) + "," +
               (dice.chance(20) ? "none" : "") + "," + text(dice) + "," + text(dice) + "\n";
    return csv;
}

std::string screws(Dice& dice, const Sizes& sizes, int count) {
    std::string csv = "screw,head_dia,head_height,drive,note\n";
    for (int i = 1; i <= count; ++i)
        csv += "lamp " + std::to_string(i) + "," + size(dice, sizes.cutters) + "," +
               size(dice, sizes.heights) + ",slot," + text(dice) + "\n";
    return csv;
}

std::string house(Dice& dice, int count) {
    static const std::vector<std::string> names{"#10-24 fillister", "1/4-20 socket head cap",
                                                "M8 socket head cap", "5/16-18 shcs 1936"};
    std::string csv = "screw,hole,note\n";
    for (int i = 0; i < count && i < static_cast<int>(names.size()); ++i)
        csv += names[static_cast<std::size_t>(i)] + "," +
               dice.one_of<std::string>({"", "close", "normal", "21/64"}) + "," + text(dice) + "\n";
    return csv;
}

constexpr const char* k_kinds[]{"bodies", "pilots", "screws", "house"};

std::string all_exports(const std::string& catalogue, const Folder& folder,
                        const std::string& mark) {
    std::string all;
    for (const char* kind : k_kinds) {
        const auto out = session::run(catalogue, {"export", kind}).out;
        session::write(folder / (mark + kind), out);
        all += out;
    }
    return all;
}

} // namespace

TEST_CASE("export, import and export again are the same bytes") {
    const Folder folder;
    std::size_t bytes = 0;
    for (int seed = 1; seed <= session::cases(150); ++seed) {
        CAPTURE(seed);
        Dice dice(static_cast<std::uint32_t>(seed));
        const bool metric = dice.chance(30);
        const auto unit = metric ? "mm" : "in";
        const auto& sizes = metric ? k_millimetres : k_inches;
        const auto first = folder / ("first" + std::to_string(seed) + ".db");
        const auto second = folder / ("second" + std::to_string(seed) + ".db");
        REQUIRE(session::run(first, {"start", "--units", unit}).done());
        REQUIRE(session::run(second, {"start", "--units", unit}).done());
        session::write(folder / "in-bodies", bodies(dice, sizes, dice.between(0, 6)));
        session::write(folder / "in-pilots", pilots(dice, sizes, dice.between(0, 6)));
        session::write(folder / "in-screws", screws(dice, sizes, dice.between(0, 3)));
        session::write(folder / "in-house", house(dice, dice.between(0, 4)));
        for (const char* kind : k_kinds) {
            const auto in =
                session::run(first, {"import", kind, folder / ("in-" + std::string(kind))});
            CAPTURE(in.err);
            REQUIRE(in.done());
        }
        const auto before = all_exports(first, folder, "out-");
        for (const char* kind : k_kinds) {
            const auto in =
                session::run(second, {"import", kind, folder / ("out-" + std::string(kind))});
            CAPTURE(in.err);
            REQUIRE(in.done());
        }
        CHECK(all_exports(second, folder, "again-") == before);
        bytes += before.size();
        std::filesystem::remove(first);
        std::filesystem::remove(second);
    }
    CHECK(bytes > 10'000);
}
