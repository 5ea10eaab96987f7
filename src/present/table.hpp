// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A plain table for a terminal or a pipe: columns as wide as their content, numbers to the right,
// long text wrapped so that the whole stays within the given width.
#pragma once

#include <string>
#include <vector>

#include "present/style.hpp"

namespace present {

class Table {
  public:
    struct Column {
        std::string title;
        bool right = false; // numbers: to the right, and never wrapped
    };

    explicit Table(std::vector<Column> columns) : columns_(std::move(columns)) {}

    // One cell a column, as stored: cells are made safe to print here.
    void add(const std::vector<std::string>& cells);
    [[nodiscard]] bool empty() const { return rows_.empty(); }

    // Title line and rows, each ending in a line end. Columns in which no row has anything are left
    // out. Only columns of text give way when `width` is too small.
    [[nodiscard]] std::string text(std::size_t width, const Style& style = {}) const;

  private:
    std::vector<Column> columns_;
    std::vector<std::vector<std::string>> rows_;
};

} // namespace present
