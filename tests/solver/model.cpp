// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "model.hpp"

#include <fmt/format.h>

#include <cmath>
#include <cstdlib>
#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>
#include <vector>

namespace model {

namespace {

using cover_cases::Case;

// For each element the choices that cover it, with the rank.
std::vector<std::vector<std::pair<int, int>>> coverers(const Case& problem) {
    std::vector<std::vector<std::pair<int, int>>> of(static_cast<std::size_t>(problem.elements));
    for (int c = 0; c < static_cast<int>(problem.choices.size()); ++c) {
        const auto& choice = problem.choices[static_cast<std::size_t>(c)];
        for (std::size_t i = 0; i < choice.elements.size(); ++i)
            of[static_cast<std::size_t>(choice.elements[i])].emplace_back(c, choice.ranks[i]);
    }
    return of;
}

// One term a line, for the format limits the length of lines.
std::string sum(const std::vector<std::string>& terms) {
    std::string text;
    for (const auto& term : terms)
        text += fmt::format(" + {}\n", term);
    return text;
}

std::vector<std::string> all(const char* letter, std::size_t count) {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < count; ++i)
        names.push_back(fmt::format("{}{}", letter, i));
    return names;
}

std::string resource_limits(const Case& problem) {
    std::map<int, std::vector<std::string>> users;
    for (std::size_t c = 0; c < problem.choices.size(); ++c)
        if (problem.choices[c].resource >= 0)
            users[problem.choices[c].resource].push_back(fmt::format("take{}", c));
    std::string text;
    for (const auto& [resource, names] : users)
        text += fmt::format("once{}:\n{} <= 1\n", resource, sum(names));
    return text;
}

std::string binaries(const Case& problem) {
    std::string text = "Binary\n";
    for (const auto& name : all("take", problem.choices.size()))
        text += fmt::format(" {}\n", name);
    for (const auto& name : all("drop", static_cast<std::size_t>(problem.elements)))
        text += fmt::format(" {}\n", name);
    return text;
}

} // namespace

int drop_cost(const Case& problem) {
    return static_cast<int>(problem.choices.size()) + 1;
}

std::string fewest(const Case& problem) {
    auto text = fmt::format("Minimize\nworth:\n{}", sum(all("take", problem.choices.size())));
    for (const auto& name : all("drop", static_cast<std::size_t>(problem.elements)))
        text += fmt::format(" + {} {}\n", drop_cost(problem), name);
    text += "Subject To\n";
    const auto of = coverers(problem);
    for (std::size_t e = 0; e < of.size(); ++e) {
        text += fmt::format("cover{}: drop{}\n", e, e);
        for (const auto& [choice, rank] : of[e])
            text += fmt::format(" + take{}\n", choice);
        text += " >= 1\n";
    }
    return text + resource_limits(problem) + binaries(problem) + "End\n";
}

std::string best_ranks(const Case& problem, int count, int dropped) {
    const auto of = coverers(problem);
    // serveE_C: how much of element E is reckoned at the rank of choice C.
    std::string worth = "Minimize\nworth: 0 take0\n";
    std::string rows = "Subject To\n";
    for (std::size_t e = 0; e < of.size(); ++e) {
        std::string served = fmt::format("serve{}: drop{}\n", e, e);
        for (const auto& [choice, rank] : of[e]) {
            const auto name = fmt::format("serve{}_{}", e, choice);
            worth += fmt::format(" + {} {}\n", rank, name);
            served += fmt::format(" + {}\n", name);
            rows += fmt::format("link{}_{}: {} - take{} <= 0\n", e, choice, name, choice);
        }
        rows += served + " = 1\n";
    }
    rows += fmt::format("count:\n{} = {}\n", sum(all("take", problem.choices.size())), count);
    rows += fmt::format("dropped:\n{} = {}\n",
                        sum(all("drop", static_cast<std::size_t>(problem.elements))), dropped);
    return worth + rows + resource_limits(problem) + binaries(problem) + "End\n";
}

Solver::Solver() {
    auto name = (std::filesystem::temp_directory_path() / "counterpart-solver-XXXXXX").string();
    if (mkdtemp(name.data()) == nullptr)
        throw std::runtime_error("no temporary directory: " + name);
    directory_ = name;
}

Solver::~Solver() {
    std::error_code ignored;
    std::filesystem::remove_all(directory_, ignored);
}

int Solver::solve(const std::string& program) const {
    const auto model = directory_ / "model.lp";
    const auto solution = directory_ / "solution";
    std::filesystem::remove(solution);
    std::ofstream(model) << program;
    const auto command = fmt::format("glpsol --lp '{}' --write '{}' >'{}' 2>&1", model.string(),
                                     solution.string(), (directory_ / "log").string());
    if (std::system(command.c_str()) != 0)
        throw std::runtime_error("glpsol failed or is missing: install glpk-utils");
    // `s mip ROWS COLUMNS STATUS OBJECTIVE`, where the status o is for proven optimal.
    std::ifstream in(solution);
    for (std::string line; std::getline(in, line);) {
        std::istringstream words(line);
        std::string s, kind, status;
        int rows = 0;
        int columns = 0;
        double objective = 0;
        if (words >> s >> kind >> rows >> columns >> status >> objective && s == "s" &&
            kind == "mip" && status == "o")
            return static_cast<int>(std::lround(objective));
    }
    throw std::runtime_error("glpsol proved no solution best");
}

} // namespace model
