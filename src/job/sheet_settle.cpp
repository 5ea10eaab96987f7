// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/sheet_parts.hpp"

namespace job {

Section settle_section(const match::Answer& answer) {
    Section section{"Settle first", {}, {}};
    if (answer.kind == match::AnswerKind::make_pilot) {
        if (answer.pilot_to_make)
            section.figures.push_back({"pilot to make",
                                       *answer.pilot_to_make,
                                       "under the hole by what runs well",
                                       {},
                                       "shop practice",
                                       Grain::set});
        section.notes.emplace_back("`make-list` says how it is turned, and draws it");
        return section;
    }
    for (const auto& reason : answer.rules)
        if (reason.result == match::Verdict::unknown)
            section.notes.push_back(reason.rule + ": " + reason.need + "; here " + reason.have);
    return section;
}

} // namespace job
