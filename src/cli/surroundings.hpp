// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the program takes from the process around it: where the catalogue is, and what it prints
// to. Read once, so that a test can give its own.
#pragma once

#include <filesystem>
#include <istream>
#include <ostream>
#include <string>

namespace cli {

// For a command that talks with its user while it runs, rather than printing at its end.
struct Talk {
    std::istream* in = nullptr;
    std::ostream* out = nullptr;
    bool typed = false; // a person at a terminal, on both sides
};

struct Surroundings {
    std::string file;       // COUNTERPART_FILE
    std::string data_home;  // XDG_DATA_HOME
    std::string home;       // HOME
    bool terminal = false;  // standard output is one
    bool colour = false;    // and nobody asked for it to be plain
    std::size_t width = 80; // columns to print in
    Talk talk;
};

[[nodiscard]] Surroundings surroundings_of_process();

// Where the catalogue is when the command line names none. Throws error::UsageError when the
// surroundings do not say.
[[nodiscard]] std::filesystem::path usual_file(const Surroundings& surroundings);

} // namespace cli
