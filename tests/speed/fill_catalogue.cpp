// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A large catalogue with a long history, in less time than so many commands would take.
// Usage: fill_catalogue FILE TOOLS CHANGES
#include <iostream>
#include <string>

#include "store/change.hpp"
#include "store/tools.hpp"
#include "trade/dimension.hpp"

namespace {

trade::Body body(std::int64_t number) {
    trade::Body made;
    made.number = number;
    made.kind = trade::BodyKind::counterbore;
    made.pilot_kind = trade::PilotKind::removable;
    const auto size = length::Length::from_nm(9'525'000 + number * 1000);
    made.cut_dia = trade::Dimension{"3/8", trade::How::mark, {size, size}};
    made.bore = trade::Dimension{".1878", trade::How::pin_gauge, {size, size}};
    made.set = "school";
    made.place = "rack " + std::to_string(number % 40);
    made.note = "found in the third drawer";
    return made;
}

} // namespace

int main(int count, char** words) {
    if (count != 4) {
        std::cerr << "usage: fill_catalogue FILE TOOLS CHANGES\n";
        return 2;
    }
    const std::int64_t tools = std::stoll(words[2]);
    store::File file = store::File::create(words[1], length::Unit::inch);
    store::Change change(file, "import bodies many.csv");
    for (std::int64_t number = 1; number <= tools; ++number)
        store::add_body(change, body(number));
    for (std::int64_t i = tools; i < std::stoll(words[3]); ++i) {
        trade::Body changed = body(i % tools + 1);
        changed.place = "rack " + std::to_string(i);
        store::update_body(change, changed);
    }
    change.commit();
    return 0;
}
