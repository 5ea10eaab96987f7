// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The program: everything else is a library.
#include "cli/program.hpp"

int main(int count, char** words) {
    return cli::run_process(count, words);
}
