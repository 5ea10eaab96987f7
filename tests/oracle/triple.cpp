// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// What a triple is made of.
#include "oracle/triple.hpp"

namespace oracle {

bool is_integral(const trade::Body& body) {
    switch (body.pilot_kind) {
    case trade::PilotKind::integral:
        return true;
    case trade::PilotKind::unknown:
        return body.pilot_dia.has_value();
    default:
        return false;
    }
}

bool takes_pilots(const trade::Body& body) {
    switch (body.pilot_kind) {
    case trade::PilotKind::removable:
        return true;
    case trade::PilotKind::unknown:
        return !body.pilot_dia.has_value();
    default:
        return false;
    }
}

std::optional<Nose> nose_of(const Triple& triple) {
    if (triple.pilot != nullptr) {
        return Nose{trade::range_of(triple.pilot->pilot_dia),
                    trade::range_of(triple.pilot->pilot_length)};
    }
    if (is_integral(*triple.body)) {
        return Nose{trade::range_of(triple.body->pilot_dia),
                    trade::range_of(triple.body->pilot_length)};
    }
    return std::nullopt;
}

std::optional<trade::Retention> holds_by(const trade::Body& body) {
    const bool has_set_screw = !body.set_screw.empty() || body.set_screw_at;
    return !body.retention && has_set_screw ? trade::Retention::set_screw : body.retention;
}

bool holds_otherwise(const trade::Body& body) {
    const std::optional<trade::Retention> how = holds_by(body);
    return how && how != trade::Retention::set_screw;
}

std::optional<trade::Tried> tried(const Context& context, const Triple& triple) {
    if (triple.pilot == nullptr) {
        return std::nullopt;
    }
    for (const trade::Trial& trial : context.trials) {
        if (trial.pilot == triple.pilot->number && trial.body == triple.body->number) {
            return trial.how;
        }
    }
    return std::nullopt;
}

} // namespace oracle
