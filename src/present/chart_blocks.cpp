// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/chart_blocks.hpp"

#include <algorithm>
#include <tuple>

namespace present {

using match::ChartEntry;

namespace {

constexpr const char* k_own_head = "own";

std::string system_word(const ChartEntry& entry) {
    switch (entry.size->system) {
    case trade::SizeSystem::number:
    case trade::SizeSystem::inch:
        return "inch";
    case trade::SizeSystem::metric:
        return "metric";
    case trade::SizeSystem::ba:
        return "BA";
    }
    return {};
}

std::string title_of(const ChartEntry& entry) {
    return entry.size ? entry.form + ", " + system_word(entry) : "the shop's own screws";
}

std::string column_of(const ChartEntry& entry) {
    return entry.series.empty() ? k_own_head : entry.series;
}

std::string label_of(const ChartEntry& entry) {
    std::string label = entry.screw;
    if (entry.size) {
        const bool metric = entry.size->system == trade::SizeSystem::metric;
        label = entry.size->text;
        if (!entry.pitch.empty())
            label += (metric ? "x" : "-") + entry.pitch;
    }
    return entry.hole.empty() ? label : label + " " + entry.hole;
}

auto row_key(const ChartEntry& entry) {
    return std::tuple(entry.size ? entry.size->diameter.nm() : 0, label_of(entry));
}

ChartBlock& block_of(std::vector<ChartBlock>& blocks, const std::string& title) {
    const auto found = std::find_if(blocks.begin(), blocks.end(),
                                    [&](const ChartBlock& block) { return block.title == title; });
    if (found != blocks.end())
        return *found;
    blocks.push_back({title, {}, {}});
    return blocks.back();
}

std::size_t place_of(std::vector<std::string>& names, const std::string& name) {
    const auto found = std::find(names.begin(), names.end(), name);
    if (found == names.end()) {
        names.push_back(name);
        return names.size() - 1;
    }
    return static_cast<std::size_t>(found - names.begin());
}

// The row of this label that has room in the column, else a new one.
void put(ChartBlock& block, std::size_t column, const ChartEntry& entry) {
    const auto label = label_of(entry);
    for (auto& row : block.rows) {
        row.cells.resize(block.columns.size());
        if (row.label == label && row.cells[column] == nullptr) {
            row.cells[column] = &entry;
            return;
        }
    }
    ChartBlock::Row row{label, std::vector<const ChartEntry*>(block.columns.size())};
    row.cells[column] = &entry;
    block.rows.push_back(std::move(row));
}

} // namespace

std::vector<ChartBlock> chart_blocks(const std::vector<ChartEntry>& entries) {
    std::vector<const ChartEntry*> sorted;
    for (const auto& entry : entries)
        sorted.push_back(&entry);
    std::stable_sort(sorted.begin(), sorted.end(), [](const ChartEntry* a, const ChartEntry* b) {
        return row_key(*a) < row_key(*b);
    });
    std::vector<ChartBlock> blocks;
    for (const auto& entry : entries) // blocks and columns in the order of the list
        if (entry.size)
            place_of(block_of(blocks, title_of(entry)).columns, column_of(entry));
    for (const auto* entry : sorted) {
        auto& block = block_of(blocks, title_of(*entry));
        put(block, place_of(block.columns, column_of(*entry)), *entry);
    }
    return blocks;
}

std::string chart_word(match::AnswerKind kind) {
    return kind == match::AnswerKind::measure_first ? "measure" : std::string(match::to_text(kind));
}

std::string chart_cell(const ChartEntry& entry) {
    return entry.best ? chart_word(entry.best->kind) + " " + std::to_string(entry.best->body)
                      : std::string();
}

} // namespace present
