// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What cannot be true of one tool.
#include "cli/record/records.hpp"

namespace cli::record {

namespace {

using trade::Body;
using trade::MaybeDimension;
using trade::PilotKind;

void refuse(std::vector<Problem>& problems, const std::string& column, const std::string& cell,
            const std::string& what, const std::string& meant) {
    problems.push_back({column, what, cell, meant});
}

void refuse_size(std::vector<Problem>& problems, const std::string& column,
                 const MaybeDimension& size, const std::string& what, const std::string& meant) {
    if (size)
        refuse(problems, column, size->text, what, meant);
}

void check_no_own_pilot(const Body& body, std::vector<Problem>& problems) {
    const bool removable = body.pilot_kind == PilotKind::removable;
    const std::string what = removable ? "a body with a removable pilot has no pilot of its own"
                                       : "pilot_kind says that there is no pilot";
    const std::string meant = removable ? "enter the pilot as a pilot, or give pilot_kind integral"
                                        : "pilot_kind integral, if it has one";
    refuse_size(problems, "pilot_dia", body.pilot_dia, what, meant);
    refuse_size(problems, "pilot_length", body.pilot_length, what, meant);
    if (body.fluted)
        refuse(problems, "fluted", *body.fluted ? "yes" : "no", what, meant);
}

void check_no_bore(const Body& body, std::vector<Problem>& problems) {
    const std::string what = body.pilot_kind == PilotKind::none
                                 ? "pilot_kind says that there is no pilot"
                                 : "a body with an integral pilot has no bore for one";
    const std::string meant = "pilot_kind removable, if its pilot comes out";
    refuse_size(problems, "bore", body.bore, what, meant);
    refuse_size(problems, "bore_depth", body.bore_depth, what, meant);
    refuse_size(problems, "set_screw_at", body.set_screw_at, what, meant);
    if (body.retention)
        refuse(problems, "retention", std::string(trade::to_text(*body.retention)), what, meant);
    if (!body.set_screw.empty())
        refuse(problems, "set_screw", body.set_screw, what, meant);
}

// `inner` lies within `outer`, as surely as it can be said.
void check_within(const std::string& column, const MaybeDimension& inner,
                  const MaybeDimension& outer, const std::string& outer_name,
                  std::vector<Problem>& problems) {
    if (inner && outer && inner->range.lo >= outer->range.hi)
        refuse(problems, column, inner->text, "not smaller than the " + outer_name,
               "the " + outer_name + " is " + outer->text);
}

} // namespace

std::vector<Problem> contradictions(const Body& body) {
    std::vector<Problem> problems;
    if (body.pilot_kind == PilotKind::removable || body.pilot_kind == PilotKind::none)
        check_no_own_pilot(body, problems);
    if (body.pilot_kind == PilotKind::none || trade::taken_as_integral(body))
        check_no_bore(body, problems);
    check_within("pilot_dia", body.pilot_dia, body.cut_dia, "cutting diameter", problems);
    check_within("bore", body.bore, body.cut_dia, "cutting diameter", problems);
    return problems;
}

std::vector<Problem> contradictions(const PilotRecord& pilot) {
    std::vector<Problem> problems;
    if (pilot.has_flat == false) {
        const std::string meant = "flat_at says none";
        refuse_size(problems, "flat_length", pilot.flat_length, "there is no flat", meant);
        refuse_size(problems, "flat_depth", pilot.flat_depth, "there is no flat", meant);
    }
    if (pilot.tried && !pilot.in_body)
        refuse(problems, "tried", std::string(trade::to_text(*pilot.tried)), "tried in no body",
               "give in_body, the body it was tried in");
    return problems;
}

} // namespace cli::record
