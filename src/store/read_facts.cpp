// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A window is read in three parts: limits that are narrow, by their low end; unknown ones; and wide
// ones, from an index of their own. Columns that no index holds are asked for only where they
// matter, since each costs a look into the table.
#include "store/read_facts.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <limits>

#include "store/query.hpp"
#include "store/record.hpp"
#include "store/scan.hpp"
#include "trade/size.hpp"

namespace store {

namespace {

using trade::BodyFacts;
using trade::Detail;
using trade::Limits;
using trade::PilotFacts;
using trade::PilotKind;
using trade::Window;

constexpr auto k_with_work = R"(
SELECT DISTINCT number FROM work ORDER BY number)";

constexpr auto k_lent = R"(
SELECT number FROM loan ORDER BY number)";

constexpr auto k_retired_bodies = R"(
SELECT number FROM body INDEXED BY body_retired WHERE retired IS NOT NULL ORDER BY number)";

// {0}: the columns. ?1 and ?2: the window, ?3: the kind of pilot. 120,000 nm is what the indexes
// call wide.
constexpr auto k_cutter_narrow = R"(
SELECT {0} FROM body INDEXED BY body_by_cutter
WHERE pilot_kind = ?3 AND cut_dia_lo BETWEEN ?1 - 120000 AND ?2 AND cut_dia_hi >= ?1
    AND cut_dia_hi - cut_dia_lo <= 120000 ORDER BY cut_dia_lo)";
constexpr auto k_cutter_unknown = R"(
SELECT {0} FROM body INDEXED BY body_by_cutter
WHERE pilot_kind = ?3 AND cut_dia_lo IS NULL ORDER BY cut_dia_hi)";
constexpr auto k_cutter_wide = R"(
SELECT {0} FROM body INDEXED BY body_wide_cutter
WHERE pilot_kind = ?3 AND cut_dia_lo <= ?2 AND cut_dia_hi >= ?1
    AND cut_dia_hi - cut_dia_lo > 120000 ORDER BY cut_dia_lo)";

constexpr auto k_integral_narrow = R"(
SELECT {0} FROM body INDEXED BY body_by_pilot
WHERE pilot_kind = ?3 AND pilot_dia_lo BETWEEN ?1 - 120000 AND ?2 AND pilot_dia_hi >= ?1
    AND pilot_dia_hi - pilot_dia_lo <= 120000 ORDER BY pilot_dia_lo)";
constexpr auto k_integral_unknown = R"(
SELECT {0} FROM body INDEXED BY body_by_pilot
WHERE pilot_kind = ?3 AND pilot_dia_lo IS NULL ORDER BY pilot_dia_hi)";
constexpr auto k_integral_wide = R"(
SELECT {0} FROM body INDEXED BY body_wide_pilot
WHERE pilot_kind = ?3 AND pilot_dia_lo <= ?2 AND pilot_dia_hi >= ?1
    AND pilot_dia_hi - pilot_dia_lo > 120000 ORDER BY pilot_dia_lo)";

constexpr auto k_pilot_narrow = R"(
SELECT {0} FROM pilot INDEXED BY pilot_by_diameter
WHERE pilot_dia_lo BETWEEN ?1 - 120000 AND ?2 AND pilot_dia_hi >= ?1
    AND pilot_dia_hi - pilot_dia_lo <= 120000 ORDER BY pilot_dia_lo)";
constexpr auto k_pilot_unknown = R"(
SELECT {0} FROM pilot INDEXED BY pilot_by_diameter
WHERE pilot_dia_lo IS NULL ORDER BY pilot_dia_hi)";
constexpr auto k_pilot_wide = R"(
SELECT {0} FROM pilot INDEXED BY pilot_wide
WHERE pilot_dia_lo <= ?2 AND pilot_dia_hi >= ?1
    AND pilot_dia_hi - pilot_dia_lo > 120000 ORDER BY pilot_dia_lo)";

// In the order of their places in a row; what an index does not hold comes last.
constexpr auto k_integral_columns = "number, kind, condition, retired, cut_dia_lo, cut_dia_hi, "
                                    "pilot_dia_lo, pilot_dia_hi, reach_lo, reach_hi";
constexpr auto k_body_details = ", pilot_length_lo, pilot_length_hi, shank_dia_lo, "
                                "shank_dia_hi, shank_kind";
constexpr auto k_body_columns =
    "number, kind, condition, retired, cut_dia_lo, cut_dia_hi, pilot_dia_lo, pilot_dia_hi, "
    "reach_lo, reach_hi, bore_lo, bore_hi, retention, bore_depth_lo, bore_depth_hi, set_screw, "
    "set_screw_at_lo, set_screw_at_hi";
constexpr auto k_pilot_columns =
    "number, condition, retired, in_body, has_flat, pilot_dia_lo, pilot_dia_hi, shank_dia_lo, "
    "shank_dia_hi, shank_length_lo, shank_length_hi, flat_at_lo, flat_at_hi, flat_length_lo, "
    "flat_length_hi";
constexpr auto k_pilot_details = ", pilot_length_lo, pilot_length_hi";

trade::NumberSet numbers(SQLite::Database& database, const char* sql) {
    std::vector<std::int64_t> all;
    Scan scan(database, sql);
    while (scan.step())
        all.push_back(scan.integer(0));
    return trade::NumberSet(std::move(all));
}

template <class Word>
std::optional<Word> maybe_word(const Scan& row, int place) {
    return row.is_null(place) ? std::nullopt : std::optional(word_of<Word>(row.text(place)));
}

// A set screw's major diameter; the last is kept, since neighbours are alike.
class SetScrews {
  public:
    Limits major(std::string_view recorded) {
        if (recorded.empty())
            return {};
        if (recorded != last_) {
            major_ = length::exactly(trade::parse_set_screw(recorded));
            last_ = recorded;
        }
        return major_;
    }

  private:
    std::string last_;
    Limits major_;
};

// `place` is that of the first of k_body_details.
void add_details(const Scan& row, int place, BodyFacts& facts) {
    facts.pilot_length = row.limits(place);
    facts.shank_dia = row.limits(place + 2);
    facts.shank = trade::Shank(row.text(place + 4));
}

std::string with(const char* columns, const char* details, Detail detail) {
    return std::string(columns) + (detail == Detail::all ? details : "");
}

} // namespace

struct FactsReader::Parts {
    const char* narrow;
    const char* unknown;
    const char* wide;
};

class FactsReader::BodyReader {
  public:
    BodyReader(const Marked& marked, PilotKind kind) : marked_(marked), kind_(kind) {}

    // What every body has, and what only one that takes a pilot has.
    BodyFacts integral(const Scan& row) {
        BodyFacts facts;
        facts.number = static_cast<std::int32_t>(row.integer(0));
        facts.kind = word_of<trade::BodyKind>(row.text(1));
        facts.pilot_kind = kind_;
        facts.condition = maybe_word<trade::Condition>(row, 2);
        facts.gone = !row.is_null(3) || marked_.lent.has(facts.number);
        facts.work_listed = marked_.with_work.has(facts.number);
        facts.cut_dia = row.limits(4);
        facts.pilot_dia = row.limits(6);
        facts.reach = row.limits(8);
        return facts;
    }
    BodyFacts any(const Scan& row) {
        BodyFacts facts = integral(row);
        facts.bore = row.limits(10);
        facts.retention = maybe_word<trade::Retention>(row, 12);
        facts.bore_depth = row.limits(13);
        facts.set_screw = set_screws_.major(row.text(15));
        facts.set_screw_at = row.limits(16);
        return facts;
    }

  private:
    const Marked& marked_;
    PilotKind kind_;
    SetScrews set_screws_;
};

const FactsReader::Marked& FactsReader::marked() {
    if (!marked_) {
        auto& database = file_.database();
        marked_ = {numbers(database, k_with_work), numbers(database, k_lent),
                   numbers(database, k_retired_bodies)};
    }
    return *marked_;
}

// A statement is out of the way while it is in use, and forgotten if something fails.
template <class SeeRow>
void FactsReader::each_row(const Parts& parts, const std::string& columns, const Window& window,
                           std::optional<PilotKind> kind, const SeeRow& see) {
    constexpr std::int64_t most = std::numeric_limits<std::int64_t>::max() / 2;
    for (const char* part : {parts.narrow, parts.unknown, parts.wide}) {
        const auto sql = fmt::format(fmt::runtime(part), columns);
        auto kept = scans_.extract(sql);
        Scan scan = kept ? std::move(kept.mapped()) : Scan(file_.database(), sql);
        if (kind)
            scan.put(3, trade::to_text(*kind));
        if (part != parts.unknown)
            scan.put(1, window.sizes ? window.sizes->lo.nm() : -most)
                .put(2, window.sizes ? window.sizes->hi.nm() : most);
        while (scan.step())
            see(scan);
        scan.reset();
        scans_.emplace(sql, std::move(scan));
    }
}

// Of a body with an integral pilot only what matters in one, whatever else is recorded of it.
void FactsReader::by_cutter(PilotKind kind, const Window& window, Detail detail,
                            const trade::SeeBody& see) {
    BodyReader reader(marked(), kind);
    const bool integral = kind == PilotKind::integral;
    each_row({k_cutter_narrow, k_cutter_unknown, k_cutter_wide},
             with(integral ? k_integral_columns : k_body_columns, k_body_details, detail), window,
             kind, [&](const Scan& row) {
                 auto facts = integral ? reader.integral(row) : reader.any(row);
                 if (detail == Detail::all)
                     add_details(row, integral ? 10 : 18, facts);
                 see(facts);
             });
}

void FactsReader::by_pilot(const Window& window, Detail detail, const trade::SeeBody& see) {
    BodyReader reader(marked(), PilotKind::integral);
    each_row({k_integral_narrow, k_integral_unknown, k_integral_wide},
             with(k_integral_columns, k_body_details, detail), window, PilotKind::integral,
             [&](const Scan& row) {
                 auto facts = reader.integral(row);
                 if (detail == Detail::all)
                     add_details(row, 10, facts);
                 see(facts);
             });
}

void FactsReader::pilots_in(const Window& window, Detail detail, const trade::SeePilot& see) {
    (void)marked();
    each_row({k_pilot_narrow, k_pilot_unknown, k_pilot_wide},
             with(k_pilot_columns, k_pilot_details, detail), window, std::nullopt,
             [&](const Scan& row) { see(pilot(row, detail)); });
}

PilotFacts FactsReader::pilot(const Scan& row, Detail detail) {
    PilotFacts facts;
    facts.number = static_cast<std::int32_t>(row.integer(0));
    facts.condition = maybe_word<trade::Condition>(row, 1);
    facts.gone = !row.is_null(2) || marked_->lent.has(facts.number);
    facts.in_body = static_cast<std::int32_t>(row.integer(3)); // 0 where there is none
    facts.home_gone = facts.in_body != 0 && (marked_->lent.has(facts.in_body) ||
                                             marked_->retired_bodies.has(facts.in_body));
    facts.work_listed = marked_->with_work.has(facts.number);
    if (!row.is_null(4))
        facts.has_flat = row.integer(4) != 0;
    facts.pilot_dia = row.limits(5);
    facts.shank_dia = row.limits(7);
    facts.shank_length = row.limits(9);
    facts.flat_at = row.limits(11);
    facts.flat_length = row.limits(13);
    if (detail == Detail::all)
        facts.pilot_length = row.limits(15);
    return facts;
}

} // namespace store
