// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `house`: the screws that the shop wants to be able to counterbore.
#include "cli/command.hpp"
#include "cli/format.hpp"
#include "cli/tool.hpp"
#include "cli/transfer/rows.hpp"
#include "cli/transfer/take_in.hpp"
#include "present/table.hpp"
#include "present/text.hpp"
#include "store/lists.hpp"

namespace cli::commands {

namespace {

struct Options {
    std::string screw;
    std::string hole;
    std::string note;
};

struct ListOptions {
    Format format;
};

std::string in_words(const store::HouseScrew& house) {
    return present::safe(house.screw + (house.hole.empty() ? "" : ", hole " + house.hole));
}

error::ExitCode add(const Options& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    const Measures measures(context);
    store::HouseScrew house;
    const record::Cells cells = {
        {"screw", options.screw}, {"hole", options.hole}, {"note", options.note}};
    record::refuse_options(
        record::read_cells(house, record::house_columns(), cells, measures.reading()));
    const trade::Screw screw =
        trade::resolve_screw(house.screw, "", context.tables(), context.own_screws());
    transfer::check_house_hole(house, screw, context.tables(), measures.reading());
    store::Change change(file, context.settings().words);
    store::put_house(change, house);
    change.commit();
    context.out() << "On the house list: " << in_words(house) << '\n';
    return error::ExitCode::done;
}

error::ExitCode drop(const Options& options, Context& context) {
    store::File& file = context.catalogue(store::Access::write);
    store::Change change(file, context.settings().words);
    store::drop_house(change, options.screw, options.hole);
    change.commit();
    context.out() << "Off the house list: " << in_words({options.screw, options.hole, ""}) << '\n';
    return error::ExitCode::done;
}

error::ExitCode list(const ListOptions& options, Context& context) {
    const store::File& file = context.catalogue();
    const auto house = store::house(file);
    if (options.format.json) {
        present::Json rows = present::Json::array();
        for (const store::HouseScrew& screw : house)
            rows.push_back(record::json_of(screw, record::house_columns()));
        context.out() << present::json_text({{"format", 1}, {"house", rows}});
    } else if (options.format.csv) {
        transfer::print_rows(house, record::house_columns(), file.unit(), context);
    } else if (house.empty()) {
        context.out() << "The house list is empty.\n";
    } else {
        present::Table table({{"screw"}, {"hole"}, {"note"}});
        for (const store::HouseScrew& screw : house)
            table.add({screw.screw, screw.hole, screw.note});
        context.out() << table.text(context.width(), context.style());
    }
    return error::ExitCode::done;
}

} // namespace

void declare_house(const Syntax& syntax, Plan& plan) {
    syntax.needs_verb();
    const auto add_verb = syntax.verb("add", "put a screw on the list");
    Options& a = chosen<Options>(add_verb, plan, add);
    add_verb.word("SCREW", a.screw, "\"5/16-18 socket head cap\"").required();
    add_verb
        .option("--hole", a.hole,
                "the hole it uses: close, normal, loose, tap, a drill, "
                "or a size; else any")
        .takes("HOLE");
    add_verb.option("--note", a.note, "anything else");
    const auto drop_verb = syntax.verb("drop", "take a screw off the list");
    Options& d = chosen<Options>(drop_verb, plan, drop);
    drop_verb.word("SCREW", d.screw, "as listed").required();
    drop_verb.option("--hole", d.hole, "as listed").takes("HOLE");
    const auto list_verb = syntax.verb("list", "the list");
    ListOptions& l = chosen<ListOptions>(list_verb, plan, list);
    declare_format(list_verb, l.format);
}

} // namespace cli::commands
