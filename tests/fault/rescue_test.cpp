// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `recover` of files cut short, zeroed at the end, with keys, counts and whole pages that are not
// as they were: every tool is back as it was or is named, and what is nearly whole is never
// refused.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <random>
#include <regex>
#include <sstream>

#include "bench.hpp"

namespace {

using fault::Bench;
using fault::Outcome;
using Tools = std::map<std::int64_t, std::string>; // whole rows of bodies and pilots, by number

constexpr std::size_t k_page = 4096;
constexpr char k_leaf = 13; // a page of rows by row id

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

Tools tools_of(const fault::fs::path& file) {
    Tools tools;
    std::istringstream lines(fault::rows_of(file));
    std::string table;
    for (std::string line; std::getline(lines, line);) {
        if (line[0] == '[')
            table = line;
        else if (table == "[body]" || table == "[pilot]")
            tools[std::stoll(line.substr(2))] = table + line;
    }
    return tools;
}

// `body 7, place: ...`, `body [7]: ...`, `bodies 3 to 9`.
bool is_named(const std::string& out, std::int64_t number) {
    if (std::regex_search(out, std::regex(fmt::format(R"((body|pilot|number) \[?{}\b)", number))))
        return true;
    static const std::regex k_range(R"((bodies|pilots|numbers) (\d+) to (\d+))");
    for (auto at = std::sregex_iterator(out.begin(), out.end(), k_range);
         at != std::sregex_iterator(); ++at)
        if (std::stoll((*at)[2]) <= number && number <= std::stoll((*at)[3]))
            return true;
    return false;
}

// A catalogue with tools added, changed, retired, paired and taken back, and an earlier state of
// it.
class Rescue {
  public:
    explicit Rescue(unsigned seed) : random_(seed) {
        bench_.fill();
        for (const fault::Words& words :
             std::vector<fault::Words>{{"retire", "5"},
                                       {"change", "6", "--place", "rack 12"},
                                       {"undo"},
                                       {"change", "7", "--note", "later"},
                                       {"add", "body", "--cut-dia", "5/8"}})
            bench_.done(words);
        earlier_ = fault::contents(bench_.file());
        for (const fault::Words& words :
             std::vector<fault::Words>{{"undo"},
                                       {"change", "7", "--note", std::string(700, 'n')},
                                       {"retire", "9"},
                                       {"add", "body", "--cut-dia", "11/16"},
                                       {"change", "8", "--place", "drawer 3"}})
            bench_.done(words);
        good_ = fault::contents(bench_.file());
        tools_ = tools_of(bench_.file());
        std::istringstream given(
            fault::lines_from(bench_.file(), "SELECT number FROM tool_number ORDER BY number"));
        for (std::int64_t number = 0; given >> number;)
            given_.push_back(number);
    }

    [[nodiscard]] const std::string& good() const { return good_; }
    [[nodiscard]] const std::string& earlier() const { return earlier_; }
    [[nodiscard]] std::size_t pages() const { return good_.size() / k_page; }
    std::size_t any(std::size_t size) {
        return std::uniform_int_distribution<std::size_t>(0, size - 1)(random_);
    }
    // Any page but the first.
    std::size_t page() { return (1 + any(pages() - 1)) * k_page; }

    // One bit in the key of a row on a page of rows, or only of tools.
    std::string with_wrong_key(bool of_tool) {
        std::string bytes = good_;
        std::size_t at = page();
        while (bytes[at] != k_leaf || count_at(at) == 0 || (of_tool && !has_tools(at)))
            at = page();
        const std::size_t cell = at + number_at(at + 8 + 2 * any(count_at(at)));
        const std::size_t key = after_varint(cell);
        bytes[key + any(after_varint(key) - key)] ^= static_cast<char>(1U << any(7));
        return bytes;
    }

    // `may_be_refused`: so little may be left that nothing can be read.
    void recover(const std::string& bytes, bool may_be_refused = false) {
        fault::write(bench_.file(), bytes);
        const Outcome outcome = bench_.run({"recover", "-o", "new.db"});
        CAPTURE(outcome.out);
        CAPTURE(outcome.err);
        CHECK_FALSE(outcome.hung);
        CHECK(fault::contents(bench_.file()) == bytes);
        if (may_be_refused && outcome.code == 6)
            CHECK_FALSE(has(outcome.err, "counterpart recover"));
        else
            compare(outcome);
        clean();
    }

    // No command crashes, and one that meets the damage says what is damaged.
    void ask(const std::string& bytes) {
        fault::write(bench_.file(), bytes);
        const auto number = std::to_string(1 + any(tools_.size()));
        for (const fault::Words& words : std::vector<fault::Words>{
                 {"match", "1/4-20 socket head cap", "--all"}, {"show", number}, {"list"}}) {
            const Outcome outcome = bench_.run(words);
            CAPTURE(words[0]);
            CAPTURE(number);
            CAPTURE(outcome.err);
            CHECK_FALSE(outcome.hung);
            if (outcome.code == 3) // a screw of the list that is none any more
                CHECK(has(outcome.err, "the house list has"));
            else
                CHECK((outcome.code <= 1 || outcome.code == 4 || outcome.code == 6));
            if (outcome.code == 6)
                CHECK(has(outcome.err, "catalogue"));
            named_ += has(outcome.err, "has no record of it");
        }
        clean();
    }
    [[nodiscard]] int named() const { return named_; }
    [[nodiscard]] int all_back() const { return all_back_; }

  private:
    void compare(const Outcome& outcome) {
        REQUIRE(outcome.code == 0);
        CHECK(bench_.run({"--file", "new.db", "check"}).code == 0);
        const Tools back = tools_of(bench_ / "new.db");
        all_back_ += back == tools_;
        for (const std::int64_t number : given_) {
            CAPTURE(number);
            if (row(back, number) != row(tools_, number))
                CHECK(is_named(outcome.out, number));
        }
        for (const auto& [number, tool] : back) {
            CAPTURE(number);
            CHECK(std::find(given_.begin(), given_.end(), number) != given_.end());
        }
    }
    static std::string row(const Tools& tools, std::int64_t number) {
        const auto found = tools.find(number);
        return found == tools.end() ? std::string() : found->second;
    }
    // https://www.sqlite.org/fileformat2.html#b_tree_pages
    [[nodiscard]] std::size_t number_at(std::size_t at) const {
        return static_cast<unsigned char>(good_[at]) * std::size_t{256} +
               static_cast<unsigned char>(good_[at + 1]);
    }
    [[nodiscard]] bool has_tools(std::size_t page) const {
        const std::string bytes = good_.substr(page, k_page);
        return has(bytes, "counterbore") && !has(bytes, "{");
    }
    [[nodiscard]] std::size_t count_at(std::size_t page) const { return number_at(page + 3); }
    [[nodiscard]] std::size_t after_varint(std::size_t at) const {
        while ((static_cast<unsigned char>(good_[at]) & 0x80U) != 0)
            ++at;
        return at + 1;
    }
    void clean() const {
        for (const std::string& name : bench_.names())
            fault::fs::remove(bench_ / name);
    }

    Bench bench_;
    std::mt19937 random_;
    std::string good_;
    std::string earlier_;
    Tools tools_;
    std::vector<std::int64_t> given_;
    int named_ = 0;
    int all_back_ = 0;
};

// The pages of `to` from `at` on, so many bytes, as `from` has them.
std::string with(std::string to, std::size_t at, const std::string& from, std::size_t from_at,
                 std::size_t size = k_page) {
    if (from_at + size <= from.size())
        to.replace(at, size, from, from_at, size);
    return to;
}

} // namespace

TEST_SUITE_BEGIN("rescue");

TEST_CASE("of a file cut short or zeroed at the end every tool is back or named") {
    Rescue rescue(6);
    const int count = fault::times(12, 400);
    for (int i = 0; i < count; ++i) {
        const std::size_t kept =
            rescue.good().size() * static_cast<std::size_t>(i) / static_cast<std::size_t>(count) +
            rescue.any(k_page);
        CAPTURE(kept);
        const std::string begin = rescue.good().substr(0, kept);
        rescue.recover(begin, kept < 10 * k_page);
        rescue.recover(begin + std::string(rescue.good().size() - begin.size(), '\0'),
                       kept < 10 * k_page);
    }
}

TEST_CASE("a bit in the count of pages costs nothing") {
    Rescue rescue(7);
    for (int bit = 0; bit < 32; bit += fault::times(10, 1)) {
        CAPTURE(bit);
        std::string bytes = rescue.good();
        bytes[28 + static_cast<std::size_t>(bit) / 8] ^= static_cast<char>(1U << bit % 8);
        rescue.recover(bytes);
        CHECK(rescue.all_back() == bit / fault::times(10, 1) + 1);
    }
}

TEST_CASE("a bit in the key of a row costs nothing, and no command crashes") {
    Rescue rescue(8);
    const int count = fault::times(16, 400);
    for (int i = 0; i < count; ++i) {
        CAPTURE(i);
        const std::string bytes = rescue.with_wrong_key(i % 2 == 0);
        rescue.recover(bytes);
        rescue.ask(bytes);
    }
    CHECK(rescue.all_back() == count);
    CHECK(rescue.named() > 0);
}

TEST_CASE("pages that are swapped, doubled, older, torn or zeroed cost no tool") {
    Rescue rescue(9);
    const int count = fault::times(3, 200);
    for (int i = 0; i < count; ++i) {
        CAPTURE(i);
        const std::string& good = rescue.good();
        const std::size_t one = rescue.page();
        const std::size_t two = rescue.page();
        const std::string doubled = with(good, one, good, two);
        for (const std::string& bytes :
             {with(doubled, two, good, one), doubled, with(good, one, rescue.earlier(), one),
              with(good, one, rescue.earlier(), one, k_page / 2),
              with(good, one, std::string(k_page, '\0'), 0)}) {
            rescue.recover(bytes);
            rescue.ask(bytes);
        }
    }
    CHECK(rescue.all_back() == 5 * count);
}

TEST_SUITE_END();
