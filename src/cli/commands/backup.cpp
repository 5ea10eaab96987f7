// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// `backup`: a copy of the catalogue that has been compared and checked.
#include "store/backup.hpp"

#include "cli/command.hpp"
#include "cli/transfer/files.hpp"
#include "present/text.hpp"

namespace cli::commands {

namespace {

namespace fs = std::filesystem;

struct Options {
    std::string file;
    std::size_t keep = 0;
    bool force = false;
};

store::BackedUp back_up(const Options& options, const Context& context) {
    std::error_code ignored;
    const bool dated = options.file.empty() || fs::is_directory(options.file, ignored);
    if (!dated && options.keep > 0)
        throw error::UsageError("--keep counts dated copies: " + options.file,
                                "leave FILE out, or name a folder");
    if (!dated) {
        transfer::drop_left_over(options.file, context.err());
        return store::back_up(context.path(), options.file, options.force);
    }
    const fs::path folder =
        options.file.empty() ? context.path().parent_path() : fs::path(options.file);
    transfer::drop_left_over(folder / context.path().filename(), context.err());
    return store::back_up_dated(context.path(), folder, options.keep);
}

error::ExitCode run(const Options& options, Context& context) {
    const store::BackedUp made = back_up(options, context);
    context.out() << "Backed up to " << present::safe(made.path.string()) << ": " << made.rows
                  << (made.rows == 1 ? " row" : " rows") << ", compared and checked.\n";
    for (const fs::path& dropped : made.thinned.dropped)
        context.out() << "Taken away: " << present::safe(dropped.string()) << '\n';
    if (const std::size_t count = made.thinned.left_alone; count > 0)
        context.out() << "Left alone: " << count << (count == 1 ? " copy" : " copies")
                      << " of this name, not known to be of this catalogue.\n";
    return error::ExitCode::done;
}

} // namespace

void declare_backup(const Syntax& syntax, Plan& plan) {
    Options& options = chosen<Options>(syntax, plan, run);
    syntax.word("FILE", options.file,
                "the copy; a folder, or nothing: a dated copy there, or beside the catalogue");
    syntax.option("--keep", options.keep, "keep the newest N dated copies, take older ones away")
        .takes("N")
        .between(1, 100000);
    syntax.flag("--force", options.force, "replace FILE if it is there");
}

} // namespace cli::commands
