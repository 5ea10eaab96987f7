// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/make_json.hpp"

#include "present/make_words.hpp"

namespace present {

namespace {

Json served_json(const make::Served& served) {
    return {{"screw", served.screw},
            {"body", served.body},
            {"drill", served.drill ? Json{{"name", served.drill->name},
                                          {"diameter_mm", length_mm(served.drill->diameter)}}
                                   : Json(nullptr)},
            {"reamed", served.reamed},
            {"hole_mm", range_mm(served.hole)},
            {"size", served.size ? Json(match::to_text(*served.size)) : Json(nullptr)}};
}

Json dimension_json(const make::Dimension& dimension) {
    return {{"name", dimension.name},
            {"limits_mm", range_mm(dimension.limits)},
            {"to_suit", text_json(dimension.to_suit)},
            {"source", dimension.source}};
}

Json piece_json(const make::Piece& piece, const make::Spec& spec) {
    Json serves = Json::array();
    for (const auto& served : piece.serves)
        serves.push_back(served_json(served));
    Json bodies = Json::array();
    for (const auto& body : piece.bodies)
        bodies.push_back(body.number);
    Json dimensions = Json::array();
    for (const auto* dimension : make::dimensions_of(spec))
        dimensions.push_back(dimension_json(*dimension));
    return {{"item", piece.item},
            {"kind", kind_word(piece.kind)},
            {"pilot_mm", range_mm(piece.pilot)},
            {"shank_mm", range_mm(piece.shank)},
            {"owned_pilot", piece.owned ? Json(piece.owned->number) : Json(nullptr)},
            {"bodies", bodies},
            {"serves", serves},
            {"dimensions", dimensions},
            {"undercut", spec.undercut ? Json(spec.undercut->name) : Json(nullptr)},
            {"finish", spec.finish},
            {"material", spec.material},
            {"treatment", spec.treatment},
            {"treatment_source", spec.treatment_source},
            {"centres", text_json(spec.centres)},
            {"stock_mm", length_mm(spec.stock_dia)},
            {"cut_length_mm", length_mm(spec.cut_length)},
            {"steps", spec.steps},
            {"cautions", spec.cautions}};
}

Json settle_json(const make::Settle& settle) {
    return {{"screw", settle.screw},
            {"body", settle.answer.body},
            {"pilot", settle.answer.pilot ? Json(*settle.answer.pilot) : Json(nullptr)},
            {"what", match::next_step(settle.answer)}};
}

Json cannot_json(const make::CannotMeet& cannot) {
    return {{"screw", cannot.screw},
            {"counterbore_mm", range_mm(cannot.wanted.cutter)},
            {"pilot_mm", range_mm(cannot.wanted.pilot)},
            {"nearest_body", cannot.nearest ? Json(cannot.nearest->body) : Json(nullptr)},
            {"nearest", cannot.nearest ? Json(match::next_step(*cannot.nearest)) : Json(nullptr)}};
}

Json bar_json(const make::BarPlan& bar) {
    Json cuts = Json::array();
    for (const auto& cut : bar.cuts)
        cuts.push_back({{"item", cut.item}, {"length_mm", length_mm(cut.length)}});
    return {{"diameter_mm", length_mm(bar.diameter)},
            {"cuts", cuts},
            {"kerf_mm", length_mm(bar.kerf)},
            {"total_mm", length_mm(bar.total)}};
}

template <class Rows, class Convert>
Json list_of(const Rows& rows, Convert convert) {
    Json list = Json::array();
    for (const auto& row : rows)
        list.push_back(convert(row));
    return list;
}

} // namespace

Json make_json(const make::MakeList& list, const std::vector<make::Spec>& specs,
               const std::vector<make::BarPlan>& bars) {
    Json pieces = Json::array();
    for (std::size_t i = 0; i < list.pieces.size(); ++i)
        pieces.push_back(piece_json(list.pieces[i], specs[i]));
    return {{"format", 1},
            {"pieces", pieces},
            {"settle_first", list_of(list.settle_first, settle_json)},
            {"cannot", list_of(list.cannot, cannot_json)},
            {"met", list.met},
            {"proven", list.proven},
            {"bound", list.bound},
            {"stock", list_of(bars, bar_json)}};
}

} // namespace present
