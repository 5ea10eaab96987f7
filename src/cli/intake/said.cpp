// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/intake/said.hpp"

#include <algorithm>
#include <array>

#include "cli/intake/phrase.hpp"

namespace cli::intake {

namespace {

using Names = std::vector<std::string>;

constexpr std::array<std::string_view, 3> k_own_pilot{"pilot_dia", "pilot_length", "fluted"};
constexpr std::array<std::string_view, 5> k_bore{"bore", "bore_depth", "retention", "set_screw",
                                                 "set_screw_at"};
constexpr std::array<std::string_view, 12> k_only_bodies{
    "kind",    "cut_dia",   "flutes",    "reach", "shank_kind", "pilot_kind",
    "marking", "retention", "set_screw", "bore",  "bore_depth", "set_screw_at"};
constexpr std::array<std::string_view, 6> k_only_pilots{"flat_at", "flat_length", "flat_depth",
                                                        "in_body", "tried",       "shank_length"};
constexpr std::array<std::string_view, 3> k_of_one_tool{"number", "in_body", "tried"};

template <std::size_t Count>
bool is_one_of(std::string_view name, const std::array<std::string_view, Count>& names) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

template <std::size_t Count>
bool speaks_of(const std::vector<Item>& items, const std::array<std::string_view, Count>& columns) {
    return std::any_of(items.begin(), items.end(), [&](const Item& item) {
        return item.word != nullptr && is_one_of(item.word->column, columns);
    });
}

bool is_pilot_word(const Item& item) {
    return item.word != nullptr && item.word->sense == Sense::pilot;
}

// Before what a line is about may stand where the tool is from.
bool opens_line(const Item& item) {
    return item.word != nullptr &&
           (item.word->sense == Sense::phrase || item.word->column == "number");
}

// The columns of the sizes behind a word, as drawings give them: how large, how long.
Names columns_behind(std::string_view column, bool pilot) {
    if (column.empty() && !pilot)
        return {"cut_dia", "pilot_dia", "pilot_length"};
    if (column == "cut_dia")
        return {"cut_dia", "pilot_dia", "pilot_length"};
    if (column.empty() || column == "pilot_dia")
        return {"pilot_dia", "pilot_length"};
    if (column == "bore")
        return {"bore", "bore_depth"};
    if (column == "shank_dia" && pilot)
        return {"shank_dia", "shank_length"};
    if (column == "flat_at")
        return {"flat_at", "flat_length", "flat_depth"};
    return {std::string(column)};
}

class Sayings {
  public:
    explicit Sayings(bool pilot) : pilot_(pilot) {}

    std::vector<Said> take(const std::vector<Item>& items) {
        for (const Item& item : items)
            take(item);
        add_joined();
        return std::move(said_);
    }

  private:
    void say(const Item& item, const std::string& column, const std::string& cell, std::size_t at,
             const Size* size = nullptr) {
        const bool twice = std::any_of(said_.begin(), said_.end(),
                                       [&](const Said& said) { return said.column == column; });
        if (twice && item.word == nullptr)
            throw LineError(at, "a size with neither a name nor an x before it: " + cell,
                            "13/16 x 17/32, or shank 5/8");
        if (twice)
            throw LineError(at, "said twice: " + label_of(column), "say it once");
        if (pilot_ ? is_one_of(column, k_only_bodies) : is_one_of(column, k_only_pilots))
            throw LineError(
                at, (pilot_ ? "a loose pilot has none: " : "a body has none: ") + label_of(column),
                pilot_ ? "a counterbore is said to be one: counterbore 3/4"
                       : "a loose pilot begins with that word: pilot 9/64 shank 3/32");
        if (item.for_all && (item.word == nullptr || is_one_of(column, k_of_one_tool)))
            throw LineError(at, "does not hold for all: " + label_of(column),
                            "it stands before the word all");
        said_.push_back({column, cell, at, item.for_all, size});
    }

    void take(const Item& item) {
        if (item.word == nullptr) {
            take_sizes(item, "");
            return;
        }
        const std::string column(item.word->column);
        const std::string value(item.word->value);
        switch (item.word->sense) {
        case Sense::size:
        case Sense::pilot:
            take_sizes(item, column);
            break;
        case Sense::count:
        case Sense::phrase:
            say(item, column, item.text, item.at);
            break;
        case Sense::value:
            say(item, column, value, item.at);
            break;
        case Sense::taper:
            say(item, column, value + ' ' + item.text, item.at);
            break;
        case Sense::screw:
            say(item, "retention", "set screw", item.at);
            if (!item.text.empty() || item.unknown)
                say(item, column, item.text, item.at);
            break;
        case Sense::lost:
            say(item, column, value, item.at);
            note(item, "pilot lost");
            break;
        case Sense::text:
        case Sense::rest:
            take_text(item, column);
            break;
        case Sense::how:
        case Sense::unit:
        case Sense::all:
            break;
        }
    }

    void take_sizes(const Item& item, const std::string& first) {
        const Names columns = columns_behind(first, pilot_);
        if (item.unknown)
            say(item, columns.front(), "", item.at);
        for (std::size_t i = 0; i < item.sizes.size(); ++i) {
            const Size& size = item.sizes[i];
            if (i == columns.size())
                throw LineError(size.at, "one size too many: " + size.cell(),
                                pilot_ ? "a loose pilot: pilot 9/64 x 3/16 shank 3/32 x 3/8"
                                       : "a body: cutting diameter x pilot diameter x its length");
            if (size.drill && columns[i] != "pilot_dia")
                throw LineError(size.at, "only a pilot is marked with a drill: " + size.cell(),
                                "pilot drill F, 13/16 x drill F; of others write the size");
            say(item, columns[i], size.cell(), size.at, &size);
        }
    }

    void take_text(const Item& item, const std::string& column) {
        if (column == "photo")
            note(item, "photo " + item.text);
        else if (column == "note")
            note(item, item.text);
        else if (column == "work")
            join(work_, item, column, item.text);
        else if (column == "marking" && item.text.empty())
            say(item, column, std::string(k_as_cut), item.at);
        else
            say(item, column, item.text == "unknown" ? "" : item.text, item.at);
    }

    // A note is of one tool, wherever in the line it stands.
    void note(const Item& item, const std::string& text) {
        join(note_, item, "note", text);
        note_.for_all = false;
    }

    static void join(Said& said, const Item& item, const std::string& column,
                     const std::string& text) {
        if (said.column.empty())
            said = {column, text, item.at, item.for_all, nullptr};
        else
            said.cell += "; " + text;
    }

    void add_joined() {
        for (const Said& said : {work_, note_})
            if (!said.column.empty())
                said_.push_back(said);
    }

    bool pilot_;
    std::vector<Said> said_;
    Said work_;
    Said note_;
};

} // namespace

bool is_size_of_pilot(std::string_view column) {
    return is_one_of(column, k_own_pilot);
}

bool is_of_bore(std::string_view column) {
    return is_one_of(column, k_bore);
}

std::string how_column(std::string_view column, bool pilot) {
    if (column == "pilot_dia")
        return "pilot_how";
    if (column == "shank_dia")
        return pilot ? "shank_how" : "";
    if (column == "cut_dia")
        return "cut_how";
    return column == "bore" ? "bore_how" : "";
}

bool tells_of_pilot(const std::vector<Item>& items, bool pilots_come) {
    const bool of_body = std::any_of(items.begin(), items.end(), [](const Item& item) {
        return item.word != nullptr && item.word->column != "marking" &&
               is_one_of(item.word->column, k_only_bodies);
    });
    if (of_body)
        return false;
    const auto first = std::find_if_not(items.begin(), items.end(), opens_line);
    const bool named = std::any_of(items.begin(), items.end(), [](const Item& item) {
        return is_pilot_word(item) && item.sizes.empty();
    });
    return named || (first != items.end() && is_pilot_word(*first)) ||
           speaks_of(items, k_only_pilots) || pilots_come;
}

std::vector<Said> what_is_said(const std::vector<Item>& items, bool pilot) {
    return Sayings(pilot).take(items);
}

} // namespace cli::intake
