// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A long list as one JSON object, written element by element, so that it need not be held whole.
#pragma once

#include <ostream>
#include <string>

#include "present/json.hpp"

namespace present {

class JsonList {
  public:
    // Begins `{"format": 1, NAME: [...]}`; the layout is that of json_text. `out` must outlive
    // this.
    JsonList(std::ostream& out, const std::string& name) : out_(out) {
        out_ << "{\n  \"format\": 1,\n  " << Json(name).dump() << ": [";
    }
    void add(const Json& element) {
        out_ << (any_ ? ",\n    " : "\n    ");
        any_ = true;
        auto text = json_text(element);
        text.pop_back(); // the line's end
        for (const char c : text)
            out_ << c << (c == '\n' ? "    " : "");
    }
    // After the last.
    void end() { out_ << (any_ ? "\n  ]\n}\n" : "]\n}\n"); }

  private:
    std::ostream& out_;
    bool any_ = false;
};

} // namespace present
