// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One prepared statement whose rows are read by the hundred thousand: columns by place, nothing
// copied. SQLite's errors leave it translated.
#pragma once

#include <sqlite3.h>

#include <cstdint>
#include <memory>
#include <string_view>

#include "trade/facts.hpp"

namespace SQLite {
class Database;
}

namespace store {

class Scan {
  public:
    Scan(SQLite::Database& database, std::string_view sql);

    // Binds parameters by place, from 1.
    Scan& put(int place, std::int64_t value);
    Scan& put(int place, std::string_view text);

    bool step();                                      // to the next row; false after the last
    void reset() { sqlite3_reset(statement_.get()); } // to be run again

    // Columns by place, from 0.
    [[nodiscard]] bool is_null(int place) const {
        return sqlite3_column_type(statement_.get(), place) == SQLITE_NULL;
    }
    [[nodiscard]] std::int64_t integer(int place) const {
        return sqlite3_column_int64(statement_.get(), place);
    }
    // Until the next step.
    [[nodiscard]] std::string_view text(int place) const {
        const auto* bytes = sqlite3_column_text(statement_.get(), place);
        const auto size = sqlite3_column_bytes(statement_.get(), place);
        return {reinterpret_cast<const char*>(bytes), static_cast<std::size_t>(size)};
    }
    // Two columns, the low end and the high end.
    [[nodiscard]] trade::Limits limits(int place) const {
        const auto high = integer(place + 1); // 0 also where there is none
        return high == 0 && is_null(place + 1) ? trade::Limits()
                                               : trade::Limits::of_nm(integer(place), high);
    }

  private:
    void check(int code) const;

    struct Finalize {
        void operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
    };
    SQLite::Database& database_;
    std::unique_ptr<sqlite3_stmt, Finalize> statement_;
};

} // namespace store
