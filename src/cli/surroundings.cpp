// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Reading the environment and asking what standard output is.
#include "cli/surroundings.hpp"

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <iostream>

#include "error/error.hpp"

namespace cli {

namespace {

constexpr std::size_t k_narrowest = 40;
constexpr std::size_t k_widest = 200;

std::string variable(const char* name) {
    const char* value = std::getenv(name);
    return value == nullptr ? std::string() : std::string(value);
}

} // namespace

Surroundings surroundings_of_process() {
    Surroundings around;
    around.file = variable("COUNTERPART_FILE");
    around.data_home = variable("XDG_DATA_HOME");
    around.home = variable("HOME");
    around.talk = {&std::cin, &std::cout, isatty(STDIN_FILENO) != 0 && isatty(STDOUT_FILENO) != 0};
    if (isatty(STDOUT_FILENO) == 0)
        return around;
    around.terminal = true;
    around.colour = variable("NO_COLOR").empty() && variable("TERM") != "dumb";
    winsize size{};
    if (ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_col > 0)
        around.width = std::clamp<std::size_t>(size.ws_col, k_narrowest, k_widest);
    return around;
}

std::filesystem::path usual_file(const Surroundings& around) {
    if (!around.file.empty())
        return around.file;
    std::filesystem::path base = around.data_home;
    if (base.empty() && !around.home.empty())
        base = std::filesystem::path(around.home) / ".local" / "share";
    if (base.empty())
        throw error::UsageError("no catalogue named, and HOME is not set",
                                "name one with --file FILE or COUNTERPART_FILE");
    return base / "counterpart" / "catalogue.db";
}

} // namespace cli
