// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/dated_copies.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <regex>

#include "error/error.hpp"
#include "store/connection.hpp"
#include "store/copy.hpp"
#include "store/file.hpp"
#include "store/identity.hpp"

namespace store {

namespace {

namespace fs = std::filesystem;

constexpr auto k_dated = ".backup-";

// Files of the form of a dated copy, but for `newest`, oldest first.
std::vector<fs::path> others_of_the_name(const fs::path& newest, const std::string& name) {
    static const std::regex k_date(R"(\d{4}-\d{2}-\d{2}-\d{6}(\.\d+)?)");
    const fs::path folder = newest.parent_path();
    const std::string start = name + k_dated;
    std::vector<fs::path> found;
    for (const auto& entry : fs::directory_iterator(folder.empty() ? "." : folder)) {
        const std::string other = entry.path().filename().string();
        if (other.rfind(start, 0) == 0 && other != newest.filename() &&
            fs::is_regular_file(entry.symlink_status()) &&
            std::regex_match(other.substr(start.size()), k_date))
            found.push_back(folder / other);
    }
    std::sort(found.begin(), found.end());
    return found;
}

// Of this catalogue; false also for what cannot be opened.
bool is_one(const fs::path& copy, SQLite::Database& catalogue) {
    try {
        const Connection connection = connect(copy, Access::read, k_busy_timeout);
        return is_earlier_state(*connection.database, catalogue);
    } catch (const error::Error&) {
        return false;
    }
}

void take_away(const fs::path& copy) {
    std::error_code code;
    if (!fs::remove(copy, code) && code)
        throw error::InputOutput("the backup is made, but an older one cannot be taken away: " +
                                     copy.string(),
                                 code.message());
}

} // namespace

std::string dated_name(const std::string& name) {
    return name + k_dated + date_for_a_name();
}

Thinned keep_newest(std::size_t keep, const fs::path& newest, const std::string& name) {
    std::vector<fs::path> copies = others_of_the_name(newest, name);
    if (copies.size() + 1 <= keep)
        return {};
    Thinned thinned;
    const Connection catalogue = connect(newest, Access::read, k_busy_timeout);
    thinned.left_alone = std::erase_if(
        copies, [&](const fs::path& copy) { return !is_one(copy, *catalogue.database); });
    for (std::size_t i = 0; i + keep < copies.size() + 1; ++i) {
        take_away(copies[i]);
        thinned.dropped.push_back(copies[i]);
    }
    return thinned;
}

} // namespace store
