// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The one family of errors: what was wrong, how to mend it, and the exit code that goes with it.
// Expected outcomes ("nothing matched") are values, not errors.
#pragma once

#include <stdexcept>
#include <string>

namespace error {

enum class ExitCode {
    done = 0,
    nothing_matched = 1,
    usage = 2,
    bad_data = 3,
    no_such_record = 4,
    busy = 5,
    damaged_file = 6,
    input_output = 7,
};

// `what()` says what was wrong and where, ending in the offending value; `hint()` says what would
// be right and may be empty.
class Error : public std::runtime_error {
  public:
    Error(ExitCode code, const std::string& message, std::string hint = {})
        : std::runtime_error(message), code_(code), hint_(std::move(hint)) {}

    [[nodiscard]] ExitCode code() const noexcept { return code_; }
    [[nodiscard]] const std::string& hint() const noexcept { return hint_; }

  private:
    ExitCode code_;
    std::string hint_;
};

// The command line does not say a thing that can be done.
struct UsageError : Error {
    explicit UsageError(const std::string& message, std::string hint = {})
        : Error(ExitCode::usage, message, std::move(hint)) {}
};

// A value that cannot be read, or cannot be true.
struct BadData : Error {
    explicit BadData(const std::string& message, std::string hint = {})
        : Error(ExitCode::bad_data, message, std::move(hint)) {}
};

// A number, name or size that is not in the catalogue or the tables.
struct NoSuchRecord : Error {
    explicit NoSuchRecord(const std::string& message, std::string hint = {})
        : Error(ExitCode::no_such_record, message, std::move(hint)) {}
};

// The file is damaged, is no catalogue, or was written by a newer program.
struct DamagedFile : Error {
    explicit DamagedFile(const std::string& message, std::string hint = {})
        : Error(ExitCode::damaged_file, message, std::move(hint)) {}
};

// Another program holds the file.
struct Busy : Error {
    explicit Busy(const std::string& message, std::string hint = {})
        : Error(ExitCode::busy, message, std::move(hint)) {}
};

// The operating system would not read or write.
struct InputOutput : Error {
    explicit InputOutput(const std::string& message, std::string hint = {})
        : Error(ExitCode::input_output, message, std::move(hint)) {}
};

} // namespace error
