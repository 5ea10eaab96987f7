// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Sheets over many random catalogues: what they say is what the match says.
#include <doctest/doctest.h>

#include <algorithm>

#include "bench.hpp"
#include "job/plan.hpp"
#include "job/section.hpp"
#include "job/shop_text.hpp"
#include "job/steps.hpp"
#include "oracle/random_catalogue.hpp"
#include "store/reference.hpp"
#include "trade/material.hpp"

using job::Measure;
using length::Length;
using length::Range;

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
    const auto books = job::read_books(tables(), random.question.screw);
    return job::make_sheet(random.question, job, report,
                           job::answer_for(report, std::nullopt, std::nullopt), tools, random.shop,
                           books, random.unit);
}

} // namespace

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

// A figure as the section of the hole is lettered with it.
std::string lettering_of(const job::Figure& figure, length::Unit unit) {
    auto text = job::shop_text(std::get<Range>(figure.value), unit, figure.grain);
    if (const auto to = text.find(" to "); to != std::string::npos)
        text.replace(to, 4, "-");
    return text;
}

bool lettered_with(const drawing::Drawing& drawing, const std::string& words) {
    return std::any_of(drawing.texts.begin(), drawing.texts.end(), [&](const auto& text) {
        return text.words == words || text.words == "Ø" + words;
    });
}

TEST_CASE("a sheet has the figures of the best answer, each with formula and source") {
    int answered = 0;
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        CAPTURE(seed);
        const auto random = oracle::random_case(seed);
        const auto sheet = sheet_for(random, seed);
        CHECK(traced(sheet));
        if (!sheet.usable())
            continue;
        ++answered;
        check_length(sheet, sheet.answer->reamed ? "hole, reamed" : "hole", sheet.answer->hole);
        check_length(sheet, "stop travel", depth_of(*sheet.answer));
        check_length(sheet, "running clearance to expect", sheet.answer->running_clearance);
        if (const auto* counterbore = figure(sheet, "counterbore"))
            CHECK(std::get<Range>(counterbore->value).lo == sheet.answer->counterbore->lo);
        CHECK(!sheet.steps.empty());
    }
    CHECK(answered > 20);
}

TEST_CASE("a sheet that is not ready says what to settle or make, and has no steps") {
    int measure = 0, make = 0, none = 0;
    for (std::uint64_t seed = 1; seed <= 600; ++seed) {
        CAPTURE(seed);
        const auto sheet = sheet_for(oracle::random_case(seed), seed);
        if (sheet.usable())
            continue;
        CHECK(sheet.steps.empty());
        CHECK(!figure(sheet, "stop travel"));
        CHECK(!figure(sheet, "feed per revolution"));
        CHECK(!job::draw_section(sheet, {length::Unit::inch, false}));
        if (!sheet.answer || sheet.answer->kind == match::AnswerKind::make_pilot)
            CHECK(sheet.ways.size() >= 3);
        if (!sheet.answer) {
            ++none;
            continue;
        }
        const auto settle = std::find_if(
            sheet.sections.begin(), sheet.sections.end(),
            [](const job::Section& section) { return section.title == "Settle first"; });
        REQUIRE(settle != sheet.sections.end());
        CHECK(!settle->notes.empty());
        ++(sheet.answer->kind == match::AnswerKind::make_pilot ? make : measure);
    }
    CHECK(measure > 10);
    CHECK(make > 3);
    CHECK(none > 10);
}

TEST_CASE("table and section show the same figures, and no figure comes twice") {
    int drawn = 0;
    for (std::uint64_t seed = 1; seed <= 600; ++seed) {
        CAPTURE(seed);
        const auto sheet = sheet_for(oracle::random_case(seed), seed);
        std::vector<std::string> names;
        for (const auto& section : sheet.sections)
            for (const auto& figure : section.figures)
                if (figure.name != "first" && figure.name != "assumed")
                    names.push_back(figure.name);
        std::sort(names.begin(), names.end());
        CHECK(std::adjacent_find(names.begin(), names.end()) == names.end());
        for (const bool both_units : {false, true})
            for (const auto unit : {length::Unit::inch, length::Unit::millimetre}) {
                const auto drawing = job::draw_section(sheet, {unit, both_units});
                if (!drawing)
                    continue;
                ++drawn;
                check_lettering(*drawing);
                for (const char* name :
                     {"counterbore", "stop travel", sheet.answer->reamed ? "hole, reamed" : "hole"})
                    CHECK(lettered_with(*drawing, lettering_of(*figure(sheet, name), unit)));
            }
    }
    CHECK(drawn > 100);
}

TEST_CASE("what is assumed and what to do first stand among the sheet's own lines") {
    int assumed = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed) {
        const auto sheet = sheet_for(oracle::random_case(seed), seed);
        if (!sheet.answer)
            continue;
        for (const auto& words : sheet.answer->assumed) {
            ++assumed;
            const auto& tools = sheet.sections.front().figures;
            CHECK(std::any_of(tools.begin(), tools.end(), [&](const job::Figure& figure) {
                return figure.name == "assumed" && std::get<std::string>(figure.value) == words;
            }));
        }
    }
    CHECK(assumed > 5);
}

// A 1/4-20 socket head cap screw, with a body that is ready for it.
job::Sheet quarter_sheet(const job::Particulars& particulars, const std::string& steel = {},
                         const std::optional<trade::Machine>& machine = std::nullopt) {
    bench::ListRack rack;
    rack.body_list = {bench::integral_body()};
    rack.body_list[0].cut_dia = bench::known(bench::tenths(4370, 4376));
    rack.body_list[0].pilot_dia = bench::known(bench::tenths(2625, 2627));
    const auto screw = trade::resolve_screw("1/4-20 shcs", "", tables(), {});
    rack.body_list[0].material = steel;
    auto question = bench::question(screw);
    question.machine = machine;
    const auto shop = bench::shop();
    const auto report = match::match(question, shop, rack, length::Unit::inch, 0);
    return job::make_sheet(
        question, particulars, report, job::answer_for(report, std::nullopt, std::nullopt),
        match::load_tools(rack), shop, job::read_books(tables(), screw), length::Unit::inch);
}

TEST_CASE("a force over proof is never on a sheet that does not say so") {
    int over = 0, within = 0;
    for (const auto& factor : tables().nut_factors())
        for (const double torque : {1., 4., 8., 12., 16., 20., 30., 50.}) {
            CAPTURE(factor.surface);
            CAPTURE(torque);
            job::Particulars job;
            job.surface = factor.surface;
            job.torque = Measure{job::Kind::torque, torque, torque};
            const auto sheet = quarter_sheet(job);
            REQUIRE(sheet.usable());
            const auto force = std::get<Measure>(figure(sheet, "force in the screw")->value);
            const auto proof = std::get<Measure>(figure(sheet, "proof load")->value);
            const auto text = told(sheet);
            CHECK(says(text, "over the proof load") == (force.hi > proof.lo));
            CHECK((says(text, "over 75 % of proof") || says(text, "over the proof load")) ==
                  (force.hi > .75 * proof.lo));
            ++(force.hi > proof.lo ? over : within);
        }
    CHECK(over > 5);
    CHECK(within > 5);
}

TEST_CASE("without a torque given the force is within three quarters of proof") {
    for (const auto& factor : tables().nut_factors())
        for (const char* grade : {"", "grade 5", "A574", "8.8"}) {
            CAPTURE(factor.surface);
            job::Particulars job;
            job.surface = factor.surface;
            if (*grade)
                job.grade = grade;
            const auto sheet = quarter_sheet(job);
            const auto force = std::get<Measure>(figure(sheet, "force in the screw")->value);
            const auto proof = std::get<Measure>(figure(sheet, "proof load")->value);
            CHECK(force.hi == doctest::Approx(.75 * proof.lo).epsilon(1e-9));
            CHECK(says(told(sheet), "within 75 % of proof"));
        }
}

TEST_CASE("a stainless screw whose grade nobody said is A2-70") {
    job::Particulars job;
    job.surface = "stainless on stainless";
    const auto text = told(quarter_sheet(job));
    CHECK(says(text, "grade not said, taken as ISO 3506-1 A2-70"));
    job.surface = "dry steel";
    CHECK(says(told(quarter_sheet(job)), "grade not said, taken as ASTM A574"));
}

TEST_CASE("a chart's torque is on the sheet only for its surface, and held against proof") {
    job::Particulars job;
    job.surface = "zinc plated";
    const auto plated = quarter_sheet(job);
    // ASTM A574, plated, dry: 1/4-20 17 ft-lb, a fastener dealer's guide.
    const auto* chart = figure(plated, "charts print, zinc plated");
    REQUIRE(chart);
    CHECK(std::get<Measure>(chart->value).hi == doctest::Approx(17 * 1.3558179).epsilon(1e-6));
    CHECK(says(told(plated), "the chart's torque: over the proof load where friction is low"));
    job.surface = "oiled";
    CHECK(!says(told(quarter_sheet(job)), "chart"));
}

double set_on(const trade::Machine& machine, const char* material, const char* steel) {
    job::Particulars job;
    job.material = trade::find_material(material, tables().materials());
    const auto sheet = quarter_sheet(job, steel, machine);
    return std::get<Measure>(figure(sheet, "set " + machine.name + " to")->value).lo;
}

TEST_CASE("the machine is set by the low end, and by the pilot where that is less") {
    trade::Machine machine{"pillar drill", Range{Length(), length::thousandths(1000)}, {}};
    machine.speeds = {150, 250, 400, 640, 1000, 1600};
    // 7/16 in low-carbon steel: 50 ft/min is 437 turns; carbon steel half of it, 218.
    CHECK(set_on(machine, "1018", "high-speed steel") == doctest::Approx(400));
    CHECK(set_on(machine, "1018", "carbon steel") == doctest::Approx(150));
    CHECK(set_on(machine, "1018", "") == doctest::Approx(150));
    // In aluminium 175 ft/min would be 1528 turns; a .263 pilot at 65 ft/min makes 945.
    CHECK(set_on(machine, "6061", "HSS") == doctest::Approx(640));
}

TEST_CASE("a body of a steel that nobody recorded has both speeds, and is run as carbon steel") {
    job::Particulars job;
    job.material = trade::find_material("1018", tables().materials());
    const auto sheet = quarter_sheet(job);
    CHECK(figure(sheet, "spindle speed, carbon steel"));
    CHECK(figure(sheet, "spindle speed, high-speed steel"));
    CHECK(says(told(sheet), "run it as carbon steel until you know"));
    CHECK(says(told(quarter_sheet(job, "carbide")), "carbide: "));
}

TEST_CASE("the steps have the pilot tried by hand before the spindle starts, and chips cleared") {
    const auto sheet = quarter_sheet({});
    const auto at = [&](std::string_view words) {
        const auto found = std::find_if(sheet.steps.begin(), sheet.steps.end(),
                                        [&](const auto& step) { return says(step, words); });
        REQUIRE(found != sheet.steps.end());
        return found - sheet.steps.begin();
    };
    CHECK(at("tried in the hole by hand") < at("start the spindle"));
    CHECK(at("start the spindle") < at("clear the chips"));
    CHECK(at("clear the chips") < at("Deburr the rim"));
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
        if (run.operation == "drill") // of made-up shops, whose drills may share a name
            continue;
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
