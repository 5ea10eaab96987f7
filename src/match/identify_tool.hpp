// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a tool is for: the fit rules asked the other way round, of every screw of the tables.
#pragma once

#include <string>
#include <vector>

#include "match/jobs.hpp"
#include "match/likeness.hpp"

namespace match {

enum class Surety { made_for, serves, may_serve };
[[nodiscard]] std::string_view to_text(Surety); // `made for`, `serves`, `may serve`

// A screw that the tool counterbores, and through which hole.
struct ToolUse {
    std::string screw; // `5/16 socket head cap`
    std::string size;  // ScrewSize::text
    std::string form;
    std::string series;
    bool withdrawn = false;            // the series is
    bool shoulder = false;             // the size is the shoulder's
    std::string hole;                  // close, normal, loose, tap; empty: another, or not known
    std::optional<trade::Drill> drill; // that suits the pilot; absent: pilot not known
    std::optional<SizeClass> class_of_size;
    Surety surety = Surety::may_serve;
    std::vector<Reason> reasons; // rules 1, 2, 3 and 6, of the figures that are given
};

struct ToolIdentity {
    std::vector<Likeness> published; // listed tools that it looks like
    std::vector<ToolUse> uses;       // best first
    std::size_t best = 0;            // so many at the front are equally likely what it is for
};

// Every listed screw, ready to be put to tools.
class Identifier {
  public:
    Identifier(const trade::Tables& tables, const trade::Practice& practice);
    Identifier(const Identifier&) = delete; // the jobs point at the shop
    Identifier& operator=(const Identifier&) = delete;

    // A screw comes with each of its published holes that the pilot may run in, else with the best
    // drill. `made for`: a listed tool of these figures names the screw's size, and the cutter
    // clears the head and is not large for it. `serves`: the rules about the figures that
    // are given pass. `may serve`: none fails. The order: surety, then published holes, then a
    // cutter of tool size or recommended, then standing series, then the order of the tables.
    // A tool of unknown kind is judged as a counterbore.
    [[nodiscard]] ToolIdentity identify(const ToolFigures& figures, length::Unit unit) const;

  private:
    const trade::Tables& tables_;
    Shop shop_;
    std::vector<std::string> withdrawn_; // series
    Jobs jobs_; // each screw through any hole, then through each published one
    struct OfScrew {
        std::size_t any, end; // places in jobs_
    };
    std::vector<OfScrew> by_screw_;
};

// The heads of one form that the uses equally likely go with.
struct LikelyForm {
    std::string form;
    std::vector<std::string> series;
};

// Each once, in order, of the uses that are equally likely.
[[nodiscard]] std::vector<std::string> likely_sizes(const ToolIdentity& identity);
[[nodiscard]] std::vector<LikelyForm> likely_heads(const ToolIdentity& identity);

} // namespace match
