// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// From a text to a screw: the head that answers, and the holes, tap drill and counterbores of its
// size. A shop's own screw lays its figures over that.
#include "trade/screw.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "error/error.hpp"
#include "trade/screw_heads.hpp"
#include "trade/screw_words.hpp"
#include "trade/text.hpp"

namespace trade {

namespace {

constexpr std::array<std::string_view, 2> k_published_clearances{"ASME B18.2.8", "ISO 273"};
constexpr std::string_view k_shop_clearances = "shop chart";

bool contains(const std::vector<std::string>& list, std::string_view word) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

bool has_word(std::string_view phrase, std::string_view word) {
    return contains(split(phrase, ' '), word);
}

void add_clearance(Screw& screw, const Clearance& row) {
    const auto fill = [](auto& hole, const auto& from) {
        const bool fills = !hole && from;
        if (fills)
            hole = from;
        return fills;
    };
    const bool close = fill(screw.close, row.close);
    const bool normal = fill(screw.normal, row.normal);
    const bool loose = fill(screw.loose, row.loose);
    if (close || normal || loose)
        screw.clearance_system += (screw.clearance_system.empty() ? "" : ", ") + row.system;
}

void add_clearances(Screw& screw, const Tables& tables) {
    if (screw.shoulder || !screw.size)
        return;
    const auto rows = tables.clearances(screw.size->text);
    for (const auto& row : rows)
        if (std::find(k_published_clearances.begin(), k_published_clearances.end(), row.system) !=
            k_published_clearances.end())
            add_clearance(screw, row);
    for (const auto& row : rows)
        if (row.system == k_shop_clearances)
            add_clearance(screw, row);
}

// The row of the pitch asked for; else the first, coarse first, that the head is made with.
std::optional<TapDrill> tap_drill(const std::vector<TapDrill>& rows, const std::string& pitch,
                                  const Head& head) {
    const auto found = std::find_if(rows.begin(), rows.end(), [&](const TapDrill& row) {
        const auto row_pitch = canonical_pitch(row.pitch);
        return pitch.empty() ? head.pitches.empty() || has_pitch(head, row_pitch)
                             : row_pitch == pitch;
    });
    return found == rows.end() ? std::nullopt : std::optional(*found);
}

// A shoulder screw's thread is not its size; it stands beside it.
void add_tap_drill(Screw& screw, const Head& head, const Tables& tables) {
    if (!screw.shoulder) {
        screw.tap = tap_drill(tables.tap_drills(screw.size->text), screw.pitch, head);
        return;
    }
    if (head.thread.empty())
        return;
    const auto thread = parse_thread(head.thread);
    screw.tap = tap_drill(tables.tap_drills(thread.size.text),
                          thread.pitch.empty() ? screw.pitch : thread.pitch, head);
}

std::string name_of(const AskedScrew& asked) {
    const auto& thread = asked.thread;
    const auto* mark = thread.size.system == SizeSystem::metric ? "x" : "-";
    const auto pitch = thread.pitch.empty() ? std::string() : mark + thread.pitch;
    // A bare 1 or 2 would be read as a number size.
    const bool whole_inches = thread.size.system == SizeSystem::inch && pitch.empty() &&
                              thread.size.text.find('/') == std::string::npos;
    return fmt::format("{}{}{} {}", thread.size.text, pitch, whole_inches ? " in" : "", asked.form);
}

Screw screw_with(const AskedScrew& asked, std::vector<Head> heads, const Tables& tables) {
    const auto& head = heads.front();
    Screw screw;
    screw.name = name_of(asked);
    screw.form = asked.form;
    screw.series = head.series;
    screw.size = asked.thread.size;
    screw.pitch = asked.thread.pitch;
    screw.screw_dia = head.screw_dia;
    screw.head_dia = head.head_dia;
    screw.head_height =
        length::spanning(head.head_height_min.value_or(head.head_height_max), head.head_height_max);
    screw.hex = has_word(asked.form, "hex") || has_word(asked.form, "hexagon");
    screw.shoulder = has_word(asked.form, "shoulder");
    screw.fillet_dia = head.fillet_dia_max;
    screw.drive = head.drive;
    screw.drive_size = head.drive_size;
    screw.series_said = !asked.series.empty();
    screw.origin = head.origin;
    add_clearances(screw, tables);
    add_tap_drill(screw, head, tables);
    for (auto& row : tables.counterbores(asked.thread.size.text))
        if (row.series == head.series)
            screw.counterbores.push_back(std::move(row));
    screw.tools = tables.published_tools_for(asked.thread.size.text);
    for (auto& row : tables.form_words())
        if (row.form == asked.form)
            screw.form_words.push_back(std::move(row.word));
    screw.heads = std::move(heads);
    return screw;
}

Screw screw_in_tables(std::string_view text, std::string_view series, const ScrewWords& words,
                      const Tables& tables) {
    auto asked = words.read(text);
    if (!trimmed(series).empty())
        asked.series = words.read_series(series, asked.form);
    asked = settled(std::move(asked), words, tables);
    return screw_with(asked, choose_heads(asked, words, tables), tables);
}

// The own screw of this name, else one whose name says the same in other words.
const OwnScrew* find_own(std::string_view text, const std::vector<OwnScrew>& own,
                         const ScrewWords& words) {
    const auto wanted = folded(text);
    for (const auto& screw : own)
        if (folded(screw.name) == wanted)
            return &screw;
    const auto read = [&](std::string_view name) -> std::optional<AskedScrew> {
        try {
            auto asked = words.read(name);
            asked.thread.bare = std::nullopt;
            return asked;
        } catch (const error::BadData&) {
            return std::nullopt;
        }
    };
    const auto asked = own.empty() ? std::nullopt : read(text);
    if (!asked || asked->form.empty())
        return nullptr;
    for (const auto& screw : own)
        if (read(screw.name) == asked)
            return &screw;
    return nullptr;
}

void lay_over(Screw& screw, const OwnScrew& own) {
    screw.name = std::string(trimmed(own.name));
    if (own.head_dia || screw.heads.empty()) {
        screw.series.clear();
        screw.origin = {"the shop's own screw", "measured"};
    }
    screw.head_measured = own.head_dia.has_value();
    if (own.head_dia)
        screw.head_dia = own.head_dia->range;
    if (own.head_height)
        screw.head_height = own.head_height->range;
    if (own.screw_dia)
        screw.screw_dia = own.screw_dia->range;
    if (!own.drive.empty())
        screw.drive = own.drive;
    if (!own.drive_size.empty())
        screw.drive_size = own.drive_size;
}

// A name that the tables do not know is no error here, unless a series is asked for too.
Screw own_screw(const OwnScrew& own, std::string_view series, const ScrewWords& words,
                const Tables& tables) {
    Screw screw;
    try {
        screw = screw_in_tables(own.name, series, words, tables);
    } catch (const error::Error& problem) {
        const bool unlisted = problem.code() == error::ExitCode::bad_data ||
                              problem.code() == error::ExitCode::no_such_record;
        if (!unlisted || !trimmed(series).empty())
            throw;
    }
    lay_over(screw, own);
    return screw;
}

} // namespace

ScrewRequest parse_screw(std::string_view text, const Tables& tables) {
    const ScrewWords words(tables);
    const auto asked = settled(words.read(text), words, tables);
    return {asked.thread.size, asked.thread.pitch, asked.form,
            asked.series.empty() ? std::string() : asked.series.front()};
}

Screw listed_screw(const Head& head, const Tables& tables) {
    return screw_with({{head.size, {}, {}}, head.form, {head.series}}, {head}, tables);
}

ScrewFinder::ScrewFinder(const Tables& tables, std::vector<OwnScrew> own)
    : tables_(tables), own_(std::move(own)), words_(std::make_unique<ScrewWords>(tables)) {}

ScrewFinder::~ScrewFinder() = default;

Screw ScrewFinder::find(std::string_view text, std::string_view series) const {
    if (const auto* found = find_own(text, own_, *words_))
        return own_screw(*found, series, *words_, tables_);
    return screw_in_tables(text, series, *words_, tables_);
}

Screw resolve_screw(std::string_view text, std::string_view series, const Tables& tables,
                    const std::vector<OwnScrew>& own) {
    return ScrewFinder(tables, own).find(text, series);
}

} // namespace trade
