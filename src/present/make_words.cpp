// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/make_words.hpp"

#include <algorithm>
#include <vector>

namespace present {

std::string_view kind_word(make::PieceKind kind) {
    switch (kind) {
    case make::PieceKind::pilot:
        return "pilot";
    case make::PieceKind::sleeve:
        return "sleeve";
    case make::PieceKind::turn_down:
        return "turn-down";
    }
    return {};
}

std::string body_numbers(const make::Piece& piece) {
    std::string text;
    for (std::size_t i = 0; i < piece.bodies.size(); ++i) {
        if (i > 0)
            text += i + 1 == piece.bodies.size() ? " and " : ", ";
        text += std::to_string(piece.bodies[i].number);
    }
    return text;
}

namespace {

std::string hole_word(const make::Served& served) {
    if (served.drill)
        return served.drill->name;
    return served.reamed ? "ream" : "hole";
}

} // namespace

std::string screws_served(const make::Piece& piece) {
    std::vector<std::string> names;
    for (const auto& served : piece.serves) {
        const auto name = served.screw + " (" + hole_word(served) + ")";
        if (std::find(names.begin(), names.end(), name) == names.end())
            names.push_back(name);
    }
    std::string text;
    for (const auto& name : names)
        text += (text.empty() ? "" : "; ") + name;
    return text;
}

} // namespace present
