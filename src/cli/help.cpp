// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Help in 80 columns: CLI11's own formatter does not wrap.
#include "cli/help.hpp"

#include <CLI/CLI.hpp>
#include <algorithm>

#include "present/text.hpp"

namespace cli {

namespace {

constexpr std::size_t k_indent = 2;
constexpr std::size_t k_column = 24; // where descriptions start

// `  --hole H         what it is`, wrapped; a long left side gets a line of its own.
std::string entry(const std::string& left, const std::string& about, std::size_t width) {
    std::string text = std::string(k_indent, ' ') + left;
    const std::vector<std::string> lines = present::wrapped(about, width - k_column);
    bool first = true;
    for (const std::string& line : lines) {
        const std::size_t used = first ? present::display_width(text) : 0;
        if (first && used + 2 > k_column) {
            text += '\n';
            text += std::string(k_column, ' ');
        } else {
            text += std::string(k_column - used, ' ');
        }
        text += line + '\n';
        first = false;
    }
    return lines.empty() ? text + '\n' : text;
}

std::string placeholder(const CLI::Option& option) {
    const std::string name = option.get_type_name();
    return name == "TEXT" || name == "INT" ? "VALUE" : name;
}

std::string left_side(const CLI::Option& option) {
    if (option.get_positional())
        return option.get_name(true, false);
    std::string text;
    for (const std::string& name : option.get_snames())
        text += (text.empty() ? "-" : ", -") + name;
    for (const std::string& name : option.get_lnames())
        text += (text.empty() ? "--" : ", --") + name;
    if (option.get_items_expected_max() > 0)
        text += ' ' + placeholder(option);
    return text;
}

bool has_options(const CLI::App& app) {
    const auto options = app.get_options();
    return std::any_of(options.begin(), options.end(), [](const CLI::Option* option) {
        return !option->get_positional() &&
               option->get_lnames() != std::vector<std::string>{"help"};
    });
}

std::string usage(const CLI::App& app) {
    std::string text = "Usage: " + full_name(app);
    if (app.get_parent() == nullptr)
        return text + " [--file FILE] [--units UNIT] COMMAND ...\n";
    if (!app.get_subcommands(nullptr).empty() && app.get_require_subcommand_min() > 0)
        return text + " VERB ...\n";
    if (has_options(app))
        text += " [OPTIONS]";
    for (const CLI::Option* option : app.get_options()) {
        if (!option->get_positional())
            continue;
        const bool many = option->get_items_expected_max() > 1;
        const std::string name = option->get_name(true, false) + (many ? "..." : "");
        text += option->get_required() ? ' ' + name : " [" + name + ']';
    }
    if (!app.get_subcommands(nullptr).empty())
        text += "\n       " + full_name(app) + " VERB ...";
    return text + '\n';
}

std::string options_text(const CLI::App& app, bool positional, std::size_t width) {
    std::string text;
    for (const CLI::Option* option : app.get_options())
        if (option->get_positional() == positional && !option->get_group().empty())
            text += entry(left_side(*option), option->get_description(), width);
    return text;
}

std::string commands_text(const CLI::App& app, std::size_t width) {
    std::string text;
    std::string group;
    for (const CLI::App* verb : app.get_subcommands(nullptr)) {
        const std::string& now = verb->get_group();
        if (now != group)
            text += '\n' + (app.get_parent() == nullptr ? now : "Verbs") + ":\n";
        group = now;
        text += entry(verb->get_name(), verb->get_description(), width);
    }
    return text;
}

} // namespace

std::string full_name(const CLI::App& app) {
    return app.get_parent() == nullptr ? app.get_name()
                                       : full_name(*app.get_parent()) + ' ' + app.get_name();
}

std::string HelpFormatter::make_help(const CLI::App* app, std::string /*name*/,
                                     CLI::AppFormatMode /*mode*/) const {
    std::string text = usage(*app) + '\n';
    for (const std::string& line : present::wrapped(app->get_description(), width_))
        text += line + '\n';
    text += commands_text(*app, width_);
    const std::string positionals = options_text(*app, true, width_);
    if (!positionals.empty())
        text += "\nWhat it takes:\n" + positionals;
    text += "\nOptions:\n" + options_text(*app, false, width_);
    if (!app->get_footer().empty())
        text += '\n';
    for (const std::string& line : present::wrapped(app->get_footer(), width_))
        text += line + '\n';
    if (app->get_parent() == nullptr)
        text += "\ncounterpart COMMAND --help says more about a command.\n";
    return text;
}

} // namespace cli
