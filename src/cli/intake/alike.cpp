// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/intake/alike.hpp"

#include "cli/inventory.hpp"

namespace cli::intake {

namespace {

using trade::MaybeDimension;

bool can_be_equal(const MaybeDimension& a, const MaybeDimension& b) {
    return a->range.lo <= b->range.hi && b->range.lo <= a->range.hi;
}

bool known_alike(const MaybeDimension& a, const MaybeDimension& b) {
    return a && b && can_be_equal(a, b);
}

bool not_known_to_differ(const MaybeDimension& a, const MaybeDimension& b) {
    return !a || !b || can_be_equal(a, b);
}

bool alike(const trade::Body& a, const trade::Body& b) {
    const bool same_kind = a.kind == b.kind && a.pilot_kind == b.pilot_kind &&
                           (!a.flutes || !b.flutes || a.flutes == b.flutes);
    return same_kind && known_alike(a.cut_dia, b.cut_dia) &&
           (trade::taken_as_integral(a) ? known_alike(a.pilot_dia, b.pilot_dia)
                                        : not_known_to_differ(a.bore, b.bore)) &&
           not_known_to_differ(a.shank_dia, b.shank_dia);
}

bool alike(const trade::Pilot& a, const trade::Pilot& b) {
    return known_alike(a.pilot_dia, b.pilot_dia) && known_alike(a.shank_dia, b.shank_dia);
}

template <class Record>
std::vector<Tool> others_alike(const Record& tool, const std::vector<Record>& all) {
    std::vector<Tool> found;
    for (const Record& other : all)
        if (other.number != tool.number && !other.retired && alike(tool, other))
            found.emplace_back(other);
    return found;
}

} // namespace

std::vector<Tool> alike(const Tool& tool, const store::File& file) {
    if (const auto* body = std::get_if<trade::Body>(&tool))
        return others_alike(*body, store::bodies(file));
    return others_alike(std::get<record::PilotRecord>(tool), pilot_records(file));
}

} // namespace cli::intake
