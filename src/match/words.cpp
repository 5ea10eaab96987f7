// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "match/answer.hpp"
#include "match/finding.hpp"

namespace match {

std::string_view to_text(AnswerKind kind) {
    switch (kind) {
    case AnswerKind::ready:
        return "ready";
    case AnswerKind::after_work:
        return "after work";
    case AnswerKind::measure_first:
        return "measure first";
    case AnswerKind::make_pilot:
        return "make pilot";
    case AnswerKind::closest:
        return "closest";
    }
    return {};
}

std::string_view to_text(Verdict verdict) {
    switch (verdict) {
    case Verdict::pass:
        return "pass";
    case Verdict::fail:
        return "fail";
    case Verdict::unknown:
        return "unknown";
    }
    return {};
}

std::string_view to_text(SizeClass size) {
    switch (size) {
    case SizeClass::recommended:
        return "recommended";
    case SizeClass::tool_size:
        return "tool size";
    case SizeClass::small:
        return "small";
    case SizeClass::large:
        return "large";
    }
    return {};
}

std::string_view to_text(Rule rule) {
    switch (rule) {
    case Rule::head:
        return "head in the counterbore";
    case Rule::running:
        return "pilot in the hole";
    case Rule::drill:
        return "drill";
    case Rule::slip:
        return "pilot shank in the bore";
    case Rule::flat:
        return "set screw on the flat";
    case Rule::teeth:
        return "teeth reach the hole";
    case Rule::depth:
        return "depth";
    case Rule::guidance:
        return "pilot has room and guidance";
    case Rule::in_hand:
        return "in hand";
    case Rule::spindle:
        return "shank in the spindle";
    }
    return {};
}

} // namespace match
