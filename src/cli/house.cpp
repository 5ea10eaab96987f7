// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/house.hpp"

#include "error/error.hpp"
#include "match/jobs.hpp"

namespace cli {

match::Question house_question(const store::HouseScrew& row,
                               const std::vector<trade::OwnScrew>& own,
                               const trade::Practice& practice, Context& context) {
    match::Question question;
    question.screw = trade::resolve_screw(row.screw, "", context.tables(), own);
    question.below = practice.below_flush;
    if (!row.hole.empty())
        question.hole = match::parse_hole(row.hole, question.screw, context.tables(), practice,
                                          context.catalogue().unit());
    return question;
}

std::vector<match::Asked> house_asked(const trade::Practice& practice, Context& context) {
    const auto own = context.own_screws();
    std::vector<match::Asked> asked;
    for (const auto& row : store::house(context.catalogue()))
        asked.push_back({row.screw, row.hole, house_question(row, own, practice, context)});
    if (asked.empty())
        throw error::NoSuchRecord("the house list is empty",
                                  "add screws with `counterpart house add`");
    return asked;
}

std::vector<match::Asked> listed_asked(const trade::Practice& practice, Context& context) {
    const auto questions = match::listed_questions(context.tables(), practice);
    std::vector<match::Asked> asked;
    for (const auto& series : context.tables().series())
        for (const auto& question : questions)
            if (question.screw.series == series.name)
                asked.push_back({question.screw.name + " " + series.name, "", question});
    return asked;
}

} // namespace cli
