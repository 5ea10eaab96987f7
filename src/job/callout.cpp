// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/callout.hpp"

#include <fmt/format.h>

#include "job/shop_text.hpp"
#include "length/grid.hpp"

namespace job {

using length::Length;
using length::Range;
using length::Unit;

namespace {

Length hole_of(const match::Answer& answer, Unit unit) {
    return answer.drill ? answer.drill->diameter : called(*answer.hole, unit);
}

bool all_known(const match::Answer& answer) {
    return answer.hole && answer.counterbore && answer.depth;
}

std::string thread_of(const match::Question& question) {
    const auto& screw = question.screw;
    if (!question.hole.tapped || !screw.size)
        return {};
    const bool metric = screw.is_metric();
    const auto pitch = screw.pitch.empty() ? std::string() : (metric ? "x" : "-") + screw.pitch;
    return " TAP " + screw.size->text + pitch;
}

} // namespace

Length called(const Range& limits, Unit unit) {
    const auto step = in_unit(unit, length::sixty_fourths(1), length::micrometres(500)).nm();
    const auto middle = length::middle(limits);
    const auto nearest = Length::from_nm((middle.nm() + step / 2) / step * step);
    return limits.lo <= nearest && nearest <= limits.hi ? nearest : middle;
}

std::string inch_callout(const match::Question& question, const match::Answer& answer, int count) {
    if (!all_known(answer))
        return {};
    const auto text = [](Length value) { return shop_text(value, Unit::inch); };
    const auto deep = question.blind ? " ↧ " + text(length::middle(*question.blind)) : " THRU";
    return fmt::format("{}Ø{}{}{} ⌴{} Ø{} ↧ {}", count > 1 ? fmt::format("{}X ", count) : "",
                       text(hole_of(answer, Unit::inch)), deep, thread_of(question),
                       question.screw.hex ? "SF" : "",
                       text(called(*answer.counterbore, Unit::inch)), text(*answer.depth));
}

std::string metric_callout(const match::Question& question, const match::Answer& answer,
                           int count) {
    if (!all_known(answer))
        return {};
    const auto text = [](Length value) { return shop_text(value, Unit::millimetre); };
    const auto deep = question.blind ? " h " + text(length::middle(*question.blind)) : "";
    return fmt::format("{}Ø{}{}{} ⌴{} Ø{} h {}", count > 1 ? fmt::format("{}× ", count) : "",
                       text(hole_of(answer, Unit::millimetre)), deep, thread_of(question),
                       question.screw.hex ? "SF" : "",
                       text(called(*answer.counterbore, Unit::millimetre)), text(*answer.depth));
}

} // namespace job
