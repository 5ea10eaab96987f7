// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `intake`: tools entered at the bench, a short line each. At a terminal every line is stored
// before the next is asked for; lines from a file or a pipe are all looked at first, and stored one
// by one if nothing is wrong with any of them.
#include <fmt/format.h>

#include "cli/command.hpp"
#include "cli/intake/editor.hpp"
#include "cli/intake/manual.hpp"
#include "cli/intake/session.hpp"
#include "present/text.hpp"
#include "store/tools.hpp"
#include "trade/text.hpp"

namespace cli::commands {

namespace {

using intake::LineError;
using intake::Session;

constexpr std::size_t k_most_mistakes = 20;

struct Options {
    std::string set;
};

// The line with a caret under the place.
std::string pointed_at(const std::string& line, std::size_t at) {
    const std::string shown = present::safe(line);
    const std::size_t column = present::display_width(present::safe(line.substr(0, at)));
    return "  " + shown + "\n  " + std::string(column, ' ') + "^\n";
}

std::string explained(const std::string& line, const LineError& error, std::size_t width) {
    std::string text = present::safe_lines(error.what()) + '\n' + pointed_at(line, error.at);
    for (const std::string& part : present::wrapped(present::safe_lines(error.hint()), width - 2))
        text += "  " + part + '\n';
    return text;
}

void print(const std::string& text, Context& context) {
    std::ostream& out = context.talk().out != nullptr ? *context.talk().out : context.out();
    out << text << std::flush;
    if (!out)
        throw error::InputOutput("cannot write the output",
                                 "what was entered before is stored; counterpart history shows it");
}

// Typing on would be no use.
bool ends_talk(const error::Error& error) {
    return error.code() == error::ExitCode::input_output ||
           error.code() == error::ExitCode::damaged_file;
}

// What a line of the terminal comes to; false for the last one.
bool answer(const std::string& typed, Session& session, Context& context) {
    const std::string word = trade::folded(typed);
    if (word == "quit")
        return false;
    try {
        if (word == "help")
            print(std::string(intake::manual()), context);
        else if (word == "undo")
            print(present::safe_lines(session.take_back()), context);
        else if (!word.empty())
            print(session.enter(typed), context);
    } catch (const LineError& error) {
        print(explained(typed, error, context.width()), context);
    } catch (const error::Error& error) {
        if (ends_talk(error))
            throw;
        print(present::safe_lines(error.what()) + '\n' +
                  (error.hint().empty() ? "" : "  " + present::safe_lines(error.hint()) + '\n'),
              context);
    }
    return true;
}

error::ExitCode talk(Session& session, Context& context) {
    print(session.greeting() +
              "One tool a line. help shows the words, undo takes back, quit ends.\n",
          context);
    intake::Editor editor(session.lines());
    while (true) {
        const auto typed =
            editor.line(fmt::format("{}> ", store::next_number(context.catalogue())));
        if (!typed)
            print("\n", context);
        if (!typed || !answer(*typed, session, context))
            return error::ExitCode::done;
    }
}

struct Numbered {
    std::size_t row = 0;
    std::string text;
};

// The lines that count: without blank ones, those taken back, and what follows quit.
std::vector<Numbered> lines_that_count(std::istream& in) {
    std::vector<Numbered> lines;
    std::string text;
    for (std::size_t row = 1; std::getline(in, text); ++row) {
        text = std::string(trade::trimmed(text));
        const std::string word = trade::folded(text);
        if (word == "quit")
            break;
        if (word == "undo") {
            if (lines.empty())
                throw error::BadData(
                    fmt::format("line {}: there is nothing to take back: undo", row),
                    "counterpart undo takes back what was stored before");
            lines.pop_back();
        } else if (!word.empty() && word != "help") {
            lines.push_back({row, text});
        }
    }
    if (in.bad())
        throw error::InputOutput("cannot read the lines to their end", "nothing was stored");
    return lines;
}

void refuse(const std::vector<Session::Mistake>& mistakes, const std::vector<Numbered>& lines,
            const Context& context) {
    if (mistakes.empty())
        return;
    for (std::size_t i = 0; i < std::min(mistakes.size(), k_most_mistakes); ++i) {
        const Numbered& line = lines[mistakes[i].line];
        context.err() << "line " << line.row << ": "
                      << explained(line.text, mistakes[i].error, context.width());
    }
    if (mistakes.size() > k_most_mistakes)
        context.err() << "and " << mistakes.size() - k_most_mistakes << " more\n";
    throw error::BadData(fmt::format("nothing was stored: {} of {} lines cannot be understood",
                                     mistakes.size(), lines.size()),
                         "mend them and give all the lines again");
}

error::ExitCode take_in(std::istream& in, Session& session, Context& context) {
    const std::vector<Numbered> lines = lines_that_count(in);
    std::vector<std::string> texts;
    for (const Numbered& line : lines)
        texts.push_back(line.text);
    refuse(session.mistakes(texts), lines, context);
    for (const std::string& text : texts)
        print(session.enter(text), context);
    print(fmt::format("{} {} stored.\n", texts.size(), texts.size() == 1 ? "line" : "lines"),
          context);
    return error::ExitCode::done;
}

error::ExitCode run(const Options& options, Context& context) {
    Session session(context, options.set);
    const Talk& talking = context.talk();
    if (talking.typed)
        return talk(session, context);
    if (talking.in == nullptr)
        throw error::UsageError("nothing to read lines from");
    return take_in(*talking.in, session, context);
}

} // namespace

void declare_intake(const Syntax& syntax, Plan& plan) {
    Options& options = chosen<Options>(syntax, plan, run);
    syntax.option("--set", options.set, "the inherited set that the tools came with").takes("NAME");
    syntax.footer("At a terminal, type help for the words of a line. From a file: intake <lines.");
}

} // namespace cli::commands
