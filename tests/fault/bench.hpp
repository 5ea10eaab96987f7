// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What every fault test needs: a folder of its own, the real program run in it under some hardship,
// and the catalogue read by plain SQLite afterwards.
#pragma once

#include <sys/types.h>

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace fault {

namespace fs = std::filesystem;
using Words = std::vector<std::string>;

// The whole of the test, as `tests/run --long` has it, or the short form.
[[nodiscard]] bool is_long();
[[nodiscard]] inline int times(int brief, int whole) {
    return is_long() ? whole : brief;
}

struct Hardship {
    std::vector<std::string> variables;      // NAME=value, beside the usual ones
    std::chrono::microseconds kill_after{0}; // kill -9; 0: never
    std::chrono::seconds give_up{20};        // a run that takes longer hangs
    std::int64_t largest_file = 0;           // RLIMIT_FSIZE in bytes; 0: none
    std::string input = "/dev/null";         // where standard input comes from
    std::string output;                      // where standard output goes; else it is kept
    bool closed_pipe = false;                // standard output is a pipe that nobody reads
    bool as_nobody = false;                  // without root's rights
};

struct Outcome {
    int code = -1; // exit code; 128 + signal
    bool hung = false;
    std::string out;
    std::string err;
    long peak_kib = 0;
};

[[nodiscard]] std::string contents(const fs::path& path);
void write(const fs::path& path, const std::string& bytes);

class Bench {
  public:
    Bench();
    ~Bench();
    Bench(const Bench&) = delete;
    Bench& operator=(const Bench&) = delete;

    [[nodiscard]] fs::path operator/(const std::string& name) const { return folder_ / name; }
    [[nodiscard]] const fs::path& folder() const { return folder_; }
    [[nodiscard]] fs::path file() const { return folder_ / "catalogue.db"; }

    // Runs the program on file() in the folder.
    Outcome run(const Words& words, const Hardship& hardship = {}) const;
    // The same, not waited for.
    [[nodiscard]] pid_t start(const Words& words, const Hardship& hardship = {}) const;
    [[nodiscard]] Outcome wait(pid_t child, const Hardship& hardship = {}) const;
    // Fails the test unless it exits 0; returns what it printed.
    std::string done(const Words& words) const;

    // Fails the test unless SQLite's checks and our own find nothing.
    void is_whole() const;

    // Makes a catalogue with bodies, pilots in them, trials, work, own screws, a house list.
    void fill() const;

    // Names of everything in the folder, sorted.
    [[nodiscard]] std::vector<std::string> names() const;

  private:
    fs::path folder_;
};

// Every row of every table, as plain SQLite reads it; empty if it cannot.
[[nodiscard]] std::string rows_of(const fs::path& file);
// The first column of the first row; -1 if it cannot be read.
[[nodiscard]] std::int64_t number_from(const fs::path& file, const std::string& sql);
// The first column of every row, a line each.
[[nodiscard]] std::string lines_from(const fs::path& file, const std::string& sql);

// Rows of CSV: so many bodies, every one unlike the others.
[[nodiscard]] std::string many_bodies(int count);

} // namespace fault
