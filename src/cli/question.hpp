// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The question that the command line asks of the matcher, for every command that asks one.
#pragma once

#include <string>

#include "cli/context.hpp"
#include "cli/syntax.hpp"
#include "match/tools.hpp"
#include "trade/dimension.hpp"

namespace cli {

// As typed; empty: not said.
struct QuestionOptions {
    std::string screw;
    std::string hole, series, head, washer, below, thick, blind, machine, set;
};

// The options, without the screw itself.
void declare_question(const Syntax& syntax, QuestionOptions& options);

// What sizes on the command line are read with.
struct SizeReader {
    Context& context;
    trade::Practice practice;

    // Calipered, unless limits are given. Throws error::BadData.
    [[nodiscard]] length::Range read(const std::string& text, trade::Feature feature) const;
    [[nodiscard]] length::MaybeRange maybe(const std::string& text, trade::Feature feature) const;
};

// Throws error::BadData or error::NoSuchRecord.
[[nodiscard]] match::Question read_question(const QuestionOptions& options,
                                            const SizeReader& reader);

// A set that no tool is in is a slip of the pen, not an empty answer. Throws error::NoSuchRecord.
void check_set(const std::string& set, const trade::Rack& rack);

} // namespace cli
