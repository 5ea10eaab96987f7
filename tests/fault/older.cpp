// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "older.hpp"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>

#include <fstream>

#include "store/connection.hpp"
#include "store/migrate.hpp"
#include "store/transaction.hpp"

namespace fault {

void make_older(const std::filesystem::path& path, std::size_t version, int bodies) {
    { const std::ofstream empty(path); }
    const auto connection = store::connect_empty(path);
    auto& database = *connection.database;
    std::vector<store::Migration> steps = store::migrations();
    steps.resize(version);
    database.exec(fmt::format("PRAGMA application_id = {}", store::k_application_id));
    store::migrate(database, *connection.session, steps);
    database.exec("INSERT INTO setting (id, unit) VALUES (1, 'in')");
    store::WriteTransaction transaction(database);
    const store::OpenGroup group(database, *connection.session);
    for (int number = 1; number <= bodies; ++number)
        database.exec(fmt::format(
            "INSERT INTO tool_number VALUES ({0}, 'body'); "
            "INSERT INTO body (number, tool_set, kind, pilot_kind, set_screw, shank_kind, "
            "material, marking, place, note) VALUES ({0}, '', 'counterbore', 'removable', '', '', "
            "'', '', 'rack {0}', 'entered long ago')",
            number));
    group.write({"import bodies old.csv", std::nullopt, false});
    transaction.commit();
}

} // namespace fault
