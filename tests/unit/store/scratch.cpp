// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "scratch.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <stdlib.h>

#include <fstream>
#include <iterator>
#include <set>

#include "store/kept_table.hpp"

namespace scratch {

namespace fs = std::filesystem;

Folder::Folder() {
    std::string name = fs::temp_directory_path() / "store-test.XXXXXX";
    if (::mkdtemp(name.data()) == nullptr)
        throw std::runtime_error("no folder for the test");
    path_ = name;
}

Folder::~Folder() {
    std::error_code ignored;
    fs::remove_all(path_, ignored);
}

std::string Folder::names() const {
    std::set<std::string> sorted;
    for (const auto& entry : fs::directory_iterator(path_))
        sorted.insert(entry.path().filename().string());
    std::string joined;
    for (const auto& name : sorted)
        joined += (joined.empty() ? "" : " ") + name;
    return joined;
}

std::string contents(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

void write(const fs::path& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary) << bytes;
}

store::File catalogue(const fs::path& path) {
    return store::File::create(path, length::Unit::inch);
}

std::string dump(const store::File& file) {
    std::string text;
    for (const auto& table : store::kept_tables()) {
        text += "[" + table + "]\n";
        // A further column, since a table may have one only.
        SQLite::Statement rows(file.database(), "SELECT *, NULL FROM " + table + " ORDER BY 1, 2");
        while (rows.executeStep()) {
            for (int i = 0; i < rows.getColumnCount(); ++i)
                text += (rows.isColumnNull(i) ? "NULL" : rows.getColumn(i).getString()) + "|";
            text += "\n";
        }
    }
    return text;
}

std::int64_t number_from(const store::File& file, const std::string& sql) {
    SQLite::Statement statement(file.database(), sql);
    statement.executeStep();
    return statement.getColumn(0).getInt64();
}

std::optional<error::Error> error_of(const std::function<void()>& act) {
    try {
        act();
        return std::nullopt;
    } catch (const error::Error& error) {
        return error;
    }
}

} // namespace scratch
