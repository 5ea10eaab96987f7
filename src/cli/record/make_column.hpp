// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The kinds of columns there are. MakeColumn<Record> builds one from a member of the record.
#pragma once

#include <string>
#include <string_view>
#include <utility>

#include "cli/record/column.hpp"
#include "error/error.hpp"
#include "trade/words.hpp"

namespace cli::record {

// Whole number from 1 to `most`. Throws error::BadData.
[[nodiscard]] std::int64_t read_count(std::string_view cell, std::int64_t most);
// yes or no; empty is unknown. Throws error::BadData.
[[nodiscard]] std::optional<bool> read_flag(std::string_view cell);
// Free text. Throws error::BadData for what is not UTF-8.
[[nodiscard]] std::string read_text(const std::string& cell);
// Parts at `;`, and back.
[[nodiscard]] std::vector<std::string> read_list(const std::string& cell);
[[nodiscard]] std::string list_text(const std::vector<std::string>& parts);
// The `how` that goes with a dimension: of its column where that is spoken of and can be read.
[[nodiscard]] trade::How how_in(const Cells& cells, const std::string& how_column);

inline constexpr std::int64_t k_largest_number = 999'999; // that a tool may have
inline constexpr std::int64_t k_most_flutes = 64;

template <class Record>
struct MakeColumn {
    using Made = Column<Record>;

    static Made text(std::string name, std::string Record::*field, std::string about) {
        return {name,
                "TEXT",
                std::move(about),
                [field](const Record& r, length::Unit) { return r.*field; },
                [field, name](Record& r, const Cells& cells, const Reading&) {
                    r.*field = read_text(cells.at(name));
                },
                [field](const Record& r) { return present::text_json(r.*field); }};
    }

    // A tool's own number, 0 when there is none yet.
    static Made number(std::string name, std::int64_t Record::*field, std::string about) {
        return {name,
                "NUMBER",
                std::move(about),
                [field](const Record& r, length::Unit) {
                    return r.*field == 0 ? std::string() : std::to_string(r.*field);
                },
                [field, name](Record& r, const Cells& cells, const Reading&) {
                    const std::string& cell = cells.at(name);
                    r.*field = cell.empty() ? 0 : read_count(cell, k_largest_number);
                },
                [field](const Record& r) { return present::Json(r.*field); }};
    }

    static Made count(std::string name, std::optional<std::int64_t> Record::*field,
                      std::int64_t most, std::string about) {
        return {name,
                "N",
                std::move(about),
                [field](const Record& r, length::Unit) {
                    return r.*field ? std::to_string(*(r.*field)) : std::string();
                },
                [field, name, most](Record& r, const Cells& cells, const Reading&) {
                    const std::string& cell = cells.at(name);
                    r.*field = std::nullopt;
                    if (!cell.empty())
                        r.*field = read_count(cell, most);
                },
                [field](const Record& r) {
                    return r.*field ? present::Json(*(r.*field)) : present::Json(nullptr);
                }};
    }

    static Made flag(std::string name, std::optional<bool> Record::*field, std::string about) {
        return {name,
                "WORD",
                std::move(about),
                [field](const Record& r, length::Unit) {
                    return std::string(!(r.*field) ? "" : *(r.*field) ? "yes" : "no");
                },
                [field, name](Record& r, const Cells& cells, const Reading&) {
                    r.*field = read_flag(cells.at(name));
                },
                [field](const Record& r) {
                    return r.*field ? present::Json(*(r.*field)) : present::Json(nullptr);
                }};
    }

    // A word that has a spelling for 'unknown'.
    template <class Word>
    static Made word(std::string name, Word Record::*field, Word (*parse)(std::string_view),
                     std::string about) {
        return {name,
                "WORD",
                std::move(about),
                [field](const Record& r, length::Unit) {
                    return std::string(trade::to_text(r.*field));
                },
                [field, name, parse](Record& r, const Cells& cells, const Reading&) {
                    const std::string& cell = cells.at(name);
                    r.*field = cell.empty() ? Word::unknown : parse(cell);
                },
                [field](const Record& r) { return present::Json(trade::to_text(r.*field)); }};
    }

    template <class Word>
    static Made maybe_word(std::string name, std::optional<Word> Record::*field,
                           Word (*parse)(std::string_view), std::string about) {
        return {name,
                "WORD",
                std::move(about),
                [field](const Record& r, length::Unit) {
                    return r.*field ? std::string(trade::to_text(*(r.*field))) : std::string();
                },
                [field, name, parse](Record& r, const Cells& cells, const Reading&) {
                    const std::string& cell = cells.at(name);
                    r.*field = std::nullopt;
                    if (!cell.empty())
                        r.*field = parse(cell);
                },
                [field](const Record& r) {
                    return r.*field ? present::Json(trade::to_text(*(r.*field)))
                                    : present::Json(nullptr);
                }};
    }

    static Made list(std::string name, std::vector<std::string> Record::*field, std::string about) {
        return {name,
                "TEXT",
                std::move(about),
                [field](const Record& r, length::Unit) { return list_text(r.*field); },
                [field, name](Record& r, const Cells& cells, const Reading&) {
                    r.*field = read_list(cells.at(name));
                },
                [field](const Record& r) { return present::Json(r.*field); }};
    }

    // A dimension; `how` names the column that says how it is known, empty where there is none.
    static Made size(std::string name, trade::MaybeDimension Record::*field, trade::Feature feature,
                     const std::string& how, std::string about) {
        return {name,
                "SIZE",
                std::move(about),
                [field, how](const Record& r, length::Unit stored) {
                    if (!(r.*field))
                        return std::string();
                    return how.empty() ? size_with_limits(*(r.*field), stored) : (r.*field)->text;
                },
                [field, name, how, feature](Record& r, const Cells& cells, const Reading& reading) {
                    const std::string& cell = cells.at(name);
                    r.*field = std::nullopt;
                    if (!cell.empty())
                        r.*field = read_size(cell, how_in(cells, how), feature, reading);
                },
                [field](const Record& r) { return present::dimension_json(r.*field); },
                [field](const Record& r) { return r.*field ? &*(r.*field) : nullptr; }};
    }

    // How the dimension `of` is known. Alone, it changes what is known of the value that is there.
    static Made how(std::string name, trade::MaybeDimension Record::*field, const std::string& of,
                    trade::Feature feature, std::string about) {
        return {name,
                "WORD",
                std::move(about),
                [field](const Record& r, length::Unit) {
                    const bool said = r.*field && (r.*field)->how != trade::How::unstated;
                    return said ? std::string(trade::to_text((r.*field)->how)) : std::string();
                },
                [field, name, of, feature](Record& r, const Cells& cells, const Reading& reading) {
                    const std::string& cell = cells.at(name);
                    const trade::How known = trade::parse_how(cell);
                    const auto value = cells.find(of);
                    const bool given = value != cells.end() && !value->second.empty();
                    if (!given && !cell.empty() && (value != cells.end() || !(r.*field)))
                        throw error::BadData("there is no " + of + " to go with it: " + cell,
                                             "give " + of + ", or leave this empty");
                    if (value == cells.end() && r.*field)
                        r.*field = read_stored_size((r.*field)->text, known, feature, reading);
                },
                nullptr};
    }
};

} // namespace cli::record
