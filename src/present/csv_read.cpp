// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The reader holds a window of the file that begins with a row. Where the window ends within the
// row, more is read and the row is begun again; so a row is parsed as if the file were all there,
// and the reader knows at every byte which row and column it is in.
#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "present/csv.hpp"
#include "present/utf8.hpp"

namespace present {

namespace {

constexpr std::string_view k_byte_order_mark = "\xEF\xBB\xBF";
constexpr std::size_t k_shown = 40; // of a cell, in a complaint
constexpr std::size_t k_first_window = 65536;
constexpr std::size_t k_longest_utf8 = 4;

bool is_blank(const std::vector<std::string>& cells) {
    return std::all_of(cells.begin(), cells.end(), [](const std::string& c) { return c.empty(); });
}

} // namespace

CsvReader::CsvReader(CsvSource source) : source_(std::move(source)) {
    read_more();
    if (window_.compare(0, k_byte_order_mark.size(), k_byte_order_mark) == 0)
        at_ = row_at_ = k_byte_order_mark.size();
    if (auto cells = read_row()) {
        if (is_blank(*cells))
            stop({1, 0, "the header row is empty", "", "the first row names the columns"});
        else
            header_ = std::move(*cells);
    }
    if (!stopped_ && header_.empty())
        stop({1, 0, "no header row", "", "the first row names the columns"});
}

std::optional<CsvRow> CsvReader::next() {
    while (auto cells = read_row()) {
        const std::size_t row = row_ - 1;
        if (cells->size() == header_.size()) {
            if (!is_blank(*cells))
                return CsvRow{row, std::move(*cells)};
        } else if (cells->size() > 1 || !is_blank(*cells)) {
            problems_.push_back({row, std::min(cells->size(), header_.size()) + 1,
                                 fmt::format("{} cell{} where the header has {}", cells->size(),
                                             cells->size() == 1 ? "" : "s", header_.size()),
                                 "", "one cell a column; quote a cell that holds a comma"});
        }
    }
    return std::nullopt;
}

std::vector<CsvProblem> CsvReader::take_problems() {
    return std::exchange(problems_, {});
}

// A byte that cannot be read ends the file there, once the rows before it are read.
void CsvReader::read_more() {
    window_.erase(0, row_at_);
    before_window_ += row_at_;
    at_ = row_at_ = 0;
    const std::size_t had = window_.size();
    window_.resize(had + std::max(had, k_first_window));
    std::size_t size = had;
    while (size < window_.size()) {
        const std::size_t count = source_(window_.data() + size, window_.size() - size);
        size += count;
        if (count == 0) {
            exhausted_ = true;
            break;
        }
    }
    window_.resize(size);
    bad_ = std::min(find_invalid(window_), window_.find('\0'));
    end_ = std::min(bad_, window_.size());
    // The last character may go on beyond the window.
    if (!exhausted_ && bad_ != std::string::npos && window_[bad_] != '\0' &&
        window_.size() - bad_ < k_longest_utf8)
        bad_ = std::string::npos;
}

// The end of what is in the window, which is not the end of the file.
bool CsvReader::needs_more() {
    short_ = at_ >= end_ && bad_ == std::string::npos && !exhausted_;
    return short_;
}

// The next row whole; empty at the end of the file and after a problem that stops the reading.
std::optional<std::vector<std::string>> CsvReader::read_row() {
    while (!stopped_) {
        if (at_ >= end_ && !needs_more()) {
            if (bad_ != std::string::npos)
                complain_of_byte();
            return std::nullopt;
        }
        std::vector<std::string> cells = parse_row();
        if (stopped_)
            return std::nullopt;
        if (short_) {
            short_ = false;
            read_more();
            continue;
        }
        if (cut_off_)
            continue;
        row_at_ = at_;
        ++row_;
        column_ = 1;
        return cells;
    }
    return std::nullopt;
}

// The rest of a row up to and with its line end.
std::vector<std::string> CsvReader::parse_row() {
    std::vector<std::string> cells;
    bool more = true;
    while (more && !stopped_ && !short_) {
        column_ = cells.size() + 1;
        cells.push_back(at_ < end_ && window_[at_] == '"' ? quoted() : plain());
        if (!stopped_ && cells.back().size() > k_longest_cell)
            stop({row_, column_, "a cell of more than a million bytes",
                  cells.back().substr(0, k_shown), "is a quote missing?"});
        more = !stopped_ && !short_ && at_ < end_ && window_[at_] == ',';
        if (more)
            ++at_;
    }
    cut_off_ = bad_ != std::string::npos && at_ == end_;
    if (!stopped_ && !short_ && at_ < end_)
        end_line();
    return cells;
}

void CsvReader::end_line() {
    if (window_[at_] == '\r')
        ++at_;
    if (needs_more())
        return;
    if (at_ < end_ && window_[at_] == '\n')
        ++at_;
    else
        stop({row_, column_, "a carriage return without a line end", "",
              "end lines with a line feed, or carriage return and line feed"});
}

std::string CsvReader::plain() {
    const std::size_t from = at_;
    at_ = std::min(window_.find_first_of(",\r\n\"", at_), end_);
    std::string cell = window_.substr(from, at_ - from);
    needs_more();
    if (at_ < end_ && window_[at_] == '"')
        stop({row_, column_, "a quote inside a cell that does not begin with one",
              cell + shown('"'), "put quotes around the cell and write each one inside twice"});
    return cell;
}

std::string CsvReader::quoted() {
    const std::size_t from = at_++;
    std::string cell;
    while (true) {
        const std::size_t quote = window_.find('"', at_);
        if (quote >= end_) {
            cell += window_.substr(at_, end_ - at_);
            at_ = end_;
            if (!needs_more() && bad_ == std::string::npos)
                stop({row_, column_, "a quote is opened here and never closed",
                      window_.substr(from, k_shown), "close it with another quote"});
            return cell;
        }
        cell += window_.substr(at_, quote - at_);
        at_ = quote + 1;
        if (at_ >= end_ || window_[at_] != '"')
            break;
        cell += '"';
        ++at_;
    }
    needs_more();
    if (at_ < end_ && window_[at_] != ',' && window_[at_] != '\r' && window_[at_] != '\n')
        stop({row_, column_, "text after the closing quote",
              '"' + cell.substr(0, k_shown) + '"' + shown(window_[at_]),
              "write a quote inside a quoted cell twice"});
    return cell;
}

// Up to the end of the cell, short: for a complaint.
std::string CsvReader::shown(char first) const {
    const std::size_t end = std::min(window_.find_first_of(",\r\n", at_ + 1), end_);
    return first + window_.substr(at_ + 1, std::min(end - at_ - 1, k_shown));
}

void CsvReader::complain_of_byte() {
    const auto byte = static_cast<unsigned char>(window_[bad_]);
    const std::size_t at = before_window_ + bad_;
    if (byte == 0)
        stop({row_, column_, fmt::format("a NUL byte at byte {} of the file", at), "",
              "save the file as plain CSV in UTF-8"});
    else
        stop({row_, column_, fmt::format("not UTF-8 at byte {} of the file (0x{:02x})", at, byte),
              "", "save the file as CSV in UTF-8"});
}

void CsvReader::stop(CsvProblem problem) {
    stopped_ = true;
    problems_.push_back(std::move(problem));
}

CsvSource csv_text(std::string_view text) {
    return [text](char* to, std::size_t most) mutable {
        const std::size_t count = text.copy(to, most);
        text.remove_prefix(count);
        return count;
    };
}

CsvFile read_csv(CsvSource source) {
    CsvReader reader(std::move(source));
    CsvFile file;
    file.header = reader.header();
    while (auto row = reader.next())
        file.rows.push_back(std::move(*row));
    file.problems = reader.take_problems();
    return file;
}

CsvFile read_csv(std::string_view text) {
    return read_csv(csv_text(text));
}

} // namespace present
