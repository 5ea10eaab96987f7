// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/jobs.hpp"

#include <algorithm>

namespace match {

using PublishedHole = trade::Clearance::Hole;

namespace {

std::optional<PublishedHole> published_hole(const trade::Screw& screw, std::string_view hole) {
    if (hole == "close")
        return screw.close;
    if (hole == "normal")
        return screw.normal;
    if (hole == "loose")
        return screw.loose;
    return screw.tap ? std::optional(PublishedHole{screw.tap->drill, screw.tap->diameter})
                     : std::nullopt;
}

// A size in no drill index keeps its table's name.
trade::Drill drill_of(const PublishedHole& hole, const Shop& shop) {
    const auto found =
        std::find_if(shop.drills.begin(), shop.drills.end(),
                     [&](const trade::Drill& drill) { return drill.name == hole.drill; });
    return found == shop.drills.end()
               ? trade::Drill{hole.drill, trade::DrillKind::metric, hole.diameter}
               : *found;
}

} // namespace

Jobs::Jobs(std::vector<Question> questions, const Shop& shop) : questions_(std::move(questions)) {
    jobs_.reserve(questions_.size());
    for (const auto& question : questions_)
        jobs_.push_back(make_job(question, shop));
}

Shop shop_with_every_drill(const trade::Tables& tables, trade::Practice practice) {
    practice.drill_indexes = "fraction, number, letter, metric";
    return make_shop(tables, std::move(practice), length::Unit::inch);
}

std::vector<Question> listed_questions(const trade::Tables& tables) {
    std::vector<Question> questions;
    for (const auto& head : tables.every_head()) {
        Question question;
        question.screw = trade::listed_screw(head, tables);
        questions.push_back(std::move(question));
    }
    return questions;
}

std::optional<Question> through(const Question& question, std::string_view hole, const Shop& shop) {
    const auto published = published_hole(question.screw, hole);
    if (!published)
        return std::nullopt;
    Question asked = question;
    asked.hole.kind = HoleKind::drilled;
    asked.hole.text = hole;
    asked.hole.drill = drill_of(*published, shop);
    asked.hole.tapped = hole == "tap";
    return asked;
}

std::vector<Question> with_holes(const std::vector<Question>& questions,
                                 const std::vector<std::string_view>& holes, const Shop& shop) {
    std::vector<Question> all;
    for (const auto& question : questions) {
        all.push_back(question);
        for (const auto hole : holes)
            if (auto asked = through(question, hole, shop))
                all.push_back(std::move(*asked));
    }
    return all;
}

} // namespace match
