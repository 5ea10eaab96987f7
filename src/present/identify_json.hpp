// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a tool or a screw is, for programs.
#pragma once

#include "match/identify_screw.hpp"
#include "match/identify_tool.hpp"
#include "present/identify_text.hpp"
#include "present/json.hpp"

namespace present {

[[nodiscard]] Json tool_identity_json(const match::ToolIdentity& identity);
[[nodiscard]] Json identified_tools_json(const std::vector<IdentifiedTool>& tools);
[[nodiscard]] Json screw_identity_json(const match::ScrewIdentity& identity);

} // namespace present
