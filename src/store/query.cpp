// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/query.hpp"

#include <sqlite3.h>

#include "error/error.hpp"
#include "store/statements.hpp"
#include "store/translate.hpp"
#include "store/utf8.hpp"

namespace store {

namespace {

// What is read may be anyone's; what is written is ours, and too long for the file.
[[noreturn]] void throw_from_reading(const SQLite::Exception& exception, const std::string& path) {
    if (exception.getErrorCode() == SQLITE_TOOBIG)
        throw error::DamagedFile("the catalogue has a cell that is too long to be one: " + path,
                                 "`counterpart recover` writes a new file without it");
    throw_translated(exception, path);
}

std::unique_ptr<SQLite::Statement> prepared(SQLite::Database& database, const std::string& sql) {
    try {
        return std::make_unique<SQLite::Statement>(database, sql);
    } catch (const SQLite::Exception& exception) {
        throw_from_reading(exception, database.getFilename());
    }
}

std::unique_ptr<SQLite::Statement> lent(Statements& statements, const std::string& sql) {
    try {
        return statements.take(sql);
    } catch (const SQLite::Exception& exception) {
        throw_translated(exception, statements.database().getFilename());
    }
}

// So much of a text as a message can show.
std::string readable_part(std::string_view text) {
    std::string part;
    for (const char c : text.substr(0, 40))
        part += c >= ' ' && c <= '~' ? c : '?';
    return part;
}

} // namespace

Query::Query(SQLite::Database& database, const std::string& sql)
    : database_(database), statement_(prepared(database, sql)) {}

Query::Query(Statements& statements, const std::string& sql)
    : database_(statements.database()), lender_(&statements), statement_(lent(statements, sql)) {}

Query::~Query() {
    if (lender_ != nullptr)
        lender_->give_back(std::move(statement_));
}

Query& Query::put(std::int64_t value) {
    statement_->bind(++parameter_, value);
    return *this;
}

Query& Query::put(std::string_view text) {
    if (!is_utf8_without_zero(text))
        throw error::BadData("text that cannot be kept: " + readable_part(text),
                             "write it in UTF-8, without zero bytes");
    statement_->bind(++parameter_, std::string(text));
    return *this;
}

Query& Query::put_as_is(const std::string& text) {
    statement_->bind(++parameter_, text);
    return *this;
}

Query& Query::put_value(Query& from) {
    if (from.is_null()) {
        from.skip(1);
        return put_null();
    }
    if (from.statement_->getColumn(from.column_).isInteger())
        return put(from.integer());
    return put(from.text());
}

Query& Query::put_null() {
    statement_->bind(++parameter_);
    return *this;
}

bool Query::step() {
    column_ = 0;
    try {
        return statement_->executeStep();
    } catch (const SQLite::Exception& exception) {
        throw_from_reading(exception, database_.getFilename());
    }
}

int Query::run() {
    try {
        const int changed = statement_->exec();
        statement_->reset();
        parameter_ = 0;
        return changed;
    } catch (const SQLite::Exception& exception) {
        throw_translated(exception, database_.getFilename());
    }
}

bool Query::is_null() {
    return statement_->isColumnNull(column_);
}

std::int64_t Query::integer() {
    return statement_->getColumn(column_++).getInt64();
}

std::string Query::text() {
    return statement_->getColumn(column_++).getString();
}

std::optional<std::int64_t> Query::maybe_integer() {
    if (is_null()) {
        skip(1);
        return std::nullopt;
    }
    return integer();
}

std::optional<std::string> Query::maybe_text() {
    if (is_null()) {
        skip(1);
        return std::nullopt;
    }
    return text();
}

void execute(SQLite::Database& database, const std::string& sql) {
    try {
        database.exec(sql);
    } catch (const SQLite::Exception& exception) {
        throw_translated(exception, database.getFilename());
    }
}

std::int64_t integer_from(SQLite::Database& database, const std::string& sql) {
    Query query(database, sql);
    query.step();
    return query.integer();
}

} // namespace store
