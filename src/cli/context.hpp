// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a running command works with: the catalogue and the reference tables, opened when first
// asked for, the streams it prints to, and the unit it prints in.
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <ostream>
#include <string>
#include <vector>

#include "cli/surroundings.hpp"
#include "length/length.hpp"
#include "present/style.hpp"
#include "store/file.hpp"
#include "store/rack.hpp"
#include "store/reference.hpp"
#include "trade/practice.hpp"
#include "trade/screw.hpp"

namespace cli {

// What the command line said before any command.
struct Settings {
    std::string file;                  // --file; empty: the usual one
    std::optional<length::Unit> units; // --units
    std::string words;                 // the command as typed, for the history
};

class Context {
  public:
    Context(Settings settings, Surroundings surroundings, std::ostream& out, std::ostream& err);
    ~Context();
    Context(const Context&) = delete;
    Context& operator=(const Context&) = delete;

    [[nodiscard]] const Settings& settings() const { return settings_; }
    [[nodiscard]] std::ostream& out() const { return out_; }
    [[nodiscard]] std::ostream& err() const { return err_; }
    [[nodiscard]] const Talk& talk() const { return surroundings_.talk; }
    [[nodiscard]] present::Style style() const { return {surroundings_.colour}; }
    [[nodiscard]] bool on_terminal() const { return surroundings_.terminal; }
    [[nodiscard]] std::size_t width() const { return surroundings_.width; }

    [[nodiscard]] std::filesystem::path path() const; // of the catalogue
    [[nodiscard]] bool has_catalogue() const;         // something is at that path
    // The user said where, rather than leaving it to us.
    [[nodiscard]] bool named() const {
        return !settings_.file.empty() || !surroundings_.file.empty();
    }

    // The catalogue, open. A command that will write asks for writing first: asking later opens
    // the file anew, and what was taken from the one before is gone.
    store::File& catalogue(store::Access access = store::Access::read);
    // The reference tables.
    const store::Reference& tables();

    // The catalogue's bodies, pilots and trials for the matcher.
    store::FileRack rack() { return store::FileRack(catalogue()); }
    // The defaults, with the shop's own values in their place.
    [[nodiscard]] std::vector<trade::PracticeRow> practice_rows();
    [[nodiscard]] trade::Practice practice();
    [[nodiscard]] std::vector<trade::OwnScrew> own_screws(); // none without a catalogue

    // What bare numbers on the command line are in, and results are printed in: --units, else the
    // catalogue's unit, else inches.
    [[nodiscard]] length::Unit unit();

  private:
    Settings settings_;
    Surroundings surroundings_;
    std::ostream& out_;
    std::ostream& err_;
    std::optional<store::File> file_;
    store::Access access_ = store::Access::read;
    std::unique_ptr<store::Reference> tables_;
};

} // namespace cli
