// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The pages of a database file as bytes, for what SQLite no longer reads: past a wrong header, past
// a page that is lost, and pages that nothing leads to any more. Knows no tables, only trees of
// rows. https://www.sqlite.org/fileformat2.html
#pragma once

#include <cstdint>
#include <filesystem>
#include <fstream>
#include <functional>
#include <string>
#include <variant>
#include <vector>

namespace store {

// Nothing, a whole number, or text: no catalogue holds anything else.
using Cell = std::variant<std::monostate, std::int64_t, std::string>;

struct PageRow {
    bool has_id = false; // its tree is by row id, not by the row itself
    std::int64_t id = 0;
    std::vector<Cell> cells; // as they are stored: of a column that is the row id, nothing
};

class Pages {
  public:
    // Says whether the row is one that belongs where it was found.
    using See = std::function<bool(const PageRow&)>;

    // Throws error::InputOutput if the file cannot be opened.
    explicit Pages(const std::filesystem::path& path);

    // The rows below page `root` in their order, each page once in the life of this. False if a
    // part cannot be read or does not belong there.
    bool tree(std::uint32_t root, const See& see);

    // The rows by id on pages that no tree led to and that are not on the list of free pages.
    void stray(const See& see);

    // As the header has it.
    [[nodiscard]] std::int64_t user_version();

  private:
    using Bytes = std::vector<unsigned char>;
    class Page;

    [[nodiscard]] Bytes bytes_of(std::uint32_t number);
    bool walk(std::uint32_t number, int depth, const See& see);
    bool row(const Page& page, std::size_t at, const See& see);
    [[nodiscard]] Bytes payload(const Page& page, std::size_t at, std::size_t size);
    void find_free();

    std::ifstream file_;
    std::size_t page_size_ = 4096;
    std::uint32_t count_ = 0;
    std::vector<bool> seen_; // by number
    std::vector<bool> free_;
};

} // namespace store
