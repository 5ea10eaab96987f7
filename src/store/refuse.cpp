// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/refuse.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>
#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <string_view>
#include <system_error>

#include "error/error.hpp"
#include "store/connection.hpp"
#include "store/file.hpp"
#include "store/migrations.hpp"
#include "store/translate.hpp"

namespace store {

namespace {

namespace fs = std::filesystem;
using namespace std::string_view_literals;

constexpr auto k_name_another = "name the catalogue with --file or COUNTERPART_FILE";

// https://www.sqlite.org/fileformat2.html#the_database_header
constexpr std::size_t k_header_size = 100;
constexpr auto k_magic = "SQLite format 3\0"sv;
constexpr std::size_t k_version_at = 60;
constexpr std::size_t k_application_at = 68;

using Header = std::array<unsigned char, k_header_size>;

std::int32_t big_endian(const Header& header, std::size_t at) {
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < 4; ++i)
        value = (value << 8U) | header[at + i];
    return static_cast<std::int32_t>(value);
}

void refuse_not_sqlite(const Header& header, sqlite3_int64 size, const fs::path& path) {
    if (size == 0)
        throw error::DamagedFile("the file is empty, not a catalogue: " + path.string(),
                                 "`counterpart start` makes a catalogue under a name not in use");
    if (size < static_cast<sqlite3_int64>(k_header_size) ||
        !std::equal(k_magic.begin(), k_magic.end(), header.begin()))
        throw error::DamagedFile("the file is not a catalogue: " + path.string(), k_name_another);
}

} // namespace

void refuse_path(const fs::path& path, Access access) {
    std::error_code code;
    const fs::file_status status = fs::status(path, code);
    if (status.type() == fs::file_type::not_found)
        throw error::NoSuchRecord("there is no catalogue: " + path.string(),
                                  "`counterpart start` makes one; --file names another");
    if (status.type() == fs::file_type::none)
        throw error::InputOutput("the catalogue cannot be reached: " + path.string(),
                                 code.message());
    if (status.type() == fs::file_type::directory)
        throw error::DamagedFile("a folder, not a catalogue: " + path.string(), k_name_another);
    if (status.type() != fs::file_type::regular)
        throw error::DamagedFile("a device, not a catalogue: " + path.string(), k_name_another);
    if (access == Access::write && fs::hard_link_count(path, code) > 1 && !code)
        throw error::InputOutput(
            "the catalogue has a second name (hard link) and is not written: " + path.string(),
            fmt::format("a change cut short through one name could be lost through the other; copy "
                        "it with `cp {0} {0}.copy` and use the copy",
                        path.string()));
}

void refuse_header(SQLite::Database& database, const fs::path& path) {
    sqlite3_file* file = nullptr;
    int code = sqlite3_file_control(database.getHandle(), "main", SQLITE_FCNTL_FILE_POINTER, &file);
    Header header{};
    sqlite3_int64 size = 0;
    if (code == SQLITE_OK)
        code = file->pMethods->xFileSize(file, &size);
    if (code == SQLITE_OK)
        code = file->pMethods->xRead(file, header.data(), k_header_size, 0);
    if (code != SQLITE_OK && code != SQLITE_IOERR_SHORT_READ)
        throw_translated(code, sqlite3_errstr(code), path.string());
    refuse_not_sqlite(header, size, path);
    if (big_endian(header, k_application_at) != k_application_id)
        throw error::DamagedFile("the file belongs to another program: " + path.string(),
                                 k_name_another);
    refuse_version(big_endian(header, k_version_at), path);
}

void refuse_version(std::int64_t version, const fs::path& path) {
    const auto known = static_cast<std::int64_t>(migrations().size());
    if (version > known)
        throw error::DamagedFile(
            fmt::format("the catalogue has version {}, this program knows version {}: {}", version,
                        known, path.string()),
            "use a newer counterpart; the file is as it was");
    if (version < 1)
        throw error::DamagedFile(
            fmt::format("the catalogue has no version {}: {}", version, path.string()),
            "keep the file as it is and go back to a copy");
}

} // namespace store
