// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A triple as an answer, with its reasons in words.
#pragma once

#include "match/answer.hpp"
#include "match/judge.hpp"

namespace match {

// The triple must be one that is listed.
[[nodiscard]] Answer spell_out(const Job& job, const Triple& triple, const Records& records,
                               length::Unit unit);

} // namespace match
