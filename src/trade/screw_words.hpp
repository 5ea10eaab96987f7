// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What names a screw in a text: the words for forms and series that the tables teach, the words
// that say nothing, and the size that is left. Only src/trade includes this.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "trade/size.hpp"
#include "trade/tables.hpp"

namespace trade {

// A SCREW text taken apart, before the tables are asked whether there is such a screw.
struct AskedScrew {
    Thread thread;
    std::string form;                // empty: not said
    std::vector<std::string> series; // that the words allow, by rank; empty: not said
    std::string thread_series = {};  // `unf`, `bsw`, `coarse`; empty: not said
    std::string usual_form = {};     // stands in where neither form nor series settles it
    bool form_said = true;
    std::vector<std::string> taken = {}; // how what could be read in two ways was read, for people

    bool operator==(const AskedScrew&) const = default;
};

class ScrewWords {
  public:
    explicit ScrewWords(const Tables& tables);

    // Words in any order; the longest phrase that is known wins. Throws error::BadData naming the
    // word that is not known, what is missing or said twice, or a head that is countersunk.
    [[nodiscard]] AskedScrew read(std::string_view text) const;

    // The series that `text` names, as asked for apart from the screw, among those of `form` if it
    // is not empty. Throws error::BadData.
    [[nodiscard]] std::vector<std::string> read_series(std::string_view text,
                                                       std::string_view form) const;

    // By rank.
    [[nodiscard]] const std::vector<Series>& series() const { return series_; }
    [[nodiscard]] const Series* find(std::string_view name) const;
    // The one form of these series, else empty.
    [[nodiscard]] std::string form_of(const std::vector<std::string>& names) const;
    // Whether one of these series has the form.
    [[nodiscard]] bool has_form(const std::vector<std::string>& names, std::string_view form) const;
    // `socket head cap, fillister, ...`
    [[nodiscard]] std::string forms_text() const;

  private:
    struct Phrase {
        std::string words;  // folded, without the words that say nothing
        std::string form;   // that it names, or
        std::string series; // that it names; several series may share one phrase
    };
    struct Found;
    [[nodiscard]] bool names(std::string_view words, Found& found) const;
    [[nodiscard]] Found find_phrases(std::string_view text) const;
    [[nodiscard]] std::vector<std::string> narrowed(const Found& found,
                                                    std::string_view form) const;
    [[nodiscard]] Thread read_size(const Found& found, std::string_view text) const;
    [[nodiscard]] static std::string thread_series(const Found& found);
    [[nodiscard]] std::string known_text() const;
    [[nodiscard]] std::string with_forms(const std::vector<std::string>& names) const;

    std::vector<Series> series_;
    std::vector<Phrase> phrases_;
    std::size_t longest_ = 0; // words in a phrase
};

// The names with commas between.
[[nodiscard]] std::string joined(const std::vector<std::string>& names);

} // namespace trade
