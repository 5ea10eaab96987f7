// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/translate.hpp"

#include <sqlite3.h>

#include <new>

#include "error/error.hpp"

namespace store {

namespace {

// `CHECK constraint failed: cut_dia` -> `cut_dia`.
std::string constraint_name(const std::string& message) {
    const auto colon = message.find(": ");
    return colon == std::string::npos ? message : message.substr(colon + 2);
}

[[noreturn]] void throw_constraint(int extended_code, const std::string& message) {
    const std::string name = constraint_name(message);
    switch (extended_code) {
    case SQLITE_CONSTRAINT_FOREIGNKEY:
        throw error::BadData("a record would point to one that is not there: " + name,
                             "enter the other record first");
    case SQLITE_CONSTRAINT_PRIMARYKEY:
    case SQLITE_CONSTRAINT_ROWID:
    case SQLITE_CONSTRAINT_UNIQUE:
        throw error::BadData("already in the catalogue: " + name);
    default:
        throw error::BadData("a value that the catalogue does not take: " + name,
                             "the file's own checks refused it; see docs/file.md");
    }
}

} // namespace

void throw_translated(int extended_code, const std::string& message, const std::string& path) {
    if (extended_code == SQLITE_READONLY_DBMOVED)
        throw error::Busy("another catalogue was put in its place meanwhile: " + path, "try again");
    switch (extended_code & 0xFF) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        throw error::Busy("the catalogue is in use by another program: " + path,
                          "try again when the other program has finished");
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
    case SQLITE_FORMAT:
        throw error::DamagedFile("the catalogue is damaged: " + path,
                                 "keep the file as it is and go back to a copy");
    case SQLITE_FULL:
        throw error::InputOutput("the disk is full: " + path, "make room and try again");
    case SQLITE_READONLY:
    case SQLITE_PERM:
        throw error::InputOutput("the catalogue may not be written: " + path,
                                 "see who may write the file and its folder");
    case SQLITE_CANTOPEN:
        throw error::InputOutput("the catalogue cannot be opened: " + path,
                                 "see who may read the file and its folder");
    case SQLITE_IOERR:
        throw error::InputOutput("the system could not read or write the catalogue: " + path,
                                 "see that the disk is whole and connected (" + message + ")");
    case SQLITE_CONSTRAINT:
        throw_constraint(extended_code, message);
    case SQLITE_NOMEM:
        throw std::bad_alloc();
    case SQLITE_TOOBIG:
        throw error::BadData("text too long for the catalogue: " + message);
    default:
        throw error::DamagedFile("the catalogue cannot be used (" + message + "): " + path,
                                 "see that the file and the program belong together");
    }
}

void throw_translated(const SQLite::Exception& exception, const std::string& path) {
    const int extended = exception.getExtendedErrorCode();
    throw_translated(extended == -1 ? exception.getErrorCode() : extended, exception.what(), path);
}

void throw_uncertain(const std::string& path) {
    throw error::InputOutput("the change may have been made, the system could not say: " + path,
                             "see `counterpart history`, and that the disk is whole and connected");
}

} // namespace store
