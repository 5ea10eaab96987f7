// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `history`: what changed, newest last: every change in a line, or one tool's life in detail.
#include "store/history.hpp"

#include "cli/command.hpp"
#include "cli/format.hpp"
#include "cli/tool.hpp"
#include "present/json_lists.hpp"
#include "present/table.hpp"
#include "present/text.hpp"
#include "store/tools.hpp"

namespace cli::commands {

namespace {

using present::Json;
using store::HistoryRow;

struct Options {
    std::string number;
    Format format;
};

// The history, of one tool or of everything, read as it is printed.
struct Rows {
    const store::File& file;
    std::optional<std::int64_t> number;

    void each(const std::function<void(const HistoryRow&)>& see) const {
        store::each_history_row(file, number, see);
    }
    [[nodiscard]] bool empty() const {
        bool none = true;
        each([&none](const HistoryRow&) { none = false; });
        return none;
    }
};

Json parsed(const std::string& row) {
    return row.empty() ? Json(nullptr) : Json::parse(row);
}

std::string value_text(const Json& row, const std::string& key) {
    const auto value = row.find(key);
    if (value == row.end() || value->is_null())
        return {};
    std::string text = value->is_string() ? value->get<std::string>() : value->dump();
    const auto how = row.find(key + "_how");
    if (how != row.end() && how->is_string() && how->get<std::string>() != "unstated")
        text += " (" + how->get<std::string>() + ')';
    return text;
}

bool ends_in(const std::string& key, const std::string& ending) {
    return key.size() > ending.size() &&
           key.compare(key.size() - ending.size(), ending.size(), ending) == 0;
}

// As it is called in files and options.
std::string column_name(const std::string& key) {
    return key == "tool_set" ? "set" : key;
}

// A dimension is told by its text and how it is known; its limits follow from them.
bool told_by_another(const std::string& key) {
    return ends_in(key, "_lo") || ends_in(key, "_hi") || ends_in(key, "_how");
}

std::vector<std::string> differences(const Json& before, const Json& after) {
    std::vector<std::string> lines;
    for (const auto& [key, value] : after.items()) {
        if (told_by_another(key))
            continue;
        const std::string was = value_text(before, key);
        const std::string is = value_text(after, key);
        if (was != is)
            lines.push_back(column_name(key) + ": " + (was.empty() ? "not known" : was) + " -> " +
                            (is.empty() ? "not known" : is));
    }
    return lines;
}

// What is in a row that came or went.
std::string whole_row(const Json& row) {
    std::string text;
    for (const auto& [key, value] : row.items()) {
        const std::string shown = told_by_another(key) ? std::string() : value_text(row, key);
        if (!shown.empty())
            text += (text.empty() ? "" : ", ") + column_name(key) + ' ' + shown;
    }
    return text;
}

std::vector<std::string> lines_of(const HistoryRow& row) {
    const Json before = parsed(row.before);
    const Json after = parsed(row.after);
    if (before.is_object() && after.is_object()) {
        std::vector<std::string> lines = differences(before, after);
        for (std::string& line : lines)
            line.insert(0, row.table + ' ');
        return lines;
    }
    return {row.table + (after.is_object() ? " entered: " + whole_row(after)
                                           : " taken away: " + whole_row(before))};
}

std::string short_time(const std::string& time) {
    std::string text = time.substr(0, 16); // to the minute
    if (text.size() > 10)
        text[10] = ' ';
    return text;
}

void print_life(const Rows& rows, const Context& context) {
    std::int64_t group = 0;
    rows.each([&](const HistoryRow& row) {
        if (row.group != group)
            context.out() << short_time(row.time) << "  " << present::safe(row.words) << '\n';
        group = row.group;
        for (const std::string& line : lines_of(row))
            for (const std::string& part :
                 present::wrapped(present::safe(line), context.width() - 4))
                context.out() << "    " << part << '\n';
    });
}

void print_changes(const Rows& rows, const Context& context) {
    present::Table table({{"when (UTC)"}, {"rows", true}, {"what"}});
    HistoryRow last;
    std::size_t count = 0;
    const auto add = [&] {
        if (count > 0)
            table.add({short_time(last.time), std::to_string(count), last.words});
    };
    rows.each([&](const HistoryRow& row) {
        if (row.group != last.group) {
            add();
            count = 0;
            last = row;
        }
        ++count;
    });
    add();
    context.out() << (table.empty() ? std::string("Nothing has changed yet.\n")
                                    : table.text(context.width(), context.style()));
}

void print_json(const Rows& rows, const Context& context) {
    present::JsonLists lists(context.out());
    lists.begin("history");
    rows.each([&](const HistoryRow& row) {
        lists.add({{"change", row.group},
                   {"time", row.time},
                   {"words", row.words},
                   {"table", row.table},
                   {"number", row.number ? Json(*row.number) : Json(nullptr)},
                   {"before", parsed(row.before)},
                   {"after", parsed(row.after)}});
    });
    lists.end();
}

void print_rows(const Rows& rows, const Context& context) {
    print_csv_row({"change", "time", "words", "table", "number", "before", "after"}, context);
    rows.each([&](const HistoryRow& row) {
        print_csv_row({std::to_string(row.group), row.time, row.words, row.table,
                       row.number ? std::to_string(*row.number) : std::string(), row.before,
                       row.after},
                      context);
    });
}

error::ExitCode run(const Options& options, Context& context) {
    const store::File& file = context.catalogue();
    std::optional<std::int64_t> number;
    if (!options.number.empty())
        number = tool_number(options.number);
    const Rows rows{file, number};
    // A tool whose entry was taken back is no longer there, but its life is.
    const bool there = number && (store::body(file, *number) || store::pilot(file, *number));
    if (number && !there && rows.empty())
        static_cast<void>(find_tool(file, *number));
    if (options.format.json) {
        print_json(rows, context);
    } else if (options.format.csv) {
        print_rows(rows, context);
    } else if (!number) {
        print_changes(rows, context);
    } else {
        if (there)
            context.out() << one_line(find_tool(file, *number), file.unit()) << '\n';
        print_life(rows, context);
    }
    return error::ExitCode::done;
}

} // namespace

void declare_history(const Syntax& syntax, Plan& plan) {
    Options& options = chosen<Options>(syntax, plan, run);
    syntax.word("NUMBER", options.number, "of one tool, in detail; else every change");
    declare_format(syntax, options.format);
}

} // namespace cli::commands
