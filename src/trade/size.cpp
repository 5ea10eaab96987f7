// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Sizes are read from the front: the marks of a system (#, M, mm, BA) settle it at once; a number
// without one is inches, or a number size by the rule in the header. `1-1/4` is a size, `1-8` a
// size and a pitch: the stroke after the second number tells them apart. What stands after an `x`
// is a length where a pitch is said already, or where it can be no pitch.
#include "trade/size.hpp"

#include <fmt/format.h>

#include <array>
#include <charconv>
#include <cstddef>

#include "error/error.hpp"
#include "length/parse.hpp"
#include "length/print.hpp"
#include "trade/text.hpp"

namespace trade {

using length::Length;

namespace {

constexpr std::string_view k_hint =
    "a size is a number (#10), inches (5/16, 1-1/4), metric (M8) or BA (2BA), perhaps with its "
    "pitch and length: 10-24, 5/16-18 x 3/4, M8x1.25x30";
constexpr std::int64_t k_largest_number = 30;
constexpr std::int64_t k_largest_bare_number = 12;
constexpr std::int64_t k_least_number_pitch = 24;
constexpr std::int64_t k_largest_inches = 6;
constexpr Length k_largest_metric = length::millimetres(150);
constexpr Length k_decimal_within = length::inches_e5(50); // .312 is 5/16

// Basic major diameters of 0BA to 16BA in hundredths of a millimetre (BS 57 and BS 93).
constexpr std::array<std::int64_t, 17> k_ba_diameters{600, 530, 470, 410, 360, 320, 280, 250, 220,
                                                      190, 170, 150, 130, 120, 100, 90,  79};

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

// A folded text, read from the front.
class Reader {
  public:
    explicit Reader(std::string_view text) : rest_(text) {}

    bool take(std::string_view token) {
        if (rest_.substr(0, token.size()) != token)
            return false;
        rest_.remove_prefix(token.size());
        return true;
    }
    void skip_blanks() {
        while (take(" ")) {
        }
    }
    std::string_view take_while_digit_or(char other) {
        std::size_t end = 0;
        while (end < rest_.size() && (is_digit(rest_[end]) || rest_[end] == other))
            ++end;
        const auto taken = rest_.substr(0, end);
        rest_.remove_prefix(end);
        return taken;
    }
    std::string_view take_rest() {
        const auto taken = rest_;
        rest_ = {};
        return taken;
    }
    std::string_view take_digits() { return take_while_digit_or('0'); }
    std::optional<std::int64_t> take_whole() {
        const auto digits = take_digits();
        if (digits.empty() || digits.size() > 4)
            return std::nullopt;
        std::int64_t value = 0;
        std::from_chars(digits.data(), digits.data() + digits.size(), value);
        return value;
    }
    [[nodiscard]] bool at_end() const { return rest_.empty(); }
    [[nodiscard]] std::string_view rest() const { return rest_; }

  private:
    std::string_view rest_;
};

ScrewSize number_size(std::int64_t number) {
    return {SizeSystem::number, fmt::format("#{}", number), length::thousandths(60 + 13 * number)};
}

std::optional<ScrewSize> ba_size(std::int64_t number) {
    if (number < 0 || number >= static_cast<std::int64_t>(k_ba_diameters.size()))
        return std::nullopt;
    return ScrewSize{SizeSystem::ba, fmt::format("{}BA", number),
                     length::micrometres(10 * k_ba_diameters.at(static_cast<std::size_t>(number)))};
}

// A length as this part of a size, if it is one.
std::optional<Length> as_length(std::string_view text, length::Unit unit) {
    try {
        return length::parse_length(text, unit).value;
    } catch (const error::BadData&) {
        return std::nullopt;
    }
}

// The size whose diameter this is: a number size if it is exactly that, else the nearest 64th.
std::optional<ScrewSize> decimal_inch_size(Length diameter) {
    const auto over_nought = diameter - number_size(0).diameter;
    const auto step = length::thousandths(13);
    const auto number = over_nought.nm() / step.nm();
    if (over_nought >= Length() && over_nought == step * number && number <= k_largest_bare_number)
        return number_size(number);
    const auto sixty_fourth = length::sixty_fourths(1);
    const auto nearest = sixty_fourth * ((diameter + sixty_fourth / 2).nm() / sixty_fourth.nm());
    const auto off = diameter < nearest ? nearest - diameter : diameter - nearest;
    if (off > k_decimal_within)
        return std::nullopt;
    return ScrewSize{SizeSystem::inch, length::as_fraction(nearest), nearest};
}

std::optional<ScrewSize> inch_size(std::string_view text) {
    const auto diameter = as_length(text, length::Unit::inch);
    if (!diameter || *diameter > length::thousandths(1000 * k_largest_inches))
        return std::nullopt;
    if (text.find('.') != std::string_view::npos)
        return decimal_inch_size(*diameter);
    return ScrewSize{SizeSystem::inch, length::as_fraction(*diameter), *diameter};
}

bool take_times(Reader& reader) {
    reader.skip_blanks();
    const bool taken = reader.take("x") || reader.take("\xC3\x97");
    reader.skip_blanks();
    return taken;
}

// After the x: a number that may be a pitch or a length, and then a length. False if it is neither.
bool take_after_x(Reader& reader, Thread& thread, length::Unit unit) {
    if (!take_times(reader))
        return true;
    auto ahead = reader;
    const auto number = canonical_pitch(ahead.take_while_digit_or('.'));
    if (thread.pitch.empty() && !number.empty()) {
        ahead.skip_blanks();
        ahead.take(unit == length::Unit::millimetre ? "mm" : "tpi");
        ahead.skip_blanks();
        const bool last = ahead.at_end();
        if (last || take_times(ahead)) {
            thread.pitch = number;
            thread.pitch_after_x = last;
            reader = ahead;
            if (last)
                return true;
        }
    }
    thread.length = std::string(trimmed(reader.take_rest()));
    return as_length(thread.length, unit).has_value();
}

std::optional<ScrewSize> metric_size(std::string_view text) {
    const auto diameter = as_length(text, length::Unit::millimetre);
    if (!diameter || *diameter > k_largest_metric)
        return std::nullopt;
    return ScrewSize{SizeSystem::metric,
                     fmt::format("M{}", length::to_text(*diameter, length::Unit::millimetre)),
                     *diameter};
}

// After `M` and the diameter, or `8 mm`: a pitch after an x or a stroke, a length.
std::optional<Thread> metric_thread(Reader& reader, std::string_view diameter) {
    const auto size = metric_size(diameter);
    if (!size)
        return std::nullopt;
    Thread thread;
    thread.size = *size;
    reader.skip_blanks();
    if (reader.take("-")) {
        reader.skip_blanks();
        thread.pitch = canonical_pitch(reader.take_while_digit_or('.'));
        if (thread.pitch.empty())
            return std::nullopt;
        reader.skip_blanks();
        reader.take("mm");
    }
    return take_after_x(reader, thread, length::Unit::millimetre) ? std::optional(thread)
                                                                  : std::nullopt;
}

// After an inch or number size: `-18`, perhaps with `tpi`. False if a pitch is begun and not there.
bool take_pitch(Reader& reader, std::string& pitch) {
    reader.skip_blanks();
    if (!reader.take("-"))
        return true;
    reader.skip_blanks();
    pitch = canonical_pitch(reader.take_while_digit_or('.'));
    reader.skip_blanks();
    reader.take("tpi");
    return !pitch.empty();
}

// The size before any pitch: `5/16`, `1-1/4`, `1 1/4`, `.375`, `1`.
struct InchText {
    std::string size;
    std::optional<std::int64_t> whole; // when it is a whole number alone
};

std::optional<InchText> take_inches(Reader& reader) {
    auto decimal = reader;
    if (const auto text = decimal.take_while_digit_or('.'); text.find('.') != text.npos) {
        reader = decimal;
        return InchText{std::string(text), std::nullopt};
    }
    const auto first = reader.take_digits();
    if (first.empty() || first.size() > 4)
        return std::nullopt;
    if (reader.take("/"))
        return InchText{fmt::format("{}/{}", first, reader.take_digits()), std::nullopt};
    auto ahead = reader;
    if (ahead.take("-") || ahead.take(" ")) {
        const auto part = ahead.take_digits();
        if (!part.empty() && ahead.take("/")) {
            reader = ahead;
            return InchText{fmt::format("{}-{}/{}", first, part, reader.take_digits()),
                            std::nullopt};
        }
    }
    return InchText{std::string(first), Reader(first).take_whole()};
}

bool take_inch_mark(Reader& reader) {
    reader.skip_blanks();
    return reader.take("\"") || reader.take("inches") || reader.take("inch") ||
           reader.take("in.") || reader.take("in");
}

bool means_number_size(std::int64_t whole, const std::string& pitch) {
    const auto threads = Reader(pitch).take_whole();
    return whole <= k_largest_bare_number &&
           (pitch.empty() || (threads && *threads >= k_least_number_pitch));
}

std::optional<Thread> ba_thread(Reader& reader, std::int64_t number) {
    const auto size = ba_size(number);
    if (!size)
        return std::nullopt;
    Thread thread;
    thread.size = *size;
    return take_after_x(reader, thread, length::Unit::inch) ? std::optional(thread) : std::nullopt;
}

std::optional<Thread> inch_or_number_thread(Reader& reader) {
    const auto inches = take_inches(reader);
    if (!inches)
        return std::nullopt;
    Thread thread;
    const bool marked = take_inch_mark(reader);
    if (!marked && reader.take("mm"))
        return metric_thread(reader, inches->size);
    if (inches->whole && !marked) {
        if (reader.take("ba"))
            return ba_thread(reader, *inches->whole);
        thread.bare = inches->whole;
    }
    if (!take_pitch(reader, thread.pitch) || !take_after_x(reader, thread, length::Unit::inch))
        return std::nullopt;
    if (thread.bare && means_number_size(*thread.bare, thread.pitch)) {
        thread.size = number_size(*thread.bare);
        return thread;
    }
    const auto size = inch_size(inches->size);
    if (!size)
        return std::nullopt;
    thread.size = *size;
    return thread;
}

bool take_number_mark(Reader& reader) {
    for (const auto* mark : {"#", "number", "no.", "no"})
        if (reader.take(mark))
            return true;
    return false;
}

std::optional<Thread> numbered_thread(Reader& reader) {
    reader.skip_blanks();
    const auto number = reader.take_whole();
    if (!number || *number > k_largest_number)
        return std::nullopt;
    Thread thread;
    thread.size = number_size(*number);
    if (!take_pitch(reader, thread.pitch) || !take_after_x(reader, thread, length::Unit::inch))
        return std::nullopt;
    return thread;
}

std::optional<Thread> read_thread(std::string_view text) {
    Reader reader(text);
    std::optional<Thread> thread;
    if (take_number_mark(reader)) {
        thread = numbered_thread(reader);
    } else if (reader.take("m")) {
        reader.skip_blanks();
        thread = metric_thread(reader, reader.take_while_digit_or('.'));
    } else {
        thread = inch_or_number_thread(reader);
    }
    reader.skip_blanks();
    return reader.at_end() ? thread : std::nullopt;
}

} // namespace

std::optional<ScrewSize> inch_size(std::int64_t whole_inches) {
    return inch_size(fmt::format("{}", whole_inches));
}

std::string canonical_pitch(std::string_view text) {
    text = trimmed(text);
    const auto point = text.find('.');
    auto whole = text.substr(0, point);
    auto part = point == std::string_view::npos ? std::string_view() : text.substr(point + 1);
    for (const auto digits : {whole, part})
        for (const char c : digits)
            if (!is_digit(c))
                return {};
    while (!whole.empty() && whole.front() == '0')
        whole.remove_prefix(1);
    while (!part.empty() && part.back() == '0')
        part.remove_suffix(1);
    if (whole.empty() && part.empty())
        return {};
    return fmt::format("{}{}{}", whole.empty() ? "0" : whole, part.empty() ? "" : ".", part);
}

Thread parse_thread(std::string_view text) {
    const auto thread = read_thread(folded(text));
    if (!thread)
        throw error::BadData(fmt::format("screw size: not understood: '{}'", text),
                             std::string(k_hint));
    return *thread;
}

ScrewSize parse_size(std::string_view text) {
    const auto thread = read_thread(folded(text));
    if (!thread || !thread->pitch.empty())
        throw error::BadData(fmt::format("screw size: {}: '{}'",
                                         thread ? "a pitch is no part of it" : "not understood",
                                         text),
                             std::string(k_hint));
    return thread->size;
}

Length parse_set_screw(std::string_view text) {
    const auto thread = read_thread(folded(text));
    if (!thread)
        throw error::BadData(fmt::format("set screw: not understood: '{}'", text),
                             std::string(k_hint));
    return thread->size.diameter;
}

} // namespace trade
