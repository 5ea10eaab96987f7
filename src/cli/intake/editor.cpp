// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The only file that knows libedit.
#include "cli/intake/editor.hpp"

#include <histedit.h>

#include <clocale>
#include <cstdio>

#include "error/error.hpp"

namespace cli::intake {

namespace {

constexpr int k_most_remembered = 1000;

// libedit hands back what EL_CLIENTDATA gave it.
char* prompt_of(EditLine* edit) {
    void* data = nullptr;
    el_get(edit, EL_CLIENTDATA, &data);
    return static_cast<std::string*>(data)->data();
}

} // namespace

struct Editor::Parts {
    EditLine* edit = nullptr;
    History* history = nullptr;
    HistEvent event{};
    std::string prompt;

    Parts() = default;
    Parts(const Parts&) = delete;
    Parts& operator=(const Parts&) = delete;
    ~Parts() {
        if (history != nullptr)
            history_end(history);
        if (edit != nullptr)
            el_end(edit);
    }
};

Editor::Editor(const std::vector<std::string>& before) : parts_(std::make_unique<Parts>()) {
    // What is typed is UTF-8 wherever the program runs; nothing else of the locale is taken.
    std::setlocale(LC_CTYPE, "C.UTF-8");
    parts_->edit = el_init("counterpart", stdin, stdout, stderr);
    parts_->history = history_init();
    if (parts_->edit == nullptr || parts_->history == nullptr)
        throw error::InputOutput("the terminal cannot be used for typing",
                                 "give the lines from a file: counterpart intake <lines");
    history(parts_->history, &parts_->event, H_SETSIZE, k_most_remembered);
    history(parts_->history, &parts_->event, H_SETUNIQUE, 1);
    el_set(parts_->edit, EL_CLIENTDATA, &parts_->prompt);
    el_set(parts_->edit, EL_PROMPT, prompt_of);
    el_set(parts_->edit, EL_EDITOR, "emacs");
    el_set(parts_->edit, EL_SIGNAL, 1);
    el_set(parts_->edit, EL_HIST, history, parts_->history);
    for (const std::string& line : before)
        remember(line);
}

Editor::~Editor() = default;

void Editor::remember(const std::string& line) {
    history(parts_->history, &parts_->event, H_ENTER, line.c_str());
}

std::optional<std::string> Editor::line(const std::string& prompt) {
    parts_->prompt = prompt;
    int count = 0;
    const char* typed = el_gets(parts_->edit, &count);
    if (typed == nullptr || count <= 0)
        return std::nullopt;
    std::string line(typed, static_cast<std::size_t>(count));
    while (!line.empty() && (line.back() == '\n' || line.back() == '\r'))
        line.pop_back();
    if (line.find_first_not_of(" \t") != std::string::npos)
        remember(line);
    return line;
}

} // namespace cli::intake
