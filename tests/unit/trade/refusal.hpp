// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What an action says when it is refused.
#pragma once

#include <string>

#include "error/error.hpp"

namespace refusal {

// Message of the error, `accepted` if there was none.
template <typename Action>
std::string message_of(const Action& action) {
    try {
        action();
    } catch (const error::Error& problem) {
        return problem.what();
    }
    return "accepted";
}

template <typename Action>
std::string hint_of(const Action& action) {
    try {
        action();
    } catch (const error::Error& problem) {
        return problem.hint();
    }
    return "accepted";
}

} // namespace refusal
