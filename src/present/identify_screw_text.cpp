// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <fmt/format.h>

#include <algorithm>

#include "present/identify_text.hpp"
#include "present/identify_words.hpp"
#include "present/table.hpp"
#include "present/text.hpp"

namespace present {

using match::HeadMatch;
using match::ScrewIdentity;
using match::Verdict;

namespace {

constexpr std::size_t k_most_left = 20;
constexpr std::size_t k_most_alike = 12; // left; with more, another measurement comes first

std::string paragraph(const std::string& text, const IdentifyLayout& layout) {
    return fmt::format("{}\n", fmt::join(wrapped(text, layout.width), "\n"));
}

std::string name_of(const HeadMatch& match) {
    return fmt::format("{} {}, {}", match.head.size.text, match.head.form, match.head.series);
}

bool one_size(const ScrewIdentity& identity) {
    const auto& first = identity.left.front().head.size.text;
    return std::all_of(identity.left.begin(), identity.left.end(),
                       [&](const HeadMatch& match) { return match.head.size.text == first; });
}

std::string conclusion(const ScrewIdentity& identity, const IdentifyLayout& layout) {
    const auto& left = identity.left;
    if (left.empty())
        return "No head of the tables has these figures.\n";
    if (left.size() == 1)
        return paragraph("It is " +
                             std::string(left[0].result() == Verdict::pass ? "" : "perhaps ") +
                             name_of(left[0]) + ".",
                         layout);
    std::vector<std::string> names;
    for (const auto& match : left)
        names.push_back(name_of(match));
    if (left.size() > k_most_alike)
        return fmt::format("Cannot tell: {} heads of the tables have these figures.\n",
                           left.size());
    return paragraph(fmt::format("Cannot tell which{}: ", one_size(identity) ? " series" : "") +
                         fmt::format("{}", fmt::join(names, "; ")) + ".",
                     layout);
}

// The decider's values, each with the heads that have it.
std::string decider_values(const ScrewIdentity& identity) {
    std::vector<std::pair<std::string, std::vector<std::string>>> by_value;
    for (std::size_t i = 0; i < identity.left.size(); ++i) {
        const auto& value = identity.decider->values[i];
        auto found = std::find_if(by_value.begin(), by_value.end(),
                                  [&](const auto& entry) { return entry.first == value; });
        if (found == by_value.end())
            found = by_value.insert(found, {value, {}});
        found->second.push_back(identity.left[i].head.series);
    }
    std::vector<std::string> parts;
    for (const auto& [value, series] : by_value)
        parts.push_back(
            fmt::format("{} is {}", value.empty() ? "none" : value, fmt::join(series, ", ")));
    return fmt::format("{}", fmt::join(parts, "; "));
}

std::string decider_text(const ScrewIdentity& identity, const IdentifyLayout& layout) {
    if (identity.left.size() < 2)
        return {};
    if (!identity.decider)
        return "Nothing that is measured here tells them apart.\n";
    const auto& decider = *identity.decider;
    const bool all = decider.apart == decider.pairs;
    std::string text = fmt::format("{} the {}", all ? "Decides:" : "Tells most:", decider.what);
    if (identity.left.size() <= k_most_alike)
        text += ": " + decider_values(identity);
    return paragraph(text + ".", layout);
}

std::string alike_text(const ScrewIdentity& identity, const IdentifyLayout& layout) {
    if (identity.left.size() > k_most_alike || !identity.decider)
        return {};
    std::string text;
    for (const auto& group : identity.alike) {
        std::vector<std::string> names;
        for (const auto at : group)
            names.push_back(name_of(identity.left[at]));
        text += paragraph(
            "No measurement tells apart: " + fmt::format("{}", fmt::join(names, "; ")) + ".",
            layout);
    }
    return text;
}

// Where any figure conflicts, only those that do.
std::string figures_text(const HeadMatch& match) {
    const bool conflicts = match.result() == Verdict::fail;
    std::vector<std::string> parts;
    for (const auto& figure : match.figures) {
        if (conflicts && figure.result != Verdict::fail)
            continue;
        const auto* says = figure.result == Verdict::pass   ? "fits"
                           : figure.result == Verdict::fail ? "not"
                                                            : "may fit";
        parts.push_back(fmt::format("{} {} {} {}", figure.rule, figure.have, says, figure.need));
    }
    return fmt::format("{}", fmt::join(parts, "; "));
}

std::string table_of(const char* title, const std::vector<HeadMatch>& rows, std::size_t most,
                     const IdentifyLayout& layout) {
    if (rows.empty())
        return {};
    Table table({{title}, {"series"}, {"measured, and the table"}});
    const auto shown = std::min(rows.size(), most);
    for (std::size_t i = 0; i < shown; ++i)
        table.add({rows[i].head.size.text + " " + rows[i].head.form,
                   rows[i].head.series + (rows[i].withdrawn ? " (withdrawn)" : ""),
                   figures_text(rows[i])});
    auto text = "\n" + table.text(layout.width, layout.style);
    if (shown < rows.size())
        text += fmt::format("And {} more; --json has them all.\n", rows.size() - shown);
    return text;
}

} // namespace

std::string screw_identity_text(const ScrewIdentity& identity, const IdentifyLayout& layout) {
    return conclusion(identity, layout) + decider_text(identity, layout) +
           alike_text(identity, layout) + table_of("agrees", identity.left, k_most_left, layout) +
           table_of("conflicts", identity.conflict, identity.conflict.size(), layout);
}

} // namespace present
