// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/intake/phrase.hpp"

#include <algorithm>
#include <array>

namespace cli::intake {

namespace {

bool ends_in(std::string_view text, std::string_view ending) {
    return text.size() > ending.size() && text.substr(text.size() - ending.size()) == ending;
}

// Their cells are words that need no label.
constexpr std::array<std::string_view, 4> k_plain{"condition", "material", "tried", "work"};

} // namespace

std::string label_of(std::string_view column) {
    if (ends_in(column, "_dia") || ends_in(column, "_how"))
        column.remove_suffix(4);
    if (column == "marking")
        return "marked";
    std::string label(column);
    std::replace(label.begin(), label.end(), '_', ' ');
    return label;
}

std::string phrase(const std::string& column, const std::string& cell) {
    if (std::find(k_plain.begin(), k_plain.end(), column) != k_plain.end())
        return cell;
    if (column == "kind")
        return cell == "unknown" || cell == "other" ? "kind " + cell : cell;
    if (column == "shank_kind")
        return cell + " shank";
    if (column == "retention")
        return cell == "other" ? "held otherwise" : "held by " + cell;
    if (column == "pilot_kind")
        return cell == "none" ? "no pilot" : cell == "unknown" ? "pilot unknown" : cell + " pilot";
    if (column == "fluted")
        return cell == "yes" ? "fluted pilot" : "plain pilot";
    if (column == "flat_at" && cell == "none")
        return "no flat";
    if (column == "flutes")
        return cell + (cell == "1" ? " flute" : " flutes");
    if (ends_in(column, "_how"))
        return label_of(column) + " by " + cell;
    return label_of(column) + ' ' + cell;
}

} // namespace cli::intake
