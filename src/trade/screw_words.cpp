// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Reading goes in three steps: words that say nothing (screw, head, series) are dropped from the
// text and from the phrases alike; known phrases are taken, longest first; what is left must be one
// size, perhaps with a length after it. So `socket head cap screw #10-32 x 1/2` and `#10-32 socket
// cap` are the same.
#include "trade/screw_words.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <cstddef>
#include <iterator>

#include "error/error.hpp"
#include "trade/text.hpp"

namespace trade {

namespace {

// The last three are property classes of ISO 898-1.
constexpr std::array<std::string_view, 13> k_say_nothing{
    "screw",  "screws", "head", "heads", "bolt", "pattern", "bolts",
    "series", "long",   "lg",   "8.8",   "10.9", "12.9"};
constexpr std::size_t k_longest_text = 200;
// Say something only where a series of the form goes by them.
constexpr std::array<std::string_view, 3> k_say_little{"cap", "machine", "slotted"};
// Name the drive; beside another form they say nothing: `allen button head`.
constexpr std::array<std::string_view, 4> k_name_the_drive{"allen", "socket", "hex socket",
                                                           "hexagon socket"};
// The form of the heads that no counterbore is for.
constexpr std::string_view k_countersunk = "countersunk";
// Name a pitch of the size.
constexpr std::array<std::string_view, 8> k_thread_series{"unc", "unf", "unef",   "uns",
                                                          "bsw", "bsf", "coarse", "fine"};
// Classes of thread (ASME B1.1, ISO 965-1): no screw is larger or smaller by them.
constexpr std::array<std::string_view, 8> k_thread_classes{"-1a", "-2a", "-3a", "-1b",
                                                           "-2b", "-3b", "-6g", "-6h"};
constexpr std::array<std::string_view, 12> k_size_words{
    "in", "in.", "inch", "inches", "mm", "no", "no.", "number", "tpi", "ba", "m", "x"};

template <typename List>
bool contains(const List& list, std::string_view word) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}
bool is_whole(std::string_view text) {
    return !text.empty() && std::all_of(text.begin(), text.end(), is_digit);
}

// Whether a token can be part of a size.
bool like_size(std::string_view token) {
    if (contains(k_size_words, token))
        return true;
    if ((token[0] == 'm' || token[0] == 'x') && token.size() > 1)
        return is_digit(token[1]);
    return is_digit(token[0]) || std::string_view("#\".-").find(token[0]) != std::string_view::npos;
}

// `1/4-20unc-2a` is `1/4-20` and `unc`.
std::vector<std::string> without_class(std::string_view token) {
    for (const auto ending : k_thread_classes)
        if (token.ends_with(ending))
            token.remove_suffix(ending.size());
    for (const auto series : k_thread_series) {
        const auto size = token.substr(0, token.size() - std::min(series.size(), token.size()));
        if (!size.empty() && is_digit(size.back()) && token.ends_with(series))
            return {std::string(size), std::string(series)};
    }
    return {std::string(token)};
}

// Lower case words without commas, multiplication signs and the words that say nothing. `2 BA` is
// one word, so that BA is not taken for a series.
std::vector<std::string> tokens_of(std::string_view text) {
    std::string plain;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool times = text.substr(i, 2) == "\xC3\x97";
        plain += times ? 'x' : text[i] == ',' ? ' ' : text[i];
        if (times)
            ++i;
    }
    std::vector<std::string> tokens;
    for (auto& token : split(folded(plain), ' ')) {
        if (contains(k_say_nothing, token))
            continue;
        if (token == "ba" && !tokens.empty() && is_whole(tokens.back())) {
            tokens.back() += token;
            continue;
        }
        for (auto& part : without_class(token))
            tokens.push_back(std::move(part));
    }
    return tokens;
}

std::string phrase_of(const std::vector<std::string>& tokens, std::size_t from, std::size_t to) {
    return fmt::format("{}", fmt::join(tokens.begin() + static_cast<std::ptrdiff_t>(from),
                                       tokens.begin() + static_cast<std::ptrdiff_t>(to), " "));
}

std::string phrase_of(std::string_view text) {
    const auto tokens = tokens_of(text);
    return phrase_of(tokens, 0, tokens.size());
}

std::vector<std::string> in_both(const std::vector<std::string>& a,
                                 const std::vector<std::string>& b) {
    std::vector<std::string> both;
    std::copy_if(a.begin(), a.end(), std::back_inserter(both),
                 [&](const std::string& name) { return contains(b, name); });
    return both;
}

// A bolt has a hexagon, a machine screw has none: which head it has must be said.
std::string usual_form(std::string_view text) {
    const auto words = split(folded(text), ' ');
    if (contains(words, "machine") || contains(words, "slotted"))
        return {};
    const bool bolt = contains(words, "bolt") || contains(words, "bolts");
    return bolt ? "hex cap" : "socket head cap";
}

} // namespace

std::string joined(const std::vector<std::string>& names) {
    return fmt::format("{}", fmt::join(names, ", "));
}

// The phrases of one text, and the tokens that none of them takes.
struct ScrewWords::Found {
    struct Named {
        std::string words;
        std::vector<std::string> series;
    };
    std::vector<std::string> forms;
    std::string drive_form;  // named by the drive alone
    std::string countersunk; // the words that say so
    std::vector<Named> named;
    struct Left {
        std::string token;
        std::size_t at; // which word of the text it is
    };
    std::vector<Left> left;
};

ScrewWords::ScrewWords(const Tables& tables) : series_(tables.series()) {
    for (const auto& series : series_) {
        phrases_.push_back({phrase_of(series.name), {}, series.name});
        for (const auto& word : series.words) {
            auto words = phrase_of(word);
            if (words != phrases_.back().words || phrases_.back().series != series.name)
                phrases_.push_back({std::move(words), {}, series.name});
        }
    }
    for (const auto& word : tables.form_words())
        phrases_.push_back({phrase_of(word.word), word.form, {}});
    std::erase_if(phrases_, [](const Phrase& phrase) { return phrase.words.empty(); });
    for (const auto& phrase : phrases_)
        longest_ = std::max(longest_, split(phrase.words, ' ').size());
}

const Series* ScrewWords::find(std::string_view name) const {
    const auto found = std::find_if(series_.begin(), series_.end(),
                                    [&](const Series& series) { return series.name == name; });
    return found == series_.end() ? nullptr : &*found;
}

std::string ScrewWords::form_of(const std::vector<std::string>& names) const {
    std::string form;
    for (const auto& name : names) {
        const auto* series = find(name);
        if (!series || (!form.empty() && series->form != form))
            return {};
        form = series->form;
    }
    return form;
}

bool ScrewWords::has_form(const std::vector<std::string>& names, std::string_view form) const {
    return std::any_of(names.begin(), names.end(), [&](const std::string& name) {
        const auto* series = find(name);
        return series && series->form == form;
    });
}

std::string ScrewWords::forms_text() const {
    std::vector<std::string> forms;
    for (const auto& series : series_)
        if (!contains(forms, series.form))
            forms.push_back(series.form);
    return joined(forms);
}

std::string ScrewWords::known_text() const {
    std::vector<std::string> names;
    for (const auto& series : series_)
        names.push_back(series.name);
    return fmt::format("forms: {}; series: {}", forms_text(), joined(names));
}

// `ISO 4762 (socket head cap), ...`
std::string ScrewWords::with_forms(const std::vector<std::string>& names) const {
    std::vector<std::string> texts;
    for (const auto& name : names)
        texts.push_back(fmt::format("{} ({})", name, find(name)->form));
    return joined(texts);
}

// Adds what `words` names; false if it names nothing. A form goes before a series.
bool ScrewWords::names(std::string_view words, Found& found) const {
    Found::Named named{std::string(words), {}};
    for (const auto& phrase : phrases_) {
        if (phrase.words != words)
            continue;
        if (phrase.series.empty()) {
            if (phrase.form == k_countersunk)
                found.countersunk = words;
            else if (contains(k_name_the_drive, words))
                found.drive_form = phrase.form;
            else if (!contains(found.forms, phrase.form))
                found.forms.push_back(phrase.form);
            return true;
        }
        if (!contains(named.series, phrase.series))
            named.series.push_back(phrase.series);
    }
    if (named.series.empty())
        return false;
    found.named.push_back(std::move(named));
    return true;
}

ScrewWords::Found ScrewWords::find_phrases(std::string_view text) const {
    const auto tokens = tokens_of(text);
    Found found;
    for (std::size_t at = 0; at < tokens.size();) {
        auto end = std::min(tokens.size(), at + longest_);
        while (end > at && !names(phrase_of(tokens, at, end), found))
            --end;
        if (end == at)
            found.left.push_back({tokens[at], at});
        at = std::max(end, at + 1);
    }
    return found;
}

// The series that every word allows. Words that say little count only where they fit.
std::vector<std::string> ScrewWords::narrowed(const Found& found, std::string_view form) const {
    std::vector<std::string> result;
    for (const bool little : {false, true}) {
        for (const auto& named : found.named) {
            if (contains(k_say_little, named.words) != little)
                continue;
            auto allowed = named.series;
            std::erase_if(allowed, [&](const std::string& name) {
                return !form.empty() && find(name)->form != form;
            });
            if (!result.empty())
                allowed = in_both(result, allowed);
            if (!allowed.empty())
                result = std::move(allowed);
            else if (!little)
                throw error::BadData(
                    fmt::format("screw: a series that does not go with the rest: '{}'",
                                named.words),
                    "it names " + with_forms(named.series));
        }
    }
    return result;
}

std::vector<std::string> ScrewWords::read_series(std::string_view text,
                                                 std::string_view form) const {
    const auto found = find_phrases(text);
    auto result = narrowed(found, form);
    if (result.empty() || !found.left.empty())
        throw error::BadData(fmt::format("series: not known: '{}'", text), known_text());
    return result;
}

// The words that no phrase takes are one size, side by side; its length may stand apart.
Thread ScrewWords::read_size(const Found& found, std::string_view text) const {
    std::vector<std::string> size;
    std::size_t size_at = 0;
    for (const auto& [token, at] : found.left) {
        if (contains(k_say_little, token) || contains(k_thread_series, token))
            continue;
        if (!like_size(token))
            throw error::BadData(fmt::format("screw: not a word that is known: '{}'", token),
                                 known_text());
        if (!size.empty() && at != size_at + 1 && token[0] != 'x')
            throw error::BadData(fmt::format("screw: a size in two places: '{}'", text),
                                 "write size and pitch together: 5/16-18");
        size_at = at;
        if (token != "-" || !size.empty())
            size.push_back(token);
    }
    if (!size.empty() && size.back() == "-")
        size.pop_back();
    if (size.empty())
        throw error::BadData(fmt::format("screw: no size: '{}'", text),
                             "a size first: #10-32, 5/16-18, M8, 2BA, then the form");
    return parse_thread(phrase_of(size, 0, size.size()));
}

// `unf`, `bsf`, `coarse`; the last one that is said.
std::string ScrewWords::thread_series(const Found& found) {
    std::string said;
    for (const auto& named : found.named)
        if (contains(k_thread_series, named.words))
            said = named.words;
    for (const auto& left : found.left)
        if (contains(k_thread_series, left.token))
            said = left.token;
    return said;
}

AskedScrew ScrewWords::read(std::string_view text) const {
    if (text.size() > k_longest_text)
        throw error::BadData(fmt::format("screw: longer than {} characters", k_longest_text),
                             "size, pitch, form, series: 5/16-18 socket head cap 1936");
    const auto found = find_phrases(text);
    if (!found.countersunk.empty())
        throw error::BadData(
            fmt::format("screw: a countersunk head wants a countersink, not a counterbore: '{}'",
                        found.countersunk),
            "countersink to the head's angle, 82 degrees for inch screws and 90 for metric ones; "
            "counterbores are for: " +
                forms_text());
    if (found.forms.size() > 1)
        throw error::BadData(fmt::format("screw: {} forms of head ({}): '{}'", found.forms.size(),
                                         joined(found.forms), text),
                             "one form: " + forms_text());
    AskedScrew asked;
    asked.form = found.forms.empty() ? found.drive_form : found.forms.front();
    asked.series = narrowed(found, asked.form);
    asked.thread_series = thread_series(found);
    asked.usual_form = usual_form(text);
    asked.thread = read_size(found, text);
    return asked;
}

} // namespace trade
