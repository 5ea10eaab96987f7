// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Records to rows and back. A table lists its columns once, in a function that takes a visitor and
// a record: Names collects the columns for a statement, Writer binds a record, Reader fills one.
// So the names, the parameters and the fields cannot fall out of step. A dimension is four columns.
#pragma once

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <string>
#include <string_view>
#include <vector>

#include "error/error.hpp"
#include "store/query.hpp"
#include "trade/dimension.hpp"
#include "trade/words.hpp"

namespace store {

// The values of an enumeration of words, from the first to its last.
template <class Word>
struct LastWord;
template <>
struct LastWord<trade::BodyKind> {
    static constexpr auto k_value = trade::BodyKind::unknown;
};
template <>
struct LastWord<trade::PilotKind> {
    static constexpr auto k_value = trade::PilotKind::unknown;
};
template <>
struct LastWord<trade::Retention> {
    static constexpr auto k_value = trade::Retention::other;
};
template <>
struct LastWord<trade::Condition> {
    static constexpr auto k_value = trade::Condition::broken;
};
template <>
struct LastWord<trade::How> {
    static constexpr auto k_value = trade::How::guess;
};
template <>
struct LastWord<trade::Tried> {
    static constexpr auto k_value = trade::Tried::will_not_go;
};

// The word that is spelt exactly so; the file's own checks allow no other.
template <class Word>
Word word_of(std::string_view text) {
    for (int i = 0; i <= static_cast<int>(LastWord<Word>::k_value); ++i)
        if (trade::to_text(static_cast<Word>(i)) == text)
            return static_cast<Word>(i);
    throw error::DamagedFile("a word that the catalogue cannot hold: " + std::string(text),
                             "keep the file as it is and go back to a copy");
}

class Names {
  public:
    template <class Value>
    void column(const char* name, const Value&) {
        names_.push_back(name);
    }
    void column(const char* name, const trade::MaybeDimension&) {
        for (const char* part : {"", "_how", "_lo", "_hi"})
            names_.push_back(std::string(name) + part);
    }

    [[nodiscard]] std::string list() const { return fmt::format("{}", fmt::join(names_, ", ")); }
    // `?1, ?2, ...`, a parameter a column.
    [[nodiscard]] std::string parameters() const {
        std::vector<std::string> parts;
        for (std::size_t i = 1; i <= names_.size(); ++i)
            parts.push_back(fmt::format("?{}", i));
        return fmt::format("{}", fmt::join(parts, ", "));
    }

  private:
    std::vector<std::string> names_;
};

class Writer {
  public:
    explicit Writer(Query& query) : query_(query) {}

    void column(const char*, std::int64_t value) { query_.put(value); }
    void column(const char*, const std::string& text) { query_.put(text); }
    void column(const char*, const std::optional<std::int64_t>& value) { query_.put(value); }
    void column(const char*, const std::optional<std::string>& text) { query_.put(text); }
    void column(const char*, const std::optional<bool>& value) {
        query_.put(value ? std::optional(std::int64_t{*value}) : std::nullopt);
    }
    template <class Word>
    requires std::is_enum_v<Word>
    void column(const char*, Word word) { query_.put(trade::to_text(word)); }
    template <class Word>
    requires std::is_enum_v<Word>
    void column(const char*, const std::optional<Word>& word) {
        query_.put(word ? std::optional(trade::to_text(*word)) : std::nullopt);
    }
    void column(const char*, const trade::MaybeDimension& dimension) {
        if (dimension)
            query_.put(dimension->text)
                .put(trade::to_text(dimension->how))
                .put(dimension->range.lo.nm())
                .put(dimension->range.hi.nm());
        else
            query_.put_null().put_null().put_null().put_null();
    }

  private:
    Query& query_;
};

class Reader {
  public:
    explicit Reader(Query& query) : query_(query) {}

    void column(const char*, std::int64_t& value) { value = query_.integer(); }
    void column(const char*, std::string& text) { text = query_.text(); }
    void column(const char*, std::optional<std::int64_t>& value) { value = query_.maybe_integer(); }
    void column(const char*, std::optional<std::string>& text) { text = query_.maybe_text(); }
    void column(const char*, std::optional<bool>& value) {
        const auto number = query_.maybe_integer();
        value = number ? std::optional(*number != 0) : std::nullopt;
    }
    template <class Word>
    requires std::is_enum_v<Word>
    void column(const char*, Word& word) { word = word_of<Word>(query_.text()); }
    template <class Word>
    requires std::is_enum_v<Word>
    void column(const char*, std::optional<Word>& word) {
        const auto text = query_.maybe_text();
        word = text ? std::optional(word_of<Word>(*text)) : std::nullopt;
    }
    void column(const char*, trade::MaybeDimension& dimension) {
        if (query_.is_null()) {
            query_.skip(4);
            dimension.reset();
            return;
        }
        auto& known = dimension.emplace();
        known.text = query_.text();
        known.how = word_of<trade::How>(query_.text());
        known.range.lo = length::Length::from_nm(query_.integer());
        known.range.hi = length::Length::from_nm(query_.integer());
    }

  private:
    Query& query_;
};

} // namespace store
