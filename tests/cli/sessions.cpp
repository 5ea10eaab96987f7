// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Runs sessions as a user would and compares what was printed, byte for byte.
//
//     counterpart_sessions PROGRAM FOLDER [--update]
//
// Every subfolder of FOLDER is a case: `steps` holds one shell command a line, run in order in a
// fresh folder that holds copies of the case's other files, with `counterpart` being PROGRAM and
// its catalogue `catalogue.db` there. `expected` is the record of the session:
//
//     $ counterpart show 9          the step
//     | text                        a line of standard output
//     |~ text                       the same, without a line end
//     ! counterpart: no such ...    a line of standard error
//     = 4                           the exit code, when it is not 0
//
// A time of day is written as <time>. A step that fails with a code over 1 must leave the bytes of
// the catalogue as they were. --update writes `expected` anew.
#include <fmt/format.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <string>
#include <vector>

namespace fs = std::filesystem;

namespace {

std::string read_file(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

void write_file(const fs::path& path, const std::string& text) {
    std::ofstream(path, std::ios::binary) << text;
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        lines.push_back(text.substr(at, end - at));
        at = end + 1;
    }
    return lines;
}

std::string without_times(const std::string& text) {
    static const std::regex time(R"(\d{4}-\d{2}-\d{2}[T ]\d{2}:\d{2}(:\d{2})?(\.\d+)?Z?)");
    return std::regex_replace(text, time, "<time>");
}

std::string marked(const std::string& output, char mark) {
    const std::string text = without_times(output);
    std::string result;
    const std::vector<std::string> lines = lines_of(text);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const bool open = i + 1 == lines.size() && text.back() != '\n';
        result += fmt::format("{}{}{}{}\n", mark, open ? "~" : "",
                              lines[i].empty() && !open ? "" : " ", lines[i]);
    }
    return result;
}

// A folder of its own for one session, gone afterwards.
class Bench {
  public:
    explicit Bench(const fs::path& program) {
        std::string name = (fs::temp_directory_path() / "counterpart-XXXXXX").string();
        if (mkdtemp(name.data()) == nullptr)
            throw std::runtime_error("no temporary folder");
        root_ = name;
        fs::create_directories(root_ / "bin");
        fs::create_directories(work());
        fs::create_symlink(fs::absolute(program), root_ / "bin" / "counterpart");
    }
    ~Bench() {
        std::error_code ignored;
        fs::remove_all(root_, ignored);
    }
    Bench(const Bench&) = delete;
    Bench& operator=(const Bench&) = delete;

    [[nodiscard]] fs::path work() const { return root_ / "work"; }

    // The record of one step; adds a line to `faults` if a failure changed the catalogue.
    std::string step(const std::string& command, std::vector<std::string>& faults) const {
        const std::string before = read_file(work() / "catalogue.db");
        write_file(root_ / "step", command + '\n');
        const std::string line = fmt::format(
            "cd '{0}/work' && env -i PATH='{0}/bin:/usr/bin:/bin' HOME='{0}' LC_ALL=C.UTF-8 "
            "COUNTERPART_FILE=catalogue.db sh ../step >../out 2>../err </dev/null",
            root_.string());
        const int status = std::system(line.c_str());
        const int code = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
        if (code > 1 && read_file(work() / "catalogue.db") != before)
            faults.push_back("the catalogue changed in a step that failed: " + command);
        return "$ " + command + '\n' + marked(read_file(root_ / "out"), '|') +
               marked(read_file(root_ / "err"), '!') +
               (code == 0 ? "" : fmt::format("= {}\n", code));
    }

  private:
    fs::path root_;
};

std::string record(const fs::path& program, const fs::path& folder,
                   std::vector<std::string>& faults) {
    const Bench bench(program);
    for (const auto& entry : fs::directory_iterator(folder))
        if (entry.path().filename() != "steps" && entry.path().filename() != "expected")
            fs::copy(entry.path(), bench.work() / entry.path().filename());
    std::string text;
    for (const std::string& step : lines_of(read_file(folder / "steps"))) {
        if (step.empty() || step.front() == '#')
            continue;
        text += bench.step(step, faults);
    }
    return text;
}

void show_difference(const std::string& expected, const std::string& actual) {
    const auto want = lines_of(expected);
    const auto have = lines_of(actual);
    std::size_t at = 0;
    while (at < want.size() && at < have.size() && want[at] == have[at])
        ++at;
    fmt::print("  first difference in line {}\n    expected: {}\n    printed:  {}\n", at + 1,
               at < want.size() ? want[at] : "(end)", at < have.size() ? have[at] : "(end)");
}

bool holds(const fs::path& program, const fs::path& folder, bool update) {
    std::vector<std::string> faults;
    const std::string actual = record(program, folder, faults);
    if (actual.empty())
        faults.push_back("no steps");
    if (update)
        write_file(folder / "expected", actual);
    const std::string expected = read_file(folder / "expected");
    if (actual == expected && faults.empty())
        return true;
    fmt::print("{}: does not hold\n", folder.string());
    for (const std::string& fault : faults)
        fmt::print("  {}\n", fault);
    if (actual != expected)
        show_difference(expected, actual);
    return false;
}

} // namespace

int main(int count, char** words) {
    const std::vector<std::string> arguments(words + 1, words + count);
    if (arguments.size() < 2) {
        fmt::print(stderr, "usage: counterpart_sessions PROGRAM FOLDER [--update]\n");
        return 2;
    }
    const bool update = arguments.size() > 2 && arguments[2] == "--update";
    std::vector<fs::path> cases;
    for (const auto& entry : fs::directory_iterator(arguments[1]))
        if (entry.is_directory())
            cases.push_back(entry.path());
    std::sort(cases.begin(), cases.end());
    std::size_t failed = 0;
    for (const fs::path& folder : cases)
        if (!holds(arguments[0], folder, update))
            ++failed;
    fmt::print("{} cases, {} failed\n", cases.size(), failed);
    return failed == 0 && !cases.empty() ? 0 : 1;
}
