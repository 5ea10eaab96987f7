// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A line is kept as the words of its change: `intake 13/16 x 17/32 dull`.
#include "cli/intake/session.hpp"

#include <set>

#include "cli/intake/phrase.hpp"
#include "cli/intake/reply.hpp"
#include "cli/intake/said.hpp"
#include "cli/record/entry.hpp"
#include "present/text.hpp"
#include "store/history.hpp"
#include "store/tools.hpp"

namespace cli::intake {

namespace {

constexpr std::string_view k_words = "intake ";

bool is_line(const std::string& words) {
    return words.compare(0, k_words.size(), k_words) == 0;
}

std::string line_of(const std::string& words) {
    return words.substr(k_words.size());
}

// A change that stands.
struct Entry {
    std::string words;
    std::int64_t number = 0; // of the first tool in it
};

// Oldest first.
std::vector<Entry> standing_changes(const store::File& file) {
    const std::vector<store::HistoryRow> rows = store::history(file, std::nullopt);
    std::set<std::int64_t> gone;
    for (const store::HistoryRow& row : rows)
        if (row.undoes)
            gone.insert({row.group, *row.undoes});
    std::vector<Entry> entries;
    std::int64_t group = 0;
    for (const store::HistoryRow& row : rows) {
        if (row.group == group || gone.count(row.group) > 0)
            continue;
        group = row.group;
        entries.push_back({row.words, row.number.value_or(0)});
    }
    return entries;
}

// The problem, where the line says what it is about.
[[noreturn]] void refuse(const record::Problem& problem, const Line& line) {
    const auto at = line.at.find(problem.column);
    throw LineError(at == line.at.end() ? 0 : at->second,
                    label_of(problem.column) + ": " + problem.what + ": '" + problem.cell + "'",
                    problem.meant);
}

template <class Record>
Tool read_tool(const Line& line, const record::Columns<Record>& columns,
               const record::Reading& reading, const store::File& file) {
    Record tool;
    auto problems = record::read_cells(tool, columns, line.cells, reading);
    if (problems.empty())
        problems = record::problems_of(tool, file);
    if (!problems.empty())
        refuse(problems.front(), line);
    return tool;
}

Tool read_tool(const Line& line, Context& context) {
    const store::File& file = context.catalogue();
    const Measures measures(context);
    record::Reading reading = measures.reading();
    reading.bare = line.unit;
    if (line.pilot)
        return read_tool(line, record::pilot_columns(), reading, file);
    return read_tool(line, record::body_columns(), reading, file);
}

// Adds it and gives it its number.
void add(store::Change& change, Tool& tool, const Line& line) {
    try {
        std::visit([&](auto& record) { record.number = record::add_tool(change, record); }, tool);
    } catch (const error::BadData& bad) {
        const auto at = line.at.find("number");
        throw LineError(at == line.at.end() ? 0 : at->second, bad.what(), bad.hint());
    }
}

} // namespace

Session::Session(Context& context, const std::string& set) : context_(context), set_(set) {
    if (set.find_first_of("\";") != std::string::npos)
        throw error::UsageError("not a name for a set: " + set, "without quotes and semicolons");
    static_cast<void>(context_.catalogue(store::Access::write));
    find_place();
}

void Session::find_place() {
    lines_.clear();
    carry_ = afresh();
    last_ = 0;
    for (const Entry& entry : standing_changes(context_.catalogue())) {
        if (!is_line(entry.words))
            continue;
        lines_.push_back(line_of(entry.words));
        last_ = entry.number;
        try {
            carry_ = read_line(lines_.back(), carry_).next;
        } catch (const LineError&) {
            carry_ = afresh(); // the words have changed since: begin afresh
        }
    }
}

Carry Session::afresh() const {
    Carry carry;
    carry.unit = carry.usual = context_.catalogue().unit();
    return carry;
}

Carry Session::carry() const {
    if (entered_ > 0)
        return carry_;
    Carry next = carry_;
    if (!set_.empty() && set_ != carry_.set) {
        next = afresh();
        next.set = set_;
    }
    next.unit = context_.settings().units.value_or(next.unit);
    return next;
}

// With what the command said before the first line, so that the line can be read again by itself.
std::string Session::whole(const std::string& text, const Line& line, const Carry& before) const {
    std::string words = text;
    if (before.set != carry_.set && line.at.count("set") == 0)
        words = "set \"" + before.set + "\"; " + words;
    if (before.unit != carry_.unit && line.next.unit == before.unit)
        words += before.unit == length::Unit::millimetre ? "; all mm" : "; all inch";
    return words;
}

std::string Session::enter(const std::string& text) {
    store::File& file = context_.catalogue(store::Access::write);
    const Carry before = carry();
    const Line line = read_line(text, before);
    Tool tool = read_tool(line, context_);
    store::Change change(file, std::string(k_words) + whole(text, line, before));
    add(change, tool, line);
    change.commit();
    carry_ = line.next;
    ++entered_;
    lines_.push_back(text);
    last_ = std::visit([](const auto& record) { return record.number; }, tool);
    return reply(tool, line, context_);
}

std::string Session::take_back() {
    store::File& file = context_.catalogue(store::Access::write);
    const std::vector<Entry> changes = standing_changes(file);
    if (changes.empty())
        throw error::NoSuchRecord("there is nothing to take back");
    if (!is_line(changes.back().words))
        throw error::BadData("the newest change was not entered here: " + changes.back().words,
                             "counterpart undo takes it back");
    const std::string tool = one_line(find_tool(file, changes.back().number), file.unit());
    static_cast<void>(store::undo(file));
    entered_ -= entered_ > 0 ? 1 : 0;
    find_place();
    return "Taken back: " + tool + "\n  its number is not given out again\n";
}

std::vector<Session::Mistake> Session::mistakes(const std::vector<std::string>& lines) {
    store::Change change(context_.catalogue(store::Access::write), "intake");
    std::vector<Mistake> found;
    Carry before = carry();
    for (std::size_t i = 0; i < lines.size(); ++i) {
        try {
            const Line line = read_line(lines[i], before);
            Tool tool = read_tool(line, context_);
            add(change, tool, line);
            before = line.next;
        } catch (const LineError& error) {
            found.push_back({i, error});
        }
    }
    return found;
}

std::string Session::greeting() const {
    const Carry next = carry();
    std::string text;
    const auto say = [&text](const std::string& what) {
        text += (text.empty() ? ": " : ", ") + what;
    };
    if (!next.set.empty())
        say("set " + next.set);
    const std::string place = next.one_place ? next.place : next_place(next.place);
    if (!place.empty())
        say("place " + place);
    if (next.unit != next.usual)
        say(next.unit == length::Unit::millimetre ? "bare numbers in mm"
                                                  : "bare numbers in inches");
    if (next.pilots_come)
        say("loose pilots");
    for (const auto& [column, cell] : next.pilots_come ? next.pilots : next.bodies)
        if (!cell.empty())
            say(column == "marking" && cell == k_as_cut ? "marked with its size"
                                                        : phrase(column, cell));
    if (last_ == 0 && text.empty())
        return {};
    const std::string after = last_ == 0 ? "" : " after number " + std::to_string(last_);
    std::string lines;
    for (const std::string& line :
         present::wrapped(present::safe("Going on" + after + text + "."), context_.width()))
        lines.append(line).append("\n");
    return lines;
}

} // namespace cli::intake
