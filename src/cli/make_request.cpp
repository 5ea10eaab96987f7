// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/make_request.hpp"

#include "cli/bars.hpp"
#include "cli/house.hpp"
#include "error/error.hpp"
#include "store/lists.hpp"

namespace cli {

namespace {

std::vector<store::HouseScrew> screws_of(const MakeRequest& request, Context& context) {
    if (request.screws.empty()) {
        auto house = store::house(context.catalogue());
        if (house.empty())
            throw error::NoSuchRecord("the house list is empty",
                                      "add screws with `counterpart house add`, or name them with "
                                      "--for");
        for (auto& row : house)
            if (!request.hole.empty())
                row.hole = request.hole;
        return house;
    }
    std::vector<store::HouseScrew> screws;
    for (const auto& screw : request.screws)
        screws.push_back({screw, request.hole, {}});
    return screws;
}

} // namespace

make::MakeList make_list_for(const MakeRequest& request, Context& context) {
    const auto practice = context.practice();
    const HouseReader reader(practice, context);
    std::vector<make::Wish> wishes;
    for (const auto& row : screws_of(request, context))
        wishes.push_back({row.screw + (row.hole.empty() ? "" : ", hole " + row.hole),
                          request.screws.empty() ? reader.listed(row) : reader.question(row)});
    const auto shop = match::make_shop(context.tables(), practice, context.catalogue().unit());
    return make::make_list(wishes, shop, context.rack(), context.unit(), request.options);
}

TurningPlan plan_for(const make::MakeList& list, const make::Treatment& treatment,
                     Context& context) {
    const auto practice = context.practice();
    const auto bars = bars_of(context);
    TurningPlan plan;
    for (const auto& piece : list.pieces)
        plan.specs.push_back(make::specify(piece, practice, bars, context.unit(), treatment));
    plan.bars = make::plan_stock(list.pieces, plan.specs, make::k_usual_kerf, make::k_usual_grip);
    return plan;
}

} // namespace cli
