// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A SCREW text, and on a second line a series, against the tables that the program carries: found,
// or refused as unreadable or not there. What is found is found again by its own name.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>

#include "error/error.hpp"
#include "store/reference.hpp"
#include "trade/screw.hpp"

namespace {

void resolve(std::string_view text, std::string_view series, const trade::Tables& tables,
             const std::vector<trade::OwnScrew>& own) {
    trade::Screw screw;
    try {
        screw = trade::resolve_screw(text, series, tables, own);
    } catch (const error::BadData&) {
        return;
    } catch (const error::NoSuchRecord&) {
        return;
    }
    const trade::Screw again = trade::resolve_screw(screw.name, screw.series, tables, own);
    if (again.name != screw.name || again.form != screw.form || again.size != screw.size ||
        again.pitch != screw.pitch)
        std::abort();
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const store::Reference tables;
    static const std::vector<trade::OwnScrew> own{
        {"5/16-18 socket head cap", {}, {}, {}, "", "", ""}, {"vise jaw", {}, {}, {}, "", "", ""}};
    const std::string_view all(reinterpret_cast<const char*>(data), size);
    const std::string_view text = all.substr(0, all.find('\n'));
    const std::string_view series =
        text.size() < all.size() ? all.substr(text.size() + 1) : std::string_view{};
    try {
        static_cast<void>(trade::parse_screw(text, tables));
    } catch (const error::BadData&) {
    }
    resolve(text, series, tables, {});
    resolve(text, series, tables, own);
    return 0;
}
