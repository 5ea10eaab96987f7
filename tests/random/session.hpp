// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The program run as a person runs it, in this process, on a catalogue of its own.
#pragma once

#include <cstdint>
#include <filesystem>
#include <random>
#include <string>
#include <vector>

#include "error/error.hpp"

namespace session {

using Words = std::vector<std::string>;

// How many cases to try: the environment's COUNTERPART_RANDOM_CASES, else `usual`.
[[nodiscard]] int cases(int usual);

// A folder that goes away with it; in memory where the system has such a place.
class Folder {
  public:
    Folder();
    ~Folder();
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    [[nodiscard]] std::string operator/(const std::string& name) const {
        return (path_ / name).string();
    }

  private:
    std::filesystem::path path_;
};

struct Result {
    error::ExitCode code;
    std::string out;
    std::string err;

    [[nodiscard]] bool done() const { return code == error::ExitCode::done; }
};

[[nodiscard]] Result run(const std::string& catalogue, const Words& words);

// Everything that a person can have of the catalogue, one after the other.
[[nodiscard]] std::string state(const std::string& catalogue);

void write(const std::string& path, const std::string& text);

// Dice for words and text.
class Dice {
  public:
    explicit Dice(std::uint32_t seed) : engine_(seed) {}

    [[nodiscard]] int between(int lo, int hi) {
        return std::uniform_int_distribution<int>(lo, hi)(engine_);
    }
    [[nodiscard]] bool chance(int percent) { return between(1, 100) <= percent; }
    template <class Value>
    [[nodiscard]] const Value& one_of(const std::vector<Value>& values) {
        return values[static_cast<std::size_t>(between(0, static_cast<int>(values.size()) - 1))];
    }
    // What spreadsheets and terminals stumble over, and any Unicode, without control characters.
    [[nodiscard]] std::string awkward_text();

  private:
    std::mt19937 engine_;
};

} // namespace session
