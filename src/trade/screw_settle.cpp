// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a text leaves open, settled by the tables: a form that is not said, one series of several, a
// pitch or a length, a shoulder or a thread. What could be read otherwise is noted in `taken`.
#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <utility>

#include "error/error.hpp"
#include "length/parse.hpp"
#include "length/print.hpp"
#include "trade/screw_heads.hpp"
#include "trade/text.hpp"

namespace trade {

namespace {

bool contains(const std::vector<std::string>& list, std::string_view word) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

std::vector<std::string> forms_of(const std::vector<Head>& heads) {
    std::vector<std::string> names;
    for (const auto& head : heads)
        if (!contains(names, head.form))
            names.push_back(head.form);
    return names;
}

// A number alone is a number size or something else, and nobody can tell which: `1 shcs`.
void check_bare_number(const Thread& thread) {
    const bool pitch_said = !thread.pitch.empty() && !thread.pitch_after_x;
    if (!thread.bare || pitch_said || *thread.bare == 0)
        return;
    const auto inches = inch_size(*thread.bare);
    const auto other =
        inches ? fmt::format("{} in", *thread.bare) : fmt::format("M{}", *thread.bare);
    throw error::BadData(
        fmt::format("screw: #{} or {}? '{}' may be either", *thread.bare, other, *thread.bare),
        fmt::format("write #{}, {} or, in millimetres, M{}; or the pitch: 10-24", *thread.bare,
                    other, *thread.bare));
}

// Settles the form; throws if neither words nor series say one and none is usual.
void settle_form(AskedScrew& asked, const ScrewWords& words, const std::vector<Head>& heads) {
    if (!asked.form.empty())
        return;
    if (!asked.series.empty()) {
        auto possible = asked.series; // those with a row of this size, if any
        std::erase_if(possible,
                      [&](const std::string& name) { return !contains(series_of(heads), name); });
        const auto& named = possible.empty() ? asked.series : possible;
        asked.form = words.form_of(named);
        if (asked.form.empty() && words.has_form(named, asked.usual_form)) {
            asked.form = asked.usual_form; // `1/4 bsf`: a socket head, not the hexagon
            asked.form_said = false;
        }
    }
    if (asked.form.empty() && asked.series.empty()) {
        asked.form = asked.usual_form;
        asked.form_said = false;
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

// A withdrawn series has only the sizes whose heads its successor changed: `M6 DIN 912` is ISO
// 4762.
void settle_withdrawn(AskedScrew& asked, const ScrewWords& words, const std::vector<Head>& heads) {
    if (asked.series.empty() || contains(series_of(heads), asked.series.front()) ||
        !words.find(asked.series.front())->withdrawn)
        return;
    asked.taken.push_back(fmt::format("{} is withdrawn, and at {} the tables have its successor",
                                      asked.series.front(), asked.thread.size.text));
    asked.series.clear();
}

// `3/8 in`, `8 mm`
std::string length_of_shoulder(const Head& head) {
    return head.size.system == SizeSystem::metric
               ? length::with_unit(head.size.diameter, length::Unit::millimetre)
               : head.size.text + " in";
}

bool any_may_have(const std::vector<Head>& heads, const std::string& pitch, const Tables& tables) {
    return std::any_of(heads.begin(), heads.end(),
                       [&](const Head& head) { return may_have_pitch(head, pitch, tables); });
}

// More than every pitch of these heads, which are metric: nobody makes a screw so short.
bool over_every_pitch(const std::string& number, const std::vector<Head>& heads,
                      const Tables& tables) {
    const auto mm = [](const std::string& text) {
        return length::parse_length(text, length::Unit::millimetre).value;
    };
    const auto pitches = pitches_of(heads, tables);
    return std::all_of(pitches.begin(), pitches.end(),
                       [&](const std::string& pitch) { return mm(pitch) < mm(number); });
}

// A number after an x is a pitch if some head may have it; else it is the length.
void settle_after_x(AskedScrew& asked, const std::vector<Head>& heads, const Tables& tables) {
    auto& thread = asked.thread;
    if (!thread.pitch_after_x)
        return;
    thread.pitch_after_x = false;
    const bool metric = thread.size.system == SizeSystem::metric;
    if (any_may_have(heads, thread.pitch, tables) ||
        (metric && !over_every_pitch(thread.pitch, heads, tables)))
        return;
    thread.length = std::exchange(thread.pitch, {});
    asked.taken.push_back(fmt::format("x {} is taken as the length, {} {}", thread.length,
                                      thread.length, metric ? "mm" : "in"));
}

// The pitch that goes by the name of its thread: `1/4 unf`. BSW and BSF name a series of heads too.
void settle_thread_series(AskedScrew& asked, const std::vector<Head>& heads, const Tables& tables) {
    const auto& said = asked.thread_series;
    auto& pitch = asked.thread.pitch;
    std::string named;
    for (const auto& row : tables.tap_drills(asked.thread.size.text))
        if (folded(row.thread) == said)
            named = canonical_pitch(row.pitch);
    if (said == "coarse" || said == "fine") {
        if (!pitch.empty())
            return;
        const auto pitches = heads.empty() ? std::vector<std::string>{} : heads.front().pitches;
        if (said == "coarse" && !pitches.empty())
            named = pitches.front();
        if (said == "fine" && pitches.size() > 1)
            named = pitches.back();
    }
    if (pitch.empty() && named.empty() && asked.series.empty())
        throw error::BadData(fmt::format("screw: no pitch beside '{}'", said),
                             "write the pitch as a number: 5/16-18, M8x1.25");
    if (pitch.empty())
        pitch = named;
    if (!named.empty() && pitch != named)
        throw error::BadData(fmt::format("screw: {} {} has another pitch: '{}'",
                                         asked.thread.size.text, said, pitch),
                             fmt::format("it has {}; leave one of the two out", named));
}

// Shoulder screws with this thread.
std::vector<Head> shoulders_on(const std::string& thread, const Tables& tables) {
    auto heads = tables.every_head();
    std::erase_if(heads, [&](const Head& head) { return head.thread != thread; });
    return heads;
}

// A shoulder screw goes by its shoulder, or by its thread where no shoulder is so thick or none of
// them has that pitch.
void settle_shoulder(AskedScrew& asked, const std::vector<Head>& by_shoulder,
                     const std::vector<Head>& by_thread, const Tables& tables) {
    auto& thread = asked.thread;
    const auto has_it = [&](const Head& head) {
        return may_have_pitch(head, thread.pitch, tables);
    };
    const auto other = std::find_if(by_thread.begin(), by_thread.end(), has_it);
    if (other == by_thread.end())
        return;
    const auto shoulder = length_of_shoulder(*other);
    if (std::any_of(by_shoulder.begin(), by_shoulder.end(), has_it)) {
        asked.taken.push_back(fmt::format(
            "{} is taken as the shoulder; the screw with that thread has a shoulder of {}",
            thread.size.text, shoulder));
        return;
    }
    auto taken =
        fmt::format("{} is taken as the thread; the shoulder is {}", thread.size.text, shoulder);
    for (auto head = std::next(other); head != by_thread.end(); ++head)
        if (has_it(*head))
            taken += fmt::format(", {} is made too", length_of_shoulder(*head));
    asked.taken.push_back(std::move(taken));
    thread.size = other->size;
}

} // namespace

AskedScrew settled(AskedScrew asked, const ScrewWords& words, const Tables& tables) {
    check_bare_number(asked.thread);
    auto heads = tables.heads(asked.thread.size.text);
    settle_form(asked, words, heads);
    settle_series(asked, words, heads);
    settle_withdrawn(asked, words, heads);
    std::erase_if(heads, [&](const Head& head) {
        return head.form != asked.form ||
               (!asked.series.empty() && head.series != asked.series.front());
    });
    const auto by_thread = asked.form == "shoulder" ? shoulders_on(asked.thread.size.text, tables)
                                                    : std::vector<Head>{};
    auto of_pitch = heads;
    of_pitch.insert(of_pitch.end(), by_thread.begin(), by_thread.end());
    settle_after_x(asked, of_pitch, tables);
    if (!asked.thread_series.empty())
        settle_thread_series(asked, of_pitch, tables);
    settle_shoulder(asked, heads, by_thread, tables);
    return asked;
}

} // namespace trade
