// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Sheets over many random catalogues: what they say is what the match says.
#include <doctest/doctest.h>

#include <algorithm>

#include "error/error.hpp"
#include "job/plan.hpp"
#include "job/section.hpp"
#include "job/steps.hpp"
#include "job/torque.hpp"
#include "oracle/random_catalogue.hpp"
#include "store/reference.hpp"

using length::Range;
using length::Unit;

namespace {

const store::Reference& tables() {
    static const store::Reference reference;
    return reference;
}

const job::Figure* figure(const job::Sheet& sheet, std::string_view name) {
    for (const auto& section : sheet.sections)
        for (const auto& found : section.figures)
            if (found.name == name)
                return &found;
    return nullptr;
}

void check_length(const job::Sheet& sheet, std::string_view name, const length::MaybeRange& range) {
    CAPTURE(name);
    const auto* found = figure(sheet, name);
    CHECK((found != nullptr) == range.has_value());
    if (found && range)
        CHECK(std::get<Range>(found->value) == *range);
}

length::MaybeRange depth_of(const match::Answer& answer) {
    return answer.depth ? length::MaybeRange(length::exactly(*answer.depth)) : std::nullopt;
}

bool traced(const job::Sheet& sheet) {
    for (const auto& section : sheet.sections)
        for (const auto& found : section.figures)
            if (found.formula.empty() || found.source.empty())
                return false;
    return true;
}

bool meet(const drawing::Box& a, const drawing::Box& b) {
    return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

// No text leaves the paper or meets another.
void check_lettering(const drawing::Drawing& drawing) {
    for (std::size_t i = 0; i < drawing.texts.size(); ++i) {
        const auto box = drawing::box_of(drawing.texts[i]);
        CAPTURE(drawing.texts[i].words);
        CHECK(box.left >= 0);
        CHECK(box.right <= drawing.width);
        CHECK(box.top >= 0);
        CHECK(box.bottom <= drawing.height);
        for (std::size_t j = 0; j < i; ++j)
            CHECK(!meet(box, drawing::box_of(drawing.texts[j])));
    }
}

const std::vector<trade::Material>& materials_cut_here() {
    static const auto materials = [] {
        auto all = tables().materials();
        std::erase_if(all, [](const auto& row) {
            return row.restriction(trade::Matter::refused) != nullptr;
        });
        return all;
    }();
    return materials;
}

job::Sheet sheet_for(const oracle::RandomCase& random, std::uint64_t seed,
                     const std::optional<trade::Material>& material = std::nullopt) {
    const oracle::ToolRack rack(random.tools);
    const match::Tools tools = match::load_tools(rack);
    const auto report = match::match(random.question, random.shop, rack, random.unit, 0);
    job::Particulars job;
    const auto& materials = materials_cut_here();
    job.material = material ? material : materials[seed % materials.size()];
    job.count = static_cast<int>(seed % 7 + 1);
    auto books = job::read_books(tables(), random.question.screw);
    books.oversize = random.shop.oversize;
    return job::make_sheet(random.question, job, report,
                           job::answer_for(report, std::nullopt, std::nullopt), tools, random.shop,
                           books, random.unit);
}

} // namespace

TEST_CASE("a sheet has the figures of the best answer, each with formula and source") {
    int answered = 0;
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        CAPTURE(seed);
        const auto random = oracle::random_case(seed);
        const auto sheet = sheet_for(random, seed);
        if (!sheet.answer) {
            CHECK(sheet.ways.size() >= 3);
            continue;
        }
        ++answered;
        check_length(sheet, "hole", sheet.answer->hole);
        check_length(sheet, "depth", depth_of(*sheet.answer));
        check_length(sheet, "stop travel", depth_of(*sheet.answer));
        check_length(sheet, "running clearance", sheet.answer->running_clearance);
        if (const auto* counterbore = figure(sheet, "counterbore"))
            CHECK(std::get<Range>(counterbore->value).lo == sheet.answer->counterbore->lo);
        CHECK(traced(sheet));
        CHECK(!sheet.steps.empty());
        for (const bool both_units : {false, true})
            if (const auto drawing =
                    job::draw_section(sheet.question, *sheet.answer, {random.unit, both_units}))
                check_lettering(*drawing);
    }
    CHECK(answered > 100);
}

TEST_CASE("a job's runs take every usable line once for the tool and every tool once") {
    std::vector<job::Sheet> sheets;
    for (std::uint64_t seed = 1; seed <= 60; ++seed)
        sheets.push_back(sheet_for(oracle::random_case(seed), seed));
    // The catalogues differ, so numbers mean different tools: for the plan they are just numbers.
    const auto plan = job::plan_job(sheets);
    std::vector<int> drilled(sheets.size()), cut(sheets.size());
    std::vector<std::string> with;
    for (const auto& run : plan.runs) {
        int holes = 0;
        for (const auto line : run.lines) {
            ++(run.operation == "drill" ? drilled : cut)[line];
            holes += sheets[line].particulars.count;
        }
        CHECK(holes == run.holes);
        CHECK(std::find(with.begin(), with.end(), run.with) == with.end());
        with.push_back(run.with);
    }
    for (std::size_t line = 0; line < sheets.size(); ++line) {
        const bool usable = sheets[line].usable();
        CHECK(cut[line] == (usable ? 1 : 0));
        CHECK(drilled[line] == (usable && sheets[line].answer->drill ? 1 : 0));
        CHECK((std::find(plan.not_ready.begin(), plan.not_ready.end(), line) ==
               plan.not_ready.end()) == usable);
    }
}

// All that a sheet tells a person to do, and the cautions.
std::string told(const job::Sheet& sheet) {
    std::string text;
    for (const auto& section : sheet.sections)
        for (const auto& note : section.notes)
            text += note + '\n';
    for (const auto& step : sheet.steps)
        text += step + '\n';
    for (const auto& caution : job::cautions(sheet.particulars.material))
        text += caution + '\n';
    return text;
}

bool says(const std::string& text, std::string_view word) {
    return text.find(word) != std::string::npos;
}

TEST_CASE("no sheet tells what its material forbids, and the material's cautions come first") {
    // A case whose best answer has all of a counterbore: the figures of running are there.
    std::uint64_t seed = 1;
    while (!figure(sheet_for(oracle::random_case(seed), seed), "feed per revolution"))
        ++seed;
    const auto random = oracle::random_case(seed);
    for (const auto& material : materials_cut_here()) {
        CAPTURE(material.name);
        const auto sheet = sheet_for(random, seed, material);
        const auto text = told(sheet);
        CHECK(says(text, "by hand: "));
        CHECK(says(text, "coolant: " + material.coolant));
        CHECK(says(text, "dwell one or two turns") == material.may_dwell());
        if (!material.may_dwell())
            CHECK(says(text, "no dwell"));
        if (material.restriction(trade::Matter::coolant)) { // magnesium
            CHECK(!says(text, "soluble"));
            CHECK(!says(text, "flood"));
        }
        const auto cautions = job::cautions(material);
        CHECK(cautions.size() == material.restrictions.size() + job::cautions({}).size());
        for (std::size_t at = 0; at < material.restrictions.size(); ++at)
            CHECK(cautions[at] == material.name + ": " + material.restrictions[at].words);
    }
}

TEST_CASE("torques are read with their unit") {
    CHECK(job::read_torque("23 N m").lo == doctest::Approx(23));
    CHECK(job::read_torque("23Nm").hi == doctest::Approx(23));
    // 1 ft-lb is 1.3558 N m, 12 in-lb (NIST SP 811).
    CHECK(job::read_torque("10 ft-lb").lo == doctest::Approx(13.558179).epsilon(1e-6));
    CHECK(job::read_torque("120 in-lb").lo == doctest::Approx(13.558179).epsilon(1e-6));
    CHECK(job::read_torque("15 to 17 ft-lb").hi == doctest::Approx(23.0489).epsilon(1e-5));
    for (const char* bad :
         {"17", "ft-lb", "-3 N m", "17 to 15 ft-lb", "1e3 N m", "nan N m", "0 N m"}) {
        CAPTURE(bad);
        CHECK_THROWS_AS((void)job::read_torque(bad), error::BadData);
    }
}
