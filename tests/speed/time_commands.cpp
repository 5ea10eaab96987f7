// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Times whole processes, in turn, so that a machine that speeds up or slows down does so for all of
// them. One line a command on standard input: `name<TAB>shell words`. The first is what the others
// are compared with. Prints median wall time, the difference to and ratio with the first, and peak
// memory. Usage: time_commands ROUNDS
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

struct Timed {
    std::string name;
    std::vector<std::string> words;
    std::vector<double> milliseconds;
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
    timed.peak_kib = std::max(timed.peak_kib, usage.ru_maxrss);
}

double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

std::vector<Timed> read_commands() {
    std::vector<Timed> commands;
    for (std::string line; std::getline(std::cin, line);) {
        const auto tab = line.find('\t');
        if (tab == std::string::npos)
            continue;
        Timed timed;
        timed.name = line.substr(0, tab);
        std::istringstream words(line.substr(tab + 1));
        for (std::string word; std::getline(words, word, '\x1f');)
            timed.words.push_back(word);
        commands.push_back(timed);
    }
    return commands;
}

} // namespace

int main(int count, char** arguments) {
    const int rounds = count > 1 ? std::atoi(arguments[1]) : 50;
    auto commands = read_commands();
    if (commands.empty() || rounds < 1) {
        std::cerr << "usage: time_commands ROUNDS < commands\n";
        return 2;
    }
    for (auto& command : commands)
        run_once(command); // to warm up
    for (auto& command : commands)
        command.milliseconds.clear();
    for (int round = 0; round < rounds; ++round)
        for (auto& command : commands)
            run_once(command);
    const double first = median(commands.front().milliseconds);
    std::printf("%-44s %10s %10s %8s %10s\n", "whole process, warm", "median ms", "over first",
                "ratio", "peak MiB");
    for (const auto& command : commands) {
        const double here = median(command.milliseconds);
        std::printf("%-44s %10.2f %10.2f %8.2f %10.1f\n", command.name.c_str(), here, here - first,
                    here / first, static_cast<double>(command.peak_kib) / 1024.0);
    }
    return 0;
}
