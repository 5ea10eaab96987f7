// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/tool_figures.hpp"

#include <algorithm>

#include "store/tools.hpp"

namespace cli {

namespace {

match::ToolFigures figures_of_body(const trade::Body& body,
                                   const std::vector<trade::Pilot>& pilots) {
    match::ToolFigures figures;
    figures.kind = body.kind;
    figures.cut_dia = trade::range_of(body.cut_dia);
    figures.pilot_dia = trade::range_of(body.pilot_dia);
    figures.bore = trade::range_of(body.bore);
    figures.shank_dia = trade::range_of(body.shank_dia);
    for (const auto& pilot : pilots)
        if (pilot.in_body == body.number && !figures.pilot_dia)
            figures.pilot_dia = trade::range_of(pilot.pilot_dia);
    return figures;
}

match::ToolFigures figures_of_pilot(const trade::Pilot& pilot) {
    match::ToolFigures figures;
    figures.pilot_dia = trade::range_of(pilot.pilot_dia);
    figures.shank_dia = trade::range_of(pilot.shank_dia);
    return figures;
}

bool is_unnamed(const trade::Body& body) {
    const bool marked =
        !body.marking.empty() || (body.cut_dia && body.cut_dia->how == trade::How::mark);
    return body.kind == trade::BodyKind::unknown || body.pilot_kind == trade::PilotKind::unknown ||
           !marked;
}

bool is_unnamed(const trade::Pilot& pilot) {
    return pilot.pilot_dia && pilot.pilot_dia->how != trade::How::mark;
}

} // namespace

match::ToolFigures figures_of(const Tool& tool, const std::vector<trade::Pilot>& pilots) {
    if (const auto* body = std::get_if<trade::Body>(&tool))
        return figures_of_body(*body, pilots);
    return figures_of_pilot(std::get<record::PilotRecord>(tool));
}

std::vector<UnnamedTool> unnamed_tools(const store::File& file) {
    const auto pilots = store::pilots(file);
    std::vector<UnnamedTool> unnamed;
    for (const auto& body : store::bodies(file)) {
        const auto figures = figures_of_body(body, pilots);
        if (!body.retired && is_unnamed(body) &&
            (figures.cut_dia || figures.pilot_dia || figures.bore))
            unnamed.push_back({body.number, std::string(trade::to_text(body.kind)), figures});
    }
    for (const auto& pilot : pilots)
        if (!pilot.retired && is_unnamed(pilot))
            unnamed.push_back({pilot.number, "pilot", figures_of_pilot(pilot)});
    std::sort(unnamed.begin(), unnamed.end(),
              [](const UnnamedTool& a, const UnnamedTool& b) { return a.number < b.number; });
    return unnamed;
}

} // namespace cli
