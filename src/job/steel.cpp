// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/steel.hpp"

#include <algorithm>
#include <array>
#include <string>

#include "trade/text.hpp"

namespace job {

namespace {

struct Word {
    std::string_view word;
    Steel steel;
};
// In this order: `carbide` before `carbon`, and a tip decides whatever its shank is of.
constexpr std::array k_words{
    Word{"carbide", Steel::carbide},   Word{"hard metal", Steel::carbide},
    Word{"hss", Steel::high_speed},    Word{"high speed", Steel::high_speed},
    Word{"cobalt", Steel::high_speed}, Word{"m2", Steel::high_speed},
    Word{"m7", Steel::high_speed},     Word{"m35", Steel::high_speed},
    Word{"m42", Steel::high_speed},    Word{"t1", Steel::high_speed},
    Word{"carbon", Steel::carbon},     Word{"silver steel", Steel::carbon},
    Word{"tool steel", Steel::carbon}, Word{"drill rod", Steel::carbon},
    Word{"cast steel", Steel::carbon}, Word{"w1", Steel::carbon},
    Word{"o1", Steel::carbon},
};

// Words parted by single blanks, with one before and after: `hss-e` as ` hss e `.
std::string in_words(std::string_view text) {
    std::string words = " ";
    for (const char c : trade::folded(text)) {
        const bool sign = c == '-' || c == ',' || c == '/' || c == '(' || c == ')' || c == ' ';
        if (!sign)
            words += c;
        else if (words.back() != ' ')
            words += ' ';
    }
    return words.back() == ' ' ? words : words + ' ';
}

} // namespace

Steel steel_of(std::string_view recorded) {
    const auto words = in_words(recorded);
    const auto found = std::find_if(k_words.begin(), k_words.end(), [&](const Word& word) {
        return words.find(" " + std::string(word.word) + " ") != std::string::npos;
    });
    return found == k_words.end() ? Steel::unknown : found->steel;
}

} // namespace job
