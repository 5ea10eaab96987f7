// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Times whole processes, in turn, so that a machine that speeds up or slows down does so for all of
// them. One line a command on standard input: `name<TAB>rounds<TAB>words`, the words separated by
// the unit separator; an empty number of rounds is ROUNDS, and a command with fewer takes part in
// the first ones only. The first is what the others are compared with. Prints median wall time, the
// difference to and ratio with the first, and peak memory; a line of one cell is printed as it is.
// Usage: time_commands ROUNDS
#include <fcntl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <sstream>
#include <string>
#include <vector>

namespace {

// So few are for what takes so long that a first run for nothing is too dear.
constexpr int k_slow_rounds = 3;

struct Timed {
    std::string name;
    std::vector<std::string> words; // none: a heading
    int rounds = 0;
    std::vector<double> milliseconds;
    std::vector<double> of_processor;
    long peak_kib = 0;
};

[[noreturn]] void become(const std::vector<std::string>& words) {
    std::vector<char*> arguments;
    for (const auto& word : words)
        arguments.push_back(const_cast<char*>(word.c_str()));
    arguments.push_back(nullptr);
    const int nowhere = open("/dev/null", O_WRONLY);
    dup2(nowhere, STDOUT_FILENO);
    dup2(nowhere, STDERR_FILENO);
    execvp(arguments[0], arguments.data());
    _exit(127);
}

double in_milliseconds(const timeval& time) {
    return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_usec) / 1e3;
}

// Exit codes are the commands' own business, except for one that could not be started.
void run_once(Timed& timed) {
    const auto start = std::chrono::steady_clock::now();
    const pid_t child = fork();
    if (child == 0)
        become(timed.words);
    int status = 0;
    rusage usage{};
    wait4(child, &status, 0, &usage);
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - start;
    if (!WIFEXITED(status) || WEXITSTATUS(status) == 127) {
        std::cerr << "time_commands: could not run: " << timed.name << "\n";
        std::exit(1);
    }
    timed.milliseconds.push_back(took.count());
    timed.of_processor.push_back(in_milliseconds(usage.ru_utime) + in_milliseconds(usage.ru_stime));
    timed.peak_kib = std::max(timed.peak_kib, usage.ru_maxrss);
}

double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

std::vector<Timed> read_commands(int rounds) {
    std::vector<Timed> commands;
    for (std::string line; std::getline(std::cin, line);) {
        std::istringstream cells(line);
        Timed timed;
        std::string own_rounds, all_words;
        std::getline(cells, timed.name, '\t');
        std::getline(cells, own_rounds, '\t');
        std::getline(cells, all_words);
        timed.rounds =
            own_rounds.empty() ? rounds : std::min(rounds, std::atoi(own_rounds.c_str()));
        std::istringstream words(all_words);
        for (std::string word; std::getline(words, word, '\x1f');)
            timed.words.push_back(word);
        commands.push_back(timed);
    }
    return commands;
}

void run_all(std::vector<Timed>& commands, int rounds) {
    for (auto& command : commands)
        if (!command.words.empty() && command.rounds > k_slow_rounds)
            run_once(command); // to warm up
    for (auto& command : commands) {
        command.milliseconds.clear();
        command.of_processor.clear();
    }
    for (int round = 0; round < rounds; ++round)
        for (auto& command : commands)
            if (!command.words.empty() && round < command.rounds)
                run_once(command);
}

void print(const std::vector<Timed>& commands) {
    const double first = median(commands.front().milliseconds);
    std::printf("%-50s %10s %10s %9s %10s %8s\n", "whole process, warm; medians", "wall ms",
                "over first", "ratio", "cpu ms", "peak MiB");
    for (const auto& command : commands) {
        if (command.words.empty()) {
            std::printf("\n%s\n", command.name.c_str());
            continue;
        }
        const double here = median(command.milliseconds);
        std::printf("%-50s %10.2f %10.2f %9.2f %10.2f %8.1f\n", command.name.c_str(), here,
                    here - first, here / first, median(command.of_processor),
                    static_cast<double>(command.peak_kib) / 1024);
    }
}

} // namespace

int main(int count, char** arguments) {
    const int rounds = count > 1 ? std::atoi(arguments[1]) : 50;
    auto commands = read_commands(rounds);
    if (rounds < 1 || commands.empty() || commands.front().words.empty()) {
        std::cerr << "usage: time_commands ROUNDS < commands\n";
        return 2;
    }
    run_all(commands, rounds);
    print(commands);
    return 0;
}
