// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/calendar.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <ctime>

#include "error/error.hpp"
#include "trade/text.hpp"

namespace cli {

namespace {

constexpr auto k_meant = "a date is year-month-day: 2026-12-24";

// `0000-00-00`
bool has_the_form(std::string_view text) {
    constexpr std::string_view k_form = "dddd-dd-dd";
    return std::equal(text.begin(), text.end(), k_form.begin(), k_form.end(),
                      [](char c, char f) { return f == 'd' ? c >= '0' && c <= '9' : c == f; });
}

bool is_a_day(const std::string& text) {
    using namespace std::chrono;
    return year_month_day(year(std::stoi(text.substr(0, 4))),
                          month(static_cast<unsigned>(std::stoi(text.substr(5, 2)))),
                          day(static_cast<unsigned>(std::stoi(text.substr(8, 2)))))
        .ok();
}

} // namespace

std::string today() {
    const std::time_t now = std::time(nullptr);
    std::tm local{};
    ::localtime_r(&now, &local);
    return fmt::format("{:04}-{:02}-{:02}", local.tm_year + 1900, local.tm_mon + 1, local.tm_mday);
}

std::string read_day(const std::string& text) {
    std::string day(trade::trimmed(text));
    if (!has_the_form(day))
        throw error::BadData("not a date: '" + text + "'", k_meant);
    if (!is_a_day(day))
        throw error::BadData("no such day: '" + text + "'", k_meant);
    return day;
}

} // namespace cli
