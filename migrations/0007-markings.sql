-- SPDX-FileCopyrightText: 2026 The Counterpart authors
-- SPDX-License-Identifier: MIT

-- Bodies by what is marked on them: a marking that names a screw says what the tool was made for.
CREATE INDEX body_by_marking ON body (marking) WHERE marking <> '';

-- A fraction, or a plain metric size, that is marked on a pilot names the hole it was made to run in
-- and no more the pilot's own size. Limits that stood at .003 in under the mark go to .001 to .004
-- under a fraction, and to e8 of ISO 286-2 with .02 mm for wear under a metric size.
DROP TRIGGER body_update;
DROP TRIGGER pilot_update;

UPDATE body SET pilot_dia_lo = pilot_dia_lo - 25400, pilot_dia_hi = pilot_dia_hi - 25400
WHERE pilot_dia LIKE '%/%' AND pilot_dia NOT LIKE '%+%' AND pilot_dia NOT LIKE '%go%'
    AND pilot_dia NOT LIKE '%±%' AND pilot_dia_how IN ('mark', 'unstated')
    AND pilot_dia_hi - pilot_dia_lo = 76200;

UPDATE body SET
    pilot_dia_lo = pilot_dia_hi - 20000 - CASE
        WHEN pilot_dia_hi <= 3000000 THEN 28000
        WHEN pilot_dia_hi <= 6000000 THEN 38000
        WHEN pilot_dia_hi <= 10000000 THEN 47000
        WHEN pilot_dia_hi <= 18000000 THEN 59000
        WHEN pilot_dia_hi <= 30000000 THEN 73000
        WHEN pilot_dia_hi <= 50000000 THEN 89000
        WHEN pilot_dia_hi <= 80000000 THEN 106000
        WHEN pilot_dia_hi <= 120000000 THEN 126000
        ELSE 148000 END,
    pilot_dia_hi = pilot_dia_hi - CASE
        WHEN pilot_dia_hi <= 3000000 THEN 14000
        WHEN pilot_dia_hi <= 6000000 THEN 20000
        WHEN pilot_dia_hi <= 10000000 THEN 25000
        WHEN pilot_dia_hi <= 18000000 THEN 32000
        WHEN pilot_dia_hi <= 30000000 THEN 40000
        WHEN pilot_dia_hi <= 50000000 THEN 50000
        WHEN pilot_dia_hi <= 80000000 THEN 60000
        WHEN pilot_dia_hi <= 120000000 THEN 72000
        ELSE 85000 END
WHERE pilot_dia_how = 'mark' AND pilot_dia_hi % 100000 = 0 AND pilot_dia_hi - pilot_dia_lo = 76200
    AND pilot_dia NOT LIKE '%/%' AND pilot_dia NOT LIKE '%+%' AND pilot_dia NOT LIKE '%go%'
    AND pilot_dia NOT LIKE '%in%' AND pilot_dia NOT LIKE '%"%'
    AND (pilot_dia LIKE '%mm%' OR (SELECT unit FROM setting) = 'mm');

UPDATE pilot SET pilot_dia_lo = pilot_dia_lo - 25400, pilot_dia_hi = pilot_dia_hi - 25400
WHERE pilot_dia LIKE '%/%' AND pilot_dia NOT LIKE '%+%' AND pilot_dia NOT LIKE '%go%'
    AND pilot_dia NOT LIKE '%±%' AND pilot_dia_how IN ('mark', 'unstated')
    AND pilot_dia_hi - pilot_dia_lo = 76200;

UPDATE pilot SET
    pilot_dia_lo = pilot_dia_hi - 20000 - CASE
        WHEN pilot_dia_hi <= 3000000 THEN 28000
        WHEN pilot_dia_hi <= 6000000 THEN 38000
        WHEN pilot_dia_hi <= 10000000 THEN 47000
        WHEN pilot_dia_hi <= 18000000 THEN 59000
        WHEN pilot_dia_hi <= 30000000 THEN 73000
        WHEN pilot_dia_hi <= 50000000 THEN 89000
        WHEN pilot_dia_hi <= 80000000 THEN 106000
        WHEN pilot_dia_hi <= 120000000 THEN 126000
        ELSE 148000 END,
    pilot_dia_hi = pilot_dia_hi - CASE
        WHEN pilot_dia_hi <= 3000000 THEN 14000
        WHEN pilot_dia_hi <= 6000000 THEN 20000
        WHEN pilot_dia_hi <= 10000000 THEN 25000
        WHEN pilot_dia_hi <= 18000000 THEN 32000
        WHEN pilot_dia_hi <= 30000000 THEN 40000
        WHEN pilot_dia_hi <= 50000000 THEN 50000
        WHEN pilot_dia_hi <= 80000000 THEN 60000
        WHEN pilot_dia_hi <= 120000000 THEN 72000
        ELSE 85000 END
WHERE pilot_dia_how = 'mark' AND pilot_dia_hi % 100000 = 0 AND pilot_dia_hi - pilot_dia_lo = 76200
    AND pilot_dia NOT LIKE '%/%' AND pilot_dia NOT LIKE '%+%' AND pilot_dia NOT LIKE '%go%'
    AND pilot_dia NOT LIKE '%in%' AND pilot_dia NOT LIKE '%"%'
    AND (pilot_dia LIKE '%mm%' OR (SELECT unit FROM setting) = 'mm');

CREATE TRIGGER body_update AFTER UPDATE ON body
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'body' AS tbl, counterpart_key(NEW.number) AS rowkey, NEW.number AS number,
        counterpart_row(
            'number', OLD.number, 'tool_set', OLD.tool_set, 'kind', OLD.kind,
            'cut_dia', OLD.cut_dia, 'cut_dia_how', OLD.cut_dia_how, 'cut_dia_lo', OLD.cut_dia_lo,
            'cut_dia_hi', OLD.cut_dia_hi, 'flutes', OLD.flutes, 'pilot_kind', OLD.pilot_kind,
            'pilot_dia', OLD.pilot_dia, 'pilot_dia_how', OLD.pilot_dia_how,
            'pilot_dia_lo', OLD.pilot_dia_lo, 'pilot_dia_hi', OLD.pilot_dia_hi,
            'pilot_length', OLD.pilot_length, 'pilot_length_how', OLD.pilot_length_how,
            'pilot_length_lo', OLD.pilot_length_lo, 'pilot_length_hi', OLD.pilot_length_hi,
            'fluted', OLD.fluted, 'bore', OLD.bore, 'bore_how', OLD.bore_how,
            'bore_lo', OLD.bore_lo, 'bore_hi', OLD.bore_hi, 'bore_depth', OLD.bore_depth,
            'bore_depth_how', OLD.bore_depth_how, 'bore_depth_lo', OLD.bore_depth_lo,
            'bore_depth_hi', OLD.bore_depth_hi, 'retention', OLD.retention,
            'set_screw', OLD.set_screw, 'set_screw_at', OLD.set_screw_at,
            'set_screw_at_how', OLD.set_screw_at_how, 'set_screw_at_lo', OLD.set_screw_at_lo,
            'set_screw_at_hi', OLD.set_screw_at_hi, 'reach', OLD.reach,
            'reach_how', OLD.reach_how, 'reach_lo', OLD.reach_lo, 'reach_hi', OLD.reach_hi,
            'shank_dia', OLD.shank_dia, 'shank_dia_how', OLD.shank_dia_how,
            'shank_dia_lo', OLD.shank_dia_lo, 'shank_dia_hi', OLD.shank_dia_hi,
            'shank_kind', OLD.shank_kind, 'material', OLD.material, 'condition', OLD.condition,
            'marking', OLD.marking, 'place', OLD.place, 'note', OLD.note,
            'retired', OLD.retired) AS before,
        counterpart_row(
            'number', NEW.number, 'tool_set', NEW.tool_set, 'kind', NEW.kind,
            'cut_dia', NEW.cut_dia, 'cut_dia_how', NEW.cut_dia_how, 'cut_dia_lo', NEW.cut_dia_lo,
            'cut_dia_hi', NEW.cut_dia_hi, 'flutes', NEW.flutes, 'pilot_kind', NEW.pilot_kind,
            'pilot_dia', NEW.pilot_dia, 'pilot_dia_how', NEW.pilot_dia_how,
            'pilot_dia_lo', NEW.pilot_dia_lo, 'pilot_dia_hi', NEW.pilot_dia_hi,
            'pilot_length', NEW.pilot_length, 'pilot_length_how', NEW.pilot_length_how,
            'pilot_length_lo', NEW.pilot_length_lo, 'pilot_length_hi', NEW.pilot_length_hi,
            'fluted', NEW.fluted, 'bore', NEW.bore, 'bore_how', NEW.bore_how,
            'bore_lo', NEW.bore_lo, 'bore_hi', NEW.bore_hi, 'bore_depth', NEW.bore_depth,
            'bore_depth_how', NEW.bore_depth_how, 'bore_depth_lo', NEW.bore_depth_lo,
            'bore_depth_hi', NEW.bore_depth_hi, 'retention', NEW.retention,
            'set_screw', NEW.set_screw, 'set_screw_at', NEW.set_screw_at,
            'set_screw_at_how', NEW.set_screw_at_how, 'set_screw_at_lo', NEW.set_screw_at_lo,
            'set_screw_at_hi', NEW.set_screw_at_hi, 'reach', NEW.reach,
            'reach_how', NEW.reach_how, 'reach_lo', NEW.reach_lo, 'reach_hi', NEW.reach_hi,
            'shank_dia', NEW.shank_dia, 'shank_dia_how', NEW.shank_dia_how,
            'shank_dia_lo', NEW.shank_dia_lo, 'shank_dia_hi', NEW.shank_dia_hi,
            'shank_kind', NEW.shank_kind, 'material', NEW.material, 'condition', NEW.condition,
            'marking', NEW.marking, 'place', NEW.place, 'note', NEW.note,
            'retired', NEW.retired) AS after)
    WHERE before IS NOT after;
END;
CREATE TRIGGER pilot_update AFTER UPDATE ON pilot
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'pilot' AS tbl, counterpart_key(NEW.number) AS rowkey, NEW.number AS number,
        counterpart_row(
            'number', OLD.number, 'tool_set', OLD.tool_set, 'pilot_dia', OLD.pilot_dia,
            'pilot_dia_how', OLD.pilot_dia_how, 'pilot_dia_lo', OLD.pilot_dia_lo,
            'pilot_dia_hi', OLD.pilot_dia_hi, 'pilot_length', OLD.pilot_length,
            'pilot_length_how', OLD.pilot_length_how, 'pilot_length_lo', OLD.pilot_length_lo,
            'pilot_length_hi', OLD.pilot_length_hi, 'fluted', OLD.fluted,
            'shank_dia', OLD.shank_dia, 'shank_dia_how', OLD.shank_dia_how,
            'shank_dia_lo', OLD.shank_dia_lo, 'shank_dia_hi', OLD.shank_dia_hi,
            'shank_length', OLD.shank_length, 'shank_length_how', OLD.shank_length_how,
            'shank_length_lo', OLD.shank_length_lo, 'shank_length_hi', OLD.shank_length_hi,
            'has_flat', OLD.has_flat, 'flat_at', OLD.flat_at, 'flat_at_how', OLD.flat_at_how,
            'flat_at_lo', OLD.flat_at_lo, 'flat_at_hi', OLD.flat_at_hi,
            'flat_length', OLD.flat_length, 'flat_length_how', OLD.flat_length_how,
            'flat_length_lo', OLD.flat_length_lo, 'flat_length_hi', OLD.flat_length_hi,
            'flat_depth', OLD.flat_depth, 'flat_depth_how', OLD.flat_depth_how,
            'flat_depth_lo', OLD.flat_depth_lo, 'flat_depth_hi', OLD.flat_depth_hi,
            'material', OLD.material, 'condition', OLD.condition, 'in_body', OLD.in_body,
            'place', OLD.place, 'note', OLD.note, 'retired', OLD.retired) AS before,
        counterpart_row(
            'number', NEW.number, 'tool_set', NEW.tool_set, 'pilot_dia', NEW.pilot_dia,
            'pilot_dia_how', NEW.pilot_dia_how, 'pilot_dia_lo', NEW.pilot_dia_lo,
            'pilot_dia_hi', NEW.pilot_dia_hi, 'pilot_length', NEW.pilot_length,
            'pilot_length_how', NEW.pilot_length_how, 'pilot_length_lo', NEW.pilot_length_lo,
            'pilot_length_hi', NEW.pilot_length_hi, 'fluted', NEW.fluted,
            'shank_dia', NEW.shank_dia, 'shank_dia_how', NEW.shank_dia_how,
            'shank_dia_lo', NEW.shank_dia_lo, 'shank_dia_hi', NEW.shank_dia_hi,
            'shank_length', NEW.shank_length, 'shank_length_how', NEW.shank_length_how,
            'shank_length_lo', NEW.shank_length_lo, 'shank_length_hi', NEW.shank_length_hi,
            'has_flat', NEW.has_flat, 'flat_at', NEW.flat_at, 'flat_at_how', NEW.flat_at_how,
            'flat_at_lo', NEW.flat_at_lo, 'flat_at_hi', NEW.flat_at_hi,
            'flat_length', NEW.flat_length, 'flat_length_how', NEW.flat_length_how,
            'flat_length_lo', NEW.flat_length_lo, 'flat_length_hi', NEW.flat_length_hi,
            'flat_depth', NEW.flat_depth, 'flat_depth_how', NEW.flat_depth_how,
            'flat_depth_lo', NEW.flat_depth_lo, 'flat_depth_hi', NEW.flat_depth_hi,
            'material', NEW.material, 'condition', NEW.condition, 'in_body', NEW.in_body,
            'place', NEW.place, 'note', NEW.note, 'retired', NEW.retired) AS after)
    WHERE before IS NOT after;
END;
