// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `work`: what tools need before use. Work that is done may change how a pilot goes in its body, so
// what was tried before no longer counts.
#include <algorithm>

#include "cli/command.hpp"
#include "cli/format.hpp"
#include "cli/inventory.hpp"
#include "cli/tool.hpp"
#include "present/json.hpp"
#include "present/table.hpp"
#include "present/text.hpp"
#include "store/tools.hpp"
#include "trade/text.hpp"

namespace cli::commands {

namespace {

struct Options {
    std::string number;
    std::vector<std::string> work;
};

struct ListOptions {
    std::string number;
    Format format;
};

std::vector<std::string>& work_of(Tool& tool) {
    return std::visit([](auto& record) -> std::vector<std::string>& { return record.work; }, tool);
}

void say(const Tool& tool, const store::File& file, const Context& context) {
    context.out() << one_line(tool, file.unit()) << '\n';
    Tool copy = tool;
    const auto& work = work_of(copy);
    for (const std::string& item : work)
        context.out() << "  to do: " << present::safe(item) << '\n';
    if (work.empty())
        context.out() << "  no work needed\n";
}

std::vector<std::string>::iterator find_work(std::vector<std::string>& work,
                                             const std::string& item) {
    return std::find_if(work.begin(), work.end(), [&](const std::string& known) {
        return trade::folded(known) == trade::folded(item);
    });
}

error::ExitCode add(const Options& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    store::Change change(file, context.settings().words);
    Tool tool = find_tool(file, tool_number(options.number));
    auto& work = work_of(tool);
    for (const std::string& item : trade::split(joined(options.work), ';')) {
        if (find_work(work, item) != work.end())
            throw error::BadData("already to do: " + item);
        work.push_back(item);
    }
    update_tool(change, tool);
    change.commit();
    say(tool, file, context);
    return error::ExitCode::done;
}

void take_off(std::vector<std::string>& work, const std::string& item) {
    if (work.empty())
        throw error::NoSuchRecord("this tool needs no work");
    if (item.empty()) {
        work.clear();
        return;
    }
    const auto found = find_work(work, item);
    if (found == work.end()) {
        std::string known;
        for (const std::string& other : work)
            known += (known.empty() ? "to do: " : "; ") + other;
        throw error::NoSuchRecord("not to do on this tool: " + item, known);
    }
    work.erase(found);
}

error::ExitCode done(const Options& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    const std::int64_t number = tool_number(options.number);
    store::Change change(file, context.settings().words);
    Tool tool = find_tool(file, number);
    take_off(work_of(tool), joined(options.work));
    update_tool(change, tool);
    const std::size_t before = store::trials(file).size();
    store::forget_trials(change, number);
    const std::size_t forgotten = before - store::trials(file).size();
    change.commit();
    say(tool, file, context);
    if (forgotten > 0)
        context.out() << "  tried pairs that no longer count: " << forgotten << '\n';
    return error::ExitCode::done;
}

struct Entry {
    std::int64_t number;
    std::string line;
    std::string work;
    std::string place;
};

template <class Record>
void collect(const std::vector<Record>& records, const ListOptions& options,
             const store::File& file, std::vector<Entry>& entries) {
    for (const Record& record : records) {
        if (record.retired ||
            (!options.number.empty() && record.number != tool_number(options.number)))
            continue;
        for (const std::string& item : record.work)
            entries.push_back({record.number, one_line(record, file.unit()), item, record.place});
    }
}

void print(const std::vector<Entry>& entries, const Format& format, const Context& context) {
    present::Json list = present::Json::array();
    std::vector<std::vector<std::string>> rows{{"number", "work", "place"}};
    present::Table table({{"what"}, {"to do"}});
    for (const Entry& entry : entries) {
        list.push_back({{"number", entry.number},
                        {"work", entry.work},
                        {"place", present::text_json(entry.place)}});
        rows.push_back({std::to_string(entry.number), entry.work, entry.place});
        table.add({entry.line, entry.work});
    }
    if (format.json)
        context.out() << present::json_text({{"format", 1}, {"work", list}});
    else if (format.csv)
        print_csv(rows, context);
    else if (table.empty())
        context.out() << "No work needed.\n";
    else
        context.out() << table.text(context.width(), context.style());
}

error::ExitCode list(const ListOptions& options, Context& context) {
    const store::File& file = context.catalogue();
    if (!options.number.empty()) {
        const Tool tool = find_tool(file, tool_number(options.number));
        if (!options.format.json && !options.format.csv) {
            say(tool, file, context);
            return error::ExitCode::done;
        }
    }
    std::vector<Entry> entries;
    collect(store::bodies(file), options, file, entries);
    collect(store::pilots(file), options, file, entries);
    std::stable_sort(entries.begin(), entries.end(),
                     [](const Entry& a, const Entry& b) { return a.number < b.number; });
    print(entries, options.format, context);
    return error::ExitCode::done;
}

} // namespace

void declare_work(const Syntax& syntax, Plan& plan) {
    syntax.needs_verb();
    const auto add_verb = syntax.verb("add", "a tool needs something before use");
    Options& a = chosen<Options>(add_verb, plan, add);
    add_verb.word("NUMBER", a.number, "the tool's number").required();
    add_verb.word("WORK", a.work, "what: \"clean the bore\"; several separated by ;").required();
    const auto done_verb = syntax.verb("done", "it has been done; pairs must be tried again");
    Options& d = chosen<Options>(done_verb, plan, done);
    done_verb.word("NUMBER", d.number, "the tool's number").required();
    done_verb.word("WORK", d.work, "what; without it, all of it");
    const auto list_verb = syntax.verb("list", "what is to be done");
    ListOptions& l = chosen<ListOptions>(list_verb, plan, list);
    list_verb.word("NUMBER", l.number, "of one tool; else of all");
    declare_format(list_verb, l.format);
}

} // namespace cli::commands
