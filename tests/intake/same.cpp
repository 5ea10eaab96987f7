// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The demo's tools from the files of lines for quick entry are the tools of its CSV files, cell by
// cell.
//
//     intake_same PROGRAM SEED-DEMO
#include <fmt/format.h>
#include <unistd.h>

#include <cstdlib>

#include "sheets.hpp"

namespace fs = std::filesystem;

namespace {

bool enter(const fs::path& program, const fs::path& catalogue, const fs::path& lines) {
    const std::string of_catalogue =
        fmt::format("'{}' --file '{}' ", program.string(), catalogue.string());
    return std::system((of_catalogue + "start >/dev/null").c_str()) == 0 &&
           std::system((of_catalogue + "intake <'" + lines.string() + "' >/dev/null").c_str()) == 0;
}

} // namespace

int main(int count, char** words) {
    if (count != 3) {
        fmt::print(stderr, "usage: intake_same PROGRAM SEED-DEMO\n");
        return 2;
    }
    const fs::path program = fs::absolute(words[1]);
    const fs::path demo = fs::absolute(words[2]);
    std::string name = (fs::temp_directory_path() / "intake-XXXXXX").string();
    if (mkdtemp(name.data()) == nullptr)
        return 1;
    int failed = 0;
    for (const bool quick : {true, false}) {
        const std::string lines = quick ? "intake.txt" : "intake-all.txt";
        const fs::path catalogue = fs::path(name) / (lines + ".db");
        const std::string wrong = enter(program, catalogue, demo / lines)
                                      ? sheets::differences(program, catalogue, demo, quick)
                                      : "cannot be entered\n";
        fmt::print("{}: {}", lines, wrong.empty() ? "the same catalogue\n" : wrong);
        failed += wrong.empty() ? 0 : 1;
    }
    fs::remove_all(name);
    return failed == 0 ? 0 : 1;
}
