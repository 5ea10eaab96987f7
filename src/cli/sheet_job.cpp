// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The lines of a job, each made into a sheet; a cell that is wrong is found by reading the line one
// column after the other.
#include <array>
#include <utility>

#include "cli/record/column.hpp"
#include "cli/sheet_request.hpp"
#include "cli/transfer/sheet.hpp"
#include "error/error.hpp"

namespace cli {

namespace {

struct Column {
    const char* name;
    std::string& (*field)(SheetRequest&);
};

// In the order in which a line is read: sizes mean nothing before the screw is known.
constexpr std::array<Column, 11> k_columns{{
    {"part", [](SheetRequest& r) -> std::string& { return r.part; }},
    {"notes", [](SheetRequest& r) -> std::string& { return r.note; }},
    {"screw", [](SheetRequest& r) -> std::string& { return r.asked.screw; }},
    {"count", [](SheetRequest& r) -> std::string& { return r.count; }},
    {"material", [](SheetRequest& r) -> std::string& { return r.material; }},
    {"hole", [](SheetRequest& r) -> std::string& { return r.asked.hole; }},
    {"washer", [](SheetRequest& r) -> std::string& { return r.asked.washer; }},
    {"below", [](SheetRequest& r) -> std::string& { return r.asked.below; }},
    {"thickness", [](SheetRequest& r) -> std::string& { return r.asked.thick; }},
    {"blind", [](SheetRequest& r) -> std::string& { return r.asked.blind; }},
    {"edge", [](SheetRequest& r) -> std::string& { return r.edge; }},
}};

std::vector<std::string> column_names() {
    std::vector<std::string> names;
    for (const auto& column : k_columns)
        names.emplace_back(column.name);
    return names;
}

} // namespace

std::vector<job::Sheet> SheetMaker::make_job(std::string_view csv, const SheetRequest& usual,
                                             transfer::Mistakes& mistakes) const {
    std::vector<job::Sheet> sheets;
    for (const auto& row : transfer::read_sheet(csv, column_names(), "screw", mistakes)) {
        SheetRequest request = usual;
        bool wrong = false;
        for (const auto& column : k_columns) {
            const auto cell = row.cells.find(column.name);
            const bool filled = cell != row.cells.end() && !cell->second.empty();
            auto& field = column.field(request);
            const auto before = field;
            if (filled)
                field = cell->second;
            if (request.asked.screw.empty())
                continue;
            try {
                (void)read_question(request.asked, reader_);
                (void)particulars(request);
            } catch (const error::Error& problem) {
                mistakes.add(row.row, record::problem_of(column.name, field, problem.what(),
                                                         problem.hint()));
                wrong = true;
                field = before;
            }
        }
        if (request.asked.screw.empty() && !wrong)
            mistakes.add(row.row, {"screw", "empty", "", "a screw: \"1/4-20 socket head cap\""});
        else if (mistakes.empty())
            sheets.push_back(make(request));
    }
    return sheets;
}

} // namespace cli
