// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The matcher, asked about a rack in which this is the only body, or the only pilot.
#include "cli/serves.hpp"

#include <algorithm>
#include <set>

#include "cli/house.hpp"
#include "match/answer.hpp"
#include "store/lists.hpp"

namespace cli {

namespace {

// The catalogue, less the other tools of the same kind; for a pilot, less the bodies that take
// none.
class OneToolRack : public trade::Rack {
  public:
    OneToolRack(const trade::Rack& all, const Tool& tool)
        : bodies_(all.bodies()), pilots_(all.pilots()), trials_(all.trials()) {
        if (const auto* body = std::get_if<trade::Body>(&tool)) {
            std::erase_if(bodies_, [&](const auto& other) { return other.number != body->number; });
            return;
        }
        const std::int64_t number = std::get<record::PilotRecord>(tool).number;
        std::erase_if(pilots_, [&](const auto& other) { return other.number != number; });
        std::erase_if(bodies_, [](const auto& other) { return !trade::may_take_pilot(other); });
    }
    [[nodiscard]] std::vector<trade::Body> bodies() const override { return bodies_; }
    [[nodiscard]] std::vector<trade::Pilot> pilots() const override { return pilots_; }
    [[nodiscard]] std::vector<trade::Trial> trials() const override { return trials_; }

  private:
    std::vector<trade::Body> bodies_;
    std::vector<trade::Pilot> pilots_;
    std::vector<trade::Trial> trials_;
};

const std::vector<std::string>& usual_sizes() {
    static const std::vector<std::string> sizes = {
        "#0",    "#1",    "#2",   "#3",  "#4",   "#5",  "#6",  "#8",  "#10", "#12",   "1/4",
        "5/16",  "3/8",   "7/16", "1/2", "9/16", "5/8", "3/4", "7/8", "1",   "1-1/8", "1-1/4",
        "1-3/8", "1-1/2", "M1.6", "M2",  "M2.5", "M3",  "M4",  "M5",  "M6",  "M8",    "M10",
        "M12",   "M14",   "M16",  "M18", "M20",  "M22", "M24", "M30", "M36"};
    return sizes;
}

// Whether the head could go in this cutter and would not be lost in it, or the pilot could run in
// the screw's hole. Generous: the matcher decides.
bool about_the_size(const trade::Head& head, const Tool& tool) {
    if (const auto* body = std::get_if<trade::Body>(&tool))
        return body->cut_dia && head.head_dia.lo < body->cut_dia->range.hi &&
               head.head_dia.hi * 2 > body->cut_dia->range.lo;
    const auto& pilot = std::get<record::PilotRecord>(tool).pilot_dia;
    return pilot && head.screw_dia.lo * 3 < pilot->range.hi * 4 &&
           head.screw_dia.hi * 4 > pilot->range.lo * 3;
}

// These series answer only by name.
std::set<std::string> withdrawn_series(const trade::Tables& tables) {
    std::set<std::string> names;
    for (const trade::Series& series : tables.series())
        if (series.withdrawn)
            names.insert(series.name);
    return names;
}

std::vector<store::HouseScrew> listed_screws(const Tool& tool, const trade::Tables& tables) {
    const std::set<std::string> withdrawn = withdrawn_series(tables);
    std::vector<store::HouseScrew> screws;
    for (const std::string& size : usual_sizes()) {
        for (const trade::Head& head : tables.heads(size)) {
            const bool form = head.form == "socket head cap" || head.form == "fillister";
            if (!form || !about_the_size(head, tool) || withdrawn.count(head.series) > 0)
                continue;
            const std::string name = size + ' ' + head.form;
            const bool there = std::any_of(screws.begin(), screws.end(),
                                           [&](const auto& s) { return s.screw == name; });
            if (!there)
                screws.push_back({name, "", ""});
        }
    }
    return screws;
}

// Whether this tool has a part in the answer, and the answer is of any use.
bool serves(const match::Answer& answer, const Tool& tool) {
    if (answer.kind == match::AnswerKind::closest)
        return false;
    const auto* pilot = std::get_if<record::PilotRecord>(&tool);
    return pilot == nullptr || answer.pilot == pilot->number;
}

std::optional<match::Answer> answer_for(const store::HouseScrew& wanted, const Tool& tool,
                                        const OneToolRack& rack, const match::Shop& shop,
                                        const std::vector<trade::OwnScrew>& own, Context& context) {
    const auto question = house_question(wanted, own, shop.practice, context);
    const match::Report report = match::match(question, shop, rack, context.unit(), 0);
    const auto found = std::find_if(report.answers.begin(), report.answers.end(),
                                    [&](const auto& answer) { return serves(answer, tool); });
    return found == report.answers.end() ? std::nullopt : std::optional(*found);
}

} // namespace

std::vector<Served> served_screws(const Tool& tool, Context& context) {
    const OneToolRack rack(context.rack(), tool);
    const match::Shop shop =
        match::make_shop(context.tables(), context.practice(), context.catalogue().unit());
    const auto own = context.own_screws();
    auto screws = store::house(context.catalogue());
    if (screws.empty())
        screws = listed_screws(tool, context.tables());
    std::vector<Served> served;
    for (const store::HouseScrew& wanted : screws) {
        const auto answer = answer_for(wanted, tool, rack, shop, own, context);
        if (answer)
            served.push_back({wanted.screw, wanted.hole, *answer});
    }
    std::stable_sort(served.begin(), served.end(), [](const Served& a, const Served& b) {
        return a.answer.kind < b.answer.kind;
    });
    return served;
}

} // namespace cli
