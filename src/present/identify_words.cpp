// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/identify_words.hpp"

#include <fmt/format.h>

namespace present {

namespace {

constexpr std::size_t k_most_sizes = 6;

} // namespace

std::string listed(const std::vector<std::string>& names, const char* last) {
    std::string text;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (i > 0)
            text += i + 1 == names.size() ? fmt::format(" {} ", last) : ", ";
        text += names[i];
    }
    return text;
}

std::string sizes_text(const match::ToolIdentity& identity) {
    const auto sizes = match::likely_sizes(identity);
    if (sizes.size() <= k_most_sizes)
        return listed(sizes, "or");
    return fmt::format("{} sizes, {} to {}", sizes.size(), sizes.front(), sizes.back());
}

std::string heads_text(const match::ToolIdentity& identity) {
    std::vector<std::string> forms;
    for (const auto& form : match::likely_heads(identity))
        forms.push_back(fmt::format("{} ({})", form.form, fmt::join(form.series, ", ")));
    return listed(forms, "or");
}

std::string forms_text(const match::ToolIdentity& identity) {
    std::vector<std::string> forms;
    for (const auto& form : match::likely_heads(identity))
        forms.push_back(form.form + (form.series.size() == 1
                                         ? ""
                                         : fmt::format(" ({} series)", form.series.size())));
    return listed(forms, "or");
}

std::string hole_text(const match::ToolUse& use) {
    std::string text = use.hole.empty() ? "" : use.hole + " hole";
    if (use.drill)
        text += (text.empty() ? "drill " : ", drill ") + use.drill->name;
    return text;
}

} // namespace present
