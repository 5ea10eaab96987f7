-- SPDX-FileCopyrightText: 2026 The Counterpart authors
-- SPDX-License-Identifier: MIT

-- Tools by their sizes, for the match: each index holds all that the usual question looks at, so
-- that only the rows of a range of it are read. Ranges are found by their low end, which is no
-- farther below a size than the range is wide; the few wider than 0.12 mm have indexes of their
-- own.
CREATE INDEX body_by_cutter ON body (
    pilot_kind, cut_dia_lo, cut_dia_hi, kind, condition, retired, pilot_dia_lo, pilot_dia_hi,
    bore_lo, bore_hi, reach_lo, reach_hi, retention, bore_depth_lo, bore_depth_hi, set_screw,
    set_screw_at_lo, set_screw_at_hi);
CREATE INDEX body_by_pilot ON body (
    pilot_kind, pilot_dia_lo, pilot_dia_hi, cut_dia_lo, cut_dia_hi, kind, condition, retired,
    reach_lo, reach_hi);
CREATE INDEX pilot_by_diameter ON pilot (
    pilot_dia_lo, pilot_dia_hi, shank_dia_lo, shank_dia_hi, condition, retired, in_body, has_flat,
    flat_at_lo, flat_at_hi, flat_length_lo, flat_length_hi, shank_length_lo, shank_length_hi);
CREATE INDEX body_wide_cutter ON body (pilot_kind, cut_dia_lo, cut_dia_hi)
    WHERE cut_dia_hi - cut_dia_lo > 120000;
CREATE INDEX body_wide_pilot ON body (pilot_kind, pilot_dia_lo, pilot_dia_hi)
    WHERE pilot_dia_hi - pilot_dia_lo > 120000;
CREATE INDEX pilot_wide ON pilot (pilot_dia_lo, pilot_dia_hi)
    WHERE pilot_dia_hi - pilot_dia_lo > 120000;
CREATE INDEX body_retired ON body (number) WHERE retired IS NOT NULL;
