// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/syntax.hpp"

#include <CLI/CLI.hpp>
#include <utility>
#include <vector>

#include "cli/help.hpp"

namespace cli {

Option Option::required() const {
    option_->required();
    return *this;
}

Option Option::takes(const std::string& what) const {
    option_->type_name(what);
    return *this;
}

Option Option::between(int least, int most) const {
    option_->check(CLI::Range(least, most));
    return *this;
}

Option Option::excludes(const Option& other) const {
    option_->excludes(other.option_);
    return *this;
}

Option Option::needs(const Option& other) const {
    option_->needs(other.option_);
    return *this;
}

template <class Value>
Option Syntax::option(const std::string& name, Value& value, const std::string& about) const {
    return Option(app_->add_option(name, value, about));
}

template <class Value>
Option Syntax::word(const std::string& name, Value& value, const std::string& about) const {
    return option(name, value, about);
}

template Option Syntax::option(const std::string&, std::string&, const std::string&) const;
template Option Syntax::option(const std::string&, std::vector<std::string>&,
                               const std::string&) const;
template Option Syntax::option(const std::string&, int&, const std::string&) const;
template Option Syntax::option(const std::string&, std::size_t&, const std::string&) const;
template Option Syntax::word(const std::string&, std::string&, const std::string&) const;
template Option Syntax::word(const std::string&, std::vector<std::string>&,
                             const std::string&) const;

Option Syntax::option(const std::string& name, std::function<void(const std::string&)> take,
                      const std::string& about) const {
    return Option(app_->add_option_function<std::string>(name, std::move(take), about));
}

Option Syntax::flag(const std::string& name, bool& value, const std::string& about) const {
    return Option(app_->add_flag(name, value, about));
}

Syntax Syntax::verb(const std::string& name, const std::string& about) const {
    return Syntax(*app_->add_subcommand(name, about));
}

void Syntax::needs_verb() const {
    app_->require_subcommand(1);
}

void Syntax::may_have_verb() const {
    app_->require_subcommand(0, 1);
}

void Syntax::footer(const std::string& text) const {
    app_->footer(text);
}

bool Syntax::has(const std::string& name) const {
    return app_->get_option_no_throw(name) != nullptr;
}

Option Syntax::named(const std::string& name) const {
    return Option(app_->get_option(name));
}

void Syntax::when_chosen(std::function<void()> act) const {
    app_->callback(std::move(act));
}

std::string Syntax::chosen_verb() const {
    const auto verbs = app_->get_subcommands();
    return verbs.empty() ? std::string() : full_name(*verbs.front());
}

} // namespace cli
