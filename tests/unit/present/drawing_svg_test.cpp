// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Drawings and the printed sheet: valid XML whatever text was stored, and nothing from outside.
#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "present/drawing_svg.hpp"
#include "present/make_html.hpp"
#include "random_piece.hpp"

namespace {

bool contains(std::string_view text, std::string_view part) {
    return text.find(part) != std::string_view::npos;
}

std::size_t count(std::string_view text, std::string_view part) {
    std::size_t n = 0;
    for (auto at = text.find(part); at != std::string_view::npos; at = text.find(part, at + 1))
        ++n;
    return n;
}

// By xmllint, which tests/run installs.
bool is_xml(const std::string& text) {
    const auto path = std::filesystem::temp_directory_path() / "counterpart_drawing_test.xml";
    std::ofstream(path, std::ios::binary) << text;
    const bool valid = std::system(("xmllint --noout --nonet " + path.string()).c_str()) == 0;
    std::filesystem::remove(path);
    return valid;
}

drawing::Drawing small_drawing() {
    drawing::Drawing drawing;
    drawing.width = 20;
    drawing.height = 10;
    drawing.title = "A & B";
    drawing.lines = {{{1, 1}, {5, 1}, drawing::Pen::outline},
                     {{5, 1}, {5, 2.25}, drawing::Pen::outline},
                     {{0, 5}, {20, 5}, drawing::Pen::centre}};
    drawing.arcs = {{{10, 5}, 2, 0, 360, drawing::Pen::thin}};
    drawing.arrows = {{{5, 1}, 0}};
    drawing.texts = {{{10, 9}, "x < 1", 3, drawing::Anchor::end, true}};
    return drawing;
}

make::MakeList random_list(std::mt19937_64& random, int pieces) {
    make::MakeList list;
    list.met = {"1/4-20 socket head cap"};
    list.settle_first.push_back({"#10-32 <fillister>", {}});
    list.cannot.push_back({"M10 socket head cap", {}, {}});
    list.bound = pieces;
    for (int i = 1; i <= pieces; ++i) {
        list.pieces.push_back(random_piece::make(random));
        list.pieces.back().item = i;
    }
    return list;
}

std::string sheet_of(const make::MakeList& list, const present::Sheet& sheet) {
    std::vector<make::Spec> specs;
    for (const auto& piece : list.pieces)
        specs.push_back(random_piece::specify(piece, sheet.lettering.unit));
    const auto bars = make::plan_stock(list.pieces, specs, make::k_usual_kerf, make::k_usual_grip);
    return present::make_html(list, specs, bars, sheet);
}

void check_self_contained(const std::string& text) {
    for (const auto* outside : {"<script", "href", "url(", "@import", "<img", "src=", "onload="})
        CHECK_FALSE(contains(text, outside));
    CHECK(count(text, "http") == count(text, "xmlns=\"http://www.w3.org/"));
}

} // namespace

TEST_CASE("a drawing becomes paths, one a kind of line, and text that is escaped") {
    const auto svg = present::svg_file(small_drawing());
    CHECK(contains(svg, "width=\"20mm\" height=\"10mm\" viewBox=\"0 0 20 10\""));
    CHECK(contains(svg, "<title>A &amp; B</title>"));
    CHECK(contains(svg, "d=\"M1 1L5 1L5 2.25\""));
    CHECK(contains(svg, "d=\"M12 5A2 2 0 0 1 8 5A2 2 0 0 1 12 5\""));
    CHECK(contains(svg, "d=\"M0 5L20 5\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.18\" "
                        "stroke-linejoin=\"round\" stroke-dasharray="));
    CHECK(contains(svg, "<path d=\"M5 1L2.5 1.45L2.5 0.55z\" fill=\"#000\"/>"));
    CHECK(contains(svg, "<text x=\"10\" y=\"9\" font-size=\"3\" text-anchor=\"end\" "
                        "font-weight=\"bold\">x &lt; 1</text>"));
    CHECK(is_xml(svg));
}

TEST_CASE("every drawing is valid XML without scripts or outside references") {
    std::mt19937_64 random(41);
    std::string all = "<all>";
    for (int round = 0; round < 100; ++round) {
        const auto piece = random_piece::make(random);
        const drawing::Lettering lettering{length::Unit::inch, round % 2 == 0};
        const auto drawing = make::draw(piece, random_piece::specify(piece, lettering.unit),
                                        lettering, "2026-11-28");
        check_self_contained(present::svg_file(drawing));
        all += present::svg_element(drawing);
    }
    CHECK(is_xml(all + "</all>"));
}

TEST_CASE("text that no XML may hold is shown as something else") {
    auto drawing = small_drawing();
    drawing.texts[0].words = std::string("a\x01\x1b[31m\xff\xef\xbf\xbf\"&'>") + '\0' + "b";
    CHECK(is_xml(present::svg_file(drawing)));
    std::mt19937_64 random(42);
    auto list = random_list(random, 1);
    list.pieces[0].bodies[0].place = "</text><script>\x02";
    list.met[0] = "]]>";
    const auto html = sheet_of(list, {});
    CHECK(is_xml(html));
    check_self_contained(html);
}

TEST_CASE("the sheet has a page for every piece, for A4 and for Letter") {
    std::mt19937_64 random(43);
    const auto list = random_list(random, 12);
    const auto a4 = sheet_of(list, {present::Paper::a4, {length::Unit::inch, false}, "2026-11-28"});
    CHECK(is_xml(a4));
    check_self_contained(a4);
    CHECK(contains(a4, "@page { size: A4; margin: 12mm; }"));
    CHECK(count(a4, "<svg ") == 12);
    CHECK(count(a4, ": order of work</h2>") == 12);
    CHECK(contains(a4, "12 pieces to make; fewer cannot do"));
    CHECK(contains(a4, "#10-32 &lt;fillister&gt;"));
    CHECK(contains(a4, "M10 socket head cap"));
    const auto letter =
        sheet_of(list, {present::Paper::letter, {length::Unit::millimetre, true}, "2026-11-28"});
    CHECK(is_xml(letter));
    CHECK(contains(letter, "@page { size: letter; margin: 12mm; }"));
    CHECK(contains(letter, "Limits are in millimetres [inches]"));
}

TEST_CASE("a sheet with nothing to make says so") {
    const auto html = sheet_of({}, {});
    CHECK(is_xml(html));
    CHECK(contains(html, "0 pieces to make."));
    CHECK_FALSE(contains(html, "<table"));
}
