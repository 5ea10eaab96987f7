// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/rack.hpp"

#include "store/tools.hpp"

namespace store {

std::vector<trade::Body> FileRack::bodies() const {
    return store::bodies(file_);
}

std::vector<trade::Pilot> FileRack::pilots() const {
    return store::pilots(file_);
}

std::vector<trade::Trial> FileRack::trials() const {
    return store::trials(file_);
}

} // namespace store
