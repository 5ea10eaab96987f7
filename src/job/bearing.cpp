// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "job/bearing.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace job {

using length::Length;
using length::Range;

namespace {

// For screws up to `upto`: how much less than the least head bears, on the diameter.
struct Edge {
    Length upto;
    Length off;
};

// ISO 4762:2004, dk min less dw min, for every size from M1.6 to M36; M42 and over take the last.
constexpr std::array k_metric{
    Edge{length::micrometres(2'500), length::micrometres(140)},
    Edge{length::millimetres(5), length::micrometres(250)},
    Edge{length::millimetres(10), length::micrometres(400)},
    Edge{length::millimetres(16), length::micrometres(500)},
    Edge{length::millimetres(24), length::micrometres(800)},
    Edge{length::millimetres(36), length::micrometres(1'070)},
    Edge{length::millimetres(100), length::micrometres(1'200)},
};

// ASME B18.3, chamfer or radius at the bearing face, twice for both sides: .008 to #10, .010 to
// 3/8, .015 to 5/8 as its low heads are printed; .020 and .025 over that from memory.
constexpr std::array k_inch{
    Edge{length::inches_e5(21'600), length::thousandths(16)},
    Edge{length::thousandths(375), length::thousandths(20)},
    Edge{length::thousandths(625), length::thousandths(30)},
    Edge{length::thousandths(1'000), length::thousandths(40)},
    Edge{length::thousandths(4'000), length::thousandths(50)},
};

constexpr std::int64_t k_washer_face_percent = 90; // of the flats, least

template <std::size_t N>
Length off_edge(const std::array<Edge, N>& edges, Length screw) {
    const auto found = std::find_if(edges.begin(), edges.end(),
                                    [&](const Edge& edge) { return screw <= edge.upto; });
    return found == edges.end() ? edges.back().off : found->off;
}

Length flats(Length corners) {
    return Length::from_nm(
        std::llround(static_cast<double>(corners.nm()) * std::numbers::sqrt3 / 2));
}

bool socket_head(const trade::Screw& screw) {
    return screw.form.find("socket head cap") != std::string::npos ||
           screw.form.find("low head") != std::string::npos;
}

} // namespace

length::MaybeRange bearing_face(const trade::Screw& screw) {
    const auto& head = screw.head_dia;
    if (!head)
        return head;
    if (screw.hex)
        return Range{flats(head->lo) * k_washer_face_percent / 100, flats(head->hi)};
    if (!screw.screw_dia || !screw.size || !socket_head(screw))
        return head;
    const bool metric = screw.is_metric();
    const auto screw_dia = screw.screw_dia->hi;
    const auto off = metric ? off_edge(k_metric, screw_dia) : off_edge(k_inch, screw_dia);
    return Range{head->lo - off, head->hi};
}

} // namespace job
