// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The matcher, asked about a rack in which this is the only body, or the only pilot.
#include "cli/serves.hpp"

#include <algorithm>
#include <set>

#include "cli/house.hpp"
#include "match/matcher.hpp"
#include "match/shelf.hpp"
#include "store/lists.hpp"

namespace cli {

namespace {

// The catalogue, less the other tools of the same kind; for a pilot, less the bodies that take
// none.
class OneToolRack : public trade::RackView {
  public:
    // `all` must outlive this.
    OneToolRack(const trade::Rack& all, const Tool& tool) : RackView(all) {
        if (const auto* body = std::get_if<trade::Body>(&tool))
            body_ = body->number;
        else
            pilot_ = std::get<record::PilotRecord>(tool).number;
    }
    void by_cutter(trade::PilotKind kind, const trade::Window& window, trade::Detail detail,
                   const trade::SeeBody& see) const override {
        RackView::by_cutter(kind, window, detail, only_wanted(see));
    }
    void by_pilot(const trade::Window& window, trade::Detail detail,
                  const trade::SeeBody& see) const override {
        RackView::by_pilot(window, detail, only_wanted(see));
    }
    void pilots_in(const trade::Window& window, trade::Detail detail,
                   const trade::SeePilot& see) const override {
        RackView::pilots_in(window, detail, [&](const trade::PilotFacts& pilot) {
            if (pilot_ == 0 || pilot.number == pilot_)
                see(pilot);
        });
    }

  private:
    // The one body, or those that the one pilot may go in.
    [[nodiscard]] trade::SeeBody only_wanted(const trade::SeeBody& see) const {
        return [this, &see](const trade::BodyFacts& body) {
            if (pilot_ == 0 ? body.number == body_ : trade::may_take_pilot(body))
                see(body);
        };
    }

    std::int64_t body_ = 0;
    std::int64_t pilot_ = 0; // 0: the tool is a body
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
bool serves(const match::Ranked& answer, const Tool& tool) {
    if (answer.kind() == match::AnswerKind::closest)
        return false;
    const auto* pilot = std::get_if<record::PilotRecord>(&tool);
    return pilot == nullptr ||
           (answer.triple.pilot && answer.triple.pilot->number == pilot->number);
}

} // namespace

std::vector<Served> served_screws(const Tool& tool, Context& context) {
    const match::Shop shop =
        match::make_shop(context.tables(), context.practice(), context.catalogue().unit());
    const HouseReader reader(shop.practice, context);
    auto screws = store::house(context.catalogue());
    if (screws.empty())
        screws = listed_screws(tool, context.tables());
    const auto all = context.rack();
    const OneToolRack one(all, tool);
    const match::RackFor many(one, screws.size());
    const match::Matcher matcher(many.rack(), shop, context.unit());
    const auto wanted = [&tool](const match::Ranked& answer) { return serves(answer, tool); };
    std::vector<Served> served;
    for (const store::HouseScrew& screw : screws) {
        const auto question = reader.listed(screw);
        if (auto answer = matcher.first_that(question, wanted))
            served.push_back({screw.screw, screw.hole, std::move(*answer)});
    }
    std::stable_sort(served.begin(), served.end(), [](const Served& a, const Served& b) {
        return a.answer.kind < b.answer.kind;
    });
    return served;
}

} // namespace cli
