// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "terminal.hpp"

#include <fmt/format.h>
#include <poll.h>
#include <pty.h>
#include <sys/wait.h>
#include <termios.h>
#include <unistd.h>

#include <array>
#include <csignal>
#include <cstdlib>
#include <regex>
#include <stdexcept>

namespace {

constexpr int k_patience_ms = 20'000;

std::string without_controls(const std::string& text) {
    static const std::regex controls("\x1b\\[[0-9;?]*[A-Za-z]|\x1b[=>]|[\r\a]");
    return std::regex_replace(text, controls, "");
}

} // namespace

Terminal::Terminal(const std::vector<std::string>& words) {
    winsize size{};
    size.ws_col = 80;
    size.ws_row = 24;
    child_ = forkpty(&screen_, nullptr, nullptr, &size);
    if (child_ < 0)
        throw std::runtime_error("no pseudo-terminal");
    if (child_ != 0)
        return;
    setenv("TERM", "xterm", 1);
    setenv("LC_ALL", "C", 1);
    std::vector<std::string> copies = words;
    std::vector<char*> arguments;
    for (std::string& word : copies)
        arguments.push_back(word.data());
    arguments.push_back(nullptr);
    execv(arguments.front(), arguments.data());
    _exit(127);
}

Terminal::~Terminal() {
    kill();
    if (screen_ >= 0)
        close(screen_);
}

std::string Terminal::until_prompt() {
    static const std::regex prompt("(?:^|\n)([0-9]+)> $");
    std::string text;
    while (true) {
        pollfd ready{screen_, POLLIN, 0};
        std::array<char, 4096> part{};
        if (poll(&ready, 1, k_patience_ms) <= 0)
            throw std::runtime_error("no prompt after:\n" + text);
        const ssize_t count = read(screen_, part.data(), part.size());
        if (count <= 0)
            throw std::runtime_error("the program ended after:\n" + text);
        text.append(part.data(), static_cast<std::size_t>(count));
        const std::string plain = without_controls(text);
        std::smatch found;
        if (std::regex_search(plain, found, prompt)) {
            prompted_ = std::stoi(found[1]);
            return plain;
        }
    }
}

void Terminal::await_editing() const {
    for (int waited_ms = 0; waited_ms < k_patience_ms; ++waited_ms) {
        termios settings{};
        if (tcgetattr(screen_, &settings) == 0 && (settings.c_lflag & ICANON) == 0)
            return;
        usleep(1'000);
    }
    throw std::runtime_error("the program does not edit the line");
}

void Terminal::type(const std::string& keys) const {
    await_editing();
    if (write(screen_, keys.data(), keys.size()) != static_cast<ssize_t>(keys.size()))
        throw std::runtime_error("cannot type");
}

std::string Terminal::enter(const std::string& line) {
    type(line + '\r');
    return until_prompt();
}

void Terminal::kill() {
    if (child_ <= 0)
        return;
    ::kill(child_, SIGKILL);
    waitpid(child_, nullptr, 0);
    child_ = -1;
}

int Terminal::wait() {
    int status = 0;
    std::array<char, 4096> part{};
    while (read(screen_, part.data(), part.size()) > 0) {
    }
    waitpid(child_, &status, 0);
    child_ = -1;
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}
