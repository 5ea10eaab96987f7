// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Lines of quick entry, one after the other: each is read or refused with a place in it, and every
// column that a line says has a cell and a place in it.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <sstream>
#include <string>
#include <string_view>

#include "cli/intake/line.hpp"

namespace {

// What the next line takes over.
cli::intake::Carry enter(const std::string& text, const cli::intake::Carry& carry) {
    try {
        const auto line = cli::intake::read_line(text, carry);
        for (const auto& [column, at] : line.at)
            if (at > text.size() || line.cells.count(column) == 0)
                std::abort();
        return line.next;
    } catch (const cli::intake::LineError& refused) {
        if (refused.at > text.size() || std::string_view(refused.what()).empty())
            std::abort();
        return carry;
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    for (const auto unit : {length::Unit::inch, length::Unit::millimetre}) {
        std::istringstream lines(std::string(reinterpret_cast<const char*>(data), size));
        cli::intake::Carry carry;
        carry.unit = carry.usual = unit;
        for (std::string text; std::getline(lines, text);)
            carry = enter(text, carry);
    }
    return 0;
}
