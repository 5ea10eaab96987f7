// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/spell_out.hpp"

#include "match/notes.hpp"
#include "match/order.hpp"
#include "match/wanted.hpp"

namespace match {

Answer spell_out(const Job& job, const Triple& triple, const Records& records, length::Unit unit) {
    const Judged judged = judge(job, triple);
    Answer answer;
    answer.kind = *judged.weighed.kind;
    answer.body = triple.body->number;
    if (triple.pilot)
        answer.pilot = triple.pilot->number;
    answer.seat = seat_of(triple);
    answer.pilot_dia = triple.pilot_dia();
    if (answer.seat == Seat::free)
        answer.pilot_place = records.pilot->place;
    if (triple.hole) {
        answer.drill = triple.hole->drill;
        answer.hole = triple.hole->hole;
        answer.reamed = triple.hole->reamed;
        if (answer.kind == AnswerKind::make_pilot)
            answer.pilot_to_make = pilot_to_make(*triple.hole, job.shop->practice, unit);
    }
    answer.counterbore = triple.body->cut_dia;
    answer.size = size_of(job, triple);
    if (answer.pilot_dia && triple.hole)
        answer.running_clearance = triple.hole->hole - *answer.pilot_dia;
    answer.depth = job.depth;
    answer.rules = reasons_of(job, judged, records, unit);
    answer.work = work_of(job, judged, records);
    answer.assumed = assumed_of(job, triple);
    answer.notes = notes_of(job, triple, unit);
    answer.floor_notes = floor_notes_of(job, triple, unit);
    answer.place = records.body->place;
    return answer;
}

} // namespace match
