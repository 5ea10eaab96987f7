-- SPDX-FileCopyrightText: 2026 The Counterpart authors
-- SPDX-License-Identifier: MIT

-- The shell's own copy of a catalogue attached as `shop`, made before anything is timed, after
-- list_asked's tables. It keeps only what the cut-down question needs, in the order that it is asked
-- in: each table is one b-tree by its leading size, so that a range of sizes is one scan that never
-- goes to another table (as good as a covering, partial index, and with nothing else on its pages).
-- What is not in hand is left out beforehand. No ANALYZE: SQLite 3.40.1 may then return too few
-- rows from partial indexes on expressions, and the plans below need no figures.

BEGIN;
CREATE TEMP TABLE gone AS SELECT number FROM shop.loan;
CREATE INDEX temp.gone_number ON gone (number);

-- Bodies in one piece with their pilot, by the lower limit of the cutter.
CREATE TABLE integral (cut_lo INTEGER, cut_hi INTEGER, pilot_lo INTEGER, pilot_hi INTEGER,
    number INTEGER NOT NULL);
INSERT INTO integral
SELECT cut_dia_lo, cut_dia_hi, pilot_dia_lo, pilot_dia_hi, number FROM shop.body
WHERE pilot_kind = 'integral' AND retired IS NULL AND condition IS NOT 'broken'
    AND number NOT IN (SELECT number FROM gone)
ORDER BY cut_dia_lo, number;
CREATE INDEX integral_cut ON integral (cut_lo, cut_hi, pilot_lo, pilot_hi, number);

-- Bodies that take a pilot, likewise.
CREATE TABLE removable (cut_lo INTEGER, cut_hi INTEGER, bore_lo INTEGER, bore_hi INTEGER,
    number INTEGER NOT NULL);
INSERT INTO removable
SELECT cut_dia_lo, cut_dia_hi, bore_lo, bore_hi, number FROM shop.body
WHERE pilot_kind = 'removable' AND retired IS NULL AND condition IS NOT 'broken'
    AND number NOT IN (SELECT number FROM gone)
ORDER BY cut_dia_lo, number;
CREATE INDEX removable_cut ON removable (cut_lo, cut_hi, bore_lo, bore_hi, number);

-- Pilots, by the lower limit of what runs in the hole.
CREATE TABLE loose (pilot_lo INTEGER, pilot_hi INTEGER, shank_lo INTEGER, shank_hi INTEGER,
    number INTEGER NOT NULL);
INSERT INTO loose
SELECT pilot_dia_lo, pilot_dia_hi, shank_dia_lo, shank_dia_hi, number FROM shop.pilot
WHERE retired IS NULL AND condition IS NOT 'broken' AND number NOT IN (SELECT number FROM gone)
ORDER BY pilot_dia_lo, number;
CREATE INDEX loose_pilot ON loose (pilot_lo, pilot_hi, shank_lo, shank_hi, number);

-- A range overlaps another if it begins before the other ends and ends after the other begins. An
-- index can narrow only one of the two; but no range begins more than the widest one before it ends.
CREATE TABLE widest AS
SELECT (SELECT coalesce(max(cut_hi - cut_lo), 0) FROM integral) AS integral,
    (SELECT coalesce(max(cut_hi - cut_lo), 0) FROM removable) AS removable,
    (SELECT coalesce(max(pilot_hi - pilot_lo), 0) FROM loose) AS pilot,
    (SELECT coalesce(max(shank_hi - shank_lo), 0) FROM loose) AS shank;
COMMIT;
