// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// From a command line to an exit code. This is the one place where errors become messages.
#pragma once

#include <ostream>
#include <string>
#include <vector>

#include "cli/surroundings.hpp"
#include "error/error.hpp"

namespace cli {

// `words` are the arguments without the program's name. Nothing is thrown.
[[nodiscard]] error::ExitCode run(const std::vector<std::string>& words,
                                  const Surroundings& surroundings, std::ostream& out,
                                  std::ostream& err);

// As `run`, for the process: what the command prints is written at the end, and a write that fails
// is error::ExitCode::input_output. Returns the exit status.
[[nodiscard]] int run_process(int count, char** words);

} // namespace cli
