// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Random sequences of commands, each taken back: everything comes back byte for byte, also when the
// program was killed on the way.
#include <sys/wait.h>
#include <unistd.h>

#include <doctest/doctest.h>

#include <csignal>
#include <filesystem>
#include <set>

#include "session.hpp"
#include "store/file.hpp"
#include "store/history.hpp"

using session::Dice;
using session::Folder;
using session::Words;

namespace {

constexpr int k_numbers = 9; // tools that are there from the beginning, and some that are not

void make_base(const std::string& catalogue, const Folder& folder) {
    session::write(folder / "bodies.csv",
                   "number,set,kind,cut_dia,cut_how,pilot_kind,pilot_dia,bore,retention,place\n"
                   "1,a,counterbore,.5,mark,removable,,1/4,set screw,rack 1\n"
                   "2,a,counterbore,13/32,mark,integral,.2640,,,rack 2\n"
                   "3,b,spotfacer,3/4,,removable,,.25,,\n"
                   "4,b,unknown,,,unknown,,,,tin\n");
    session::write(folder / "pilots.csv", "number,set,pilot_dia,shank_dia,in_body,tried\n"
                                          "5,a,.3270,.2495,1,slides\n"
                                          "6,b,.2640,1/4,,\n");
    session::write(folder / "more.csv", "kind,cut_dia,place\n"
                                        "counterbore,7/16,box 1\ncounterbore,.6,box 2\n");
    for (const Words& words : {Words{"start"},
                               {"import", "bodies", folder / "bodies.csv"},
                               {"import", "pilots", folder / "pilots.csv"},
                               {"house", "add", "1/4-20 shcs"},
                               {"machine", "add", "mill", "--morse", "3"}})
        REQUIRE(session::run(catalogue, words).done());
}

Words random_command(Dice& dice, const Folder& folder) {
    const auto number = [&] { return std::to_string(dice.between(1, k_numbers)); };
    const auto size = [&] {
        return dice.one_of<std::string>({"1/2", ".4375", "12 mm", ".500 +-.001", ".2640", "1/4"});
    };
    switch (dice.between(0, 19)) {
    case 0:
        return {"add", "body", "--cut-dia", size(), "--note=" + dice.awkward_text()};
    case 1:
        return {"add", "pilot", "--pilot-dia", size(), "--shank-dia", "1/4"};
    case 2:
        return {"add", "screw", "--screw", "lamp " + number(), "--head-dia", size()};
    case 3:
        return {"change", number(), "--place=" + dice.awkward_text()};
    case 4:
        return {"change", number(), "--condition", dice.chance(50) ? "dull" : "good"};
    case 5:
        return {"measure", number(), "cut_dia", size(), "micrometer"};
    case 6:
        return {"measure", number(), "shank_dia", size(), "caliper"};
    case 7:
        return {"pair", number(), number(), "--tried", dice.chance(50) ? "binds" : "slides"};
    case 8:
        return {"unpair", number()};
    case 9:
        return {"retire", number(), "broken"};
    case 10:
        return {"unretire", number()};
    case 11:
        return {"work", "add", number(), "sharpen"};
    case 12:
        return {"work", "done", number(), "sharpen"};
    case 13:
        return {"house", "add", dice.chance(50) ? "M8 socket head cap" : "5/16-18 shcs"};
    case 14:
        return {"house", "drop", dice.chance(50) ? "M8 socket head cap" : "1/4-20 shcs"};
    case 15:
        return {"practice", "set", "below flush", dice.chance(50) ? ".02 in" : "1/32 in"};
    case 16:
        return {"practice", "reset", "below flush"};
    case 17:
        return {"machine", dice.chance(50) ? "drop" : "add", dice.chance(50) ? "mill" : "lathe"};
    case 18:
        return {"stock", dice.chance(70) ? "add" : "drop", size()};
    default:
        return {"import", "bodies", folder / "more.csv"};
    }
}

// Changes so far, apart from undoing.
std::set<std::int64_t> changes(const std::string& catalogue) {
    std::set<std::int64_t> groups;
    const auto file = store::File::open(catalogue, store::Access::read);
    for (const auto& row : store::history(file, std::nullopt))
        if (!row.undoes)
            groups.insert(row.group);
    return groups;
}

void take_back(const std::string& catalogue, std::size_t count) {
    for (; count > 0; --count)
        REQUIRE(session::run(catalogue, {"undo"}).done());
}

// Runs commands until it is killed or is through.
void run_and_be_killed(const std::string& catalogue, Dice& dice, const Folder& folder) {
    const auto wait_us = static_cast<useconds_t>(dice.between(500, 30'000));
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        for (int left = 12; left > 0; --left)
            (void)session::run(catalogue, random_command(dice, folder));
        ::_exit(0);
    }
    ::usleep(wait_us);
    ::kill(child, SIGKILL);
    ::waitpid(child, nullptr, 0);
}

} // namespace

TEST_CASE("any sequence of commands, taken back, leaves the first export byte for byte") {
    const Folder folder;
    make_base(folder / "base.db", folder);
    const auto before = session::state(folder / "base.db");
    const auto base = changes(folder / "base.db").size();
    const auto catalogue = folder / "catalogue.db";
    std::size_t made = 0;
    for (int seed = 1; seed <= session::cases(150); ++seed) {
        CAPTURE(seed);
        Dice dice(static_cast<std::uint32_t>(seed));
        std::filesystem::copy_file(folder / "base.db", catalogue,
                                   std::filesystem::copy_options::overwrite_existing);
        for (int left = dice.between(1, 10); left > 0; --left)
            (void)session::run(catalogue, random_command(dice, folder));
        const auto count = changes(catalogue).size() - base;
        made += count;
        take_back(catalogue, count);
        CHECK(session::state(catalogue) == before);
    }
    CHECK(made > 60);
}

TEST_CASE("a sequence that is cut short by a kill is taken back to the first export too") {
    const Folder folder;
    make_base(folder / "base.db", folder);
    const auto before = session::state(folder / "base.db");
    const auto base = changes(folder / "base.db").size();
    const auto catalogue = folder / "catalogue.db";
    for (int seed = 1; seed <= session::cases(150); ++seed) {
        CAPTURE(seed);
        Dice dice(static_cast<std::uint32_t>(seed) + 1'000'000);
        std::filesystem::copy_file(folder / "base.db", catalogue,
                                   std::filesystem::copy_options::overwrite_existing);
        run_and_be_killed(catalogue, dice, folder);
        const auto count = changes(catalogue).size() - base;
        take_back(catalogue, count);
        CHECK(session::state(catalogue) == before);
    }
}
