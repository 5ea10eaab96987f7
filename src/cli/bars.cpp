// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "cli/bars.hpp"

#include "make/stock.hpp"
#include "store/lists.hpp"

namespace cli {

std::vector<length::Length> bars_of(Context& context) {
    auto bars = store::stock_bars(context.catalogue());
    return bars.empty() ? make::usual_bars(context.catalogue().unit()) : bars;
}

} // namespace cli
