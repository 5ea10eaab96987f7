// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A tool by its number, and what to call it in one line, so that a mistyped number is seen.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>

#include "cli/context.hpp"
#include "cli/record/records.hpp"
#include "store/change.hpp"

namespace cli {

using Tool = std::variant<trade::Body, record::PilotRecord>;

// Reads the word of a command line that is a tool's number. Throws error::UsageError.
[[nodiscard]] std::int64_t tool_number(const std::string& word);

// Throws error::NoSuchRecord.
[[nodiscard]] Tool find_tool(const store::File& file, std::int64_t number);
[[nodiscard]] trade::Body find_body(const store::File& file, std::int64_t number);
[[nodiscard]] record::PilotRecord find_pilot(const store::File& file, std::int64_t number);

// Writes every field of an existing tool; how a pilot was tried is not one of them.
void update_tool(store::Change& change, const Tool& tool);

// How the pilot went in the body it is in.
[[nodiscard]] record::PilotRecord with_trial(const trade::Pilot& pilot, const store::File& file);

// As written, with its unit; empty when it is not known.
[[nodiscard]] std::string shown_size(const trade::MaybeDimension& dimension, length::Unit stored);

// As written, how it is known, and its limits: `.4372 in (caliper, .4362 to .4382)`; `not known`.
[[nodiscard]] std::string known_size(const trade::MaybeDimension& dimension, length::Unit stored,
                                     length::Unit unit);

// The value alone, for a column of sizes: `7/16`, `.4375`, and `10 mm` where that is not `unit`.
// With `convert`, all in `unit`, but a drill's name stays one.
[[nodiscard]] std::string short_size(const trade::MaybeDimension& dimension, length::Unit stored,
                                     length::Unit unit, bool convert);

// `12: counterbore 7/16, removable pilot, bore 3/16; rack 2`.
[[nodiscard]] std::string one_line(const trade::Body& body, length::Unit stored);
[[nodiscard]] std::string one_line(const trade::Pilot& pilot, length::Unit stored);
[[nodiscard]] std::string one_line(const Tool& tool, length::Unit stored);

// What was asked for on the command line and is in the catalogue: for reading sizes.
class Measures {
  public:
    explicit Measures(Context& context)
        : practice_(context.practice()), bare_(context.unit()), stored_(context.catalogue().unit()),
          tables_(&context.tables()) {}

    [[nodiscard]] record::Reading reading() const { return {bare_, stored_, &practice_, tables_}; }

  private:
    trade::Practice practice_;
    length::Unit bare_;
    length::Unit stored_;
    const trade::Tables* tables_;
};

} // namespace cli
