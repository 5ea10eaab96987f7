// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The tables' rows of a size, narrowed by form, series and pitch; each step that leaves nothing
// says what there would have been.
#include "trade/screw_heads.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <tuple>

#include "error/error.hpp"
#include "length/print.hpp"
#include "trade/sureness.hpp"
#include "trade/text.hpp"

namespace trade {

namespace {

bool contains(const std::vector<std::string>& list, std::string_view word) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

std::vector<Head> kept(std::vector<Head> heads, const auto& keep) {
    std::erase_if(heads, [&](const Head& head) { return !keep(head); });
    return heads;
}

// A thread that only the series named after it have: BSW of `BSW/BSF socket`, BA of `BA socket`.
bool names_its_series(std::string_view thread) {
    return thread == "BSW" || thread == "BSF" || thread == "BA";
}

bool names_thread(const std::string& series, std::string_view thread) {
    for (const auto& word : split(series, ' '))
        if (contains(split(word, '/'), thread))
            return true;
    return false;
}

// Sizes that a table may have, smallest first in each system; only for saying what there is.
std::vector<std::string> usual_sizes() {
    std::vector<std::string> sizes;
    for (int number = 0; number <= 12; ++number)
        sizes.push_back(fmt::format("#{}", number));
    for (std::int64_t n = 1; n <= 64; ++n)
        sizes.push_back(length::as_fraction(length::sixty_fourths(n * 4)));
    for (std::int64_t tenths = 10; tenths <= 50; ++tenths)
        sizes.push_back(fmt::format(
            "M{}", length::to_text(length::micrometres(tenths * 100), length::Unit::millimetre)));
    for (int mm = 6; mm <= 64; ++mm)
        sizes.push_back(fmt::format("M{}", mm));
    for (int number = 0; number <= 16; ++number)
        sizes.push_back(fmt::format("{}BA", number));
    return sizes;
}

std::string sizes_text(const Tables& tables, const auto& keep) {
    std::vector<std::string> sizes;
    for (const auto& size : usual_sizes()) {
        const auto heads = tables.heads(size);
        if (std::any_of(heads.begin(), heads.end(), keep))
            sizes.push_back(size);
    }
    return sizes.empty() ? std::string("none") : joined(sizes);
}

void sort_larger_first(std::vector<Head>& heads) {
    std::stable_sort(heads.begin(), heads.end(), [](const Head& a, const Head& b) {
        return std::tie(a.head_dia.hi, a.head_height_max) >
               std::tie(b.head_dia.hi, b.head_height_max);
    });
}

void check_size(const std::vector<Head>& of_form, const AskedScrew& asked, const Tables& tables) {
    const auto& size = asked.thread.size.text;
    if (of_form.empty())
        throw error::NoSuchRecord(
            fmt::format("screw: no {} in the tables of this size: '{}'", asked.form, size),
            "sizes: " + sizes_text(tables, [&](const Head& h) { return h.form == asked.form; }));
    const auto names = series_of(of_form);
    if (asked.series.empty() || contains(names, asked.series.front()))
        return;
    const auto& series = asked.series.front();
    throw error::NoSuchRecord(
        fmt::format("screw: {} has no such size: '{}'", series, size),
        fmt::format("this size is in {}; {} has {}", joined(names), series,
                    sizes_text(tables, [&](const Head& h) { return h.series == series; })));
}

void check_pitch(const std::vector<Head>& with_pitch, const std::vector<Head>& of_size,
                 const std::string& pitch, const Tables& tables) {
    if (!with_pitch.empty())
        return;
    const auto pitches = pitches_of(of_size, tables);
    throw error::BadData(fmt::format("screw: no table has this pitch: '{}'", pitch),
                         pitches.empty() ? "leave the pitch out"
                                         : "pitches there are: " + joined(pitches));
}

} // namespace

std::vector<TapDrill> tap_drills_for(const Head& head, const Tables& tables) {
    auto rows = tables.tap_drills(head.thread.empty() ? head.size.text : head.thread);
    const auto of_series = [&](const TapDrill& row) {
        return names_thread(head.series, row.thread);
    };
    const bool named = std::any_of(rows.begin(), rows.end(), of_series);
    std::erase_if(rows, [&](const TapDrill& row) {
        return named ? !of_series(row)
                     : names_its_series(row.thread) && head.size.system != SizeSystem::ba;
    });
    return rows;
}

std::optional<TapDrill> tap_drill_for(const Head& head, const std::string& pitch,
                                      const Tables& tables) {
    const auto rows = tap_drills_for(head, tables);
    const auto found = std::find_if(rows.begin(), rows.end(), [&](const TapDrill& row) {
        const auto row_pitch = canonical_pitch(row.pitch);
        return pitch.empty() ? head.pitches.empty() || has_pitch(head, row_pitch)
                             : row_pitch == pitch;
    });
    return found == rows.end() ? std::nullopt : std::optional(*found);
}

bool has_pitch(const Head& head, const std::string& pitch) {
    return std::any_of(head.pitches.begin(), head.pitches.end(),
                       [&](const std::string& listed) { return canonical_pitch(listed) == pitch; });
}

bool may_have_pitch(const Head& head, const std::string& pitch, const Tables& tables) {
    if (pitch.empty() || has_pitch(head, pitch))
        return true;
    const auto rows = tap_drills_for(head, tables);
    return std::any_of(rows.begin(), rows.end(),
                       [&](const TapDrill& row) { return canonical_pitch(row.pitch) == pitch; });
}

// Names of the series, each once, in the order of the rows.
std::vector<std::string> series_of(const std::vector<Head>& heads) {
    std::vector<std::string> names;
    for (const auto& head : heads)
        if (!contains(names, head.series))
            names.push_back(head.series);
    return names;
}

std::vector<std::string> pitches_of(const std::vector<Head>& heads, const Tables& tables) {
    std::vector<std::string> pitches;
    const auto add = [&](const std::string& pitch) {
        if (!contains(pitches, pitch))
            pitches.push_back(pitch);
    };
    for (const auto& head : heads)
        std::for_each(head.pitches.begin(), head.pitches.end(), add);
    for (const auto& head : heads)
        for (const auto& row : tap_drills_for(head, tables))
            add(row.pitch);
    return pitches;
}

std::vector<Head> choose_heads(const AskedScrew& asked, const ScrewWords& words,
                               const Tables& tables) {
    const auto of_form = kept(tables.heads(asked.thread.size.text),
                              [&](const Head& head) { return head.form == asked.form; });
    check_size(of_form, asked, tables);
    const auto is_named = [&](const Head& head) {
        return !asked.series.empty() && head.series == asked.series.front();
    };
    const auto has_the_pitch = [&](const Head& head) {
        return may_have_pitch(head, asked.thread.pitch, tables);
    };
    const auto with_pitch = kept(of_form, has_the_pitch);
    const auto named = kept(with_pitch, is_named);
    if (!asked.series.empty())
        check_pitch(named, kept(of_form, is_named), asked.thread.pitch, tables);
    else
        check_pitch(with_pitch, of_form, asked.thread.pitch, tables);

    auto standing = kept(with_pitch, [&](const Head& head) {
        const auto* series = words.find(head.series);
        return (!series || !series->withdrawn) && !is_named(head);
    });
    const auto sound = kept(standing, [](const Head& head) { return !doubtful(head.origin.note); });
    if (!named.empty() || !sound.empty())
        standing = sound;
    sort_larger_first(standing);
    if (named.empty() && standing.empty())
        throw error::NoSuchRecord(
            fmt::format("screw: only a withdrawn series has this size{}: '{}'",
                        with_pitch.size() < of_form.size() ? " and pitch" : "",
                        asked.thread.size.text),
            "name it to use it: " + joined(series_of(with_pitch)));
    auto heads = named;
    heads.insert(heads.end(), standing.begin(), standing.end());
    return heads;
}

} // namespace trade
