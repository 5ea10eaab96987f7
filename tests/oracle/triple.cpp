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
