// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the line says goes in first; then what it does not say and may take over.
#include "cli/intake/line.hpp"

#include <algorithm>
#include <array>

#include "cli/intake/said.hpp"

namespace cli::intake {

namespace {

using record::Cells;

bool is_around(const std::string& column) {
    return column == "number" || column == "set" || column == "place";
}

// A new set begins afresh: other tools, another maker, another rack.
Carry begin(const std::vector<Item>& items, const Carry& carry) {
    for (const Item& item : items)
        if (item.word != nullptr && item.word->column == "set" && item.text != carry.set) {
            Carry fresh;
            fresh.set = item.text;
            fresh.unit = fresh.usual = carry.usual;
            return fresh;
        }
    return carry;
}

bool is_size(std::string_view column) {
    const std::array<std::string_view, 12> sizes{
        "cut_dia",   "pilot_dia",    "pilot_length", "bore",    "bore_depth",  "set_screw_at",
        "shank_dia", "shank_length", "reach",        "flat_at", "flat_length", "flat_depth"};
    return std::find(sizes.begin(), sizes.end(), column) != sizes.end();
}

// With its unit, where bare numbers are in another.
std::string in_unit(const std::string& column, const std::string& cell, length::Unit from,
                    length::Unit to) {
    if (from == to || cell.empty() || cell == "none" || !is_size(column))
        return cell;
    try {
        return record::with_stored_unit(cell, {from, to, nullptr, nullptr});
    } catch (const error::BadData&) {
        return cell; // its column says so
    }
}

// Not worth taking over once this is said not to be known, or not to be there.
std::vector<std::string> that_go_with(std::string_view column) {
    if (column == "bore")
        return {"bore_how", "bore_depth"};
    if (column == "shank_dia")
        return {"shank_how", "shank_length"};
    if (column == "flat_at")
        return {"flat_length", "flat_depth"};
    if (column == "retention")
        return {"set_screw", "set_screw_at"};
    return {};
}

bool ends_its_kin(const std::string& column, const std::string& cell) {
    return column == "retention" ? cell != "set screw" : cell.empty() || cell == "none";
}

// What later lines are of, if this one says so.
bool pilots_come(const std::vector<Item>& items, bool before) {
    for (const Item& item : items) {
        if (!item.for_all || item.word == nullptr)
            continue;
        if (item.word->sense == Sense::pilot && item.sizes.empty())
            return true;
        if (item.word->column == "kind")
            return false;
    }
    return before;
}

class Assembly {
  public:
    Assembly(const std::vector<Item>& items, const Carry& carry) : before_(begin(items, carry)) {
        line_.next = before_;
        line_.unit = before_.unit;
        line_.next.pilots_come = pilots_come(items, before_.pilots_come);
        line_.pilot = tells_of_pilot(items, line_.next.pilots_come);
        take_unit(items);
    }

    [[nodiscard]] bool pilot() const { return line_.pilot; }

    Line assemble(const std::vector<Said>& said) {
        for (const Said& one : said)
            put(one);
        const bool says_something = std::any_of(said.begin(), said.end(), [](const Said& one) {
            return !one.for_all && !is_around(one.column);
        });
        if (!says_something)
            throw LineError(0, "nothing about a tool in this line",
                            "a size, a kind or a note; set, place and all go with a tool");
        take_over_set_and_place();
        if (!line_.pilot)
            tell_pilot_kind();
        take_over_what_holds_for_all();
        finish_body();
        return std::move(line_);
    }

  private:
    void take_unit(const std::vector<Item>& items) {
        for (const Item& item : items) {
            if (item.word == nullptr || item.word->sense != Sense::unit)
                continue;
            line_.unit = item.word->value == "mm" ? length::Unit::millimetre : length::Unit::inch;
            if (item.for_all)
                line_.next.unit = line_.unit;
        }
        for (Cells* cells : {&line_.next.bodies, &line_.next.pilots})
            for (auto& [column, cell] : *cells)
                cell = in_unit(column, cell, before_.unit, line_.next.unit);
    }

    Cells& for_all() { return line_.pilot ? line_.next.pilots : line_.next.bodies; }
    [[nodiscard]] const Cells& from_all() const {
        return line_.pilot ? before_.pilots : before_.bodies;
    }
    [[nodiscard]] bool is_said(std::string_view column) const {
        return line_.at.find(column) != line_.at.end();
    }

    void put(const Said& said) {
        std::string cell = said.cell;
        if (said.column == "place") {
            cell = said_place(cell, before_.place);
            line_.next.place = cell;
            line_.next.one_place = said.for_all;
        }
        if (said.column == "set")
            line_.next.set = cell;
        line_.at[said.column] = said.at;
        line_.cells[said.column] = cell;
        if (said.for_all && !is_around(said.column))
            put_for_all(said.column, cell);
        if (said.size != nullptr)
            put_how(said);
    }

    void put_for_all(const std::string& column, const std::string& cell) {
        Cells& all = for_all();
        all[column] = in_unit(column, cell, line_.unit, line_.next.unit);
        if (ends_its_kin(column, cell))
            for (const std::string& other : that_go_with(column))
                all.erase(other);
    }

    // How it is known: as said, else as a size of the same column that was written alike.
    void put_how(const Said& said) {
        const std::string column = how_column(said.column, line_.pilot);
        if (column.empty())
            return;
        const Size& size = *said.size;
        const bool metric = size.unit.find("mm") != std::string::npos ||
                            (size.unit.empty() && line_.unit == length::Unit::millimetre);
        const std::string key = how_key((line_.pilot ? "loose " : "") + said.column, size, metric);
        std::string how = size.how;
        const auto found = before_.hows.find(key);
        if (how.empty() && found != before_.hows.end()) {
            how = found->second;
            line_.taken.insert(column);
        }
        if (how.empty())
            return;
        line_.next.hows[key] = how;
        line_.cells[column] = how;
        if (said.for_all)
            for_all()[column] = how;
    }

    void take_over(const std::string& column, const std::string& cell) {
        if (cell.empty() || is_said(column))
            return;
        line_.cells[column] = in_unit(column, cell, before_.unit, line_.unit);
        line_.taken.insert(column);
    }

    // Something is said that leaves no room for it.
    [[nodiscard]] bool is_ruled_out(const std::string& column) const {
        return std::any_of(line_.at.begin(), line_.at.end(), [&](const auto& entry) {
            const auto kin = that_go_with(entry.first);
            return ends_its_kin(entry.first, line_.cells.at(entry.first)) &&
                   std::find(kin.begin(), kin.end(), column) != kin.end();
        });
    }

    void take_over_set_and_place() {
        take_over("set", before_.set);
        if (is_said("place"))
            return;
        line_.next.place = before_.one_place ? before_.place : next_place(before_.place);
        take_over("place", line_.next.place);
    }

    [[nodiscard]] bool says_any(bool (*is)(std::string_view)) const {
        return std::any_of(line_.at.begin(), line_.at.end(), [&](const auto& entry) {
            return is(entry.first) && !line_.cells.at(entry.first).empty();
        });
    }

    // A size of a pilot tells that it is in one piece with the body, a bore that it comes out.
    void tell_pilot_kind() {
        const Cells& all = from_all();
        if (is_said("pilot_kind"))
            return;
        if (says_any(is_size_of_pilot))
            line_.cells["pilot_kind"] = "integral";
        else if (says_any(is_of_bore))
            line_.cells["pilot_kind"] = "removable";
        else if (all.count("pilot_kind") > 0)
            take_over("pilot_kind", all.at("pilot_kind"));
        else if (std::any_of(all.begin(), all.end(),
                             [](const auto& cell) { return is_of_bore(cell.first); }))
            take_over("pilot_kind", "removable");
    }

    // Not what a body of this kind does not have.
    [[nodiscard]] bool suits(const std::string& column) const {
        const auto kind = line_.cells.find("pilot_kind");
        const std::string word = kind == line_.cells.end() ? "" : kind->second;
        if (line_.pilot)
            return true;
        if (is_size_of_pilot(column) || column == "pilot_how")
            return word == "integral";
        if (is_of_bore(column) || column == "bore_how")
            return word == "removable";
        return column != "pilot_kind";
    }

    // A 'how' goes with its size.
    [[nodiscard]] bool stands_alone(const std::string& column) const {
        for (const char* size : {"cut_dia", "pilot_dia", "bore", "shank_dia"})
            if (how_column(size, line_.pilot) == column)
                return line_.taken.count(size) == 0;
        return false;
    }

    void take_over_what_holds_for_all() {
        const Cells all = from_all();
        for (const bool hows : {false, true})
            for (const auto& [column, cell] : all) {
                const bool how = column.size() > 4 && column.substr(column.size() - 4) == "_how";
                if (how == hows && suits(column) && !is_ruled_out(column) &&
                    !(how && stands_alone(column)))
                    take_over(column, cell);
            }
    }

    // More than a note, or the state it is in: that says nothing of its kind.
    [[nodiscard]] bool tells_of_cutter() const {
        return std::any_of(line_.at.begin(), line_.at.end(), [](const auto& entry) {
            const std::string& column = entry.first;
            return !is_around(column) && column != "note" && column != "condition" &&
                   column != "work" && column != "material" && column != "marking";
        });
    }

    void finish_body() {
        if (!line_.pilot && line_.cells.count("kind") == 0 && tells_of_cutter())
            line_.cells["kind"] = "counterbore";
        const auto marking = line_.cells.find("marking");
        if (marking == line_.cells.end() || marking->second != k_as_cut)
            return;
        const auto cut = line_.cells.find("cut_dia");
        if (cut != line_.cells.end())
            marking->second = cut->second;
        else if (is_said("marking"))
            throw LineError(line_.at.at("marking"), "marked with a size that is not known: marked",
                            "write what is marked on it: marked 7/16");
        else
            line_.cells.erase(marking), line_.taken.erase("marking");
    }

    Carry before_;
    Line line_;
};

} // namespace

Line read_line(const std::string& text, const Carry& carry) {
    const std::vector<Item> items = take_apart(text);
    Assembly assembly(items, carry);
    return assembly.assemble(what_is_said(items, assembly.pilot()));
}

} // namespace cli::intake
