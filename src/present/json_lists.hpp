// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A long list as one JSON object, written element by element, so that only one is held as Json.
#pragma once

#include <ostream>
#include <string>
#include <string_view>

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
        const auto text = json_text(element);
        std::string_view rest = text;
        rest.remove_suffix(1); // the line's end
        std::string indented;
        indented.reserve(text.size() * 3 / 2);
        for (auto end = rest.find('\n'); end != rest.npos; end = rest.find('\n')) {
            indented.append(rest.substr(0, end + 1)).append("    ");
            rest.remove_prefix(end + 1);
        }
        out_ << indented.append(rest);
    }
    // After the last.
    void end() { out_ << (any_ ? "\n  ]\n}\n" : "]\n}\n"); }

  private:
    std::ostream& out_;
    bool any_ = false;
};

} // namespace present
