// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "session.hpp"

#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <sstream>
#include <stdexcept>

#include "cli/program.hpp"

namespace session {

namespace {

std::filesystem::path fresh_folder() {
    const std::filesystem::path memory = "/dev/shm";
    std::error_code none;
    const bool has_memory = ::access(memory.c_str(), W_OK) == 0;
    auto name =
        ((has_memory ? memory : std::filesystem::temp_directory_path(none)) / "counterpart-XXXXXX")
            .string();
    if (!::mkdtemp(name.data()))
        throw std::runtime_error("no folder to work in");
    return name;
}

void add_utf8(std::string& text, char32_t code) {
    if (code < 0x80) {
        text += static_cast<char>(code);
    } else if (code < 0x800) {
        text += static_cast<char>(0xC0 | (code >> 6));
        text += static_cast<char>(0x80 | (code & 0x3F));
    } else if (code < 0x10000) {
        text += static_cast<char>(0xE0 | (code >> 12));
        text += static_cast<char>(0x80 | ((code >> 6) & 0x3F));
        text += static_cast<char>(0x80 | (code & 0x3F));
    } else {
        text += static_cast<char>(0xF0 | (code >> 18));
        text += static_cast<char>(0x80 | ((code >> 12) & 0x3F));
        text += static_cast<char>(0x80 | ((code >> 6) & 0x3F));
        text += static_cast<char>(0x80 | (code & 0x3F));
    }
}

} // namespace

int cases(int usual) {
    const char* asked = std::getenv("COUNTERPART_RANDOM_CASES");
    return asked ? std::atoi(asked) : usual;
}

Folder::Folder() : path_(fresh_folder()) {}

Folder::~Folder() {
    std::error_code none;
    std::filesystem::remove_all(path_, none);
}

Result run(const std::string& catalogue, const Words& words) {
    Words all{"--file", catalogue};
    all.insert(all.end(), words.begin(), words.end());
    std::ostringstream out, err;
    const auto code = cli::run(all, {}, out, err);
    return {code, out.str(), err.str()};
}

std::string state(const std::string& catalogue) {
    std::string all;
    for (const Words& words : {Words{"export", "bodies"},
                               {"export", "pilots"},
                               {"export", "screws"},
                               {"export", "house"},
                               {"machine", "list", "--json"},
                               {"practice", "list", "--json"},
                               {"stock", "list", "--json"},
                               {"list", "--all", "--json"},
                               {"list", "pilots", "--all", "--json"},
                               {"work", "list", "--json"}})
        all += run(catalogue, words).out + "\n--\n";
    return all;
}

void write(const std::string& path, const std::string& text) {
    std::ofstream(path, std::ios::binary) << text;
}

std::string Dice::awkward_text() {
    static const std::vector<std::string> pieces{
        "=",   "+",   "-",     "@",     "\"",  "\"\"", "'",  ",",     ";",   "\n",  "\r\n",  "\t",
        "007", "1/4", "10-24", "0.500", "1E5", " ",    "  ", "#REF!", "<b>", "]]>", "&amp;", "\\"};
    std::string text;
    for (int left = between(1, 6); left > 0; --left) {
        if (chance(60)) {
            text += one_of(pieces);
            continue;
        }
        const auto code = static_cast<char32_t>(between(0xA0, 0x1FFFF));
        if (code < 0xD800 || code > 0xDFFF)
            add_utf8(text, code);
    }
    return text;
}

} // namespace session
