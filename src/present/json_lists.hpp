// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Long lists as one JSON object, written element by element, so that only one is held as Json.
#pragma once

#include <ostream>
#include <string>
#include <string_view>

#include "present/json.hpp"

namespace present {

// `{"format": 1, NAME: [...], NAME: [...]}` in the layout of json_text. `out` must outlive this.
class JsonLists {
  public:
    explicit JsonLists(std::ostream& out) : out_(out) { out_ << "{\n  \"format\": 1"; }

    void begin(const std::string& name) {
        close();
        out_ << ",\n  " << Json(name).dump() << ": [";
        open_ = true;
        any_ = false;
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
    void end() {
        close();
        out_ << "\n}\n";
    }

  private:
    void close() {
        if (open_)
            out_ << (any_ ? "\n  ]" : "]");
        open_ = false;
    }

    std::ostream& out_;
    bool open_ = false;
    bool any_ = false;
};

} // namespace present
