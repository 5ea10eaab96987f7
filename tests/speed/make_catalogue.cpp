// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A catalogue of any size for measuring: SIZE bodies, as many pilots, some of them in bodies or
// tried, and a house list of 300 screws. The same words give the same tools.
// Usage: make_catalogue FILE SIZE [spread] [no-history] [no-pilots] [seed=N]
//
// With `no-history` the triggers that write the history are taken off while the tools go in, so
// that a million tools take hundreds of megabytes rather than gigabytes; `check` then rightly
// reports every tool as one that the history does not know.
#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <iostream>
#include <set>
#include <string>
#include <vector>

#include "speed/house_list.hpp"
#include "speed/large_shop.hpp"
#include "store/lists.hpp"
#include "store/loans.hpp"
#include "store/query.hpp"
#include "store/reference.hpp"
#include "store/tools.hpp"

namespace {

constexpr std::int64_t k_rows_a_change = 100'000;

struct Options {
    std::string file;
    std::int64_t size = 0;
    speed::Form form = speed::Form::clustered;
    bool history = true;
    bool pilots = true;
    std::uint64_t seed = 1;
};

Options read_options(int count, char** words) {
    Options options;
    options.file = words[1];
    options.size = std::stoll(words[2]);
    for (int i = 3; i < count; ++i) {
        const std::string word = words[i];
        if (word == "spread")
            options.form = speed::Form::spread;
        else if (word == "no-history")
            options.history = false;
        else if (word == "no-pilots")
            options.pilots = false;
        else if (word.rfind("seed=", 0) == 0)
            options.seed = std::stoull(word.substr(5));
        else
            throw std::invalid_argument("no such word: " + word);
    }
    return options;
}

// While it lives the tables of tools have no triggers.
class WithoutHistory {
  public:
    explicit WithoutHistory(SQLite::Database& database) : database_(database) {
        store::Query query(database, "SELECT name, sql FROM sqlite_schema WHERE type = 'trigger' "
                                     "AND tbl_name IN ('body', 'pilot', 'work', 'trial') "
                                     "ORDER BY rowid");
        std::vector<std::string> names;
        while (query.step()) {
            names.push_back(query.text());
            triggers_.push_back(query.text());
        }
        for (const std::string& name : names)
            store::execute(database, "DROP TRIGGER " + name);
    }
    ~WithoutHistory() {
        for (const std::string& trigger : triggers_)
            store::execute(database_, trigger);
    }
    WithoutHistory(const WithoutHistory&) = delete;
    WithoutHistory& operator=(const WithoutHistory&) = delete;

  private:
    SQLite::Database& database_;
    std::vector<std::string> triggers_;
};

class Maker {
  public:
    Maker(store::File& file, const Options& options, const store::Reference& tables)
        : file_(file), size_(options.size), pilots_(options.pilots),
          shop_(tables, trade::read_practice(tables.practice()), options.form, options.seed),
          with_bore_(speed::LargeShop::bores().size()) {}

    void make() {
        in_changes("bodies",
                   [this](store::Change& change, std::int64_t i) { add_body(change, i); });
        if (pilots_)
            in_changes("pilots",
                       [this](store::Change& change, std::int64_t i) { add_pilot(change, i); });
        lend_some();
    }

  private:
    template <class Add>
    void in_changes(const std::string& what, Add add) {
        for (std::int64_t first = 1; first <= size_; first += k_rows_a_change) {
            store::Change change(file_, "import " + what + " many.csv");
            const std::int64_t last = std::min(size_, first + k_rows_a_change - 1);
            for (std::int64_t i = first; i <= last; ++i)
                add(change, i);
            change.commit();
        }
    }

    void add_body(store::Change& change, std::int64_t number) {
        const trade::Body body = shop_.body(number);
        store::add_body(change, body);
        if (const auto bore = speed::LargeShop::bore_of(body); bore && !body.retired)
            with_bore_[*bore].push_back(number);
        if (shop_.dice().below(200) == 0)
            lent_.push_back(number);
    }

    // A tenth of the pilots are in a body, a twenty-fifth were tried in one; each fits by name.
    void add_pilot(store::Change& change, std::int64_t i) {
        std::size_t bore = 0;
        trade::Pilot pilot = shop_.pilot(size_ + i, bore);
        const auto& bodies = with_bore_[bore];
        const bool goes_in = !pilot.retired && !bodies.empty() && shop_.dice().chance(10);
        if (goes_in) {
            const std::int64_t body = shop_.dice().pick(bodies);
            if (taken_.insert(body).second)
                pilot.in_body = body;
        }
        store::add_pilot(change, pilot);
        if (!bodies.empty() && shop_.dice().chance(4))
            store::record_trial(change, {pilot.number, shop_.dice().pick(bodies), shop_.tried()});
    }

    void lend_some() {
        if (!lent_.empty())
            store::lend(file_, lent_, "night shift", std::nullopt);
    }

    store::File& file_;
    std::int64_t size_;
    bool pilots_;
    speed::LargeShop shop_;
    std::vector<std::vector<std::int64_t>> with_bore_; // bodies, by the index of their bore
    std::set<std::int64_t> taken_;                     // bodies that hold a pilot
    std::vector<std::int64_t> lent_;
};

void make(const Options& options) {
    const store::Reference tables;
    store::File file = store::File::create(options.file, length::Unit::inch);
    // Nothing is lost if it is not finished: no syncing, no journal, and room for the pages.
    store::execute(file.database(), "PRAGMA synchronous = OFF");
    store::execute(file.database(), "PRAGMA cache_size = -1000000");
    (void)store::Query(file.database(), "PRAGMA journal_mode = OFF").step();
    {
        store::Change change(file, "import house many.csv");
        for (const auto& screw : speed::house_list(tables))
            store::put_house(change, screw);
        change.commit();
    }
    Maker maker(file, options, tables);
    if (options.history)
        return maker.make();
    const WithoutHistory without(file.database());
    maker.make();
}

} // namespace

int main(int count, char** words) {
    if (count < 3) {
        std::cerr << "usage: make_catalogue FILE SIZE [spread] [no-history] [no-pilots] [seed=N]\n";
        return 2;
    }
    try {
        make(read_options(count, words));
    } catch (const std::exception& problem) {
        std::cerr << "make_catalogue: " << problem.what() << "\n";
        return 1;
    }
    return 0;
}
