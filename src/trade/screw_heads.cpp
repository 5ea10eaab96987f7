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

namespace trade {

namespace {

bool contains(const std::vector<std::string>& list, std::string_view word) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

std::vector<Head> kept(std::vector<Head> heads, const auto& keep) {
    std::erase_if(heads, [&](const Head& head) { return !keep(head); });
    return heads;
}

bool goes_with(const Head& head, const AskedScrew& asked) {
    return (asked.form.empty() || head.form == asked.form) &&
           (asked.series.empty() || contains(asked.series, head.series)) &&
           (asked.thread.pitch.empty() || has_pitch(head, asked.thread.pitch));
}

bool any_goes_with(const AskedScrew& asked, const Tables& tables) {
    const auto heads = tables.heads(asked.thread.size.text);
    return std::any_of(heads.begin(), heads.end(),
                       [&](const Head& head) { return goes_with(head, asked); });
}

// A bare whole number that names no row is tried the other way: `1-8 hex cap` is one inch.
void settle_bare_number(AskedScrew& asked, const Tables& tables) {
    if (!asked.thread.bare || any_goes_with(asked, tables))
        return;
    const auto inches = inch_size(*asked.thread.bare);
    if (!inches)
        return;
    auto other = asked;
    other.thread.size = *inches;
    if (any_goes_with(other, tables))
        asked = other;
}

// Names of the series, each once, in the order of the rows.
std::vector<std::string> series_of(const std::vector<Head>& heads) {
    std::vector<std::string> names;
    for (const auto& head : heads)
        if (!contains(names, head.series))
            names.push_back(head.series);
    return names;
}

std::vector<std::string> forms_of(const std::vector<Head>& heads) {
    std::vector<std::string> names;
    for (const auto& head : heads)
        if (!contains(names, head.form))
            names.push_back(head.form);
    return names;
}

std::vector<std::string> pitches_of(const std::vector<Head>& heads) {
    std::vector<std::string> pitches;
    for (const auto& head : heads)
        for (const auto& pitch : head.pitches)
            if (!contains(pitches, pitch))
                pitches.push_back(pitch);
    return pitches;
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

// Settles the form; throws if neither words nor series say one.
void settle_form(AskedScrew& asked, const ScrewWords& words, const std::vector<Head>& heads) {
    if (!asked.form.empty())
        return;
    if (!asked.series.empty()) {
        auto possible = asked.series; // those with a row of this size, if any
        std::erase_if(possible,
                      [&](const std::string& name) { return !contains(series_of(heads), name); });
        asked.form = words.form_of(possible.empty() ? asked.series : possible);
    }
    if (!asked.form.empty())
        return;
    const auto forms = forms_of(heads);
    throw error::BadData(fmt::format("screw: no form of head: '{}'", asked.thread.size.text),
                         "say one: " + (forms.empty() ? words.forms_text() : joined(forms)));
}

// Leaves one series where the words allow several; throws if the size does not tell them apart.
void settle_series(AskedScrew& asked, const ScrewWords& words, const std::vector<Head>& heads) {
    if (asked.series.empty())
        return;
    std::erase_if(asked.series,
                  [&](const std::string& name) { return words.find(name)->form != asked.form; });
    if (asked.series.size() <= 1)
        return;
    auto possible = asked.series;
    std::erase_if(possible,
                  [&](const std::string& name) { return !contains(series_of(heads), name); });
    if (possible.size() > 1)
        throw error::BadData(fmt::format("screw: more than one series: '{}'", joined(possible)),
                             "name one of them");
    if (possible.empty())
        possible.push_back(asked.series.front());
    asked.series = possible;
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
                 const std::string& pitch) {
    if (!with_pitch.empty())
        return;
    const auto pitches = pitches_of(of_size);
    throw error::BadData(fmt::format("screw: no table has this pitch: '{}'", pitch),
                         pitches.empty() ? "leave the pitch out"
                                         : "pitches there are: " + joined(pitches));
}

} // namespace

bool has_pitch(const Head& head, const std::string& pitch) {
    return std::any_of(head.pitches.begin(), head.pitches.end(),
                       [&](const std::string& text) { return canonical_pitch(text) == pitch; });
}

AskedScrew settled(AskedScrew asked, const ScrewWords& words, const Tables& tables) {
    settle_bare_number(asked, tables);
    const auto heads = tables.heads(asked.thread.size.text);
    settle_form(asked, words, heads);
    settle_series(asked, words, heads);
    return asked;
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
        return asked.thread.pitch.empty() || has_pitch(head, asked.thread.pitch);
    };
    const auto with_pitch = kept(of_form, has_the_pitch);
    const auto named = kept(with_pitch, is_named);
    if (!asked.series.empty())
        check_pitch(named, kept(of_form, is_named), asked.thread.pitch);
    else
        check_pitch(with_pitch, of_form, asked.thread.pitch);

    auto standing = kept(with_pitch, [&](const Head& head) {
        const auto* series = words.find(head.series);
        return (!series || !series->withdrawn) && !is_named(head);
    });
    sort_larger_first(standing);
    if (named.empty() && standing.empty())
        throw error::NoSuchRecord(fmt::format("screw: only a withdrawn series has this size: '{}'",
                                              asked.thread.size.text),
                                  "name it to use it: " + joined(series_of(with_pitch)));
    auto heads = named;
    heads.insert(heads.end(), standing.begin(), standing.end());
    return heads;
}

} // namespace trade
