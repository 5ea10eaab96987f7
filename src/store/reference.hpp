// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The reference tables, compiled into the program as a read-only database.
#pragma once

#include <memory>

#include "trade/tables.hpp"

namespace SQLite {
class Database;
}

namespace store {

class Statements;

class Reference : public trade::Tables {
  public:
    Reference();
    ~Reference() override;

    [[nodiscard]] std::vector<trade::Series> series() const override;
    [[nodiscard]] std::vector<trade::FormWord> form_words() const override;
    [[nodiscard]] std::vector<trade::Head> heads(std::string_view size) const override;
    [[nodiscard]] std::vector<trade::Head> every_head() const override;
    [[nodiscard]] std::vector<trade::Clearance> clearances(std::string_view size) const override;
    [[nodiscard]] std::vector<trade::Counterbore>
    counterbores(std::string_view size) const override;
    [[nodiscard]] std::vector<trade::Washer> washers(std::string_view size) const override;
    [[nodiscard]] std::vector<trade::TapDrill> tap_drills(std::string_view size) const override;
    [[nodiscard]] std::vector<trade::PublishedTool> published_tools() const override;
    [[nodiscard]] std::vector<trade::PublishedTool>
    published_tools_for(std::string_view size) const override;
    [[nodiscard]] std::vector<trade::PublishedPilot> published_pilots() const override;
    [[nodiscard]] std::vector<trade::Drill> drills(trade::DrillKind kind) const override;
    [[nodiscard]] std::vector<trade::Oversize> oversize() const override;
    [[nodiscard]] std::vector<trade::DrilledHole> drilled_holes() const override;
    [[nodiscard]] std::vector<trade::PracticeRow> practice() const override;
    [[nodiscard]] std::vector<trade::Material> materials() const override;
    [[nodiscard]] std::vector<trade::Feed> feeds() const override;
    [[nodiscard]] std::vector<trade::Torque> torques(std::string_view size) const override;
    [[nodiscard]] std::vector<trade::NutFactor> nut_factors() const override;
    [[nodiscard]] std::vector<trade::Grade> grades() const override;
    [[nodiscard]] std::vector<trade::SetScrew> set_screws() const override;

    [[nodiscard]] SQLite::Database& database() const { return *database_; }

  private:
    std::unique_ptr<SQLite::Database> database_;
    std::unique_ptr<Statements> statements_; // kept prepared, for what is asked size by size
    mutable std::string heads_size_;         // whose heads were last asked for
    mutable std::vector<trade::Head> heads_;
};

} // namespace store
