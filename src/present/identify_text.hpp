// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a tool or a screw is, for people.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "match/identify_screw.hpp"
#include "match/identify_tool.hpp"
#include "present/style.hpp"

namespace present {

struct IdentifyLayout {
    length::Unit unit;
    Style style;
    std::size_t width;
    bool reasons = false; // of every line, not only of the first
};

// The conclusion, the listed tools that it looks like, the screws, and the reasons.
[[nodiscard]] std::string tool_identity_text(const match::ToolIdentity& identity,
                                             const IdentifyLayout& layout);

// One stored tool in a list of many.
struct IdentifiedTool {
    std::int64_t number = 0;
    std::string about; // `counterbore 7/16`
    match::ToolIdentity identity;
};
[[nodiscard]] std::string identified_tools_text(const std::vector<IdentifiedTool>& tools,
                                                const IdentifyLayout& layout);

[[nodiscard]] std::string screw_identity_text(const match::ScrewIdentity& identity,
                                              const IdentifyLayout& layout);

} // namespace present
