// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/house.hpp"

#include "error/error.hpp"
#include "match/jobs.hpp"

namespace cli {

HouseReader::HouseReader(const trade::Practice& practice, Context& context)
    : practice_(practice), context_(context), screws_(context.tables(), context.own_screws()) {}

match::Question HouseReader::question(const store::HouseScrew& row) const {
    match::Question question;
    question.screw = screws_.find(row.screw, "");
    if (!row.hole.empty())
        question.hole = match::parse_hole(row.hole, question.screw, context_.tables(), practice_,
                                          context_.catalogue().unit());
    return question;
}

match::Question HouseReader::listed(const store::HouseScrew& row) const {
    try {
        return question(row);
    } catch (const error::BadData& problem) {
        throw error::BadData(
            "the house list has '" + row.screw + "': " + problem.what(),
            "take it off with `counterpart house drop`, or see `counterpart check`");
    }
}

std::vector<match::Asked> house_asked(const trade::Practice& practice, Context& context) {
    const HouseReader reader(practice, context);
    std::vector<match::Asked> asked;
    for (const auto& row : store::house(context.catalogue()))
        asked.push_back({row.screw, row.hole, reader.listed(row)});
    if (asked.empty())
        throw error::NoSuchRecord("the house list is empty",
                                  "add screws with `counterpart house add`");
    return asked;
}

std::vector<match::Asked> listed_asked(Context& context) {
    const auto questions = match::listed_questions(context.tables());
    std::vector<match::Asked> asked;
    for (const auto& series : context.tables().series())
        for (const auto& question : questions)
            if (question.screw.series == series.name)
                asked.push_back({question.screw.name + " " + series.name, "", question});
    return asked;
}

} // namespace cli
