// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/markings.hpp"

#include <algorithm>
#include <cctype>

#include "trade/text.hpp"

namespace match {

namespace {

constexpr std::string_view k_usual_form = "socket head cap";

bool is_of_a_word(char c) {
    return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '/' || c == '.' || c == '#';
}

// `word` stands in `text` by itself; what follows may be a pitch. Gives where it ends.
std::size_t end_of(std::string_view text, std::string_view word, std::string_view may_follow) {
    for (auto at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1)) {
        const auto end = at + word.size();
        const bool starts = at == 0 || !is_of_a_word(text[at - 1]);
        const bool ends = end == text.size() || !is_of_a_word(text[end]) ||
                          may_follow.find(text[end]) != std::string_view::npos;
        if (starts && ends && !(at > 0 && text[at - 1] == '-'))
            return end;
    }
    return std::string_view::npos;
}

bool says_form(std::string_view marking, const trade::Screw& screw) {
    return std::any_of(screw.form_words.begin(), screw.form_words.end(), [&](const auto& word) {
        return end_of(marking, word, "") != std::string_view::npos;
    });
}

} // namespace

bool names(std::string_view marking, const trade::Screw& screw) {
    if (!screw.size)
        return false;
    const auto size = trade::folded(screw.size->text);
    const auto end = end_of(marking, size, "x");
    if (end == std::string_view::npos)
        return false;
    if (says_form(marking, screw))
        return true;
    const bool pitch = end < marking.size() && marking[end] == '-';
    const bool alone = std::none_of(marking.begin() + static_cast<std::ptrdiff_t>(end),
                                    marking.end(), [](char c) { return c >= 'a' && c != 'x'; });
    return screw.form == k_usual_form && alone && (screw.is_metric() || pitch);
}

Markings::Markings(const std::vector<trade::Marked>& bodies) {
    for (const auto& [marking, body] : bodies) {
        auto text = trade::folded(marking);
        if (bodies_.empty() || bodies_.back().first != text)
            bodies_.emplace_back(std::move(text), std::vector<std::int64_t>());
        bodies_.back().second.push_back(body);
    }
}

trade::NumberSet Markings::naming(const trade::Screw& screw) const {
    std::vector<std::int64_t> named;
    for (const auto& [marking, bodies] : bodies_)
        if (names(marking, screw))
            named.insert(named.end(), bodies.begin(), bodies.end());
    return named.empty() ? trade::NumberSet() : trade::NumberSet(std::move(named));
}

} // namespace match
