// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The option parser by name: its header costs every file that takes it seconds to compile.
#pragma once

namespace CLI {
class App;
} // namespace CLI
