// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "bench.hpp"

#include <doctest/doctest.h>
#include <fcntl.h>
#include <fmt/format.h>
#include <poll.h>
#include <signal.h>
#include <sqlite3.h>
#include <sys/resource.h>
#include <sys/syscall.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <stdexcept>
#include <thread>

namespace fault {

namespace {

constexpr uid_t k_nobody = 65534;

void into(int stream, const std::string& path, int flags) {
    const int handle = ::open(path.c_str(), flags, 0666);
    if (handle >= 0)
        ::dup2(handle, stream);
}

void suffer(const Hardship& hardship) {
    if (hardship.largest_file > 0) {
        const auto limit = static_cast<rlim_t>(hardship.largest_file);
        const rlimit both{limit, limit};
        ::setrlimit(RLIMIT_FSIZE, &both);
        ::signal(SIGXFSZ, SIG_IGN); // a write that fails, as on a full disk
    }
    if (hardship.closed_pipe) {
        int ends[2];
        if (::pipe(ends) == 0) {
            ::close(ends[0]);
            ::dup2(ends[1], STDOUT_FILENO);
        }
    }
    if (hardship.as_nobody && ::getuid() == 0 &&
        (::setgid(k_nobody) != 0 || ::setuid(k_nobody) != 0))
        ::_exit(126);
}

[[noreturn]] void become(const Bench& bench, const Words& words, const Hardship& hardship,
                         const std::string& stem) {
    if (::chdir(bench.folder().c_str()) != 0)
        ::_exit(126);
    into(STDIN_FILENO, hardship.input, O_RDONLY);
    into(STDOUT_FILENO, hardship.output.empty() ? stem + ".out" : hardship.output,
         O_WRONLY | O_CREAT | O_TRUNC);
    into(STDERR_FILENO, stem + ".err", O_WRONLY | O_CREAT | O_TRUNC);
    suffer(hardship);
    Words arguments = {FAULT_PROGRAM};
    arguments.insert(arguments.end(), words.begin(), words.end());
    Words environment = {"PATH=/usr/bin:/bin", "LC_ALL=C.UTF-8", "HOME=/nowhere",
                         "COUNTERPART_FILE=catalogue.db"};
    environment.insert(environment.end(), hardship.variables.begin(), hardship.variables.end());
    const auto pointers = [](Words& texts) {
        std::vector<char*> list;
        for (std::string& text : texts)
            list.push_back(text.data());
        list.push_back(nullptr);
        return list;
    };
    ::execve(FAULT_PROGRAM, pointers(arguments).data(), pointers(environment).data());
    ::_exit(127);
}

// For work that is large.
Hardship patient() {
    Hardship hardship;
    hardship.give_up = std::chrono::seconds(600);
    return hardship;
}

// False if it has not ended in that time.
bool ends_within(pid_t child, std::chrono::milliseconds time) {
    pollfd ending{static_cast<int>(::syscall(SYS_pidfd_open, child, 0)), POLLIN, 0};
    const bool ended = ::poll(&ending, 1, static_cast<int>(time.count())) == 1;
    ::close(ending.fd);
    return ended;
}

// Beside the folder, so that it holds nothing but what the program makes.
std::string stem_of(const Bench& bench, pid_t child) {
    return fmt::format("{}.{}", bench.folder().string(), child);
}

std::string row_text(sqlite3_stmt* statement) {
    std::string text;
    for (int i = 0; i < sqlite3_column_count(statement); ++i) {
        const int type = sqlite3_column_type(statement, i);
        const auto* value = static_cast<const char*>(sqlite3_column_blob(statement, i));
        const auto size = static_cast<std::size_t>(sqlite3_column_bytes(statement, i));
        text += fmt::format("{}:", type);
        if (value != nullptr)
            text.append(value, size);
        text += '|';
    }
    return text + '\n';
}

class Reading {
  public:
    explicit Reading(const fs::path& file) {
        good_ =
            sqlite3_open_v2(file.c_str(), &database_, SQLITE_OPEN_READWRITE, nullptr) == SQLITE_OK;
        sqlite3_busy_timeout(database_, 10000);
    }
    ~Reading() { sqlite3_close_v2(database_); }
    Reading(const Reading&) = delete;
    Reading& operator=(const Reading&) = delete;

    // False after an error.
    bool each(const std::string& sql, const std::function<void(sqlite3_stmt*)>& see) {
        sqlite3_stmt* statement = nullptr;
        int code = sqlite3_prepare_v2(database_, sql.c_str(), -1, &statement, nullptr);
        while (code == SQLITE_OK || code == SQLITE_ROW) {
            code = sqlite3_step(statement);
            if (code == SQLITE_ROW)
                see(statement);
        }
        sqlite3_finalize(statement);
        good_ = good_ && code == SQLITE_DONE;
        return good_;
    }
    [[nodiscard]] bool good() const { return good_; }

  private:
    sqlite3* database_ = nullptr;
    bool good_ = false;
};

std::string text_of(sqlite3_stmt* statement) {
    const auto* text = sqlite3_column_text(statement, 0);
    return text == nullptr ? "" : reinterpret_cast<const char*>(text);
}

} // namespace

bool is_long() {
    return std::getenv("COUNTERPART_LONG") != nullptr;
}

std::string contents(const fs::path& path) {
    std::error_code missing;
    const auto size = fs::file_size(path, missing);
    std::string bytes(missing ? 0 : size, '\0');
    std::ifstream in(path, std::ios::binary);
    in.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    bytes.resize(static_cast<std::size_t>(in.gcount()));
    return bytes;
}

void write(const fs::path& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary) << bytes;
}

Bench::Bench() {
    std::string name = (fs::temp_directory_path() / "counterpart-fault-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr)
        throw std::runtime_error("no folder for the test");
    folder_ = fs::path(name) / "bench";
    fs::create_directory(folder_);
}

Bench::~Bench() {
    std::error_code ignored;
    fs::remove_all(folder_.parent_path(), ignored);
}

pid_t Bench::start(const Words& words, const Hardship& hardship) const {
    const pid_t child = ::fork();
    if (child == 0)
        become(*this, words, hardship, stem_of(*this, ::getpid()));
    return child;
}

Outcome Bench::wait(pid_t child, const Hardship& hardship) const {
    Outcome outcome;
    rusage usage{};
    int status = 0;
    if (hardship.kill_after.count() > 0) {
        std::this_thread::sleep_for(hardship.kill_after);
        ::kill(child, SIGKILL);
    }
    outcome.hung = !ends_within(child, hardship.give_up);
    if (outcome.hung)
        ::kill(child, SIGKILL);
    ::wait4(child, &status, 0, &usage);
    outcome.code = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    outcome.peak_kib = usage.ru_maxrss;
    const std::string stem = stem_of(*this, child);
    outcome.out = contents(stem + ".out");
    outcome.err = contents(stem + ".err");
    fs::remove(stem + ".out");
    fs::remove(stem + ".err");
    return outcome;
}

Outcome Bench::run(const Words& words, const Hardship& hardship) const {
    return wait(start(words, hardship), hardship);
}

std::string Bench::done(const Words& words) const {
    const Outcome outcome = run(words, patient());
    CAPTURE(outcome.err);
    REQUIRE(outcome.code == 0);
    return outcome.out;
}

void Bench::is_whole() const {
    std::string found;
    Reading reading(file());
    reading.each("PRAGMA integrity_check", [&](sqlite3_stmt* row) { found += text_of(row); });
    reading.each("PRAGMA foreign_key_check", [&](sqlite3_stmt* row) { found += text_of(row); });
    CHECK(reading.good());
    CHECK(found == "ok");
    const Outcome check = run({"check"}, patient());
    CAPTURE(check.out);
    CAPTURE(check.err);
    CHECK(check.code == 0);
}

void Bench::fill() const {
    done({"start"});
    for (const std::string what : {"bodies", "pilots", "screws", "house"})
        done({"import", what, std::string(FAULT_DEMO) + "/" + what + ".csv"});
    done({"practice", "set", "head clearance", ".006 in"});
    done({"change", "1", "--place", "rack 9"});
}

std::vector<std::string> Bench::names() const {
    std::vector<std::string> found;
    for (const auto& entry : fs::directory_iterator(folder_))
        found.push_back(entry.path().filename().string());
    std::sort(found.begin(), found.end());
    return found;
}

std::string rows_of(const fs::path& file) {
    Reading reading(file);
    std::vector<std::string> tables;
    reading.each("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name",
                 [&](sqlite3_stmt* row) { tables.push_back(text_of(row)); });
    std::string text;
    for (const std::string& table : tables) {
        text += '[' + table + "]\n";
        reading.each("SELECT *, NULL FROM \"" + table + "\" ORDER BY 1, 2",
                     [&](sqlite3_stmt* row) { text += row_text(row); });
    }
    return reading.good() ? text : std::string();
}

std::int64_t number_from(const fs::path& file, const std::string& sql) {
    std::int64_t number = -1;
    Reading(file).each(sql, [&](sqlite3_stmt* row) { number = sqlite3_column_int64(row, 0); });
    return number;
}

std::string lines_from(const fs::path& file, const std::string& sql) {
    std::string lines;
    Reading(file).each(sql, [&](sqlite3_stmt* row) { lines += text_of(row) + '\n'; });
    return lines;
}

std::string many_bodies(int count) {
    std::string text = "kind,cut_dia,cut_how,pilot_kind,bore,bore_how,place,note\n";
    for (int i = 0; i < count; ++i)
        text += fmt::format("counterbore,{}/64,mark,removable,.{:04},micrometer,rack {},note {}\n",
                            20 + i % 60, 1200 + i % 1700, i % 40, i);
    return text;
}

} // namespace fault
