// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Whole files, in and out.
#pragma once

#include <filesystem>
#include <optional>
#include <ostream>
#include <string>

#include "store/rights.hpp"

namespace cli {
class Context;
}

namespace cli::transfer {

// A file that is read from front to back, several times if need be, without being held in memory. A
// pipe is put into a temporary file first. Throws error::InputOutput for what cannot be read.
class Input {
  public:
    explicit Input(const std::filesystem::path& path);
    ~Input();
    Input(const Input&) = delete;
    Input& operator=(const Input&) = delete;

    // Up to `most` bytes; 0 at the end.
    std::size_t read(char* to, std::size_t most);
    void rewind();

  private:
    std::filesystem::path path_;
    int file_ = -1;
};

// Throws error::InputOutput for what cannot be read.
[[nodiscard]] std::string read_whole(const std::filesystem::path& path);

// Written beside the file, put on the disk, then given its name, so that there is never half a
// file. Nobody can read a new one who cannot read the catalogue; one that is replaced keeps its
// owner, group and mode. Throws error::InputOutput; also when something is there and `replace` is
// not asked for, or when what is there is no plain file: a symbolic link is not followed.
void write_whole(const std::filesystem::path& path, const std::string& text, bool replace,
                 const Context& context);

// Takes away what runs that were cut short left beside a file that is to be written, and says so.
void drop_left_over(const std::filesystem::path& wanted, std::ostream& err);

// Says so if a file that another was put in the place of does not have its owner, group and mode
// any more.
void say_rights(const std::filesystem::path& path, const std::optional<store::Rights>& before,
                std::ostream& err);

} // namespace cli::transfer
