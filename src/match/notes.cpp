// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/notes.hpp"

#include "match/say.hpp"

namespace match {

namespace {

// A screw pushed to one side of its hole takes its head along by half the play.
std::string play_note(const Job& job, const CandidateHole& hole, length::Unit unit) {
    const auto& screw = job.question->screw.screw_dia;
    if (!screw || !job.head || job.question->hole.tapped)
        return {};
    const auto play = hole.hole.hi - screw->lo;
    if (play <= length::Length())
        return {};
    return "the screw can sit " + say(play / 2, unit) + " off; a cutter of " +
           say(job.head->hi + play, unit) + " or more clears its head there too";
}

bool fillet_stands_over(const Job& job, const CandidateHole& hole) {
    const auto& fillet = job.question->screw.fillet_dia;
    return fillet && *fillet > hole.hole.lo;
}

} // namespace

std::vector<std::string> notes_of(const Job& job, const Triple& triple, length::Unit unit) {
    std::vector<std::string> notes;
    if (triple.pilot_is_in_another())
        notes.push_back("pilot " + std::to_string(triple.pilot->number) + " is in body " +
                        std::to_string(triple.pilot->in_body) + ": move it");
    if (!triple.hole)
        return notes;
    if (auto play = play_note(job, *triple.hole, unit); !play.empty())
        notes.push_back(play);
    if (fillet_stands_over(job, *triple.hole))
        notes.push_back("break the edge of the hole: the fillet under the head runs to " +
                        say(*job.question->screw.fillet_dia, unit));
    return notes;
}

} // namespace match
