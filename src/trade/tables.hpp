// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The published tables as the trade sees them: one small struct a kind of row, and the interface
// that the file layer implements. Every row says where it is from and how sure it is.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "length/range.hpp"
#include "trade/drill.hpp"
#include "trade/origin.hpp"
#include "trade/practice.hpp"
#include "trade/published.hpp"
#include "trade/size.hpp"

namespace trade {

// A series of heads: one standard's dimensions for one form.
struct Series {
    std::string name;               // key: `ASME B18.3 1960`, `ISO 4762`
    std::string form;               // `socket head cap`, `fillister`, `hex`, ...
    std::string title;              // one line for people: `socket head cap screw, 1960 series`
    std::vector<std::string> words; // what names it in a SCREW text, folded: `1960`, `newer`
    bool withdrawn = false;         // answers only when named
    int rank = 0;                   // table order
};

// What names a form in a SCREW text, folded: `shcs` -> `socket head cap`.
struct FormWord {
    std::string word;
    std::string form;
};

struct Head {
    std::string series;
    std::string form;
    ScrewSize size;                   // a shoulder screw's size is its shoulder
    std::vector<std::string> pitches; // threads per inch, or mm, as text: `18`, `1.25`
    length::Range screw_dia;          // body or shoulder; lo == hi when only a maximum is printed
    length::Range head_dia;           // hi: the knurled maximum where there is one
    std::string head_min_note;        // how a minimum that no table prints was derived; else empty
    length::Length head_height_max;
    std::optional<length::Length> head_height_min;
    std::string drive;      // hex socket, slot, ...
    std::string drive_size; // key as written: `7/32`, `6 mm`
    std::optional<length::Length> fillet_dia_max;
    std::string thread; // of a shoulder screw
    Origin origin;
};

// Clearance holes of one system for one size.
struct Clearance {
    std::string system; // `ASME B18.2.8`, `ISO 273`, `shop chart`
    struct Hole {
        std::string drill; // its name in the drill tables
        length::Length diameter;
    };
    std::optional<Hole> close, normal, loose;
    Origin origin;
};

// A published counterbore or spotface.
struct Counterbore {
    std::string series; // of heads
    std::string rule;   // `ASME B18.3 appendix`, `DIN 974-1 series 1`, ...
    std::string kind;   // `recommended`, `tool`, `spotface`, `least cutter` (derived), ...
    length::Length diameter;
    std::string name;                             // as a fraction or number where it has one
    std::optional<length::Length> depth_addition; // DIN 974-1: over head height and washer
    std::optional<length::Length> edge_countersink;
    Origin origin;
};

struct Washer {
    std::string series;
    length::Length inside_dia;
    length::Length outside_dia_max;
    std::optional<length::Length> thickness_max;
    Origin origin;
};

struct TapDrill {
    std::string pitch;
    std::string drill; // its name
    length::Length diameter;
    Origin origin;
    std::string thread = {}; // UNC, UNF, BSW, BA, ...: several threads can share size and pitch
};

// What a restriction of a material is about. `refused`: it is not to be cut at all.
enum class Matter { refused, fire, dwell, coolant, self_feed, heat, dust };

// What a material forbids or asks at the machine.
struct Restriction {
    Matter about;
    std::string words; // a caution: `never dwell or let the tool rub: it hardens`
    Origin origin;
};

// A material to be cut. Speeds are for high-speed steel, in feet a minute. One that is refused has
// no speeds, feed, coolant or limit: they are 0 and empty.
struct Material {
    std::string name;      // `low-carbon steel 1018/1020/A36 (S235)`
    std::string condition; // `100-125 HB`
    int drill_speed = 0;
    int speed_low = 0; // of a counterbore
    int speed_high = 0;
    std::string feed_class; // `free`, `general`, `tough`
    std::string coolant;
    int pressure_low_mpa = 0;              // limit under a head, by the lowest edition
    int pressure_high_mpa = 0;             // by the highest
    std::string pressure_basis;            // where those limits are from, with their editions
    std::vector<Restriction> restrictions; // the gravest first
    std::string asked_as;                  // the everyday name that led here; empty: its own
    Origin origin;                         // of the speeds

    // The restriction about this, or null.
    [[nodiscard]] const Restriction* restriction(Matter about) const;
    [[nodiscard]] bool refused() const { return restriction(Matter::refused) != nullptr; }
    [[nodiscard]] bool may_dwell() const { return !restriction(Matter::dwell); }
};

// Feed of a counterbore per revolution, for cutters over `above` up to `upto`.
struct Feed {
    std::string feed_class;
    std::optional<length::Length> above, upto; // absent: no limit on that side
    length::Length least, most;                // per revolution
    Origin origin;
};

// A seating torque of a socket head cap screw as a chart prints it.
struct Torque {
    std::string chart;
    double newton_metres = 0;
    std::string printed; // `16 ft-lb`
    std::string surface; // that it was printed for, as the nut factors name it; empty: not said
    std::string about;   // `75 % of yield, plated, dry`
    Origin origin;
};

// Torque is factor times diameter times force. In thousandths.
struct NutFactor {
    std::string surface; // `dry steel`
    int usual_low = 0;
    int usual_high = 0;
    int seen_low = 0;
    int seen_high = 0;
    Origin origin;
};

// A hex socket set screw, such as holds a pilot.
struct SetScrew {
    std::string size; // ScrewSize::text
    std::string key;  // as written: `5/64`, `2.5 mm`
    Origin origin;
};

// Proof stress of a grade or property class of screws, for diameters over `above` up to `upto`.
struct Grade {
    std::string name;     // `ISO 898-1 12.9`, `SAE J429 grade 5`
    std::string standard; // `ISO 898-1`
    std::optional<length::Length> above, upto;
    double proof_mpa = 0;
    Origin origin;
};

class Tables {
  public:
    virtual ~Tables() = default;

    [[nodiscard]] virtual std::vector<Series> series() const = 0; // by rank
    [[nodiscard]] virtual std::vector<FormWord> form_words() const = 0;
    // Rows of one size, by series rank. `size` is ScrewSize::text.
    [[nodiscard]] virtual std::vector<Head> heads(std::string_view size) const = 0;
    // Every row: number, inch, metric and BA sizes, each ascending, then by series rank.
    [[nodiscard]] virtual std::vector<Head> every_head() const = 0;
    [[nodiscard]] virtual std::vector<Clearance> clearances(std::string_view size) const = 0;
    [[nodiscard]] virtual std::vector<Counterbore> counterbores(std::string_view size) const = 0;
    [[nodiscard]] virtual std::vector<Washer> washers(std::string_view size) const = 0;
    [[nodiscard]] virtual std::vector<TapDrill> tap_drills(std::string_view size) const = 0;
    // Those that give a dimension, in table order.
    [[nodiscard]] virtual std::vector<PublishedTool> published_tools() const = 0;
    // Those for a screw of this size.
    [[nodiscard]] virtual std::vector<PublishedTool>
    published_tools_for(std::string_view size) const = 0;
    [[nodiscard]] virtual std::vector<PublishedPilot> published_pilots() const = 0;
    // Every drill of one kind, ascending; metric: 1 to 13 by .1, to 32 by .5, to 80 by 1.
    [[nodiscard]] virtual std::vector<Drill> drills(DrillKind kind) const = 0;
    [[nodiscard]] virtual std::vector<Oversize> oversize() const = 0;         // ascending
    [[nodiscard]] virtual std::vector<DrilledHole> drilled_holes() const = 0; // ascending
    [[nodiscard]] virtual std::vector<PracticeRow> practice() const = 0;      // defaults, in order
    [[nodiscard]] virtual std::vector<Material> materials() const = 0;        // in table order
    [[nodiscard]] virtual std::vector<Feed> feeds() const = 0; // by class and diameter
    [[nodiscard]] virtual std::vector<Torque> torques(std::string_view size) const = 0; // by chart
    [[nodiscard]] virtual std::vector<NutFactor> nut_factors() const = 0; // by surface
    [[nodiscard]] virtual std::vector<Grade> grades() const = 0;          // in table order
    [[nodiscard]] virtual std::vector<SetScrew> set_screws() const = 0;   // by size
};

} // namespace trade
