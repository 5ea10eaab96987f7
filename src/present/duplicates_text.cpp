// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/duplicates_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "present/text.hpp"

namespace present {

using match::AlikeTools;
using match::Duplicates;

namespace {

constexpr std::size_t k_most_screws = 4;

// The screws of the house list that the group serves.
std::vector<std::string> house_screws(const AlikeTools& group, const DuplicatesNames& names) {
    std::vector<std::string> screws;
    for (const auto question : group.questions)
        if (question < names.house.size())
            screws.push_back(names.house[question]);
    return screws;
}

// Those of the tables, each once whatever the hole.
std::set<std::string> listed_screws(const AlikeTools& group, const DuplicatesNames& names) {
    std::set<std::string> screws;
    for (const auto question : group.questions)
        if (question >= names.house.size())
            screws.insert(names.listed[question - names.house.size()]);
    return screws;
}

std::string paragraph(const std::string& text, std::size_t width) {
    return fmt::format("{}\n", fmt::join(wrapped(text, width), "\n"));
}

std::string serves_text(const AlikeTools& group, const DuplicatesNames& names) {
    auto house = house_screws(group, names);
    const auto all = house.size();
    house.resize(std::min(all, k_most_screws));
    std::string text = all == 0 ? "no house screw" : fmt::format("{}", fmt::join(house, "; "));
    if (all > house.size())
        text += fmt::format("; {} more of the house list", all - house.size());
    const auto listed = listed_screws(group, names).size();
    return text + fmt::format("; {} {} of the tables", listed, listed == 1 ? "screw" : "screws");
}

std::string group_text(const AlikeTools& group, const DuplicatesNames& names, const Style& style,
                       std::size_t width) {
    std::string text = style.strong(group.pilots ? "Pilots" : "Bodies") + " that serve the same:\n";
    for (const auto number : group.tools) {
        const auto lines = wrapped(names.tool(number), width > 4 ? width - 4 : 1);
        for (std::size_t i = 0; i < lines.size(); ++i)
            text += (i == 0 ? "  " : "    ") + lines[i] + '\n';
    }
    return text + paragraph("  For: " + serves_text(group, names) + ".", width) + '\n';
}

std::string numbers(const std::vector<std::int64_t>& list) {
    return fmt::format("{}", fmt::join(list, ", "));
}

std::string can_go_text(const Duplicates& duplicates, std::size_t width) {
    if (duplicates.each_can_go.empty())
        return "No tool can go without a screw being served worse.\n";
    return paragraph("Any one of these can go, and no screw is served worse: " +
                         numbers(duplicates.each_can_go) + ".",
                     width) +
           paragraph("All of these together, and none besides: " +
                         numbers(duplicates.can_go_at_once) + ".",
                     width);
}

} // namespace

std::string duplicates_text(const Duplicates& duplicates, const DuplicatesNames& names,
                            const Style& style, std::size_t width) {
    std::string text;
    for (const auto& group : duplicates.alike)
        text += group_text(group, names, style, width);
    if (text.empty())
        text = "No two tools serve exactly the same screws.\n";
    return text + can_go_text(duplicates, width);
}

Json duplicates_json(const Duplicates& duplicates, const DuplicatesNames& names) {
    Json groups = Json::array();
    for (const auto& group : duplicates.alike)
        groups.push_back({{"kind", group.pilots ? "pilots" : "bodies"},
                          {"tools", group.tools},
                          {"house", house_screws(group, names)},
                          {"listed", listed_screws(group, names)}});
    return {{"format", 1},
            {"alike", groups},
            {"each_can_go", duplicates.each_can_go},
            {"can_go_at_once", duplicates.can_go_at_once}};
}

} // namespace present
