// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/span.hpp"

#include "error/error.hpp"
#include "length/parse.hpp"
#include "trade/text.hpp"

namespace cli {

length::Range read_span(const std::string& text, length::Unit bare) {
    for (const std::string& between : {std::string(" to "), std::string("..")}) {
        const std::size_t at = text.find(between);
        if (at == std::string::npos)
            continue;
        const length::Written last =
            length::parse_length(trade::trimmed(text.substr(at + between.size())), bare);
        const length::Written first = length::parse_length(trade::trimmed(text.substr(0, at)),
                                                           last.unit_said ? last.unit : bare);
        if (first.value > last.value)
            throw error::BadData("the smaller size comes first: '" + text + "'");
        return {first.value, last.value};
    }
    return length::exactly(length::parse_length(text, bare).value);
}

} // namespace cli
