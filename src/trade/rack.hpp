// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What the matcher asks of a catalogue: the facts of the tools of certain sizes, and the whole
// record of a few.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "trade/body.hpp"
#include "trade/facts.hpp"
#include "trade/pilot.hpp"

namespace trade {

// Sizes that come into question: those whose limits reach into a range, and the unknown ones.
struct Window {
    length::MaybeRange sizes; // absent: any

    [[nodiscard]] bool takes(const Limits& limits) const {
        return !sizes || !limits || ((*limits).hi >= sizes->lo && (*limits).lo <= sizes->hi);
    }
};

// Facts beyond those that every question needs: lengths of pilots, shanks of bodies.
enum class Detail { usual, all };

// What is marked on a body.
struct Marked {
    std::string marking;
    std::int32_t body = 0;
};

using SeeBody = std::function<void(const BodyFacts&)>;
using SeePilot = std::function<void(const PilotFacts&)>;

class Rack {
  public:
    virtual ~Rack() = default;

    // All of them, retired and lent ones too, by number.
    [[nodiscard]] virtual std::vector<Body> bodies() const = 0;
    [[nodiscard]] virtual std::vector<Pilot> pilots() const = 0;
    // By pilot, then body. Only those that still count.
    [[nodiscard]] virtual std::vector<Trial> trials() const = 0;

    // The bodies that carry a marking, by that.
    [[nodiscard]] virtual std::vector<Marked> markings() const;

    [[nodiscard]] virtual std::optional<Body> body(std::int64_t number) const;
    [[nodiscard]] virtual std::optional<Pilot> pilot(std::int64_t number) const;

    // The facts of the bodies of a kind of pilot whose cutting diameter is in the window, of those
    // with an integral pilot whose pilot is (only what matters in such a body), and of the pilots
    // whose diameter is; each once, in no order.
    virtual void by_cutter(PilotKind kind, const Window& window, Detail detail,
                           const SeeBody& see) const;
    virtual void by_pilot(const Window& window, Detail detail, const SeeBody& see) const;
    virtual void pilots_in(const Window& window, Detail detail, const SeePilot& see) const;
};

// Another rack, as it is but for what a class made of this shows otherwise.
class RackView : public Rack {
  public:
    // `rack` must outlive this.
    explicit RackView(const Rack& rack) : rack_(rack) {}

    [[nodiscard]] std::vector<Body> bodies() const override { return rack_.bodies(); }
    [[nodiscard]] std::vector<Pilot> pilots() const override { return rack_.pilots(); }
    [[nodiscard]] std::vector<Trial> trials() const override { return rack_.trials(); }
    [[nodiscard]] std::vector<Marked> markings() const override { return rack_.markings(); }
    [[nodiscard]] std::optional<Body> body(std::int64_t number) const override {
        return rack_.body(number);
    }
    [[nodiscard]] std::optional<Pilot> pilot(std::int64_t number) const override {
        return rack_.pilot(number);
    }
    void by_cutter(PilotKind kind, const Window& window, Detail detail,
                   const SeeBody& see) const override {
        rack_.by_cutter(kind, window, detail, see);
    }
    void by_pilot(const Window& window, Detail detail, const SeeBody& see) const override {
        rack_.by_pilot(window, detail, see);
    }
    void pilots_in(const Window& window, Detail detail, const SeePilot& see) const override {
        rack_.pilots_in(window, detail, see);
    }

  private:
    const Rack& rack_;
};

} // namespace trade
