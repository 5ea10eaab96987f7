// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `loan`: who has which tools. A body goes out as it is used: with the pilot that is in it, its set
// screw and the key.
#include <algorithm>

#include "cli/calendar.hpp"
#include "cli/command.hpp"
#include "cli/format.hpp"
#include "cli/tool.hpp"
#include "cli/what_it_is.hpp"
#include "present/json.hpp"
#include "present/table.hpp"
#include "present/text.hpp"
#include "store/loans.hpp"
#include "store/tools.hpp"
#include "trade/set_screw.hpp"
#include "trade/text.hpp"

namespace cli::commands {

namespace {

using store::Loan;
using Numbers = std::vector<std::int64_t>;

struct LendOptions {
    std::vector<std::string> words; // numbers, then the name
    std::string due;
};

struct BackOptions {
    std::vector<std::string> numbers;
};

struct ListOptions {
    bool closed = false;
    Format format;
};

struct PurgeOptions {};

struct Asked {
    Numbers numbers;
    std::string name;
};

bool has(const Numbers& numbers, std::int64_t number) {
    return std::find(numbers.begin(), numbers.end(), number) != numbers.end();
}

void add_once(Numbers& numbers, std::int64_t number) {
    if (!has(numbers, number))
        numbers.push_back(number);
}

bool is_number(const std::string& word) {
    return !word.empty() && word.find_first_not_of("0123456789") == std::string::npos;
}

// The numbers are the words before the first that is none; the rest is the name.
Asked read_words(const std::vector<std::string>& words) {
    Asked asked;
    const auto name = std::find_if_not(words.begin(), words.end(), is_number);
    for (auto word = words.begin(); word != name; ++word)
        add_once(asked.numbers, tool_number(*word));
    asked.name = std::string(trade::trimmed(joined({name, words.end()})));
    if (asked.numbers.empty())
        throw error::UsageError("loan: no number of a tool" +
                                    (asked.name.empty() ? "" : ": " + asked.name),
                                "counterpart loan NUMBER... NAME; or one of back, list, purge");
    if (asked.name.empty())
        throw error::UsageError("loan: no name of who has it",
                                "counterpart loan NUMBER... NAME; a nickname is enough");
    return asked;
}

std::optional<std::string> read_due(const std::string& text) {
    if (text.empty())
        return std::nullopt;
    const std::string due = read_day(text);
    if (due < today())
        throw error::BadData("the day is past: " + due, "today is " + today());
    return due;
}

void refuse_to_lend(const Tool& tool, const store::File& file) {
    std::visit(
        [&](const auto& record) {
            if (record.retired)
                throw error::BadData("retired, so not to be lent: " + one_line(record, file.unit()),
                                     "counterpart unretire takes it back");
            if (record.loan)
                throw error::BadData("already on loan: " + one_line(record, file.unit()),
                                     "counterpart loan back " + std::to_string(record.number) +
                                         ", when it is back");
        },
        tool);
}

// The set screw and its key, which are easily forgotten.
std::string screw_and_key(const trade::Body& body, const trade::Tables& tables) {
    if (body.retention != trade::Retention::set_screw)
        return {};
    if (body.set_screw.empty())
        return "its set screw (size not recorded) and the key for it";
    const auto row = trade::find_set_screw(body.set_screw, tables.set_screws());
    std::string text = "its set screw " + body.set_screw + " and the key for it";
    if (row)
        text += ", " + row->key +
                (row->origin.confidence == "memory" ? " (not checked against the standard)" : "");
    return text;
}

// What goes with a body: lines that say so, and the pilot's number if it goes too.
std::vector<std::string> lines_with(const trade::Body& body, Numbers& lent, Context& context) {
    const store::File& file = context.catalogue(store::Access::write);
    std::vector<std::string> lines;
    if (const auto inside = store::pilot_in(file, body.number)) {
        const auto pilot = store::pilot(file, *inside);
        const std::string line = one_line(*pilot, file.unit());
        if (has(lent, pilot->number) || (!pilot->loan && !pilot->retired)) {
            add_once(lent, pilot->number);
            lines.push_back("with the pilot in it, " + line);
        } else {
            lines.push_back("without the pilot in it, " + line);
        }
    }
    if (const auto text = screw_and_key(body, context.tables()); !text.empty())
        lines.push_back("with " + present::safe(text));
    return lines;
}

error::ExitCode lend(const LendOptions& options, Context& context) {
    const Asked asked = read_words(options.words);
    const auto due = read_due(options.due);
    store::File& file = context.catalogue(store::Access::write);
    for (const std::int64_t number : asked.numbers)
        refuse_to_lend(find_tool(file, number), file);
    Numbers lent = asked.numbers;
    std::string text = "Lent to " + present::safe(asked.name);
    text += due ? ", due back " + *due + ":\n" : ":\n";
    for (const std::int64_t number : asked.numbers) {
        const Tool tool = find_tool(file, number);
        text += one_line(tool, file.unit()) + '\n';
        if (const auto* body = std::get_if<trade::Body>(&tool))
            for (const std::string& line : lines_with(*body, lent, context))
                text += "    " + line + '\n';
    }
    store::lend(file, lent, asked.name, due);
    context.out() << text;
    return error::ExitCode::done;
}

const Loan* loan_of(const std::vector<Loan>& loans, std::int64_t number) {
    const auto found = std::find_if(loans.begin(), loans.end(),
                                    [&](const Loan& loan) { return loan.number == number; });
    return found == loans.end() ? nullptr : &*found;
}

// The tool may be gone from the catalogue by `undo`.
std::string loaned_tool(const store::File& file, std::int64_t number) {
    if (store::body(file, number) || store::pilot(file, number))
        return what_it_is(find_tool(file, number), file.unit());
    return "no longer in the catalogue";
}

// The numbers asked for, and the pilots that went out in the bodies among them.
Numbers coming_back(const BackOptions& options, const store::File& file,
                    const std::vector<Loan>& loans) {
    Numbers numbers;
    for (const std::string& word : options.numbers) {
        const std::int64_t number = tool_number(word);
        if (loan_of(loans, number) == nullptr)
            throw error::BadData("not on loan: " + one_line(find_tool(file, number), file.unit()),
                                 "counterpart loan list shows what is");
        add_once(numbers, number);
    }
    for (const trade::Pilot& pilot : store::pilots(file)) {
        if (!pilot.in_body || !pilot.loan || !has(numbers, *pilot.in_body))
            continue;
        if (loan_of(loans, *pilot.in_body)->name == *pilot.loan)
            add_once(numbers, pilot.number);
    }
    return numbers;
}

error::ExitCode back(const BackOptions& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    const auto loans = store::open_loans(file);
    const Numbers numbers = coming_back(options, file, loans);
    store::take_back(file, numbers);
    for (const std::int64_t number : numbers)
        context.out() << "Back from " << present::safe(loan_of(loans, number)->name) << ": "
                      << number << ": " << loaned_tool(file, number) << '\n';
    for (const std::int64_t number : numbers) {
        const auto body = store::body(file, number);
        const auto text = body ? screw_and_key(*body, context.tables()) : std::string();
        if (!text.empty())
            context.out() << "See that it came with " << present::safe(text) << ": " << number
                          << '\n';
    }
    return error::ExitCode::done;
}

bool is_overdue(const Loan& loan) {
    return !loan.back && loan.due && *loan.due < today();
}

// `counterbore 7/16`: the rest is for those who have not seen it.
std::string in_short(const std::string& what) {
    return what.substr(0, what.find(", "));
}

std::string day_of(const std::string& time) {
    return time.substr(0, 10);
}

present::Json json_of(const Loan& loan, const std::string& what) {
    const auto maybe = [](const std::optional<std::string>& text) {
        return text ? present::Json(*text) : present::Json(nullptr);
    };
    return {{"number", loan.number},   {"what", what},           {"name", loan.name},
            {"since", loan.since},     {"due", maybe(loan.due)}, {"overdue", is_overdue(loan)},
            {"back", maybe(loan.back)}};
}

void print_table(const std::vector<Loan>& loans, const ListOptions& options, Context& context) {
    present::Table table({{"number", true},
                          {"what"},
                          {"who has it"},
                          {"since (UTC)"},
                          {"due"},
                          {""},
                          {"back (UTC)"}});
    for (const Loan& loan : loans)
        table.add({std::to_string(loan.number),
                   in_short(loaned_tool(context.catalogue(), loan.number)), loan.name,
                   day_of(loan.since), loan.due.value_or(""), is_overdue(loan) ? "overdue" : "",
                   day_of(loan.back.value_or(""))});
    if (table.empty())
        context.out() << (options.closed ? "No closed loans.\n" : "Nothing is on loan.\n");
    else
        context.out() << table.text(context.width(), context.style());
}

error::ExitCode list(const ListOptions& options, Context& context) {
    const store::File& file = context.catalogue();
    const auto loans = options.closed ? store::closed_loans(file) : store::open_loans(file);
    if (options.format.json) {
        present::Json rows = present::Json::array();
        for (const Loan& loan : loans)
            rows.push_back(json_of(loan, loaned_tool(file, loan.number)));
        context.out() << present::json_text({{"format", 1}, {"loans", rows}});
    } else if (options.format.csv) {
        std::vector<std::vector<std::string>> cells{
            {"number", "what", "name", "since", "due", "overdue", "back"}};
        for (const Loan& loan : loans)
            cells.push_back({std::to_string(loan.number), loaned_tool(file, loan.number), loan.name,
                             loan.since, loan.due.value_or(""), is_overdue(loan) ? "yes" : "no",
                             loan.back.value_or("")});
        print_csv(cells, context);
    } else {
        print_table(loans, options, context);
    }
    return error::ExitCode::done;
}

error::ExitCode purge(const PurgeOptions&, Context& context) {
    const int count = store::purge_closed_loans(context.catalogue(store::Access::write));
    context.out() << "Forgotten: " << count
                  << (count == 1 ? " closed loan.\n" : " closed loans.\n");
    return error::ExitCode::done;
}

// The command is used without a verb too: a verb's own plan must stand.
void declare_lend(const Syntax& syntax, Plan& plan) {
    auto options = std::make_shared<LendOptions>();
    syntax.word("NUMBER... NAME", options->words,
                "the tools' numbers, then who has them; a nickname is enough");
    syntax.option("--due", options->due, "the day they are due back: 2026-12-24").takes("DATE");
    syntax.when_chosen([syntax, options, &plan] {
        if (const std::string verb = syntax.chosen_verb(); !verb.empty()) {
            if (options->words.empty())
                return;
            throw error::UsageError("loan: a verb and other words: " + joined(options->words),
                                    verb + " --help shows what it takes");
        }
        plan.run = [options](Context& context) { return lend(*options, context); };
    });
}

} // namespace

void declare_loan(const Syntax& syntax, Plan& plan) {
    syntax.may_have_verb();
    declare_lend(syntax, plan);
    const auto back_verb = syntax.verb("back", "tools are back");
    BackOptions& b = chosen<BackOptions>(back_verb, plan, back);
    back_verb.word("NUMBER", b.numbers, "a body brings the pilot that went out in it").required();
    const auto list_verb = syntax.verb("list", "what is out, who has it, what is overdue");
    ListOptions& l = chosen<ListOptions>(list_verb, plan, list);
    list_verb.flag("--closed", l.closed, "the loans that are over");
    declare_format(list_verb, l.format);
    const auto purge_verb = syntax.verb("purge", "forget the loans that are over");
    chosen<PurgeOptions>(purge_verb, plan, purge);
    syntax.footer("Loans are not part of the history: undo leaves them as they are.");
}

} // namespace cli::commands
