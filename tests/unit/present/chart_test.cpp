// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include <doctest/doctest.h>

#include <sstream>

#include "present/chart_blocks.hpp"
#include "present/chart_html.hpp"
#include "present/chart_text.hpp"
#include "present/text.hpp"

using match::AnswerKind;
using match::ChartEntry;

namespace {

ChartEntry entry(const std::string& size, const std::string& pitch, const std::string& series,
                 std::optional<AnswerKind> kind = AnswerKind::ready, std::int64_t body = 7) {
    ChartEntry entry;
    entry.screw = size + " socket head cap";
    entry.form = "socket head cap";
    entry.series = series;
    entry.size = trade::parse_size(size);
    entry.pitch = pitch;
    if (kind) {
        entry.best = match::Answer();
        entry.best->kind = *kind;
        entry.best->body = body;
    }
    return entry;
}

std::size_t widest(const std::string& text) {
    std::size_t width = 0;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);)
        width = std::max(width, present::display_width(line));
    return width;
}

} // namespace

TEST_CASE("sizes stand in rows by diameter, series in columns, inch and metric apart") {
    const std::vector<ChartEntry> entries{entry("M8", "1.25", "ISO 4762"),
                                          entry("5/16", "18", "ASME B18.3 1960"),
                                          entry("#10", "32", "ASME B18.3 1960"),
                                          entry("5/16", "18", "BS 2470", AnswerKind::make_pilot)};
    const auto blocks = present::chart_blocks(entries);
    REQUIRE(blocks.size() == 2);
    CHECK(blocks[0].title == "socket head cap, metric");
    CHECK(blocks[0].rows[0].label == "M8x1.25");
    CHECK(blocks[1].columns == std::vector<std::string>{"ASME B18.3 1960", "BS 2470"});
    REQUIRE(blocks[1].rows.size() == 2);
    CHECK(blocks[1].rows[0].label == "#10-32");
    CHECK(blocks[1].rows[0].cells[1] == nullptr);
    CHECK(blocks[1].rows[1].label == "5/16-18");
    CHECK(present::chart_cell(*blocks[1].rows[1].cells[1]) == "make pilot 7");
}

TEST_CASE("the same screw listed twice in one hole takes two rows, and none is lost") {
    const std::vector<ChartEntry> entries{entry("5/16", "18", "BS 2470"),
                                          entry("5/16", "18", "BS 2470", AnswerKind::ready, 8)};
    const auto blocks = present::chart_blocks(entries);
    REQUIRE(blocks.size() == 1);
    REQUIRE(blocks[0].rows.size() == 2);
    CHECK(blocks[0].rows[1].cells[0]->best->body == 8);
}

TEST_CASE("nothing stands for a screw that no tool serves; words stay within the width") {
    std::vector<ChartEntry> entries{entry("5/16", "18", "A series of heads with a long name"),
                                    entry("3/8", "16", "B", std::nullopt)};
    for (const auto* series : {"C", "D", "E", "F", "G", "H", "I"})
        entries.push_back(entry("1/2", "13", series, AnswerKind::after_work, 12345));
    const auto text = present::chart_text(entries, {}, 80);
    CHECK(widest(text) <= 80);
    CHECK(text.find("\n3/8-16\n") != std::string::npos);
    CHECK(text.find("after work 12345") != std::string::npos);
    CHECK(text.find("1 ready, 7 after work, 1 without a tool.") != std::string::npos);
}

TEST_CASE("what was stored does no harm in the wall chart") {
    auto own = entry("5/16", "18", "BS 2470");
    own.best->place = "tin <b> & \"co\"\x1b[2J";
    const auto html = present::chart_html({own}, present::Paper::letter);
    CHECK(html.find("tin &lt;b&gt; &amp;") != std::string::npos);
    CHECK(html.find('\x1b') == std::string::npos);
    CHECK(html.find("size: letter") != std::string::npos);
}
