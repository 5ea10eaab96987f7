// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One rack with every solid tool that handbook and standard list, each as it is marked, asked for
// the screws they were made for: the tool of the screw's own size must be ready, and first.
// Tools: Machinery's Handbook, counterbores with integral pilots (27th to 31st edition, from
// memory); DIN 373 (1975 and 2007, part from memory).
#include <doctest/doctest.h>

#include "length/print.hpp"
#include "match/matcher.hpp"
#include "store/reference.hpp"
#include "trade/dimension.hpp"

using match::AnswerKind;
using trade::Feature;
using trade::How;

namespace {

// Number sizes are listed in decimals, larger ones in fractions; that is how they are marked.
std::string marked(length::Length size, const trade::PublishedTool& tool) {
    if (tool.unit == length::Unit::millimetre)
        return length::with_unit(size, length::Unit::millimetre);
    return tool.size.front() == '#' ? length::to_text(size, length::Unit::inch)
                                    : length::as_fraction(size);
}

class Rack : public trade::Rack {
  public:
    Rack(const store::Reference& tables, const trade::Practice& practice) {
        for (const auto& tool : tables.published_tools())
            if (is_solid(tool))
                add(tool, practice);
    }
    [[nodiscard]] std::vector<trade::Body> bodies() const override { return bodies_; }
    [[nodiscard]] std::vector<trade::Pilot> pilots() const override { return {}; }
    [[nodiscard]] std::vector<trade::Trial> trials() const override { return {}; }

  private:
    static bool is_solid(const trade::PublishedTool& tool) {
        const bool one_size = tool.cut_dia.listed && tool.pilot_dia.listed &&
                              tool.cut_dia.listed->lo == tool.cut_dia.listed->hi;
        const bool named =
            tool.standard == "Machinery's Handbook integral pilot" || tool.standard == "DIN 373";
        return one_size && named && tool.pilot_kind == "integral" && !tool.size.empty();
    }
    void add(const trade::PublishedTool& tool, const trade::Practice& practice) {
        const auto read = [&](length::Length size, Feature feature) {
            return trade::read_dimension(marked(size, tool), How::mark, feature, length::Unit::inch,
                                         practice);
        };
        trade::Body body;
        body.number = static_cast<std::int64_t>(bodies_.size()) + 1;
        body.kind = trade::BodyKind::counterbore;
        body.pilot_kind = trade::PilotKind::integral;
        body.cut_dia = read(tool.cut_dia.listed->lo, Feature::cut_dia);
        body.pilot_dia = read(tool.pilot_dia.listed->lo, Feature::pilot_dia);
        body.place = tool.size; // where to find it again in the test
        body.note = tool.hole;
        bodies_.push_back(std::move(body));
    }

    std::vector<trade::Body> bodies_;
};

struct Bench {
    explicit Bench(const std::string& indexes = "fraction, number, letter, metric") {
        practice.drill_indexes = indexes;
        shop = match::make_shop(tables, practice, length::Unit::inch);
    }

    store::Reference tables;
    trade::Practice practice = trade::read_practice(tables.practice());
    match::Shop shop;
    Rack rack{tables, practice};
};

match::Report ask(const Bench& bench, const std::string& screw) {
    match::Question question;
    question.screw = trade::resolve_screw(screw, "", bench.tables, {});
    return match::match(question, bench.shop, bench.rack, length::Unit::inch, 3);
}

void check_first(const Bench& bench, const std::string& size, const std::string& form) {
    const auto screw = size + " " + form;
    CAPTURE(screw);
    const auto report = ask(bench, screw);
    REQUIRE_FALSE(report.answers.empty());
    const auto& first = report.answers.front();
    const auto said = match::next_step(first);
    CAPTURE(said);
    CAPTURE(first.place);
    CHECK(first.kind == AnswerKind::ready);
    CHECK(first.place == size);
}

const std::vector<std::string> k_number{"#0", "#1", "#2", "#3", "#4", "#5", "#6", "#8", "#10"};
const std::vector<std::string> k_inch{"1/4", "5/16", "3/8", "7/16", "1/2"};
const std::vector<std::string> k_metric{"M3", "M4", "M5", "M6", "M8", "M10", "M12"};

} // namespace

TEST_CASE(
    "in a rack of all of them the handbook's tool comes first for its socket head cap screw") {
    for (const auto* indexes : {"fraction, number, letter", "fraction, number, letter, metric"}) {
        CAPTURE(indexes);
        const Bench bench(indexes);
        for (const auto& size : k_number)
            check_first(bench, size, "socket head cap");
        for (const auto& size : k_inch)
            check_first(bench, size, "socket head cap");
    }
}

TEST_CASE("in a rack of all of them the handbook's tool comes first for its fillister screw") {
    const Bench bench("fraction, number, letter");
    for (const auto& size : k_number)
        check_first(bench, size, "fillister");
    check_first(bench, "#12", "fillister");
    // Of 1/4 to 1/2 the cap screw's head is the one the tools are made for (head and 1/32).
    for (const auto& size : k_inch)
        check_first(bench, size, "fillister cap");
}

TEST_CASE("in a rack of all of them the standard's tool comes first for its metric screw") {
    for (const auto* indexes : {"metric", "fraction, number, letter, metric"}) {
        CAPTURE(indexes);
        const Bench bench(indexes);
        for (const auto& size : k_metric)
            check_first(bench, size, "socket head cap");
    }
}
