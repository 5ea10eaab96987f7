// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Screw sizes, threads, set screws and drill names: read, or refused with an error of ours.
#include <cstddef>
#include <cstdint>
#include <string_view>

#include "error/error.hpp"
#include "trade/drill.hpp"
#include "trade/size.hpp"

namespace {

template <class Parse>
void try_out(Parse parse, std::string_view text) {
    try {
        static_cast<void>(parse(text));
    } catch (const error::Error&) {
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    try_out(trade::parse_size, text);
    try_out(trade::parse_thread, text);
    try_out(trade::parse_set_screw, text);
    try_out(trade::canonical_pitch, text);
    try_out(trade::canonical_drill_name, text);
    return 0;
}
