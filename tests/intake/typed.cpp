// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The demo's tools typed at a terminal, every column of them, in an afternoon with mishaps: a line
// mistyped and mended from the history, a line taken back, a kill while a line is typed, and a kill
// the moment Enter is hit. The catalogue must be that of the CSV files all the same.
//
//     intake_typed PROGRAM SEED-DEMO
#include <fmt/format.h>
#include <unistd.h>

#include <cstdlib>
#include <memory>
#include <stdexcept>

#include "sheets.hpp"
#include "terminal.hpp"

namespace fs = std::filesystem;

namespace {

constexpr std::size_t k_mistyped = 4; // lines, from 0
constexpr std::size_t k_killed_in_line = 60;
constexpr std::size_t k_taken_back = 82; // where the numbers skip to 101
constexpr std::size_t k_killed_at_enter = 100;

void expect(bool holds, const std::string& what) {
    if (!holds)
        throw std::runtime_error("not so: " + what);
}

bool contains(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

class Afternoon {
  public:
    Afternoon(const fs::path& program, const fs::path& catalogue)
        : words_{program.string(), "--file", catalogue.string(), "intake"} {
        begin();
    }

    void enter(std::size_t index, const std::string& line) {
        if (index == k_mistyped)
            mistype(line);
        else if (index == k_killed_in_line)
            kill_in(line);
        else if (index == k_killed_at_enter)
            kill_at_enter(line);
        else
            store(line, index == k_taken_back);
        if (index + 1 == k_taken_back)
            take_back();
    }

    void quit() {
        terminal_->type("quit\r");
        expect(terminal_->wait() == 0, "quit ends with exit code 0");
    }

  private:
    void begin() {
        terminal_ = std::make_unique<Terminal>(words_);
        greeting_ = terminal_->until_prompt();
    }

    void store(const std::string& line, bool skips = false) {
        const int number = terminal_->prompted();
        const std::string answer = terminal_->enter(line);
        expect(skips || contains(answer, fmt::format("Number {}\n", number)),
               "its number is the one of the prompt: " + line + '\n' + answer);
        expect(skips || terminal_->prompted() == number + 1, "the next number follows: " + line);
    }

    // The line with a word too many, brought back by the up arrow, the word rubbed out.
    void mistype(const std::string& line) {
        const int number = terminal_->prompted();
        const std::string answer = terminal_->enter(line + " gud");
        expect(contains(answer, "not a word of a line: gud") && terminal_->prompted() == number,
               "a mistyped line is refused and stores nothing\n" + answer);
        terminal_->type("\x1b[A");
        store("\x7f\x7f\x7f\x7f");
    }

    void kill_in(const std::string& line) {
        const int number = terminal_->prompted();
        terminal_->type(line.substr(0, line.size() / 2));
        usleep(100'000);
        terminal_->kill();
        begin();
        expect(contains(greeting_, fmt::format("Going on after number {}", number - 1)),
               "it goes on where it was killed\n" + greeting_);
        expect(terminal_->prompted() == number, "the line that was being typed is lost, no other");
        store(line);
    }

    // It may have been stored or not, but nothing between.
    void kill_at_enter(const std::string& line) {
        const int number = terminal_->prompted();
        terminal_->type(line + '\r');
        terminal_->kill();
        begin();
        if (terminal_->prompted() == number)
            store(line);
        expect(terminal_->prompted() == number + 1, "the line is stored once");
    }

    void take_back() {
        const int number = terminal_->prompted();
        store("set wrong place X1 13/16 x 17/32 all broken");
        const std::string answer = terminal_->enter("undo");
        expect(contains(answer, fmt::format("Taken back: {}: ", number)),
               "undo says what it took back\n" + answer);
        expect(terminal_->prompted() == number + 1, "its number is not given out again");
        const std::string next = terminal_->enter("7/32");
        expect(contains(next, "set bought") && contains(next, "place bench drawer, left"),
               "what is taken over is what stood before it\n" + next);
        terminal_->enter("undo");
    }

    std::vector<std::string> words_;
    std::unique_ptr<Terminal> terminal_;
    std::string greeting_;
};

std::string run(const fs::path& program, const fs::path& demo, const fs::path& bench) {
    const fs::path catalogue = bench / "catalogue.db";
    const std::string start =
        fmt::format("'{}' --file '{}' start >/dev/null", program.string(), catalogue.string());
    if (std::system(start.c_str()) != 0)
        return "no catalogue\n";
    Afternoon afternoon(program, catalogue);
    const auto lines = sheets::lines_of(sheets::read_file(demo / "intake-all.txt"));
    for (std::size_t i = 0; i < lines.size(); ++i)
        afternoon.enter(i, lines[i]);
    afternoon.quit();
    return sheets::differences(program, catalogue, demo, false);
}

} // namespace

int main(int count, char** words) {
    if (count != 3) {
        fmt::print(stderr, "usage: intake_typed PROGRAM SEED-DEMO\n");
        return 2;
    }
    std::string bench = (fs::temp_directory_path() / "intake-XXXXXX").string();
    if (mkdtemp(bench.data()) == nullptr)
        return 1;
    std::string wrong;
    try {
        wrong = run(fs::absolute(words[1]), fs::absolute(words[2]), bench);
    } catch (const std::runtime_error& problem) {
        wrong = std::string(problem.what()) + '\n';
    }
    fs::remove_all(bench);
    fmt::print("{}", wrong.empty() ? "the same catalogue\n" : wrong);
    return wrong.empty() ? 0 : 1;
}
