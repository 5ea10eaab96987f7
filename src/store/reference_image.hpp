// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The bytes of the reference database, as compile_reference made them.
#pragma once

#include <span>

namespace store {

[[nodiscard]] std::span<const unsigned char> reference_image();

} // namespace store
