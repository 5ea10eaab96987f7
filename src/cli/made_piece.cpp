// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/made_piece.hpp"

#include <fmt/format.h>

#include "error/error.hpp"
#include "length/print.hpp"
#include "present/make_words.hpp"

namespace cli {

using length::Range;

namespace {

// The reading itself counts: limits leave room for what the instrument may be off.
bool within(const trade::MaybeDimension& made, const Range& limits) {
    if (!made)
        return false;
    const auto twice = made->range.lo + made->range.hi;
    return limits.lo * 2 <= twice && twice <= limits.hi * 2;
}

bool fits(const trade::Pilot& made, const make::Piece& piece) {
    return within(made.pilot_dia, piece.pilot) &&
           (!piece.shank || within(made.shank_dia, *piece.shank));
}

std::string other_item(const make::MakeList& list, const trade::Pilot& made) {
    for (const auto& piece : list.pieces)
        if (piece.kind != make::PieceKind::turn_down && fits(made, piece))
            return fmt::format("these sizes are those of item {}", piece.item);
    return "they fit no item of the list: add it without --from-list";
}

std::string limits_text(const make::Piece& piece, length::Unit unit) {
    auto text = "pilot " + length::to_text(piece.pilot, unit);
    if (piece.shank)
        text += ", shank " + length::to_text(*piece.shank, unit);
    return text;
}

const make::Piece& item_of(const make::MakeList& list, int item) {
    if (item < 1 || static_cast<std::size_t>(item) > list.pieces.size())
        throw error::NoSuchRecord(
            fmt::format("no such item on the make-list: {}", item),
            fmt::format("the list has {} items; `counterpart make-list` shows them",
                        list.pieces.size()));
    return list.pieces[static_cast<std::size_t>(item) - 1];
}

} // namespace

make::Piece made_piece(int item, const trade::Pilot& made, const make::Options& options,
                       Context& context) {
    MakeRequest request;
    request.options = options;
    const auto list = make_list_for(request, context);
    const auto& piece = item_of(list, item);
    if (piece.kind == make::PieceKind::turn_down)
        throw error::UsageError(
            fmt::format("item {} is pilot {} turned down, not a new pilot", item,
                        piece.owned->number),
            fmt::format("measure it: counterpart measure {} pilot_dia SIZE micrometer",
                        piece.owned->number));
    if (!fits(made, piece))
        throw error::BadData(fmt::format("the made sizes are not those of item {}: {}", item,
                                         limits_text(piece, context.unit())),
                             other_item(list, made));
    return piece;
}

void complete_from(const make::Piece& piece, trade::Pilot& made) {
    if (made.note.empty())
        made.note = "made for " + present::screws_served(piece);
    if (!piece.owned)
        return;
    made.note += fmt::format("; sleeve on pilot {}", piece.owned->number);
    if (!made.shank_dia)
        made.shank_dia = piece.owned->shank_dia;
    if (!made.shank_length)
        made.shank_length = piece.owned->shank_length;
}

} // namespace cli
