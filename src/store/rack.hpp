// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A catalogue file as the matcher sees it.
#pragma once

#include "store/file.hpp"
#include "trade/rack.hpp"

namespace store {

class FileRack : public trade::Rack {
  public:
    explicit FileRack(const File& file) : file_(file) {}

    [[nodiscard]] std::vector<trade::Body> bodies() const override;
    [[nodiscard]] std::vector<trade::Pilot> pilots() const override;
    [[nodiscard]] std::vector<trade::Trial> trials() const override;

  private:
    const File& file_;
};

} // namespace store
