// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/compile_csv.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <utility>

#include "error/error.hpp"

namespace store {

namespace {

class CsvReader {
  public:
    CsvReader(std::string_view text, std::string name) : text_(text), name_(std::move(name)) {}

    [[nodiscard]] bool at_end() const { return at_ == text_.size(); }

    CsvRow take_row() {
        CsvRow row{line_, {take_cell()}};
        while (take(','))
            row.cells.push_back(take_cell());
        take('\r');
        if (!at_end() && !take('\n'))
            refuse("text after a closing quote");
        return row;
    }

    [[noreturn]] void refuse(std::string_view why) const { refuse(why, line_); }
    [[noreturn]] void refuse(std::string_view why, std::size_t line) const {
        throw error::BadData(fmt::format("{}:{}: {}", name_, line, why));
    }

  private:
    bool take(char wanted) {
        if (at_end() || text_[at_] != wanted)
            return false;
        line_ += wanted == '\n';
        ++at_;
        return true;
    }

    std::string take_cell() {
        if (take('"'))
            return take_quoted();
        const auto end = std::min(text_.find_first_of(",\r\n\"", at_), text_.size());
        std::string cell(text_.substr(at_, end - at_));
        at_ = end;
        if (!at_end() && text_[at_] == '"')
            refuse("a quote inside a cell that does not begin with one");
        return cell;
    }

    std::string take_quoted() {
        const auto start = line_;
        std::string cell;
        while (!at_end()) {
            const char next = text_[at_];
            if (next == '"') {
                take('"');
                if (!take('"'))
                    return cell;
            } else {
                take(next);
            }
            cell += next;
        }
        refuse("a quote is not closed", start);
    }

    std::string_view text_;
    std::string name_;
    std::size_t at_ = 0;
    std::size_t line_ = 1;
};

void check_columns(const CsvReader& reader, const std::vector<std::string>& columns) {
    for (auto at = columns.begin(); at != columns.end(); ++at) {
        if (at->empty())
            reader.refuse("a column without a name", 1);
        if (std::find(columns.begin(), at, *at) != at)
            reader.refuse(fmt::format("a column named twice: {}", *at), 1);
    }
}

} // namespace

CsvFile parse_csv(std::string_view text, std::string name) {
    CsvFile file{name, {}, {}};
    CsvReader reader(text, std::move(name));
    file.columns = reader.take_row().cells;
    check_columns(reader, file.columns);
    while (!reader.at_end()) {
        auto row = reader.take_row();
        if (row.cells.size() != file.columns.size())
            reader.refuse(fmt::format("{} cells where {} columns are named", row.cells.size(),
                                      file.columns.size()),
                          row.line);
        file.rows.push_back(std::move(row));
    }
    if (file.rows.empty())
        reader.refuse("no rows");
    return file;
}

CsvFile read_csv(const std::filesystem::path& path) {
    return parse_csv(read_text(path), path.filename().string());
}

std::string read_text(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    std::string text{std::istreambuf_iterator<char>(in), {}};
    if (!in)
        throw error::InputOutput(fmt::format("cannot be read: {}", path.string()));
    return text;
}

} // namespace store
