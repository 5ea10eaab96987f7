// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The assembler takes the image into the read-only data as it is: nothing is parsed at build time
// or copied at run time. COUNTERPART_REFERENCE_IMAGE is its path, set by the build.
#include "store/reference_image.hpp"

asm(R"(
    .section .rodata
    .balign 16
    .type counterpart_reference_begin, @object
counterpart_reference_begin:
    .incbin ")" COUNTERPART_REFERENCE_IMAGE R"("
    .type counterpart_reference_end, @object
counterpart_reference_end:
    .byte 0
    .global counterpart_reference_begin
    .global counterpart_reference_end
    .previous
)");

// NOLINTBEGIN(readability-identifier-naming): symbols of the assembler text above.
extern "C" const unsigned char counterpart_reference_begin[];
extern "C" const unsigned char counterpart_reference_end[];
// NOLINTEND(readability-identifier-naming)

namespace store {

std::span<const unsigned char> reference_image() {
    return {counterpart_reference_begin, counterpart_reference_end};
}

} // namespace store
