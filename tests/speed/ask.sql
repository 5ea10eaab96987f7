-- SPDX-FileCopyrightText: 2026 The Counterpart authors
-- SPDX-License-Identifier: MIT

-- The cut-down question for the screws in `asked`: how many bodies are ready and how many not sure,
-- and the best 20 of each, by answer, size and closeness. Verdicts are 0 pass and 1 not sure; what
-- fails is never produced. Every step works on groups of tools with the same figures, since tools
-- share sizes: asking body by body with EXISTS takes many times as long. CROSS JOIN fixes the order:
-- screws, then their holes, then a range of an index.

-- Pilots that run in a hole, one row for each shank, hole, verdict and clearance that the head then
-- needs (the pilot is not in the middle of the hole, the screw not in that of the pilot's).
CREATE TEMP TABLE runs AS
SELECT screw, shank_lo, shank_hi, hole_lo, hole_hi, unsure, needed, min(closeness) AS closeness
FROM (
    SELECT s.id AS screw, p.shank_lo, p.shank_hi, h.lo AS hole_lo, h.hi AS hole_hi,
        (h.lo - p.pilot_hi < h.running_least OR h.hi - p.pilot_lo > h.running_most) AS unsure,
        max(l.head_clearance, s.screw_hi - p.pilot_lo) AS needed,
        abs(h.twice_best - p.pilot_lo - p.pilot_hi) AS closeness
    FROM limits l CROSS JOIN widest w CROSS JOIN asked s CROSS JOIN hole h ON h.screw = s.id
    CROSS JOIN loose p INDEXED BY loose_pilot
        ON p.pilot_lo BETWEEN h.lo - h.running_most - w.pilot AND h.hi - h.running_least
        AND p.pilot_hi >= h.lo - h.running_most
    UNION ALL
    SELECT s.id, p.shank_lo, p.shank_hi, h.lo, h.hi, 1, l.head_clearance, 1000000000000
    FROM limits l CROSS JOIN asked s CROSS JOIN hole h ON h.screw = s.id
    CROSS JOIN (SELECT DISTINCT shank_lo, shank_hi FROM loose WHERE pilot_lo IS NULL) p)
GROUP BY screw, shank_lo, shank_hi, hole_lo, hole_hi, unsure, needed;
CREATE INDEX temp.runs_shank ON runs (screw, shank_lo, shank_hi, unsure, needed);

-- The same, all holes of a shank taken together. It stands for them where the bore is no larger than
-- the least of the holes, which is nearly always.
CREATE TEMP TABLE shank AS
SELECT screw, shank_lo, shank_hi, unsure, needed, min(hole_lo) AS least_hole,
    min(closeness) AS closeness
FROM runs GROUP BY screw, shank_lo, shank_hi, unsure, needed;
CREATE INDEX temp.shank_lo ON shank (screw, shank_lo);

-- Bodies whose cutter may do: one whose size is unknown may.
CREATE TEMP TABLE cutter AS
SELECT s.id AS screw, b.number, b.cut_lo, b.cut_hi, b.bore_lo, b.bore_hi
FROM limits l CROSS JOIN widest w CROSS JOIN asked s
CROSS JOIN removable b INDEXED BY removable_cut
    ON b.cut_lo BETWEEN s.head_lo + l.head_clearance - w.removable AND s.twice_largest / 2
    AND b.cut_hi >= s.head_lo + l.head_clearance AND b.cut_lo + b.cut_hi <= s.twice_largest
UNION ALL
SELECT s.id, b.number, NULL, NULL, b.bore_lo, b.bore_hi
FROM asked s CROSS JOIN removable b INDEXED BY removable_cut ON b.cut_lo IS NULL;

CREATE TEMP TABLE bore AS
SELECT DISTINCT screw, bore_lo, bore_hi FROM cutter WHERE bore_lo IS NOT NULL;

-- The + keeps the planner from reading the range of shanks again for each of them.
-- What slips in those bores, a row for each bore, verdict and clearance needed. Bores or shanks that
-- are unknown may fit.
CREATE TEMP TABLE fit AS
SELECT screw, bore_lo, bore_hi, unsure, needed, min(closeness) AS closeness
FROM (
    SELECT b.screw, b.bore_lo, b.bore_hi,
        max(p.unsure, b.bore_lo - p.shank_hi < l.slip_least, b.bore_hi - p.shank_lo > l.slip_most)
            AS unsure, p.needed, p.closeness
    FROM limits l CROSS JOIN widest w CROSS JOIN bore b
    CROSS JOIN shank p INDEXED BY shank_lo ON p.screw = b.screw
        AND p.shank_lo BETWEEN b.bore_lo - l.slip_most - w.shank AND b.bore_hi - l.slip_least
        AND p.shank_hi >= b.bore_lo - l.slip_most AND b.bore_hi <= p.least_hole
    UNION ALL
    SELECT b.screw, b.bore_lo, b.bore_hi,
        max(r.unsure, b.bore_lo - r.shank_hi < l.slip_least, b.bore_hi - r.shank_lo > l.slip_most,
            r.hole_lo < b.bore_hi), r.needed, r.closeness
    FROM limits l CROSS JOIN widest w CROSS JOIN bore b
    CROSS JOIN shank p INDEXED BY shank_lo ON p.screw = b.screw
        AND p.shank_lo BETWEEN b.bore_lo - l.slip_most - w.shank AND b.bore_hi - l.slip_least
        AND p.shank_hi >= b.bore_lo - l.slip_most AND b.bore_hi > p.least_hole
    CROSS JOIN runs r INDEXED BY runs_shank ON r.screw = p.screw AND r.shank_lo = +p.shank_lo
        AND r.shank_hi = p.shank_hi AND r.unsure = p.unsure AND r.needed = p.needed
        AND r.hole_hi >= b.bore_lo
    UNION ALL
    SELECT b.screw, b.bore_lo, b.bore_hi, 1, r.needed, r.closeness
    FROM bore b CROSS JOIN (
        SELECT screw, hole_hi, needed, min(closeness) AS closeness FROM runs
        WHERE shank_lo IS NULL GROUP BY screw, hole_hi, needed) r
        ON r.screw = b.screw AND r.hole_hi >= b.bore_lo
    UNION ALL
    SELECT screw, NULL, NULL, 1, needed, closeness FROM shank)
GROUP BY screw, bore_lo, bore_hi, unsure, needed;
CREATE INDEX temp.fit_bore ON fit (screw, bore_lo, bore_hi, needed, unsure, closeness);

-- The best of each body: not sure counts for more than any closeness.
CREATE TEMP TABLE answer AS
SELECT screw, number, cut_lo + cut_hi AS twice_cut, min(rank) AS rank
FROM (
    SELECT b.screw, b.number, b.cut_lo, b.cut_hi,
        max(f.unsure, b.cut_lo IS NULL OR b.cut_lo - s.head_hi < f.needed) * 10000000000000
            + f.closeness AS rank
    FROM asked s CROSS JOIN cutter b ON b.screw = s.id
    CROSS JOIN fit f INDEXED BY fit_bore
        ON f.screw = b.screw AND f.bore_lo IS b.bore_lo AND f.bore_hi IS b.bore_hi
        AND (b.cut_lo IS NULL OR f.needed <= b.cut_hi - s.head_lo)
    UNION ALL
    SELECT s.id, b.number, b.cut_lo, b.cut_hi,
        max(b.cut_lo - s.head_hi < max(l.head_clearance, s.screw_hi - b.pilot_lo),
            h.lo - b.pilot_hi < h.running_least, h.hi - b.pilot_lo > h.running_most)
            * 10000000000000 + abs(h.twice_best - b.pilot_lo - b.pilot_hi)
    FROM limits l CROSS JOIN widest w CROSS JOIN asked s
    CROSS JOIN integral b INDEXED BY integral_cut
        ON b.cut_lo BETWEEN s.head_lo + l.head_clearance - w.integral AND s.twice_largest / 2
        AND b.cut_hi >= s.head_lo + max(l.head_clearance, s.screw_hi - b.pilot_lo)
        AND b.cut_lo + b.cut_hi <= s.twice_largest
    CROSS JOIN hole h ON h.screw = s.id AND b.pilot_lo <= h.hi - h.running_least
        AND b.pilot_hi >= h.lo - h.running_most
    UNION ALL
    SELECT s.id, b.number, NULL, NULL,
        10000000000000 + abs(h.twice_best - b.pilot_lo - b.pilot_hi)
    FROM limits l CROSS JOIN asked s
    CROSS JOIN integral b INDEXED BY integral_cut ON b.cut_lo IS NULL
    CROSS JOIN hole h ON h.screw = s.id AND b.pilot_lo <= h.hi - h.running_least
        AND b.pilot_hi >= h.lo - h.running_most
    UNION ALL
    SELECT s.id, b.number, b.cut_lo, b.cut_hi, 10000000000000 + 1000000000000
    FROM limits l CROSS JOIN widest w CROSS JOIN asked s
    CROSS JOIN integral b INDEXED BY integral_cut
        ON b.cut_lo BETWEEN s.head_lo + l.head_clearance - w.integral AND s.twice_largest / 2
        AND b.pilot_lo IS NULL AND b.cut_hi >= s.head_lo + l.head_clearance
        AND b.cut_lo + b.cut_hi <= s.twice_largest
    WHERE EXISTS (SELECT 1 FROM hole h WHERE h.screw = s.id)
    UNION ALL
    SELECT s.id, b.number, NULL, NULL, 10000000000000 + 1000000000000
    FROM asked s
    CROSS JOIN integral b INDEXED BY integral_cut ON b.cut_lo IS NULL AND b.pilot_lo IS NULL
    WHERE EXISTS (SELECT 1 FROM hole h WHERE h.screw = s.id))
GROUP BY screw, number;

SELECT s.id, coalesce(sum(a.rank < 10000000000000), 0), coalesce(sum(a.rank >= 10000000000000), 0)
FROM asked s LEFT JOIN answer a ON a.screw = s.id GROUP BY s.id ORDER BY s.id;

SELECT screw, iif(rank < 10000000000000, 'ready', 'unsure'), size, rank % 10000000000000, number
FROM (
    SELECT screw, rank, size, number, row_number() OVER (
        PARTITION BY screw ORDER BY rank / 10000000000000, size, rank, number) AS place
    FROM (
        SELECT a.screw, a.rank, a.number,
            CASE WHEN twice_cut IS NULL THEN 4 WHEN twice_cut < s.twice_small THEN 0
                WHEN twice_cut <= s.twice_tool THEN 1 WHEN twice_cut <= s.twice_recommended THEN 2
                ELSE 3 END AS size
        FROM asked s CROSS JOIN answer a ON a.screw = s.id))
WHERE place <= 20 ORDER BY screw, place;
