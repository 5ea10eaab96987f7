// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The few limits of ISO 286 that the rules use, to 50 mm (ISO 286-1:2010 tables 1 to 3, from
// memory).
#pragma once

#include "trade/screw.hpp"

namespace oracle {

struct Grades {
    length::Length it8, it9;
    length::Length z; // of a shaft, over the nominal
    length::Length e; // of a shaft, under the nominal
};

inline Grades grades_of(length::Length nominal) {
    struct Step {
        std::int64_t upto, it8, it9, z, e; // millimetres, then micrometres
    };
    constexpr Step steps[] = {{3, 14, 25, 26, 14},  {6, 18, 30, 35, 20},   {10, 22, 36, 42, 25},
                              {14, 27, 43, 50, 32}, {18, 27, 43, 60, 32},  {24, 33, 52, 73, 40},
                              {30, 33, 52, 88, 40}, {40, 39, 62, 112, 50}, {50, 39, 62, 136, 50},
                              {65, 46, 74, 172, 60}};
    for (const Step& step : steps) {
        if (nominal <= length::millimetres(step.upto)) {
            using length::micrometres;
            return {micrometres(step.it8), micrometres(step.it9), micrometres(step.z),
                    micrometres(step.e)};
        }
    }
    return {};
}

inline bool is_metric(const trade::Screw& screw) {
    return screw.size && screw.size->system == trade::SizeSystem::metric;
}

} // namespace oracle
