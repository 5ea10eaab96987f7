// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/change.hpp"

namespace store {

Change::Change(File& file, const std::string& words)
    : file_(file), words_{words, std::nullopt, false}, transaction_(file.database()),
      group_(file.database(), file.session()) {}

void Change::set_undoes(std::int64_t group, const std::string& words) {
    words_ = {"undo " + words, group, false};
}

void Change::commit() {
    group_.write(words_);
    transaction_.commit();
}

} // namespace store
