// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/copy.hpp"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/chrono.h>
#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <ctime>

#include "error/error.hpp"
#include "store/query.hpp"
#include "store/transaction.hpp"
#include "store/translate.hpp"

namespace store {

namespace {

namespace fs = std::filesystem;

[[noreturn]] void throw_not_the_same(const fs::path& copy) {
    throw error::InputOutput("the copy of the catalogue is not good: " + copy.string(),
                             "see that the disk is whole and has room");
}

// A file as SQLite has it open: a second opening of our own would lose the locks on it.
class OpenFile {
  public:
    explicit OpenFile(SQLite::Database& database) : path_(database.getFilename()) {
        sqlite3_file_control(database.getHandle(), "main", SQLITE_FCNTL_FILE_POINTER, &file_);
    }
    [[nodiscard]] sqlite3_int64 size() const {
        sqlite3_int64 bytes = 0;
        demand(file_->pMethods->xFileSize(file_, &bytes));
        return bytes;
    }
    void read(char* to, int count, sqlite3_int64 at) const {
        demand(file_->pMethods->xRead(file_, to, count, at));
    }

  private:
    void demand(int code) const {
        if (code != SQLITE_OK)
            throw_translated(code, sqlite3_errstr(code), path_);
    }
    sqlite3_file* file_ = nullptr;
    std::string path_;
};

// The header counts the changes made to this very file and to its schema, and names the library
// that made the last; a backup counts as one.
// https://www.sqlite.org/fileformat2.html#the_database_header
void blank_counters(char* header) {
    std::fill_n(header + 24, 4, '\0');
    std::fill_n(header + 40, 4, '\0');
    std::fill_n(header + 92, 8, '\0');
}

bool same_bytes(SQLite::Database& left, SQLite::Database& right) {
    const OpenFile a(left);
    const OpenFile b(right);
    const sqlite3_int64 size = a.size();
    if (size != b.size())
        return false;
    constexpr int k_part = 65536;
    std::array<char, k_part> x{};
    std::array<char, k_part> y{};
    for (sqlite3_int64 at = 0; at < size; at += k_part) {
        const int count = static_cast<int>(std::min<sqlite3_int64>(k_part, size - at));
        a.read(x.data(), count, at);
        b.read(y.data(), count, at);
        if (at == 0) {
            blank_counters(x.data());
            blank_counters(y.data());
        }
        if (!std::equal(x.begin(), x.begin() + count, y.begin()))
            return false;
    }
    return true;
}

void run_backup(SQLite::Database& original, const fs::path& copy_path) {
    try {
        SQLite::Database copy(fs::absolute(copy_path).string(), SQLite::OPEN_READWRITE);
        execute(copy, "PRAGMA synchronous = EXTRA");
        SQLite::Backup backup(copy, original);
        if (const int code = backup.executeStep(-1); code != SQLITE_DONE)
            throw_translated(code, sqlite3_errstr(code), original.getFilename());
    } catch (const SQLite::Exception& exception) {
        throw_translated(exception, copy_path.string());
    }
}

} // namespace

void copy_database(SQLite::Database& original, const fs::path& copy_path) {
    const ReadTransaction still(original);
    run_backup(original, copy_path);
    try {
        SQLite::Database copy(fs::absolute(copy_path).string(), SQLite::OPEN_READONLY);
        if (!same_bytes(original, copy))
            throw_not_the_same(copy_path);
    } catch (const SQLite::Exception& exception) {
        throw_translated(exception, copy_path.string());
    }
}

std::string date_for_a_name() {
    return fmt::format("{:%Y-%m-%d-%H%M%S}", fmt::gmtime(std::time(nullptr)));
}

} // namespace store
