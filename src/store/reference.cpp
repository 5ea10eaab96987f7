// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Opening the tables, and those that do not go by the size of a screw.
#include "store/reference.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sqlite3.h>

#include "error/error.hpp"
#include "store/reference_image.hpp"
#include "store/reference_read.hpp"
#include "store/statements.hpp"

namespace store {

namespace {

constexpr auto k_series = R"(
    SELECT name, form, title, withdrawn, rank FROM series ORDER BY rank)";

constexpr auto k_series_words = R"(
    SELECT word FROM series_word WHERE series = ? ORDER BY word)";

constexpr auto k_form_words = R"(
    SELECT word, form FROM form_word ORDER BY word)";

constexpr auto k_drills = R"(
    SELECT name, diameter_nm FROM drill WHERE kind = ? AND in_index ORDER BY diameter_nm)";

constexpr auto k_oversize = R"(
    SELECT drill_nm, least_nm, mean_nm, most_nm FROM oversize ORDER BY drill_nm)";

constexpr auto k_drilled_holes = R"(
    SELECT upto_nm, plus_nm FROM drill_limit WHERE kind = 'drilled hole' ORDER BY upto_nm)";

constexpr auto k_practice = R"(
    SELECT practice.name, value, about, citation
    FROM practice JOIN source ON source.id = practice.source ORDER BY rank)";

const char* kind_text(trade::DrillKind kind) {
    switch (kind) {
    case trade::DrillKind::fraction:
        return "fraction";
    case trade::DrillKind::number:
        return "number";
    case trade::DrillKind::letter:
        return "letter";
    case trade::DrillKind::metric:
        return "metric";
    }
    return "";
}

// SQLite wants a pointer it could write through, and promises not to for a read-only image.
void show_image(SQLite::Database& database) {
    const auto image = reference_image();
    auto* bytes = const_cast<unsigned char*>(image.data());
    const auto size = static_cast<sqlite3_int64>(image.size());
    const int result = sqlite3_deserialize(database.getHandle(), "main", bytes, size, size,
                                           SQLITE_DESERIALIZE_READONLY);
    if (result != SQLITE_OK)
        throw error::DamagedFile(std::string("the reference tables in the program: ") +
                                     sqlite3_errstr(result),
                                 "install the program again");
}

} // namespace

Reference::Reference()
    : database_(std::make_unique<SQLite::Database>(":memory:", SQLite::OPEN_READWRITE)),
      statements_(std::make_unique<Statements>(*database_)) {
    show_image(*database_);
}

Reference::~Reference() = default;

std::vector<trade::Series> Reference::series() const {
    SQLite::Statement query(*database_, k_series);
    SQLite::Statement words(*database_, k_series_words);
    std::vector<trade::Series> result;
    while (query.executeStep()) {
        trade::Series one{text_at(query, 0),
                          text_at(query, 1),
                          text_at(query, 2),
                          {},
                          query.getColumn(3).getInt() != 0,
                          query.getColumn(4).getInt()};
        words.reset();
        words.bind(1, one.name);
        while (words.executeStep())
            one.words.push_back(text_at(words, 0));
        result.push_back(std::move(one));
    }
    return result;
}

std::vector<trade::FormWord> Reference::form_words() const {
    SQLite::Statement query(*database_, k_form_words);
    std::vector<trade::FormWord> result;
    while (query.executeStep())
        result.push_back({text_at(query, 0), text_at(query, 1)});
    return result;
}

std::vector<trade::Drill> Reference::drills(trade::DrillKind kind) const {
    SQLite::Statement query(*database_, k_drills);
    query.bind(1, kind_text(kind));
    std::vector<trade::Drill> result;
    while (query.executeStep())
        result.push_back({text_at(query, 0), kind, length_at(query, 1)});
    return result;
}

std::vector<trade::Oversize> Reference::oversize() const {
    SQLite::Statement query(*database_, k_oversize);
    std::vector<trade::Oversize> result;
    while (query.executeStep())
        result.push_back(
            {length_at(query, 0), length_at(query, 1), length_at(query, 2), length_at(query, 3)});
    return result;
}

std::vector<trade::DrilledHole> Reference::drilled_holes() const {
    SQLite::Statement query(*database_, k_drilled_holes);
    std::vector<trade::DrilledHole> result;
    while (query.executeStep())
        result.push_back({length_at(query, 0), length_at(query, 1)});
    return result;
}

std::vector<trade::PracticeRow> Reference::practice() const {
    SQLite::Statement query(*database_, k_practice);
    std::vector<trade::PracticeRow> result;
    while (query.executeStep())
        result.push_back(
            {text_at(query, 0), text_at(query, 1), text_at(query, 2), text_at(query, 3), false});
    return result;
}

} // namespace store
