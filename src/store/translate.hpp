// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// SQLite's errors in the program's own terms, in one place.
#pragma once

#include <SQLiteCpp/Exception.h>

#include <string>

namespace store {

// Throws error::Busy, DamagedFile, InputOutput or BadData by SQLite's result code; `path` is the
// catalogue's, for the message.
[[noreturn]] void throw_translated(const SQLite::Exception& exception, const std::string& path);
[[noreturn]] void throw_translated(int extended_code, const std::string& message,
                                   const std::string& path);

// Throws error::InputOutput: the last step of a change, after which it is made, was not confirmed.
[[noreturn]] void throw_uncertain(const std::string& path);

} // namespace store
