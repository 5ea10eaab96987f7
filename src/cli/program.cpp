// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Parsing, dispatch, and turning every error into a message, a hint and an exit code.
#include "cli/program.hpp"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cerrno>
#include <csignal>
#include <cstring>
#include <iostream>
#include <new>
#include <sstream>

#include "cli/command.hpp"
#include "cli/held_output.hpp"
#include "cli/help.hpp"
#include "cli/suggest.hpp"
#include "present/text.hpp"
#include "present/utf8.hpp"
#include "trade/text.hpp"

namespace cli {

namespace {

// What the options before the command are read into.
struct Globals {
    std::string file;
    std::string units;
};

void declare(CLI::App& app, Globals& globals, Plan& plan, const Surroundings& around) {
    app.name("counterpart");
    app.formatter(std::make_shared<HelpFormatter>(std::min<std::size_t>(around.width, 80)));
    app.set_help_flag("-h,--help", "print this and stop");
    app.set_version_flag("--version", "counterpart " COUNTERPART_VERSION,
                         "print the version and stop");
    app.add_option("--file", globals.file,
                   "the catalogue; else COUNTERPART_FILE, else counterpart/catalogue.db under "
                   "XDG_DATA_HOME or ~/.local/share")
        ->type_name("FILE");
    app.add_option("--units", globals.units,
                   "in or mm: what bare numbers here are in, and how results are printed; else "
                   "the catalogue's")
        ->type_name("UNIT");
    app.require_subcommand(0, 1);
    app.fallthrough();  // --file and --units may stand after the command too
    app.allow_extras(); // so that a word nobody knows is answered by us
    for (const Command& command : all_commands()) {
        CLI::App* sub = app.add_subcommand(std::string(command.name), std::string(command.about));
        sub->group(std::string(command.group));
        command.declare(Syntax(*sub), plan);
    }
}

// The innermost command or verb that the command line got to.
const CLI::App& innermost(const CLI::App& app) {
    const auto chosen = app.get_subcommands();
    return chosen.empty() ? app : innermost(*chosen.back());
}

std::vector<std::string> option_names(const CLI::App& app) {
    std::vector<std::string> names;
    for (const CLI::App* level = &app; level != nullptr; level = level->get_parent())
        for (const CLI::Option* option : level->get_options())
            for (const std::string& name : option->get_lnames())
                names.push_back("--" + name);
    return names;
}

std::vector<std::string> verb_names(const CLI::App& app) {
    std::vector<std::string> names;
    for (const CLI::App* verb : app.get_subcommands(nullptr))
        names.push_back(verb->get_name());
    return names;
}

[[noreturn]] void refuse_word(const CLI::App& at, const std::string& word) {
    const std::string help = full_name(at) + " --help shows what it takes";
    if (word.size() > 1 && word.front() == '-')
        throw error::UsageError(
            "no such option: " + word,
            did_you_mean(word.substr(0, word.find('=')), option_names(at), help));
    const std::vector<std::string> verbs = verb_names(at);
    if (verbs.empty())
        throw error::UsageError("one word too many: " + word, help);
    if (at.get_parent() == nullptr)
        throw error::UsageError("no such command: " + word,
                                did_you_mean(word, verbs, "counterpart --help lists the commands"));
    throw error::UsageError(
        "no such verb of " + at.get_name() + ": " + word,
        did_you_mean(word, verbs, "one of " + fmt::format("{}", fmt::join(verbs, ", "))));
}

void refuse_leftovers(const CLI::App& app) {
    for (const std::string& word : app.remaining(true))
        if (word != "--")
            refuse_word(innermost(app), word);
}

void refuse_without_verb(const CLI::App& at) {
    const std::vector<std::string> verbs = verb_names(at);
    if (at.get_parent() != nullptr && !verbs.empty())
        throw error::UsageError("no verb given: " + full_name(at),
                                fmt::format("one of {}", fmt::join(verbs, ", ")));
}

// `--cut_dia`, as the column is called, is `--cut-dia`.
std::string with_hyphens(const std::string& word) {
    std::string result = word;
    if (word.rfind("--", 0) == 0) {
        const auto end =
            result.begin() + static_cast<std::ptrdiff_t>(std::min(word.find('='), word.size()));
        std::replace(result.begin(), end, '_', '-');
    }
    return result;
}

// Sets plan.run, or prints what was asked for (help, version) and leaves it empty.
void parse(CLI::App& app, std::vector<std::string> words, std::ostream& out) {
    std::transform(words.begin(), words.end(), words.begin(), with_hyphens);
    std::reverse(words.begin(), words.end());
    try {
        app.parse(std::move(words));
    } catch (const CLI::CallForHelp&) {
        out << app.help();
    } catch (const CLI::CallForVersion&) {
        out << app.version() << '\n';
    } catch (const CLI::ParseError& problem) {
        refuse_leftovers(app);
        refuse_without_verb(innermost(app));
        throw error::UsageError(problem.what(),
                                full_name(innermost(app)) + " --help shows what it takes");
    }
}

length::Unit parse_unit(const std::string& text) {
    const std::string word = trade::folded(text);
    if (word == "in" || word == "inch")
        return length::Unit::inch;
    if (word == "mm")
        return length::Unit::millimetre;
    throw error::UsageError("no such unit: " + text, "--units in or --units mm");
}

// The command as typed, without what only says where and how: the history keeps it.
std::string words_of(const std::vector<std::string>& words) {
    std::string line;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const std::string& word = words[i];
        if (word == "--file" || word == "--units") {
            ++i;
            continue;
        }
        if (word.rfind("--file=", 0) == 0 || word.rfind("--units=", 0) == 0)
            continue;
        if (!line.empty())
            line += ' ';
        const bool plain = !word.empty() && word.find_first_of(" \t\"'") == std::string::npos;
        const std::string kept =
            present::find_invalid(word) == std::string_view::npos ? word : present::safe(word);
        line += plain ? kept : '\'' + kept + '\'';
    }
    return line;
}

error::ExitCode run_or_throw(const std::vector<std::string>& words, const Surroundings& around,
                             std::ostream& out, std::ostream& err) {
    CLI::App app("A catalogue of counterbores and pilots, and the tool for the screw.");
    Globals globals;
    Plan plan;
    declare(app, globals, plan, around);
    if (words.empty()) {
        err << app.help();
        return error::ExitCode::usage;
    }
    std::ostringstream asked;
    parse(app, words, asked);
    if (!asked.str().empty()) {
        out << asked.str();
        return error::ExitCode::done;
    }
    refuse_leftovers(app);
    if (!plan.run)
        throw error::UsageError("no command given", "counterpart --help lists them");
    if (app.count("--file") > 0 && globals.file.empty())
        throw error::UsageError("--file names no file", "--file FILE");
    Settings settings{globals.file, std::nullopt, words_of(words)};
    if (app.count("--units") > 0)
        settings.units = parse_unit(globals.units);
    Context context(std::move(settings), around, out, err);
    return plan.run(context);
}

void complain(std::ostream& err, const std::string& message, const std::string& hint) {
    err << "counterpart: " << present::safe_lines(message) << '\n';
    if (!hint.empty())
        err << "hint: " << present::safe_lines(hint) << '\n';
}

} // namespace

error::ExitCode run(const std::vector<std::string>& words, const Surroundings& around,
                    std::ostream& out, std::ostream& err) {
    try {
        HeldOutput held(out);
        std::ostream printed(&held);
        const error::ExitCode code = run_or_throw(words, around, printed, err);
        held.release();
        return code;
    } catch (const error::Error& problem) {
        complain(err, problem.what(), problem.hint());
        return problem.code();
    } catch (const std::bad_alloc&) {
        complain(err, "out of memory", "");
    } catch (const std::exception& problem) {
        complain(err, std::string("unexpected: ") + problem.what(),
                 "this is a fault of the program; the catalogue is as it was");
    }
    return error::ExitCode::input_output;
}

int run_process(int count, char** words) {
    std::signal(SIGPIPE, SIG_IGN);         // a closed pipe is a write that fails, and says so
    std::ios_base::sync_with_stdio(false); // else a read that fails looks like the end of input
    std::ostringstream err;
    const std::vector<std::string> arguments(words + (count > 0 ? 1 : 0), words + count);
    error::ExitCode code = run(arguments, surroundings_of_process(), std::cout, err);
    if (!std::cout.flush()) {
        complain(err, std::string("cannot write the output: ") + std::strerror(errno),
                 "what was asked for may be done; only the printing failed");
        code = error::ExitCode::input_output;
    }
    std::cerr << err.view();
    return static_cast<int>(code);
}

} // namespace cli
