// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Taking typed values out of a row of the reference tables.
#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

#include <optional>
#include <string>

#include "length/length.hpp"
#include "trade/tables.hpp"

namespace store {

inline std::string text_at(SQLite::Statement& row, int at) {
    return row.getColumn(at).getString();
}

inline length::Length length_at(SQLite::Statement& row, int at) {
    return length::Length::from_nm(row.getColumn(at).getInt64());
}

inline std::optional<length::Length> maybe_length_at(SQLite::Statement& row, int at) {
    return row.isColumnNull(at) ? std::nullopt : std::optional(length_at(row, at));
}

inline length::Unit unit_at(SQLite::Statement& row, int at) {
    return text_at(row, at) == "in" ? length::Unit::inch : length::Unit::millimetre;
}

// Citation, confidence and note, in this order from `at` on.
inline trade::Origin origin_at(SQLite::Statement& row, int at) {
    return {text_at(row, at), text_at(row, at + 1), text_at(row, at + 2)};
}

} // namespace store
