// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One pass over the bytes. The reader knows at every byte which row and column it is in, so that
// every complaint can say where.
#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "present/csv.hpp"
#include "present/utf8.hpp"

namespace present {

namespace {

constexpr std::string_view k_byte_order_mark = "\xEF\xBB\xBF";
constexpr std::size_t k_shown = 40; // of a cell, in a complaint

class Reader {
  public:
    explicit Reader(std::string_view text) : text_(text) {
        if (text_.substr(0, k_byte_order_mark.size()) == k_byte_order_mark)
            at_ = k_byte_order_mark.size();
    }

    CsvFile read() {
        // In order of place, whatever the kind: a byte that cannot be read ends the file there.
        const std::size_t bad = std::min(find_invalid(text_), text_.find('\0'));
        end_ = std::min(bad, text_.size());
        while (at_ < end_ && !stopped_)
            read_row();
        if (!stopped_ && bad != std::string_view::npos)
            complain_of_byte(bad);
        if (!stopped_ && file_.header.empty())
            stop({1, 0, "no header row", "", "the first row names the columns"});
        return std::move(file_);
    }

  private:
    // The rest of a row up to and with its line end.
    void read_row() {
        std::vector<std::string> cells;
        bool more = true;
        while (more && !stopped_) {
            column_ = cells.size() + 1;
            cells.push_back(at_ < end_ && text_[at_] == '"' ? quoted() : plain());
            if (!stopped_ && cells.back().size() > k_longest_cell)
                stop({row_, column_, "a cell of more than a million bytes",
                      cells.back().substr(0, k_shown), "is a quote missing?"});
            more = !stopped_ && at_ < end_ && text_[at_] == ',';
            if (more)
                ++at_;
        }
        if (stopped_ || (end_ < text_.size() && at_ == end_))
            return;
        if (at_ < end_)
            end_line();
        if (stopped_)
            return;
        keep(std::move(cells));
        ++row_;
        column_ = 1;
    }

    void end_line() {
        if (text_[at_] == '\r')
            ++at_;
        if (at_ < end_ && text_[at_] == '\n')
            ++at_;
        else
            stop({row_, column_, "a carriage return without a line end", "",
                  "end lines with a line feed, or carriage return and line feed"});
    }

    std::string plain() {
        const std::size_t from = at_;
        at_ = std::min(text_.find_first_of(",\r\n\"", at_), end_);
        std::string cell(text_.substr(from, at_ - from));
        if (at_ < end_ && text_[at_] == '"')
            stop({row_, column_, "a quote inside a cell that does not begin with one",
                  cell + shown('"'), "put quotes around the cell and write each one inside twice"});
        return cell;
    }

    std::string quoted() {
        const std::size_t from = at_++;
        std::string cell;
        while (true) {
            const std::size_t quote = text_.find('"', at_);
            if (quote >= end_) {
                if (end_ == text_.size())
                    stop({row_, column_, "a quote is opened here and never closed",
                          std::string(text_.substr(from, k_shown)), "close it with another quote"});
                at_ = end_;
                return cell;
            }
            cell += text_.substr(at_, quote - at_);
            at_ = quote + 1;
            if (at_ >= end_ || text_[at_] != '"')
                break;
            cell += '"';
            ++at_;
        }
        if (at_ < end_ && text_[at_] != ',' && text_[at_] != '\r' && text_[at_] != '\n')
            stop({row_, column_, "text after the closing quote",
                  '"' + cell.substr(0, k_shown) + '"' + shown(text_[at_]),
                  "write a quote inside a quoted cell twice"});
        return cell;
    }

    // Up to the end of the cell, short: for a complaint.
    std::string shown(char first) {
        const std::size_t end = std::min(text_.find_first_of(",\r\n", at_ + 1), end_);
        return first + std::string(text_.substr(at_ + 1, std::min(end - at_ - 1, k_shown)));
    }

    void keep(std::vector<std::string> cells) {
        const bool blank =
            std::all_of(cells.begin(), cells.end(), [](const std::string& c) { return c.empty(); });
        if (file_.header.empty()) {
            if (blank)
                stop({row_, 0, "the header row is empty", "", "the first row names the columns"});
            else
                file_.header = std::move(cells);
        } else if (cells.size() == file_.header.size()) {
            if (!blank)
                file_.rows.push_back({row_, std::move(cells)});
        } else if (cells.size() > 1 || !blank) {
            file_.problems.push_back(
                {row_, std::min(cells.size(), file_.header.size()) + 1,
                 fmt::format("{} cell{} where the header has {}", cells.size(),
                             cells.size() == 1 ? "" : "s", file_.header.size()),
                 "", "one cell a column; quote a cell that holds a comma"});
        }
    }

    void complain_of_byte(std::size_t at) {
        const auto byte = static_cast<unsigned char>(text_[at]);
        if (byte == 0)
            stop({row_, column_, fmt::format("a NUL byte at byte {} of the file", at), "",
                  "save the file as plain CSV in UTF-8"});
        else
            stop({row_, column_,
                  fmt::format("not UTF-8 at byte {} of the file (0x{:02x})", at, byte), "",
                  "save the file as CSV in UTF-8"});
    }

    void stop(CsvProblem problem) {
        stopped_ = true;
        file_.problems.push_back(std::move(problem));
    }

    std::string_view text_;
    std::size_t at_ = 0;
    std::size_t end_ = 0; // of what can be read
    std::size_t row_ = 1; // where at_ is
    std::size_t column_ = 1;
    bool stopped_ = false;
    CsvFile file_;
};

} // namespace

CsvFile read_csv(std::string_view text) {
    return Reader(text).read();
}

} // namespace present
