// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The operation sheet: an answer of the match turned into figures, steps and cautions. Hole,
// cutter, depth and pilot are those of the answer; nothing is judged here a second time.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "job/figure.hpp"
#include "job/ways.hpp"
#include "match/tools.hpp"
#include "trade/tables.hpp"

namespace job {

// What is known of the job besides the question.
struct Particulars {
    std::string part; // what it is for
    std::string note;
    int count = 1; // holes
    std::optional<trade::Material> material;
    length::MaybeRange to_edge;        // axis of the hole to the edge of the part
    std::optional<Measure> torque;     // given; else the usual one
    std::optional<std::string> grade;  // of the screw; else that of its series
    std::string surface = "dry steel"; // of screw and thread, for the nut factor
    On on = On::drill_press;
};

// The tables that figures are taken from.
struct Books {
    std::vector<trade::Feed> feeds;
    std::vector<trade::Torque> torques; // of the screw's size
    std::vector<trade::NutFactor> nut_factors;
    std::vector<trade::Grade> grades;
    std::vector<trade::SetScrew> set_screws;
};
[[nodiscard]] Books read_books(const trade::Tables& tables, const trade::Screw& screw);

struct Section {
    std::string title;
    std::vector<Figure> figures;
    std::vector<std::string> notes; // what the figures mean, or why one is missing
};

// One that is not usable says what to settle or make and has no steps to cut by.
struct Sheet {
    match::Question question;
    Particulars particulars;
    std::optional<match::Answer> answer; // absent: nothing but other ways
    std::vector<Section> sections;
    std::vector<std::string> steps;
    std::vector<Way> ways; // where no tool on hand will do

    [[nodiscard]] bool usable() const;
    // The figure of that name, or null.
    [[nodiscard]] const Figure* figure(std::string_view name) const;
};

// The answer to make a sheet of: the best one, or that of the body and pilot named (in `report`,
// which then is by pairs). Absent when it is closest, or not there.
[[nodiscard]] std::optional<match::Answer> answer_for(const match::Report& report,
                                                      std::optional<std::int64_t> body,
                                                      std::optional<std::int64_t> pilot);

// `tools` holds the answer's body and pilot. Sizes in sentences are in `unit`.
[[nodiscard]] Sheet make_sheet(const match::Question& question, const Particulars& particulars,
                               const match::Report& report,
                               const std::optional<match::Answer>& answer,
                               const match::Tools& tools, const match::Shop& shop,
                               const Books& books, length::Unit unit);

} // namespace job
