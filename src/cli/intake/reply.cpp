// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One paragraph a fact, each left out when there is nothing to say.
#include "cli/intake/reply.hpp"

#include <algorithm>

#include "cli/filter.hpp"
#include "cli/intake/alike.hpp"
#include "cli/intake/phrase.hpp"
#include "cli/serves.hpp"
#include "present/text.hpp"
#include "store/tools.hpp"

namespace cli::intake {

namespace {

constexpr std::size_t k_most_named = 4;
constexpr std::size_t k_indent = 2;

void add(std::string& text, const std::string& line, const Context& context) {
    for (const std::string& part :
         present::wrapped(present::safe(line), context.width() - k_indent))
        text += std::string(k_indent, ' ') + part + '\n';
}

std::string listed(const std::vector<std::string>& names) {
    std::string text;
    for (std::size_t i = 0; i < std::min(names.size(), k_most_named); ++i)
        text += (i == 0 ? "" : ", ") + names[i];
    if (names.size() > k_most_named)
        text += " and " + std::to_string(names.size() - k_most_named) + " more";
    return text;
}

std::string_view serves_how(match::AnswerKind kind) {
    switch (kind) {
    case match::AnswerKind::ready:
        return "ready for ";
    case match::AnswerKind::after_work:
        return "after work for ";
    case match::AnswerKind::measure_first:
        return "once measured for ";
    case match::AnswerKind::make_pilot:
    case match::AnswerKind::closest:
        break;
    }
    return "with a pilot made for ";
}

// `ready for A, B; once measured for C`.
std::string served_text(const std::vector<Served>& served) {
    std::string text;
    for (const auto kind : {match::AnswerKind::ready, match::AnswerKind::after_work,
                            match::AnswerKind::measure_first, match::AnswerKind::make_pilot}) {
        std::vector<std::string> names;
        for (const Served& one : served)
            if (one.answer.kind == kind)
                names.push_back(one.screw);
        names.erase(std::unique(names.begin(), names.end()), names.end());
        if (!names.empty())
            text += (text.empty() ? "" : "; ") + std::string(serves_how(kind)) + listed(names);
    }
    return text;
}

// The tool is stored by now: what cannot be worked out must not look as if it were not.
std::string served_line(const Tool& tool, Context& context) {
    try {
        const std::string served = served_text(served_screws(tool, context));
        return served.empty() ? "serves no screw that was looked at" : served;
    } catch (const error::Error& problem) {
        return std::string("which screws it serves cannot be said: ") + problem.what();
    }
}

std::string in_words(const std::string& columns) {
    std::string text;
    for (std::size_t at = 0; at < columns.size();) {
        const std::size_t end = std::min(columns.find(", ", at), columns.size());
        text += (text.empty() ? "" : ", ") + label_of(columns.substr(at, end - at));
        at = end + 2;
    }
    return text;
}

template <class Record>
void describe(std::string& text, const Record& record, const record::Columns<Record>& columns,
              const Line& line, const Context& context, length::Unit stored) {
    const auto said = [&](const std::string& name) {
        return name != "number" && line.taken.count(name) == 0;
    };
    const auto taken = [&](const std::string& name) { return line.taken.count(name) > 0; };
    text += context.style().strong("Number " + std::to_string(record.number)) + '\n';
    add(text, (line.pilot ? "loose pilot, " : "") + phrases(record, columns, stored, said),
        context);
    const std::string over = phrases(record, columns, stored, taken);
    if (!over.empty())
        add(text, "taken over: " + over, context);
}

// Tools that are where this one's place was counted up to.
std::vector<std::string> already_there(const Tool& tool, const Line& line,
                                       const store::File& file) {
    std::vector<std::string> lines;
    const auto [number, place] =
        std::visit([](const auto& record) { return std::pair(record.number, record.place); }, tool);
    if (line.taken.count("place") == 0 || next_place(place) == place || line.next.one_place)
        return lines;
    const auto look = [&, number = number, place = place](const auto& others) {
        for (const auto& other : others)
            if (other.place == place && other.number != number && !other.retired)
                lines.push_back(one_line(other, file.unit()));
    };
    look(store::bodies(file));
    look(store::pilots(file));
    return lines;
}

} // namespace

std::string reply(const Tool& tool, const Line& line, Context& context) {
    const store::File& file = context.catalogue();
    std::string text;
    if (const auto* body = std::get_if<trade::Body>(&tool))
        describe(text, *body, record::body_columns(), line, context, file.unit());
    else
        describe(text, std::get<record::PilotRecord>(tool), record::pilot_columns(), line, context,
                 file.unit());
    add(text, served_line(tool, context), context);
    for (const std::string& other : already_there(tool, line, file))
        add(text, "in the same place: " + other, context);
    for (const Tool& other : alike(tool, file))
        add(text, "perhaps the same as " + one_line(other, file.unit()), context);
    const std::string missing =
        std::visit([](const auto& record) { return unknowns(record); }, tool);
    if (!missing.empty())
        add(text, "not known, and decides fits: " + in_words(missing), context);
    return text;
}

} // namespace cli::intake
