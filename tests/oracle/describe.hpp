// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Cases and answers in short lines, for the message of a difference.
#pragma once

#include <string>
#include <string_view>

#include "oracle/oracle.hpp"
#include "oracle/random_catalogue.hpp"

namespace oracle {

[[nodiscard]] std::string_view word(match::AnswerKind kind);
[[nodiscard]] std::string_view word(match::Verdict verdict);
[[nodiscard]] std::string_view word(match::SizeClass size);

// `ready body 3 pilot 7 (+2) drill 9/32, recommended: head in the counterbore pass, ...`
[[nodiscard]] std::string describe(const OracleAnswer& answer);

// Screw, hole and circumstances, inches.
[[nodiscard]] std::string describe(const match::Question& question);
[[nodiscard]] std::string describe(const trade::Body& body);
[[nodiscard]] std::string describe(const trade::Pilot& pilot);

} // namespace oracle
