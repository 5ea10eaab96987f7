// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A folder for one test, and small readings of files and tables.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>

#include "error/error.hpp"
#include "store/file.hpp"

namespace scratch {

class Folder {
  public:
    Folder();
    ~Folder();
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    [[nodiscard]] std::filesystem::path operator/(const std::string& name) const {
        return path_ / name;
    }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    // Names of everything in it, sorted, joined by blanks.
    [[nodiscard]] std::string names() const;

  private:
    std::filesystem::path path_;
};

[[nodiscard]] std::string contents(const std::filesystem::path& path);
void write(const std::filesystem::path& path, const std::string& bytes);

// A new catalogue in inches.
store::File catalogue(const std::filesystem::path& path);

// Every row of every table that undo brings back, as text.
[[nodiscard]] std::string dump(const store::File& file);

// The first column of the first row.
[[nodiscard]] std::int64_t number_from(const store::File& file, const std::string& sql);

// What `act` throws of the program's own errors; empty if it throws nothing.
std::optional<error::Error> error_of(const std::function<void()>& act);

} // namespace scratch
