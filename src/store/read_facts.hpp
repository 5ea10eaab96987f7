// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The facts of tools by size, read from the indexes that hold them.
#pragma once

#include <cstdint>
#include <vector>

#include "store/file.hpp"
#include "trade/rack.hpp"

namespace store {

// Tools of which something is known that no index by size holds. Ascending.
struct Marked {
    std::vector<std::int64_t> with_work;
    std::vector<std::int64_t> lent;
    std::vector<std::int64_t> retired_bodies;
};

[[nodiscard]] Marked read_marked(const File& file);

// As trade::Rack has them.
void read_by_cutter(const File& file, const Marked& marked, trade::PilotKind kind,
                    const trade::Window& window, trade::Detail detail, const trade::SeeBody& see);
void read_by_pilot(const File& file, const Marked& marked, const trade::Window& window,
                   trade::Detail detail, const trade::SeeBody& see);
void read_pilots(const File& file, const Marked& marked, const trade::Window& window,
                 trade::Detail detail, const trade::SeePilot& see);

} // namespace store
