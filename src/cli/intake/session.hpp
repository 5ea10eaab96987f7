// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Lines of quick entry into a catalogue: each is one change. What the next line takes over is found
// again from the changes themselves, so a session can end anywhere, also by a kill.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "cli/context.hpp"
#include "cli/intake/line.hpp"

namespace cli::intake {

class Session {
  public:
    // Goes on where the newest line left off. `set`: of the tools to come; empty: as before.
    Session(Context& context, const std::string& set);

    // Where it goes on.
    [[nodiscard]] std::string greeting() const;
    // Stores what the line says; the reply to it. Throws LineError, and stores nothing then.
    std::string enter(const std::string& line);
    // Takes back the newest line; says which tool it was. Throws error::BadData when the newest
    // change is no line of quick entry, error::NoSuchRecord when there is none.
    std::string take_back();

    // The lines that were entered, oldest first.
    [[nodiscard]] const std::vector<std::string>& lines() const { return lines_; }

    // What is wrong with each of these lines, were they entered one after the other; nothing is
    // stored.
    struct Mistake {
        std::size_t line; // from 0
        LineError error;
    };
    [[nodiscard]] std::vector<Mistake> mistakes(const std::vector<std::string>& lines);

  private:
    void find_place(); // in the changes
    [[nodiscard]] Carry afresh() const;
    [[nodiscard]] Carry carry() const; // what the next line takes over
    [[nodiscard]] std::string whole(const std::string& text, const Line& line,
                                    const Carry& before) const;

    Context& context_;
    std::string set_; // asked for on the command line
    std::vector<std::string> lines_;
    Carry carry_;
    int entered_ = 0;       // lines of this session that stand
    std::int64_t last_ = 0; // number of the newest line's tool
};

} // namespace cli::intake
