// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// Opening things when they are first needed.
#include "cli/context.hpp"

#include <algorithm>

#include "cli/transfer/files.hpp"
#include "store/lists.hpp"

namespace cli {

Context::Context(Settings settings, Surroundings surroundings, std::ostream& out, std::ostream& err)
    : settings_(std::move(settings)), surroundings_(std::move(surroundings)), out_(out), err_(err) {
}

Context::~Context() = default;

std::filesystem::path Context::path() const {
    return settings_.file.empty() ? usual_file(surroundings_)
                                  : std::filesystem::path(settings_.file);
}

bool Context::has_catalogue() const {
    std::error_code ignored;
    return std::filesystem::exists(path(), ignored);
}

store::File& Context::catalogue(store::Access access) {
    if (!file_ || (access == store::Access::write && access_ == store::Access::read)) {
        file_.reset();
        if (access == store::Access::write)
            transfer::drop_left_over(path(), err_);
        file_.emplace(store::File::open(path(), access));
        access_ = access;
    }
    return *file_;
}

const store::Reference& Context::tables() {
    if (!tables_)
        tables_ = std::make_unique<store::Reference>();
    return *tables_;
}

std::vector<trade::PracticeRow> Context::practice_rows() {
    std::vector<trade::PracticeRow> rows = tables().practice();
    if (!has_catalogue())
        return rows;
    for (const trade::PracticeRow& own : store::own_practice(catalogue())) {
        const auto row = std::find_if(rows.begin(), rows.end(), [&](const trade::PracticeRow& r) {
            return r.name == own.name;
        });
        if (row == rows.end()) {
            rows.push_back(own); // a name that is gone: read_practice says so
        } else {
            row->value = own.value;
            row->own = true;
        }
    }
    return rows;
}

trade::Practice Context::practice() {
    return trade::read_practice(practice_rows());
}

std::vector<trade::OwnScrew> Context::own_screws() {
    return has_catalogue() ? store::own_screws(catalogue()) : std::vector<trade::OwnScrew>();
}

length::Unit Context::unit() {
    if (settings_.units)
        return *settings_.units;
    return has_catalogue() ? catalogue().unit() : length::Unit::inch;
}

} // namespace cli
