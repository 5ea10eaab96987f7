// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Part of the build, not of the program: `compile_reference FOLDER IMAGE` makes the database image
// of the reference tables, or says why not.
#include <fmt/format.h>

#include <cstdio>
#include <exception>

#include "store/compile_image.hpp"

int main(int argc, char** argv) {
    if (argc != 3) {
        fmt::print(stderr, "usage: compile_reference FOLDER IMAGE\n");
        return 2;
    }
    try {
        store::compile_image(argv[1], argv[2]);
        return 0;
    } catch (const std::exception& problem) {
        fmt::print(stderr, "compile_reference: {}\n", problem.what());
        return 3;
    }
}
