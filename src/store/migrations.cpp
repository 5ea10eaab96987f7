// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/migrations.hpp"

// Made by the build from migrations/, byte for byte.
namespace embedded {
extern const std::string_view k_0001_first;
extern const std::string_view k_0002_stock;
extern const std::string_view k_0003_machine;
extern const std::string_view k_0004_loan;
extern const std::string_view k_0005_column_map;
extern const std::string_view k_0006_sizes;
extern const std::string_view k_0007_markings;
extern const std::string_view k_0008_identity;
extern const std::string_view k_0009_chain;
} // namespace embedded

namespace store {

const std::vector<Migration>& migrations() {
    static const std::vector<Migration> k_migrations = {
        {"0001-first", embedded::k_0001_first},
        {"0002-stock", embedded::k_0002_stock},
        {"0003-machine", embedded::k_0003_machine},
        {"0004-loan", embedded::k_0004_loan},
        {"0005-column-map", embedded::k_0005_column_map},
        {"0006-sizes", embedded::k_0006_sizes},
        {"0007-markings", embedded::k_0007_markings},
        {"0008-identity", embedded::k_0008_identity},
        {"0009-chain", embedded::k_0009_chain},
    };
    return k_migrations;
}

} // namespace store
