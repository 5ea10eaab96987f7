// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/column_maps.hpp"

#include "store/query.hpp"

namespace store {

namespace {

constexpr auto k_find = R"(
SELECT ours FROM column_map WHERE kind = ?1 AND header = ?2 ORDER BY kind)";

constexpr auto k_put = R"(
INSERT INTO column_map (kind, header, ours) VALUES (?1, ?2, ?3)
ON CONFLICT (kind, header) DO UPDATE SET ours = excluded.ours)";

} // namespace

std::optional<std::string> column_map(const File& file, const std::string& kind,
                                      const std::string& header) {
    Query query(file.database(), k_find);
    query.put(kind).put(header);
    return query.step() ? std::optional(query.text()) : std::nullopt;
}

void put_column_map(Change& change, const std::string& kind, const std::string& header,
                    const std::string& ours) {
    Query(change.database(), k_put).put(kind).put(header).put(ours).run();
}

} // namespace store
