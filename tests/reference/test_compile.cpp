// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Compiling the tables: a copy of them with one thing broken is refused with file, line and column,
// or with the name of the check, and leaves no image.
#include <SQLiteCpp/SQLiteCpp.h>
#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <string>

#include "error/error.hpp"
#include "store/compile_csv.hpp"
#include "store/compile_image.hpp"
#include "tables.hpp"

namespace fs = std::filesystem;

namespace {

// A folder of its own, gone at the end.
class CopiedTables {
  public:
    CopiedTables() {
        std::string name = (fs::temp_directory_path() / "tables-XXXXXX").string();
        if (!mkdtemp(name.data()))
            throw std::runtime_error("no temporary folder");
        folder_ = name;
        fs::copy(COUNTERPART_REFERENCE_FOLDER, folder_ / "tables");
    }
    ~CopiedTables() { fs::remove_all(folder_); }
    CopiedTables(const CopiedTables&) = delete;
    CopiedTables& operator=(const CopiedTables&) = delete;

    void replace(const std::string& file, std::string_view what, std::string_view by) const {
        auto text = store::read_text(folder_ / "tables" / file);
        const auto at = text.find(what);
        if (at == std::string::npos)
            throw std::out_of_range("not in " + file + ": " + std::string(what));
        text.replace(at, what.size(), by);
        std::ofstream(folder_ / "tables" / file, std::ios::binary) << text;
    }
    void add(const std::string& file, std::string_view text) const {
        std::ofstream(folder_ / "tables" / file, std::ios::app) << text;
    }
    void remove(const std::string& file) const { fs::remove(folder_ / "tables" / file); }

    [[nodiscard]] fs::path image() const { return folder_ / "image.db"; }

    // The refusal, `none` if there is none.
    [[nodiscard]] std::string compiled() const {
        try {
            store::compile_image(folder_ / "tables", image());
            return "none";
        } catch (const error::Error& problem) {
            return problem.what();
        }
    }

  private:
    fs::path folder_;
};

std::string refusal_of(const std::string& file, std::string_view what, std::string_view by) {
    const CopiedTables copy;
    copy.replace(file, what, by);
    auto refusal = copy.compiled();
    CHECK(!fs::exists(copy.image()));
    return refusal;
}

constexpr auto k_quarter = "ASME B18.3 1960,1/4,,20,28,in,.250,.375,,.354,";

} // namespace

TEST_CASE("the tables as they are compile") {
    const CopiedTables copy;
    CHECK(copy.compiled() == "none");
    CHECK(fs::file_size(copy.image()) > 100'000);
}

TEST_CASE("a length that cannot be read is refused with file, line and column") {
    const auto refusal =
        refusal_of("head.csv", k_quarter, "ASME B18.3 1960,1/4,,20,28,in,.250,.37x,,.354,");
    CHECK(refusal.starts_with("head.csv:12: head_dia_max: "));
    CHECK(refusal.find("'.37x'") != std::string::npos);
}

TEST_CASE("lengths that are finer than the grid, zero, or carry a unit are refused") {
    for (const auto* cell : {".3750001", "0", "-.375", ".375 in", "9.5mm", "3/7", "nan", "1e3"}) {
        CAPTURE(cell);
        const auto refusal =
            refusal_of("head.csv", k_quarter,
                       std::string("ASME B18.3 1960,1/4,,20,28,in,.250,") + cell + ",,.354,");
        CHECK(refusal.starts_with("head.csv:12: head_dia_max: "));
    }
}

TEST_CASE("a dimension that cannot be true is refused by the check of its column") {
    CHECK(refusal_of("head.csv", k_quarter, "ASME B18.3 1960,1/4,,20,28,in,.250,.375,,.376,") ==
          "head.csv:12: CHECK constraint failed: head_dia_min");
    CHECK(refusal_of("head.csv", k_quarter, "ASME B18.3 1960,1/4,,20,28,in,.250,3.75,,.354,") ==
          "head.csv:12: CHECK constraint failed: head_dia_max");
    CHECK(refusal_of("washer.csv", "ISO 7089,M8,mm,8.4,16,1.8", "ISO 7089,M8,mm,8.4,16,18")
              .ends_with("CHECK constraint failed: thickness_max"));
}

TEST_CASE("a row twice, a missing value and a wrong unit are refused") {
    CHECK(refusal_of("head.csv", "ASME B18.3 1960,5/16,", "ASME B18.3 1960,1/4,")
              .starts_with("head.csv:13: UNIQUE constraint failed: head.series, head.size"));
    CHECK(refusal_of("head.csv", k_quarter, "ASME B18.3 1960,1/4,,20,28,in,.250,,,.354,") ==
          "head.csv:12: NOT NULL constraint failed: head.head_dia_max_nm");
    CHECK(refusal_of("head.csv", k_quarter, "ASME B18.3 1960,1/4,,20,28,cm,.250,.375,,.354,") ==
          "head.csv:12: unit: in or mm is wanted: 'cm'");
    CHECK(refusal_of("material.csv", "HB,leaded steel,125,", "HB,leaded steel,12.5,") ==
          "material.csv:2: drill_speed: not a whole number: '12.5'");
}

TEST_CASE("a name that is nowhere is refused with file, line and column") {
    CHECK(refusal_of("head.csv", "ASME B18.3 1960,#0,", "ASME B18.3 1961,#0,") ==
          "head.csv:2: series: not in series.csv: 'ASME B18.3 1961'");
    CHECK(refusal_of("clearance.csv", "ASME B18.2.8,1/4,17/64,", "ASME B18.2.8,1/4,17/65,") ==
          "clearance.csv:11: close: not in drill.csv: '17/65'");
    CHECK(refusal_of("practice.csv", ",common-practice,common practice,",
                     ",common-practice,hearsay,") ==
          "practice.csv:2: confidence: not in confidence.csv: 'hearsay'");
}

TEST_CASE("columns other than those of the schema are refused") {
    CHECK(refusal_of("oversize.csv", "unit,drill,least,", "unit,drill,lowest,") ==
          "oversize.csv:1: the columns must be: "
          "unit,drill,least,mean,most,source,confidence,note");
}

TEST_CASE("a file without a table and a table without a file are refused") {
    const CopiedTables stray;
    stray.add("bolts.csv", "a\n1\n");
    CHECK(stray.compiled() == "bolts.csv: no such table in reference.sql");
    const CopiedTables missing;
    missing.remove("feed.csv");
    CHECK(missing.compiled().starts_with("cannot be read: "));
}

TEST_CASE("tables that do not agree with each other are refused by the name of the check") {
    CHECK(refusal_of("head.csv", k_quarter, "ASME B18.3 1960,1/4,,20,28,in,.250,.312,,.300,")
              .find("heads of a series grow with the screw: series ASME B18.3 1960, size 1/4") !=
          std::string::npos);
    CHECK(refusal_of("drill.csv", "#7,number,in,.2010", "#7,number,in,.2040")
              .find("no two drills of a kind are the same") != std::string::npos);
    CHECK(
        refusal_of("clearance.csv", "ASME B18.2.8,1/4,17/64,9/32,", "ASME B18.2.8,1/4,9/32,17/64,")
            .find("clearance holes are over the screw and grow") != std::string::npos);
    CHECK(refusal_of("form_word.csv", "cheese,fillister", "iso 4762,fillister")
              .find("no word names both a form and a series") != std::string::npos);
}

TEST_CASE("the tables in the program cannot be written") {
    const store::Reference tables;
    CHECK_THROWS_AS(tables.database().exec("DELETE FROM head"), SQLite::Exception);
    CHECK_THROWS_AS(tables.database().exec("CREATE TABLE more (a)"), SQLite::Exception);
    CHECK(tables.heads("1/4").size() == store::Reference().heads("1/4").size());
}

TEST_CASE("a size that no table has gives no rows") {
    CHECK(tables::reference().heads("17/99").empty());
    CHECK(tables::reference().washers("").empty());
    CHECK(tables::reference().counterbores("M8'; DROP TABLE head; --").empty());
}
