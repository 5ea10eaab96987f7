// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/to_measure_text.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "length/print.hpp"
#include "match/say.hpp"
#include "present/table.hpp"

namespace present {

using match::Quantity;
using match::ToMeasure;

namespace {

std::string name_of(const match::Asked& asked) {
    return asked.screw + (asked.hole.empty() ? "" : ", hole " + asked.hole);
}

// What to do, in one line.
std::string task(const ToMeasure& one, const std::vector<match::Asked>& asked) {
    switch (one.what) {
    case Quantity::cut_dia:
        return fmt::format("measure the cutter of {}", one.tool);
    case Quantity::pilot_dia:
        return fmt::format("measure the pilot of {}", one.tool);
    case Quantity::bore:
        return fmt::format("measure the bore of {}", one.tool);
    case Quantity::reach:
        return fmt::format("measure the reach of {}", one.tool);
    case Quantity::trial:
        return fmt::format("try pilot {} in body {}", one.tool, one.body);
    case Quantity::head: {
        const auto& of = one.settles.empty() ? one.helps : one.settles;
        return "measure the head of " + asked[of.front()].screw;
    }
    }
    return {};
}

std::string names(const std::vector<std::size_t>& places, const std::vector<match::Asked>& asked) {
    std::vector<std::string> list;
    for (const auto place : places)
        list.push_back(name_of(asked[place]));
    return fmt::format("{}", fmt::join(list, "; "));
}

std::string number(std::int64_t tool) {
    return tool == 0 ? std::string() : std::to_string(tool);
}

std::string known(const ToMeasure& one, length::Unit unit) {
    if (one.what == Quantity::trial)
        return "not tried";
    return one.known ? match::say(*one.known, unit) : "nothing";
}

} // namespace

std::string to_measure_text(const std::vector<ToMeasure>& list,
                            const std::vector<match::Asked>& asked, const ToMeasureLayout& layout) {
    Table table({{"settles", true}, {"helps", true}, {"do"}, {"known"}, {"screws"}});
    std::size_t helpers = 0;
    for (const auto& one : list) {
        if (one.settles.empty() && !layout.helpers) {
            ++helpers;
            continue;
        }
        table.add({std::to_string(one.settles.size()),
                   layout.helpers ? std::to_string(one.helps.size()) : "", task(one, asked),
                   known(one, layout.unit),
                   names(one.settles.empty() ? one.helps : one.settles, asked)});
    }
    std::string text = table.empty()
                           ? "No single measurement or trial could make a house screw ready.\n"
                           : table.text(layout.width, layout.style);
    if (!table.empty())
        text +=
            "\nSettles: so many house screws could be ready, or after work, once this is known.\n";
    if (helpers > 0)
        text += fmt::format("{} more would help, with others; --all shows them.\n", helpers);
    return text;
}

Json to_measure_json(const std::vector<ToMeasure>& list, const std::vector<match::Asked>& asked) {
    const auto named = [&](const std::vector<std::size_t>& places) {
        Json names = Json::array();
        for (const auto place : places)
            names.push_back(name_of(asked[place]));
        return names;
    };
    Json rows = Json::array();
    for (const auto& one : list)
        rows.push_back({{"tool", one.tool == 0 ? Json(nullptr) : Json(one.tool)},
                        {"body", one.body == 0 ? Json(nullptr) : Json(one.body)},
                        {"what", match::to_text(one.what)},
                        {"known_mm", range_mm(one.known)},
                        {"settles", named(one.settles)},
                        {"helps", named(one.helps)},
                        {"do", task(one, asked)}});
    return {{"format", 1}, {"to_measure", rows}};
}

std::vector<std::vector<std::string>> to_measure_rows(const std::vector<ToMeasure>& list,
                                                      const std::vector<match::Asked>& asked,
                                                      length::Unit unit) {
    std::vector<std::vector<std::string>> rows{
        {"settles", "helps", "tool", "body", "what", "known", "do", "settled", "helped"}};
    for (const auto& one : list)
        rows.push_back({std::to_string(one.settles.size()), std::to_string(one.helps.size()),
                        number(one.tool), number(one.body), std::string(match::to_text(one.what)),
                        one.known ? length::to_text(*one.known, unit) : "", task(one, asked),
                        names(one.settles, asked), names(one.helps, asked)});
    return rows;
}

} // namespace present
