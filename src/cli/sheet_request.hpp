// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Operation sheets asked for on the command line, or by the lines of a job.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cli/question.hpp"
#include "cli/transfer/mistakes.hpp"
#include "job/sheet.hpp"
#include "trade/material.hpp"

namespace cli {

// As typed; empty: not said.
struct SheetRequest {
    QuestionOptions asked;
    std::string body, pilot; // numbers of tools to use rather than the best
    std::string material, count, edge, torque, grade, surface, on;
    std::string part, note;
};

class SheetMaker {
  public:
    explicit SheetMaker(Context& context);

    // Throws error::BadData, error::NoSuchRecord or error::UsageError; a body and pilot that were
    // named and do not serve the screw are error::NoSuchRecord.
    [[nodiscard]] job::Sheet make(const SheetRequest& request) const;

    // A job in CSV: part, screw, count, material, thickness, notes, and where needed hole, blind,
    // below, washer, edge. What is not in a line is as in `usual`. Everything that is wrong with
    // the file goes into `mistakes`.
    [[nodiscard]] std::vector<job::Sheet> make_job(std::string_view csv, const SheetRequest& usual,
                                                   transfer::Mistakes& mistakes) const;

  private:
    [[nodiscard]] match::Report ask(const SheetRequest& request,
                                    const match::Question& question) const;
    [[nodiscard]] trade::Material material_of(const std::string& text) const;
    [[nodiscard]] job::Particulars particulars(const SheetRequest& request) const;

    Context& context_;
    SizeReader reader_;
    match::Shop shop_;
    match::Tools tools_;
    std::vector<trade::Material> materials_;
    std::vector<trade::EverydayMaterial> everyday_;
};

} // namespace cli
