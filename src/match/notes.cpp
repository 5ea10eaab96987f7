// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/notes.hpp"

#include <algorithm>

#include "match/order.hpp"
#include "match/rules.hpp"
#include "match/say.hpp"

namespace match {

using length::Length;

namespace {

// A screw pushed to one side of its hole takes its head along by half the play: said where the
// cutter does not clear the head there, or the head loses its seat on one side.
std::string play_note(const Job& job, const Triple& triple, length::Unit unit) {
    const auto& screw = job.question->screw.screw_dia;
    const auto& cut = triple.body->cut_dia;
    const auto& hole = triple.hole->hole;
    if (!screw || !job.head || !cut || job.question->hole.tapped)
        return {};
    const Length play = hole.hi - screw->lo;
    if (play <= Length())
        return {};
    const auto off = "the screw can sit " + say(play / 2, unit) + " off centre";
    if (job.head->lo - play < hole.hi)
        return off + ": its head then has no seat on one side";
    if ((*cut).lo < job.head->hi + play)
        return off + ": a cutter of " + say(job.head->hi + play, unit) +
               " or more clears its head there too";
    return {};
}

std::string fit_note(const CandidateHole& hole) {
    if (hole.reamed)
        return "the shoulder is a bearing: ream its hole, or give the hole with --hole";
    return hole.published == Published::size_on_size ? "size on size, no play: one screw, or ream"
                                                     : std::string();
}

std::string fillet_note(const Job& job, const Triple& triple, length::Unit unit) {
    const auto& fillet = job.question->screw.fillet_dia;
    if (!fillet || *fillet <= triple.hole->hole.lo)
        return {};
    return "break the edge of the hole: the fillet under the head runs to " + say(*fillet, unit);
}

// What is left of the part under the head.
std::string ledge_note(const Job& job, length::Unit unit) {
    const auto& thick = job.question->thick;
    const auto& screw = job.question->screw.screw_dia;
    if (!thick || !job.depth || !screw || thick->lo <= *job.depth)
        return {};
    const Length left = thick->lo - *job.depth;
    const Length usual = Length::from_nm(screw->hi.nm() * job.shop->practice.ledge_usual / 1000);
    if (left >= usual)
        return {};
    return "only " + say(left, unit) + " is left under the head; " + say(usual, unit) + " is usual";
}

bool owns(const Shop& shop, const trade::Clearance::Hole& hole) {
    return std::any_of(shop.drills.begin(), shop.drills.end(),
                       [&](const trade::Drill& drill) { return drill.diameter == hole.diameter; });
}

// A published drill that the shop does not own and that would come before the one it has.
std::string better_drill_note(const Job& job, const Triple& triple) {
    const auto pilot = triple.pilot_dia();
    const int here = triple.hole ? static_cast<int>(triple.hole->published) : k_no_hole_published;
    const auto& screw = job.question->screw;
    if (job.question->hole.kind != HoleKind::chosen || !pilot || !screw.screw_dia)
        return {};
    for (const auto* hole : {&screw.close, &screw.normal, &screw.loose}) {
        if (!*hole || owns(*job.shop, **hole))
            continue;
        const trade::Drill drill{(*hole)->drill, trade::DrillKind::metric, (*hole)->diameter};
        const auto candidate = drilled_hole(drill, screw, *job.shop);
        if (static_cast<int>(candidate.published) < here &&
            candidate.size.lo >= screw.screw_dia->hi &&
            within(candidate.size - *pilot, candidate.running.least, candidate.running.most) ==
                Verdict::pass)
            return "drill " + drill.name +
                   " would serve better, but is not among the shop's drills";
    }
    return {};
}

void add(std::string note, std::vector<std::string>& notes) {
    if (!note.empty())
        notes.push_back(std::move(note));
}

} // namespace

std::vector<std::string> notes_of(const Job& job, const Triple& triple, length::Unit unit) {
    std::vector<std::string> notes;
    if (triple.pilot_is_in_another())
        notes.push_back("pilot " + std::to_string(triple.pilot->number) + " is in body " +
                        std::to_string(triple.pilot->in_body) + ": move it");
    add(better_drill_note(job, triple), notes);
    if (!triple.hole)
        return notes;
    add(fit_note(*triple.hole), notes);
    add(play_note(job, triple, unit), notes);
    return notes;
}

std::vector<std::string> floor_notes_of(const Job& job, const Triple& triple, length::Unit unit) {
    std::vector<std::string> notes;
    add(ledge_note(job, unit), notes);
    if (triple.hole)
        add(fillet_note(job, triple, unit), notes);
    return notes;
}

std::vector<std::string> assumed_of(const Job& job, const Triple& triple) {
    std::vector<std::string> assumed;
    if (assumes_reach(job, *triple.body))
        assumed.emplace_back("reach not recorded: taken as its cutting diameter");
    if (assumes_pilot_length(job, triple))
        assumed.emplace_back("pilot length not recorded: taken as one pilot diameter");
    return assumed;
}

} // namespace match
