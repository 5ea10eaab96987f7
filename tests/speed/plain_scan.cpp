// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What reading alone costs: for every screw of the house list the ranges of cutters and pilots that
// may do are read from covering indexes with the SQLite C API and counted, and nothing else is
// done. Nothing that answers from the file can take less. Usage: plain_scan SHELL_COPY
#include <sqlite3.h>

#include <cstdint>
#include <cstdio>
#include <stdexcept>

namespace {

class Statement {
  public:
    Statement(sqlite3* database, const char* sql) {
        if (sqlite3_prepare_v2(database, sql, -1, &statement_, nullptr) != SQLITE_OK)
            throw std::runtime_error(sqlite3_errmsg(database));
    }
    ~Statement() { sqlite3_finalize(statement_); }
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;

    void bind(int at, std::int64_t value) { sqlite3_bind_int64(statement_, at, value); }
    bool step() { return sqlite3_step(statement_) == SQLITE_ROW; }
    void reset() { sqlite3_reset(statement_); }
    [[nodiscard]] std::int64_t at(int column) { return sqlite3_column_int64(statement_, column); }

  private:
    sqlite3_stmt* statement_ = nullptr;
};

// Rule 1: the largest and smallest cutters that may do.
constexpr auto k_screws = R"(
SELECT s.id, s.head_lo + l.head_clearance, s.twice_largest, w.integral, w.removable, w.pilot,
    coalesce(min(h.lo - h.running_most), 0), coalesce(max(h.hi - h.running_least), 0)
FROM screw s JOIN limits l JOIN widest w LEFT JOIN hole h ON h.screw = s.id
WHERE s.id > 0 GROUP BY s.id ORDER BY s.id)";

constexpr auto k_integral = R"(
SELECT cut_lo, cut_hi, pilot_lo, pilot_hi FROM integral INDEXED BY integral_cut
WHERE cut_lo BETWEEN ?1 AND ?2)";

constexpr auto k_removable = R"(
SELECT cut_lo, cut_hi, bore_lo, bore_hi FROM removable INDEXED BY removable_cut
WHERE cut_lo BETWEEN ?1 AND ?2)";

constexpr auto k_pilots = R"(
SELECT pilot_lo, pilot_hi, shank_lo, shank_hi FROM loose INDEXED BY loose_pilot
WHERE pilot_lo BETWEEN ?1 AND ?2)";

// Ranges that begin from `lo - widest` to `hi`, end at `lo` or after and have a middle of at most
// half of `twice_most`.
std::int64_t count(Statement& statement, std::int64_t lo, std::int64_t hi, std::int64_t widest,
                   std::int64_t twice_most) {
    statement.bind(1, lo - widest);
    statement.bind(2, hi);
    std::int64_t found = 0;
    while (statement.step())
        if (statement.at(1) >= lo && statement.at(0) + statement.at(1) <= twice_most)
            ++found;
    statement.reset();
    return found;
}

std::int64_t scan(sqlite3* database) {
    Statement screws(database, k_screws);
    Statement integral(database, k_integral);
    Statement removable(database, k_removable);
    Statement pilots(database, k_pilots);
    std::int64_t found = 0;
    while (screws.step()) {
        const std::int64_t least = screws.at(1), most = screws.at(2);
        found += count(integral, least, most / 2, screws.at(3), most);
        found += count(removable, least, most / 2, screws.at(4), most);
        found += count(pilots, screws.at(6), screws.at(7), screws.at(5), INT64_MAX);
    }
    return found;
}

} // namespace

int main(int count, char** words) {
    if (count != 2) {
        std::fprintf(stderr, "usage: plain_scan SHELL_COPY\n");
        return 2;
    }
    sqlite3* database = nullptr;
    int result = 1;
    if (sqlite3_open_v2(words[1], &database, SQLITE_OPEN_READONLY, nullptr) == SQLITE_OK) {
        try {
            std::printf("%lld\n", static_cast<long long>(scan(database)));
            result = 0;
        } catch (const std::exception& problem) {
            std::fprintf(stderr, "plain_scan: %s\n", problem.what());
        }
    }
    sqlite3_close(database);
    return result;
}
