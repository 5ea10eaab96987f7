// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/screw_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "length/print.hpp"
#include "match/say.hpp"
#include "present/table.hpp"
#include "present/text.hpp"
#include "trade/sureness.hpp"

namespace present {

using match::say;

namespace {

std::string lines(const std::string& text, std::size_t width) {
    return fmt::format("{}\n", fmt::join(wrapped(text, width), "\n"));
}

// Numbered sources, so that a table stays narrow and still says where each row is from.
class Sources {
  public:
    std::string mark(const trade::Origin& origin) {
        const auto text = fmt::format(
            "{}{}", origin.source,
            origin.confidence.empty() ? ""
                                      : fmt::format(" ({})", trade::how_sure(origin.confidence)));
        for (std::size_t i = 0; i < texts_.size(); ++i)
            if (texts_[i] == text)
                return fmt::format("[{}]", i + 1);
        texts_.push_back(text);
        return fmt::format("[{}]", texts_.size());
    }

    [[nodiscard]] std::string list(std::size_t width) const {
        std::string text;
        for (std::size_t i = 0; i < texts_.size(); ++i)
            text += lines(fmt::format("[{}] {}", i + 1, safe(texts_[i])), width);
        return text;
    }

  private:
    std::vector<std::string> texts_;
};

std::string heads_text(const trade::Screw& screw, length::Unit unit, const Style& style,
                       std::size_t width, Sources& sources) {
    Table table(
        {{"head by series"}, {"pitch"}, {"diameter", true}, {"height", true}, {"drive"}, {"from"}});
    for (const auto& head : screw.heads)
        table.add({head.series + (head.series == screw.series ? " *" : ""),
                   fmt::format("{}", fmt::join(head.pitches, ", ")),
                   length::to_text(head.head_dia, unit) + (head.head_min_note.empty() ? "" : " d"),
                   length::to_text(head.head_height_max, unit), head.drive + " " + head.drive_size,
                   sources.mark(head.origin)});
    return table.empty() ? std::string() : table.text(width, style) + "\n";
}

std::string legend(const trade::Screw& screw, std::size_t width) {
    std::string text;
    if (screw.heads.size() > 1 && !screw.series_said)
        text += lines("* answers when no series is named: the larger head.", width);
    for (const auto& head : screw.heads)
        if (!head.head_min_note.empty())
            text +=
                lines("d  " + head.series + ", least diameter " + head.head_min_note + ".", width);
    return text.empty() ? text : text + "\n";
}

void add_hole(Table& table, const char* what, const std::optional<trade::Clearance::Hole>& hole,
              const std::string& from, length::Unit unit) {
    if (hole)
        table.add({what, hole->drill, length::to_text(hole->diameter, unit), from});
}

// `tap, pitch 18`, `tap, pitch 20 BSW`, `tap, thread 5/16-18` of a shoulder screw
std::string tap_name(const trade::Screw& screw) {
    const auto& tap = *screw.tap;
    const bool metric = screw.is_metric();
    if (!screw.thread.empty())
        return fmt::format("tap, thread {}{}{}", screw.thread, metric ? "x" : "-", tap.pitch);
    const bool whitworth = tap.thread == "BSW" || tap.thread == "BSF";
    return fmt::format("tap, pitch {}{}", tap.pitch, whitworth ? " " + tap.thread : "");
}

std::string holes_text(const trade::Screw& screw, length::Unit unit, const Style& style,
                       std::size_t width, Sources& sources) {
    Table table({{"hole"}, {"drill"}, {"diameter", true}, {"from"}});
    add_hole(table, "close", screw.close, screw.clearance_system, unit);
    add_hole(table, "normal", screw.normal, screw.clearance_system, unit);
    add_hole(table, "loose", screw.loose, screw.clearance_system, unit);
    if (screw.tap)
        table.add({tap_name(screw), screw.tap->drill, length::to_text(screw.tap->diameter, unit),
                   sources.mark(screw.tap->origin)});
    return table.empty() ? std::string() : table.text(width, style) + "\n";
}

// Whether some table says which counterbore or spotface this head has, or which tool is its own;
// a least cutter only follows from the head.
bool is_published(const trade::Screw& screw) {
    return std::any_of(screw.counterbores.begin(), screw.counterbores.end(), [](const auto& row) {
        return row.kind == "recommended" || row.kind == "spotface" || row.kind == "tool";
    });
}

std::string taken_from_head(bool hex, std::size_t width) {
    return lines(fmt::format("No table publishes a {} for this head: it is taken from the head, by "
                             "the practice 'published over head'.",
                             hex ? "spotface" : "counterbore"),
                 width) +
           "\n";
}

std::string counterbores_text(const trade::Screw& screw, length::Unit unit, const Style& style,
                              std::size_t width, Sources& sources) {
    Table table({{"counterbore"}, {"kind"}, {"diameter", true}, {"name"}, {"from"}});
    for (const auto& row : screw.counterbores)
        table.add({row.rule, row.kind, length::to_text(row.diameter, unit), row.name,
                   sources.mark(row.origin)});
    const auto text = table.empty() ? std::string() : table.text(width, style) + "\n";
    return is_published(screw) ? text : text + taken_from_head(screw.hex, width);
}

std::string key_of(const trade::Screw& screw) {
    if (screw.drive.empty())
        return {};
    return ", " + screw.drive + (screw.drive_size.empty() ? "" : " " + screw.drive_size);
}

// Other heads of this size that differ from the one that answers.
std::string differing_heads(const trade::Screw& screw, length::Unit unit) {
    std::vector<std::string> others;
    for (const auto& head : screw.heads)
        if (!screw.heads.empty() && head.head_dia.hi != screw.heads.front().head_dia.hi)
            others.push_back(fmt::format("{} {}", head.series, say(head.head_dia, unit)));
    return fmt::format("{}", fmt::join(others, ", "));
}

// ` (no form said)`, ` (shoulder 8 mm, thread M6)`
std::string aside(const trade::Screw& screw) {
    if (screw.shoulder && screw.size && !screw.thread.empty()) {
        const bool metric = screw.is_metric();
        const auto shoulder =
            metric ? length::with_unit(screw.size->diameter, length::Unit::millimetre)
                   : screw.size->text + " in";
        return fmt::format(" (shoulder {}, thread {})", shoulder, screw.thread);
    }
    return screw.form_said ? "" : " (no form said)";
}

// How the text was read where it could be read otherwise, and what is to be said of the head.
std::string remarks(const trade::Screw& screw, std::size_t width) {
    std::string text;
    for (const auto& taken : screw.taken)
        text += lines(safe(taken) + ".", width);
    if (screw.origin.confidence == "memory")
        text += lines(fmt::format("The head is {}.", trade::how_sure("memory")), width);
    if (trade::to_be_said(screw.origin.note))
        text += lines("Of this head: " + safe(screw.origin.note) + ".", width);
    return text;
}

} // namespace

std::string screw_summary(const trade::Screw& screw, length::Unit unit, std::size_t width) {
    std::string text = safe(screw.name) + aside(screw);
    if (!screw.series.empty())
        text += ", " + screw.series;
    text += ": head " + say(screw.head_dia, unit) + (screw.head_measured ? " as measured" : "");
    if (screw.head_height)
        text += ", " + say(screw.head_height->hi, unit) + " high";
    std::string summary = lines(text + key_of(screw), width);
    const auto others = screw.series_said ? std::string() : differing_heads(screw, unit);
    if (!others.empty())
        summary += lines("Heads differ at this size (" + others +
                             (screw.head_measured ? "); the height is the larger one's"
                                                  : "); answered for the larger") +
                             ", --series names another.",
                         width);
    return summary + remarks(screw, width);
}

std::string screw_text(const trade::Screw& screw, length::Unit unit, const Style& style,
                       std::size_t width) {
    Sources sources; // numbered in the order of the tables
    std::string text = screw_summary(screw, unit, width) + "\n";
    text += heads_text(screw, unit, style, width, sources);
    text += legend(screw, width);
    text += holes_text(screw, unit, style, width, sources);
    text += counterbores_text(screw, unit, style, width, sources);
    return text + sources.list(width);
}

} // namespace present
