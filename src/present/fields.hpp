// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// One record as a list of labelled lines.
#pragma once

#include <string>
#include <utility>
#include <vector>

namespace present {

class Fields {
  public:
    // As stored: made safe to print here. A field with nothing in it is left out.
    void add(const std::string& label, const std::string& value);

    // `label    value`, the values below each other and wrapped within `width`.
    [[nodiscard]] std::string text(std::size_t width) const;

  private:
    std::vector<std::pair<std::string, std::string>> fields_;
};

} // namespace present
