// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `stock`: the bars that the shop turns pilots from.
#include "cli/bars.hpp"
#include "cli/command.hpp"
#include "cli/format.hpp"
#include "drawing/lettering.hpp"
#include "length/parse.hpp"
#include "length/print.hpp"
#include "present/json.hpp"
#include "present/table.hpp"
#include "store/lists.hpp"
#include "trade/text.hpp"

namespace cli::commands {

namespace {

// A bar outside these was meant otherwise.
constexpr length::Length k_least_bar = length::sixty_fourths(2);
constexpr length::Length k_largest_bar = length::sixty_fourths(384); // 6 in

struct Options {
    std::vector<std::string> sizes;
};

struct ListOptions {
    Format format;
};

struct Bar {
    length::Length diameter;
    std::string size; // as written
};

Bar read_bar(const std::string& text, length::Unit unit) {
    const auto written = length::parse_length(text, unit);
    if (written.value < k_least_bar || written.value > k_largest_bar)
        throw error::BadData("no bar for pilots: '" + text + "'",
                             "from 1/32 to 6 in; was another unit meant?");
    return {written.value, std::string(trade::trimmed(text))};
}

std::vector<Bar> read_bars(const Options& options, Context& context) {
    std::vector<Bar> bars;
    for (const auto& size : options.sizes)
        bars.push_back(read_bar(size, context.unit()));
    return bars;
}

error::ExitCode add(const Options& options, Context& context) {
    auto& file = context.catalogue(store::Access::write);
    const auto bars = read_bars(options, context);
    const bool first = store::stock_bars(file).empty();
    store::Change change(file, context.settings().words);
    for (const auto& bar : bars)
        store::put_stock_bar(change, bar.diameter);
    change.commit();
    for (const auto& bar : bars)
        context.out() << "Bar " << drawing::size_text(bar.diameter, context.unit()) << '\n';
    if (first)
        context.out() << "The shop's own list now stands in place of the usual sizes.\n";
    return error::ExitCode::done;
}

error::ExitCode drop(const Options& options, Context& context) {
    auto& file = context.catalogue(store::Access::write);
    const auto bars = read_bars(options, context);
    store::Change change(file, context.settings().words);
    for (const auto& bar : bars)
        store::drop_stock_bar(change, bar.diameter, bar.size);
    const bool none_left = store::stock_bars(file).empty();
    change.commit();
    for (const auto& bar : bars)
        context.out() << "Dropped bar " << drawing::size_text(bar.diameter, context.unit()) << '\n';
    if (none_left)
        context.out() << "The shop's list is empty: the usual sizes stand again.\n";
    return error::ExitCode::done;
}

// In the unit in which it is exact.
std::string exact_text(length::Length bar) {
    const bool inch = bar.nm() % length::inches_e5(1).nm() == 0;
    return length::with_unit(bar, inch ? length::Unit::inch : length::Unit::millimetre);
}

error::ExitCode list(const ListOptions& options, Context& context) {
    const bool own = !store::stock_bars(context.catalogue()).empty();
    present::Json rows = present::Json::array();
    std::vector<std::vector<std::string>> cells{{"size", "own"}};
    present::Table table({{"bar"}, {"whose"}});
    for (const auto bar : bars_of(context)) {
        rows.push_back({{"diameter_mm", present::length_mm(bar)}, {"own", own}});
        cells.push_back({exact_text(bar), own ? "yes" : "no"});
        table.add({drawing::size_text(bar, context.unit()), own ? "this shop" : "usual"});
    }
    if (options.format.json)
        context.out() << present::json_text({{"format", 1}, {"bars", rows}});
    else if (options.format.csv)
        print_csv(cells, context);
    else
        context.out() << table.text(context.width(), context.style());
    return error::ExitCode::done;
}

} // namespace

void declare_stock(const Syntax& syntax, Plan& plan) {
    syntax.needs_verb();
    const auto list_verb = syntax.verb("list", "the bars");
    ListOptions& l = chosen<ListOptions>(list_verb, plan, list);
    declare_format(list_verb, l.format);
    const auto add_verb = syntax.verb("add", "bars that the shop has");
    Options& a = chosen<Options>(add_verb, plan, add);
    add_verb.word("SIZE", a.sizes, "diameters: 3/8 \"10 mm\" .3125").required();
    const auto drop_verb = syntax.verb("drop", "bars that it has no longer");
    Options& d = chosen<Options>(drop_verb, plan, drop);
    drop_verb.word("SIZE", d.sizes, "diameters, as listed").required();
}

} // namespace cli::commands
