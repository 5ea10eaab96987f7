// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "trade/set_screw.hpp"

#include <algorithm>

#include "trade/size.hpp"

namespace trade {

std::optional<SetScrew> find_set_screw(std::string_view recorded,
                                       const std::vector<SetScrew>& rows) {
    if (recorded.empty())
        return std::nullopt;
    const std::string size = parse_thread(recorded).size.text;
    const auto row = std::find_if(rows.begin(), rows.end(),
                                  [&](const SetScrew& screw) { return screw.size == size; });
    return row == rows.end() ? std::nullopt : std::optional(*row);
}

} // namespace trade
