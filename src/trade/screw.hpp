// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A screw as asked for: from its text, through the tables and the shop's own screws, to the limits
// that the rules need.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "trade/dimension.hpp"
#include "trade/tables.hpp"

namespace trade {

// A screw as written: `5/16-18 socket head cap`, `M6x20 DIN912`, `5/16-18 shcs 1936`, `allen
// #10-32`, `1/4-20 x 3/4`. A bare integer is a number size if it is 0 to 12 with a pitch of 24 or
// more, inches with a coarser one (`1-8 hex cap`); alone it is refused. Without a form it is a
// socket head cap screw, a bolt a hexagon. A shoulder screw goes by its shoulder, or by a thread
// that is no shoulder.
struct ScrewRequest {
    ScrewSize size;
    std::string pitch;  // as text; empty when not said
    std::string form;   // empty when only a series was named that has one form
    std::string series; // Series::name; empty when not said
};

// Throws error::BadData naming the word it does not know, with the forms and series it does.
[[nodiscard]] ScrewRequest parse_screw(std::string_view text, const Tables& tables);

// A screw of the shop's own, or its own figures for a listed one.
struct OwnScrew {
    std::string name; // as a SCREW text; found folded, or said in other words
    MaybeDimension head_dia;
    MaybeDimension head_height;
    MaybeDimension screw_dia;
    std::string drive;
    std::string drive_size;
    std::string note;

    bool operator==(const OwnScrew&) const = default;
};

// A resolved screw. Where `heads` has several series and none was named, the larger head answers.
struct Screw {
    std::string name;   // `5/16-18 socket head cap`
    std::string form;   // empty for an own screw whose name the tables do not know
    std::string series; // of the head that answers; empty for an own screw
    std::optional<ScrewSize> size;
    std::string pitch;
    length::MaybeRange screw_dia;
    length::MaybeRange head_dia;
    length::MaybeRange head_height;
    bool head_measured = false; // head_dia is the user's, not the table's
    bool hex = false;           // spotfaced rather than sunk
    bool shoulder = false;
    std::string thread;             // of a shoulder screw, as a size
    bool form_said = true;          // else the usual form stands in
    std::vector<std::string> taken; // how what could be read in two ways was read, for people
    std::optional<length::Length> fillet_dia;
    std::string drive;
    std::string drive_size;
    std::vector<Head> heads; // at this size and pitch, answering one first; withdrawn only by name
    bool series_said = false;
    std::optional<Clearance::Hole> close, normal, loose; // as the fit rules use them
    std::string clearance_system;
    std::optional<TapDrill> tap;
    std::vector<Counterbore> counterbores; // of the series that answers
    std::vector<PublishedTool> tools;      // published for this size, whatever the head
    std::vector<std::string> form_words;   // that name its form, folded
    Origin origin;                         // of the head that answers

    [[nodiscard]] bool is_metric() const { return size && size->system == SizeSystem::metric; }
};

class ScrewWords;

// The tables and the shop's own screws, for one SCREW text after another: what the tables say names
// a screw is read once.
class ScrewFinder {
  public:
    // `tables` must outlive this.
    ScrewFinder(const Tables& tables, std::vector<OwnScrew> own);
    ~ScrewFinder();
    ScrewFinder(const ScrewFinder&) = delete;
    ScrewFinder& operator=(const ScrewFinder&) = delete;

    // As resolve_screw.
    [[nodiscard]] Screw find(std::string_view text, std::string_view series) const;

  private:
    const Tables& tables_;
    std::vector<OwnScrew> own_;
    std::unique_ptr<ScrewWords> words_;
};

// The screw that `text` names. `series`, if not empty, overrides the one in the text. An own screw
// of that name comes before the tables. Larger head: by diameter, then height, then table order,
// among the standing series of the form with that size and whose thread may have that pitch;
// withdrawn series only by name.
// Close, normal and loose: ASME B18.2.8 and ISO 273, sizes missing there from the shop chart;
// shoulder screws have none.
// Throws error::BadData (unreadable, pitch that no row has) or error::NoSuchRecord (no such size).
[[nodiscard]] Screw resolve_screw(std::string_view text, std::string_view series,
                                  const Tables& tables, const std::vector<OwnScrew>& own);

// The screw of one row of the tables, of any pitch, its series said.
[[nodiscard]] Screw listed_screw(const Head& head, const Tables& tables);

} // namespace trade
