// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "store/rack.hpp"

#include <SQLiteCpp/SQLiteCpp.h>

#include "store/query.hpp"
#include "store/scan.hpp"
#include "store/tool_rows.hpp"
#include "store/tools.hpp"

namespace store {

namespace {

constexpr auto k_markings = R"(
SELECT marking, number FROM body INDEXED BY body_by_marking
WHERE marking <> '' ORDER BY marking, number)";

} // namespace

FileRack::FileRack(const File& file) : file_(file), facts_(file) {
    execute(file.database(), "SAVEPOINT rack");
}

FileRack::~FileRack() {
    file_.database().tryExec("RELEASE rack"); // nothing was written: it cannot matter if it fails
}

std::vector<trade::Body> FileRack::bodies() const {
    return store::bodies(file_);
}

std::vector<trade::Pilot> FileRack::pilots() const {
    return store::pilots(file_);
}

std::vector<trade::Trial> FileRack::trials() const {
    return store::trials(file_);
}

std::vector<trade::Marked> FileRack::markings() const {
    std::vector<trade::Marked> all;
    Scan row(file_.database(), k_markings);
    while (row.step())
        all.push_back({std::string(row.text(0)), static_cast<std::int32_t>(row.integer(1))});
    return all;
}

// The matcher asks only for tools that it has seen in an index.
std::optional<trade::Body> FileRack::body(std::int64_t number) const {
    auto found = store::body(file_, number);
    if (!found)
        throw_lost_tool(file_, ToolKind::body, number);
    return found;
}

std::optional<trade::Pilot> FileRack::pilot(std::int64_t number) const {
    auto found = store::pilot(file_, number);
    if (!found)
        throw_lost_tool(file_, ToolKind::pilot, number);
    return found;
}

void FileRack::by_cutter(trade::PilotKind kind, const trade::Window& window, trade::Detail detail,
                         const trade::SeeBody& see) const {
    facts_.by_cutter(kind, window, detail, see);
}

void FileRack::by_pilot(const trade::Window& window, trade::Detail detail,
                        const trade::SeeBody& see) const {
    facts_.by_pilot(window, detail, see);
}

void FileRack::pilots_in(const trade::Window& window, trade::Detail detail,
                         const trade::SeePilot& see) const {
    facts_.pilots_in(window, detail, see);
}

} // namespace store
