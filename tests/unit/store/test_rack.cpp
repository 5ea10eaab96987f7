// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Facts read from the indexes by size are those of the whole records, whatever the window, and the
// indexes are what they are read from.
#include <doctest/doctest.h>
#include <sqlite3.h>

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <vector>

#include "cases.hpp"
#include "random_tools.hpp"
#include "scratch.hpp"
#include "store/loans.hpp"
#include "store/rack.hpp"
#include "store/tools.hpp"

using trade::Detail;
using trade::PilotKind;
using trade::Window;

namespace {

// What any rack answers that can only list its tools.
class Listing : public trade::Rack {
  public:
    explicit Listing(const store::File& file)
        : bodies_(store::bodies(file)), pilots_(store::pilots(file)) {}
    [[nodiscard]] std::vector<trade::Body> bodies() const override { return bodies_; }
    [[nodiscard]] std::vector<trade::Pilot> pilots() const override { return pilots_; }
    [[nodiscard]] std::vector<trade::Trial> trials() const override { return {}; }

  private:
    std::vector<trade::Body> bodies_;
    std::vector<trade::Pilot> pilots_;
};

constexpr PilotKind k_kinds[]{PilotKind::integral, PilotKind::removable, PilotKind::none,
                              PilotKind::unknown};

template <class Facts>
std::vector<Facts> by_number(std::vector<Facts> facts) {
    std::sort(facts.begin(), facts.end(),
              [](const Facts& a, const Facts& b) { return a.number < b.number; });
    return facts;
}

// Only what matters in a body with an integral pilot.
trade::BodyFacts of_integral(trade::BodyFacts body) {
    body.bore = body.bore_depth = body.set_screw = body.set_screw_at = {};
    body.retention.reset();
    return body;
}

std::vector<trade::BodyFacts> cutters(const trade::Rack& rack, PilotKind kind,
                                      const Window& window) {
    std::vector<trade::BodyFacts> seen;
    rack.by_cutter(kind, window, Detail::all, [&](const auto& body) {
        seen.push_back(kind == PilotKind::integral ? of_integral(body) : body);
    });
    return by_number(seen);
}

std::vector<trade::BodyFacts> integrals(const trade::Rack& rack, const Window& window) {
    std::vector<trade::BodyFacts> seen;
    rack.by_pilot(window, Detail::all,
                  [&](const auto& body) { seen.push_back(of_integral(body)); });
    return by_number(seen);
}

std::vector<trade::PilotFacts> pilots(const trade::Rack& rack, const Window& window) {
    std::vector<trade::PilotFacts> seen;
    rack.pilots_in(window, Detail::all, [&](const auto& pilot) { seen.push_back(pilot); });
    return by_number(seen);
}

// To 60 mm, with limits to either side of what counts as wide, or unknown.
trade::MaybeDimension some_size(RandomTools& random) {
    if (!random.chance(85))
        return std::nullopt;
    const auto lo = length::Length::from_nm(random.between(500'000, 60'000'000));
    const auto width =
        random.chance(80) ? random.between(0, 240'000) : random.between(0, 5'000'000);
    return trade::Dimension{"", trade::How::rule, {lo, lo + length::Length::from_nm(width)}};
}

// Hundreds of tools, some retired, lent or in a body; narrow and wide limits.
struct Filled {
    Filled() {
        RandomTools random(7);
        store::Change change(file, "fill");
        std::vector<std::int64_t> takers;
        for (int i = 0; i < 400; ++i) {
            auto body = random.body();
            constexpr const char* k_screws[]{"", "#8-32", "M5"};
            body.set_screw = k_screws[random.between(0, 2)];
            body.cut_dia = some_size(random);
            body.pilot_dia = some_size(random);
            const auto number = store::add_body(change, body);
            if (trade::may_take_pilot(body) && !body.retired)
                takers.push_back(number);
        }
        for (int i = 0; i < 400; ++i) {
            auto pilot = random.pilot();
            pilot.in_body.reset();
            pilot.pilot_dia = some_size(random);
            const auto number = store::add_pilot(change, pilot);
            if (!pilot.retired && !takers.empty() && random.chance(30)) {
                store::put_in_body(change, number, takers.back());
                takers.pop_back();
            }
        }
        change.commit();
    }

    scratch::Folder folder;
    store::File file = scratch::catalogue(folder / "c.db");
};

void compare(const store::File& file) {
    const store::FileRack rack(file);
    const Listing listing(file);
    RandomTools random(8);
    std::ptrdiff_t seen = 0;
    for (int round = 0; round < cases::some(60); ++round) {
        Window window;
        if (round > 0) {
            const auto lo = length::micrometres(random.between(0, 60'000));
            window.sizes = length::Range{lo, lo + length::micrometres(random.between(0, 9'000))};
        }
        for (const auto kind : k_kinds) {
            const auto found = cutters(rack, kind, window);
            REQUIRE(found == cutters(listing, kind, window));
            seen += std::count_if(found.begin(), found.end(),
                                  [&](const auto& body) { return window.sizes && body.cut_dia; });
        }
        REQUIRE(integrals(rack, window) == integrals(listing, window));
        REQUIRE(pilots(rack, window) == pilots(listing, window));
        REQUIRE(rack.trials().empty());
    }
    CHECK(seen > cases::some(1000));
}

int keep_statement(unsigned, void* statements, void*, void* sql) {
    static_cast<std::vector<std::string>*>(statements)->emplace_back(static_cast<char*>(sql));
    return 0;
}

// How SQLite means to run it, in lines.
std::string plan_of(SQLite::Database& database, const std::string& sql) {
    std::string plan;
    SQLite::Statement statement(database, "EXPLAIN QUERY PLAN " + sql);
    while (statement.executeStep())
        plan += statement.getColumn(3).getString() + "\n";
    return plan;
}

// The statements that were run from within `act`.
template <class Act>
std::vector<std::string> statements_of(SQLite::Database& database, const Act& act) {
    std::vector<std::string> statements;
    sqlite3_trace_v2(database.getHandle(), SQLITE_TRACE_STMT, keep_statement, &statements);
    act();
    sqlite3_trace_v2(database.getHandle(), 0, nullptr, nullptr);
    return statements;
}

} // namespace

TEST_CASE("a window shows the facts of the records in it, each once") {
    const Filled filled;
    compare(filled.file);
}

TEST_CASE("a file whose sizes were counted for the planner gives the same") {
    const Filled filled;
    filled.file.database().exec("ANALYZE");
    const store::File again = store::File::open(filled.folder / "c.db", store::Access::read);
    compare(again);
}

TEST_CASE("the usual question reads ranges of indexes that hold all it needs") {
    const Filled filled;
    auto& database = filled.file.database();
    const Window window{length::Range{length::millimetres(8), length::millimetres(9)}};
    const auto nothing = [](const auto&) {};
    const auto statements = statements_of(database, [&] {
        const store::FileRack rack(filled.file);
        rack.by_cutter(PilotKind::removable, window, Detail::usual, nothing);
        rack.by_pilot(window, Detail::usual, nothing);
        rack.pilots_in(window, Detail::usual, nothing);
    });
    std::string plans;
    for (const auto& sql : statements)
        if (sql.find("SELECT") != std::string::npos)
            plans += plan_of(database, sql);
    for (const std::string line :
         {"SEARCH body USING COVERING INDEX body_by_cutter (pilot_kind=? AND cut_dia_lo>? AND "
          "cut_dia_lo<?)",
          "SEARCH body USING COVERING INDEX body_by_pilot (pilot_kind=? AND pilot_dia_lo>? AND "
          "pilot_dia_lo<?)",
          "SEARCH pilot USING COVERING INDEX pilot_by_diameter (pilot_dia_lo>? AND "
          "pilot_dia_lo<?)",
          "SEARCH body USING INDEX body_wide_cutter (pilot_kind=? AND cut_dia_lo<?)"}) {
        CAPTURE(plans);
        CHECK_MESSAGE(plans.find(line) != std::string::npos, line);
    }
    CHECK(plans.find("SCAN body\n") == std::string::npos);
    CHECK(plans.find("SCAN pilot\n") == std::string::npos);
    CHECK(plans.find("TEMP B-TREE") == std::string::npos);
}
