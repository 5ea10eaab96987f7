// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// A catalogue file as the matcher sees it, in one state for as long as this lives: what another
// program changes meanwhile waits or is not seen. A tool that an index has and its table lacks is
// error::DamagedFile when its record is read.
#pragma once

#include "store/read_facts.hpp"
#include "trade/rack.hpp"

namespace store {

class FileRack : public trade::Rack {
  public:
    // `file` must outlive this. Nothing may be written through it meanwhile.
    explicit FileRack(const File& file);
    ~FileRack() override;
    FileRack(const FileRack&) = delete;
    FileRack& operator=(const FileRack&) = delete;

    [[nodiscard]] std::vector<trade::Body> bodies() const override;
    [[nodiscard]] std::vector<trade::Pilot> pilots() const override;
    [[nodiscard]] std::vector<trade::Trial> trials() const override;
    [[nodiscard]] std::vector<trade::Marked> markings() const override;
    [[nodiscard]] std::optional<trade::Body> body(std::int64_t number) const override;
    [[nodiscard]] std::optional<trade::Pilot> pilot(std::int64_t number) const override;
    void by_cutter(trade::PilotKind kind, const trade::Window& window, trade::Detail detail,
                   const trade::SeeBody& see) const override;
    void by_pilot(const trade::Window& window, trade::Detail detail,
                  const trade::SeeBody& see) const override;
    void pilots_in(const trade::Window& window, trade::Detail detail,
                   const trade::SeePilot& see) const override;

  private:
    const File& file_;
    mutable FactsReader facts_;
};

} // namespace store
