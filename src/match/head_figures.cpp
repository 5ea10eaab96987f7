// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/head_figures.hpp"

#include <algorithm>

#include "match/say.hpp"

namespace match {

using length::Length;
using length::MaybeRange;
using length::Range;

namespace {

// Common practice, no source; in hundredths.
constexpr std::int64_t k_least_height = 94; // as for heads without a least diameter
constexpr std::int64_t k_key_within = 3;
constexpr std::int64_t k_least_thread = 93; // class 2A of ASME B1.1 allows 6.2 % at 0-80

Length share(Length whole, std::int64_t hundredths) {
    return Length::from_nm(whole.nm() * hundredths / 100);
}

MaybeRange key_of(const trade::Head& head) {
    if ((head.drive != "hex socket" && head.drive != "hex") || head.drive_size.empty())
        return std::nullopt;
    const auto key = length::parse_length(head.drive_size, length::Unit::inch).value;
    return Range{share(key, 100 - k_key_within), share(key, 100 + k_key_within)};
}

bool disjoint(const Range& a, const Range& b) {
    return a.hi < b.lo || b.hi < a.lo;
}

std::string thread_text(const trade::Head& head) {
    std::string text = head.thread.empty() ? head.size.text : head.thread;
    const char* between = head.size.system == trade::SizeSystem::metric ? "x" : "-";
    for (const auto& pitch : head.pitches) {
        text += between + pitch;
        between = " or ";
    }
    return text;
}

bool share_a_pitch(const trade::Head& a, const trade::Head& b) {
    return a.pitches.empty() || b.pitches.empty() ||
           std::any_of(a.pitches.begin(), a.pitches.end(), [&](const std::string& pitch) {
               return std::find(b.pitches.begin(), b.pitches.end(), pitch) != b.pitches.end();
           });
}

} // namespace

std::string to_text(HeadFigure figure) {
    switch (figure) {
    case HeadFigure::head:
        return "head";
    case HeadFigure::height:
        return "height";
    case HeadFigure::key:
        return "key";
    case HeadFigure::thread:
        return "thread";
    case HeadFigure::drive:
        return "drive";
    }
    return {};
}

MaybeRange figure_range(const trade::Head& head, HeadFigure figure) {
    switch (figure) {
    case HeadFigure::head:
        return head.head_dia;
    case HeadFigure::height:
        return Range{head.head_height_min.value_or(share(head.head_height_max, k_least_height)),
                     head.head_height_max};
    case HeadFigure::key:
        return key_of(head);
    case HeadFigure::thread:
    case HeadFigure::drive:
        break;
    }
    return std::nullopt;
}

Range over_the_thread(const trade::Head& head) {
    return {share(head.screw_dia.lo, k_least_thread), head.screw_dia.hi};
}

std::string figure_text(const trade::Head& head, HeadFigure figure, length::Unit unit) {
    if (figure == HeadFigure::thread)
        return thread_text(head);
    if (figure == HeadFigure::drive)
        return head.drive;
    if (figure == HeadFigure::key)
        return head.drive_size;
    const auto range = figure_range(head, figure);
    return range ? say(*range, unit) : std::string();
}

bool has_thread(const trade::Head& head, const trade::Thread& thread) {
    const auto is_of = [&](const trade::ScrewSize& size) {
        return size == head.size || size.text == head.thread;
    };
    const auto inches = thread.bare ? trade::inch_size(*thread.bare) : std::nullopt;
    if (!is_of(thread.size) && !(inches && is_of(*inches)))
        return false;
    return thread.pitch.empty() || head.pitches.empty() ||
           std::any_of(head.pitches.begin(), head.pitches.end(), [&](const std::string& pitch) {
               return trade::canonical_pitch(pitch) == thread.pitch;
           });
}

bool tells_apart(HeadFigure figure, const trade::Head& a, const trade::Head& b) {
    if (figure == HeadFigure::drive)
        return a.drive != b.drive;
    if (figure == HeadFigure::thread) {
        const auto& of_a = a.thread.empty() ? a.size.text : a.thread;
        const auto& of_b = b.thread.empty() ? b.size.text : b.thread;
        return of_a != of_b || !share_a_pitch(a, b);
    }
    const auto range_a = figure_range(a, figure);
    const auto range_b = figure_range(b, figure);
    return range_a && range_b && disjoint(*range_a, *range_b);
}

} // namespace match
