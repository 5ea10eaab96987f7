// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/make_text.hpp"

#include <fmt/format.h>

#include "make/spec_words.hpp"
#include "match/say.hpp"
#include "present/csv.hpp"
#include "present/make_words.hpp"
#include "present/table.hpp"
#include "present/text.hpp"

namespace present {

using length::to_text;
using match::say;

namespace {

std::string paragraph(const std::string& text, std::size_t width) {
    return fmt::format("{}\n", fmt::join(wrapped(text, width), "\n"));
}

std::string or_to_suit(const make::Dimension& dimension, length::Unit unit) {
    return dimension.limits ? to_text(*dimension.limits, unit) : "to suit";
}

std::string settle_text(const make::MakeList& list, const Style& style, std::size_t width) {
    Table table({{"settle first"}, {"body", true}, {"pilot", true}, {"what"}});
    for (const auto& settle : list.settle_first)
        table.add({settle.screw, std::to_string(settle.answer.body),
                   settle.answer.pilot ? std::to_string(*settle.answer.pilot) : "-",
                   match::next_step(settle.answer)});
    return table.empty() ? std::string() : table.text(width, style) + "\n";
}

std::string pieces_text(const make::MakeList& list, const std::vector<make::Spec>& specs,
                        length::Unit unit, const Style& style, std::size_t width) {
    Table table({{"item", true}, {"make"}, {"pilot"}, {"shank"}, {"bodies"}, {"for (drill)"}});
    for (std::size_t i = 0; i < list.pieces.size(); ++i) {
        const auto& piece = list.pieces[i];
        const auto kind = std::string(kind_word(piece.kind)) +
                          (piece.owned ? fmt::format(" {}", piece.owned->number) : "");
        table.add({std::to_string(piece.item), kind, or_to_suit(specs[i].pilot_dia, unit),
                   or_to_suit(specs[i].shank_dia, unit), body_numbers(piece),
                   screws_served(piece)});
    }
    return table.empty() ? std::string() : table.text(width, style) + "\n";
}

// What the table leaves out: of what, how treated, and which limits are too close for a lathe.
std::string notes_text(const make::MakeList& list, const std::vector<make::Spec>& specs,
                       length::Unit unit, std::size_t width) {
    std::vector<std::string> notes;
    for (std::size_t i = 0; i < list.pieces.size(); ++i) {
        const auto& piece = list.pieces[i];
        if (piece.kind == make::PieceKind::pilot && notes.empty())
            notes.push_back(specs[i].material + ". " + specs[i].treatment);
        if (make::closer_than_turned(piece, unit))
            notes.push_back(
                fmt::format("Item {}: limits closer than a lathe holds, {} apart: grind "
                            "or lap.",
                            piece.item, say(piece.pilot.hi - piece.pilot.lo, unit)));
    }
    std::string text;
    for (const auto& note : notes)
        text += paragraph(note, width);
    return text.empty() ? text : text + "\n";
}

std::string stock_text(const std::vector<make::BarPlan>& bars, length::Unit unit,
                       const Style& style, std::size_t width) {
    Table table({{"bar", true}, {"cut, item: length"}, {"in all", true}});
    for (const auto& bar : bars) {
        std::string cuts;
        for (const auto& cut : bar.cuts)
            cuts += fmt::format("{}{}: {}", cuts.empty() ? "" : ", ", cut.item,
                                to_text(cut.length, unit, 3));
        table.add({to_text(bar.diameter, unit), cuts, to_text(bar.total, unit, 3)});
    }
    return table.empty() ? std::string() : table.text(width, style) + "\n";
}

std::string cannot_text(const make::MakeList& list, length::Unit unit, const Style& style,
                        std::size_t width) {
    Table table({{"cannot be met"}, {"look for a cutter of"}, {"nearest", true}, {"why"}});
    for (const auto& cannot : list.cannot)
        table.add({cannot.screw,
                   cannot.wanted.cutter ? to_text(*cannot.wanted.cutter, unit) : "not known",
                   cannot.nearest ? std::to_string(cannot.nearest->body) : "-",
                   cannot.nearest ? match::next_step(*cannot.nearest) : "no body comes near"});
    return table.empty() ? std::string() : table.text(width, style) + "\n";
}

std::string summary(const make::MakeList& list) {
    const auto count = list.pieces.size();
    std::string text =
        fmt::format("{} of the screws are met already, {} to settle first, {} cannot be met. ",
                    list.met.size(), list.settle_first.size(), list.cannot.size());
    if (count == 0)
        return text + "There is nothing to make.";
    text += fmt::format("{} {} to make", count, count == 1 ? "piece" : "pieces");
    return text + (list.proven ? "; fewer cannot do."
                               : fmt::format("; not proven, at least {} are needed.", list.bound));
}

} // namespace

std::string make_text(const make::MakeList& list, const std::vector<make::Spec>& specs,
                      const std::vector<make::BarPlan>& bars, length::Unit unit, const Style& style,
                      std::size_t width) {
    return settle_text(list, style, width) + pieces_text(list, specs, unit, style, width) +
           notes_text(list, specs, unit, width) + stock_text(bars, unit, style, width) +
           cannot_text(list, unit, style, width) + paragraph(summary(list), width);
}

std::string make_csv(const make::MakeList& list, const std::vector<make::Spec>& specs,
                     length::Unit unit) {
    std::string text = csv_row({"item", "kind", "owned_pilot", "pilot_dia", "pilot_length",
                                "shank_dia", "shank_length", "stock_dia", "cut_length", "bodies",
                                "serves", "undercut", "material", "treatment"});
    for (std::size_t i = 0; i < list.pieces.size(); ++i) {
        const auto& piece = list.pieces[i];
        const auto& spec = specs[i];
        text += csv_row({std::to_string(piece.item), std::string(kind_word(piece.kind)),
                         piece.owned ? std::to_string(piece.owned->number) : "",
                         or_to_suit(spec.pilot_dia, unit), or_to_suit(spec.pilot_length, unit),
                         or_to_suit(spec.shank_dia, unit), or_to_suit(spec.shank_length, unit),
                         spec.stock_dia > length::Length() ? to_text(spec.stock_dia, unit) : "",
                         spec.cut_length > length::Length() ? to_text(spec.cut_length, unit) : "",
                         body_numbers(piece), screws_served(piece),
                         spec.undercut ? spec.undercut->name : "", spec.material, spec.treatment});
    }
    return text;
}

} // namespace present
