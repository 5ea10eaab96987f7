// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A few rows of the published tables, enough for each way that a screw is found: two standing
// patterns, a withdrawn one, a size that only the withdrawn one has, forms that share a word.
#pragma once

#include <string_view>
#include <vector>

#include "trade/tables.hpp"

namespace few_tables {

class FewTables : public trade::Tables {
  public:
    FewTables();

    [[nodiscard]] std::vector<trade::Series> series() const override { return series_; }
    [[nodiscard]] std::vector<trade::FormWord> form_words() const override { return form_words_; }
    [[nodiscard]] std::vector<trade::Head> heads(std::string_view size) const override;
    [[nodiscard]] std::vector<trade::Head> every_head() const override { return heads_; }
    [[nodiscard]] std::vector<trade::Clearance> clearances(std::string_view size) const override;
    [[nodiscard]] std::vector<trade::Counterbore>
    counterbores(std::string_view size) const override;
    [[nodiscard]] std::vector<trade::Washer> washers(std::string_view) const override { return {}; }
    [[nodiscard]] std::vector<trade::TapDrill> tap_drills(std::string_view size) const override;
    [[nodiscard]] std::vector<trade::PublishedTool> published_tools() const override { return {}; }
    [[nodiscard]] std::vector<trade::PublishedTool>
    published_tools_for(std::string_view) const override {
        return {};
    }
    [[nodiscard]] std::vector<trade::PublishedPilot> published_pilots() const override {
        return {};
    }
    [[nodiscard]] std::vector<trade::Drill> drills(trade::DrillKind) const override { return {}; }
    [[nodiscard]] std::vector<trade::Oversize> oversize() const override { return {}; }
    [[nodiscard]] std::vector<trade::DrilledHole> drilled_holes() const override { return {}; }
    [[nodiscard]] std::vector<trade::PracticeRow> practice() const override { return {}; }
    [[nodiscard]] std::vector<trade::Material> materials() const override { return {}; }
    [[nodiscard]] std::vector<trade::Feed> feeds() const override { return {}; }
    [[nodiscard]] std::vector<trade::Torque> torques(std::string_view) const override { return {}; }
    [[nodiscard]] std::vector<trade::NutFactor> nut_factors() const override { return {}; }
    [[nodiscard]] std::vector<trade::Grade> grades() const override { return {}; }
    [[nodiscard]] std::vector<trade::SetScrew> set_screws() const override { return {}; }

  private:
    std::vector<trade::Series> series_;
    std::vector<trade::FormWord> form_words_;
    std::vector<trade::Head> heads_;
};

} // namespace few_tables
