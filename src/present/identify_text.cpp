// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/identify_text.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "match/say.hpp"
#include "present/identify_words.hpp"
#include "present/table.hpp"
#include "present/text.hpp"
#include "trade/sureness.hpp"

namespace present {

using match::say;
using match::Surety;
using match::ToolIdentity;
using match::ToolUse;
using match::Verdict;

namespace {

constexpr std::size_t k_usual_uses = 12;
constexpr std::size_t k_most_uses = 30; // where so many are equally likely
constexpr std::size_t k_most_published = 6;

std::string paragraph(const std::string& text, const IdentifyLayout& layout) {
    return fmt::format("{}\n", fmt::join(wrapped(text, layout.width), "\n"));
}

std::string capital(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

bool holes_agree(const ToolIdentity& identity) {
    const auto first = hole_text(identity.uses.front());
    return std::all_of(identity.uses.begin(),
                       identity.uses.begin() + static_cast<std::ptrdiff_t>(identity.best),
                       [&](const ToolUse& use) { return hole_text(use) == first; });
}

std::string conclusion(const ToolIdentity& identity, const IdentifyLayout& layout) {
    if (identity.uses.empty())
        return "It serves no screw of the tables.\n";
    const auto& first = identity.uses.front();
    const auto surety = std::string(match::to_text(first.surety));
    const auto sizes = match::likely_sizes(identity);
    std::string text = capital(surety) + ": ";
    if (sizes.size() > 1)
        return paragraph(text + "cannot tell one size: " + sizes_text(identity) + ".", layout);
    text += sizes.front();
    if (const auto hole = hole_text(first); !hole.empty())
        text += holes_agree(identity) ? ", " + hole : ", holes as listed below";
    if (identity.best == 1)
        return paragraph(text + ", " + heads_text(identity) + ".", layout);
    return paragraph(text + ".", layout) +
           paragraph("Cannot tell which head: " + heads_text(identity) + ".", layout);
}

std::string short_size(length::Length size, length::Unit unit) {
    const auto fraction = unit == length::Unit::inch ? length::as_fraction(size) : std::string();
    return fraction.empty() ? length::to_text(size, unit, unit == length::Unit::inch ? 4 : 2)
                            : fraction;
}

// A nominal, or a band of them.
std::string listed_size(const length::MaybeRange& range, length::Unit unit) {
    if (!range)
        return {};
    const auto lo = short_size(range->lo, unit);
    return range->lo == range->hi ? lo : lo + " to " + short_size(range->hi, unit);
}

bool from_memory(const match::Likeness& row) {
    return row.origin.confidence == "memory";
}

std::string published_text(const ToolIdentity& identity, const IdentifyLayout& layout) {
    if (identity.published.empty())
        return "\nNo listed tool has these figures.\n";
    Table table(
        {{"looks like"}, {"screw"}, {"hole"}, {"cutter"}, {"pilot"}, {"agrees"}, {"confidence"}});
    const auto shown = std::min(identity.published.size(), k_most_published);
    for (std::size_t i = 0; i < shown; ++i) {
        const auto& row = identity.published[i];
        table.add({row.name, row.size, row.hole, listed_size(row.cut_dia, layout.unit),
                   listed_size(row.pilot_dia, layout.unit),
                   row.result == Verdict::pass ? "yes" : "may",
                   std::string(trade::how_sure_shortly(row.origin.confidence))});
    }
    auto text = "\n" + table.text(layout.width, layout.style);
    if (shown < identity.published.size())
        text += fmt::format("And {} more.\n", identity.published.size() - shown);
    if (std::any_of(identity.published.begin(), identity.published.end(), from_memory))
        text += fmt::format("not checked: {}.\n", trade::how_sure("memory"));
    return text;
}

std::string not_sure_of(const std::vector<match::Reason>& reasons) {
    std::vector<std::string> rules;
    for (const auto& reason : reasons)
        if (reason.result != Verdict::pass)
            rules.push_back(reason.rule);
    return fmt::format("{}", fmt::join(rules, ", "));
}

std::string uses_text(const ToolIdentity& identity, const IdentifyLayout& layout) {
    if (identity.uses.empty())
        return {};
    Table table(
        {{"surety"}, {"screw"}, {"series"}, {"hole"}, {"drill"}, {"size"}, {"not sure of"}});
    const auto wanted = std::clamp(identity.best, k_usual_uses, k_most_uses);
    const auto shown = std::min(identity.uses.size(), wanted);
    for (std::size_t i = 0; i < shown; ++i) {
        const auto& use = identity.uses[i];
        table.add({std::string(match::to_text(use.surety)), use.screw,
                   use.series + (use.withdrawn ? " (withdrawn)" : ""), use.hole,
                   use.drill ? use.drill->name : "",
                   use.class_of_size ? std::string(match::to_text(*use.class_of_size)) : "",
                   not_sure_of(use.reasons)});
    }
    auto text = "\n" + table.text(layout.width, layout.style);
    if (shown < identity.uses.size())
        text += fmt::format("And {} more; --json has them all.\n", identity.uses.size() - shown);
    return text;
}

std::string reasons_text(const std::vector<match::Reason>& reasons, const IdentifyLayout& layout) {
    Table table({{"rule"}, {"result"}, {"needs"}, {"has"}});
    for (const auto& reason : reasons)
        table.add(
            {reason.rule, std::string(match::to_text(reason.result)), reason.need, reason.have});
    return table.text(layout.width, layout.style);
}

std::string why_text(const ToolIdentity& identity, const IdentifyLayout& layout) {
    const auto explained = layout.reasons ? identity.uses.size() : std::size_t{1};
    std::string text;
    for (std::size_t i = 0; i < std::min(explained, identity.uses.size()); ++i) {
        const auto& use = identity.uses[i];
        const auto hole = hole_text(use);
        text += fmt::format("\nWhy {}, {}{}:\n", use.screw, use.series,
                            hole.empty() ? "" : ", " + hole) +
                reasons_text(use.reasons, layout);
    }
    return text;
}

// The listed tool that names the likely screw, else the first.
std::string looks_like(const ToolIdentity& identity) {
    for (const auto& row : identity.published)
        if (!identity.uses.empty() && row.size == identity.uses.front().size)
            return row.name;
    return identity.published.empty() ? std::string() : identity.published.front().name;
}

} // namespace

std::string tool_identity_text(const ToolIdentity& identity, const IdentifyLayout& layout) {
    return conclusion(identity, layout) + published_text(identity, layout) +
           uses_text(identity, layout) + why_text(identity, layout);
}

std::string identified_tools_text(const std::vector<IdentifiedTool>& tools,
                                  const IdentifyLayout& layout) {
    if (tools.empty())
        return "Every tool's kind is known, and every tool is marked with its size.\n";
    Table table({{"tool", true}, {"what"}, {"looks like"}, {"surety"}, {"screw"}, {"head"}});
    for (const auto& tool : tools) {
        const auto& identity = tool.identity;
        const bool any = !identity.uses.empty();
        const bool one = any && match::likely_sizes(identity).size() == 1;
        table.add({std::to_string(tool.number), tool.about, looks_like(identity),
                   any ? std::string(match::to_text(identity.uses.front().surety)) : "none",
                   any ? sizes_text(identity) : "", one ? forms_text(identity) : ""});
    }
    return table.text(layout.width, layout.style);
}

} // namespace present
