// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A rack with every solid tool that handbook and standard list, each as it is marked.
// Machinery's Handbook, counterbores with integral pilots (27th to 31st edition, from memory);
// DIN 373 (1975 and 2007, part from memory).
#pragma once

#include <string>
#include <vector>

#include "length/print.hpp"
#include "store/reference.hpp"
#include "trade/dimension.hpp"
#include "trade/rack.hpp"

namespace published {

// Number sizes are listed in decimals, larger ones in fractions; that is how they are marked.
inline std::string marked(length::Length size, const trade::PublishedTool& tool) {
    if (tool.unit == length::Unit::millimetre)
        return length::with_unit(size, length::Unit::millimetre);
    return tool.size.front() == '#' ? length::to_text(size, length::Unit::inch)
                                    : length::as_fraction(size);
}

class SolidTools : public trade::Rack {
  public:
    SolidTools(const store::Reference& tables, const trade::Practice& practice) {
        for (const auto& tool : tables.published_tools())
            if (is_solid(tool))
                add(tool, practice);
    }
    [[nodiscard]] std::vector<trade::Body> bodies() const override { return bodies_; }
    [[nodiscard]] std::vector<trade::Pilot> pilots() const override { return {}; }
    [[nodiscard]] std::vector<trade::Trial> trials() const override { return {}; }

  private:
    static bool is_solid(const trade::PublishedTool& tool) {
        const bool one_size = tool.cut_dia.listed && tool.pilot_dia.listed &&
                              tool.cut_dia.listed->lo == tool.cut_dia.listed->hi;
        const bool named =
            tool.standard == "Machinery's Handbook integral pilot" || tool.standard == "DIN 373";
        return one_size && named && tool.pilot_kind == "integral" && !tool.size.empty();
    }
    void add(const trade::PublishedTool& tool, const trade::Practice& practice) {
        const auto read = [&](length::Length size, trade::Feature feature) {
            return trade::read_dimension(marked(size, tool), trade::How::mark, feature,
                                         length::Unit::inch, practice);
        };
        trade::Body body;
        body.number = static_cast<std::int64_t>(bodies_.size()) + 1;
        body.kind = trade::BodyKind::counterbore;
        body.pilot_kind = trade::PilotKind::integral;
        body.cut_dia = read(tool.cut_dia.listed->lo, trade::Feature::cut_dia);
        body.pilot_dia = read(tool.pilot_dia.listed->lo, trade::Feature::pilot_dia);
        body.place = tool.size; // where to find it again in the test
        body.note = tool.hole;
        bodies_.push_back(std::move(body));
    }

    std::vector<trade::Body> bodies_;
};

} // namespace published
