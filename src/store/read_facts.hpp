// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The facts of tools by size, read from the indexes that hold them.
#pragma once

#include <map>
#include <optional>
#include <string>

#include "store/file.hpp"
#include "store/scan.hpp"
#include "trade/number_set.hpp"
#include "trade/rack.hpp"

namespace store {

class FactsReader {
  public:
    // `file` must outlive this, and stay in one state as long as it lives.
    explicit FactsReader(const File& file) : file_(file) {}

    // As trade::Rack has them.
    void by_cutter(trade::PilotKind kind, const trade::Window& window, trade::Detail detail,
                   const trade::SeeBody& see);
    void by_pilot(const trade::Window& window, trade::Detail detail, const trade::SeeBody& see);
    void pilots_in(const trade::Window& window, trade::Detail detail, const trade::SeePilot& see);

  private:
    // Tools of which something is known that no index by size holds.
    struct Marked {
        trade::NumberSet with_work;
        trade::NumberSet lent;
        trade::NumberSet retired_bodies;
    };
    // The same question of the narrow limits, the unknown ones and the wide ones.
    struct Parts;
    class BodyReader;

    template <class SeeRow>
    void each_row(const Parts& parts, const std::string& columns, const trade::Window& window,
                  std::optional<trade::PilotKind> kind, const SeeRow& see);
    [[nodiscard]] const Marked& marked();
    [[nodiscard]] trade::PilotFacts pilot(const Scan& row, trade::Detail detail);

    const File& file_;
    std::optional<Marked> marked_;      // read when first wanted
    std::map<std::string, Scan> scans_; // kept prepared
};

} // namespace store
