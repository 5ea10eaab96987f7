-- SPDX-FileCopyrightText: 2026 The Counterpart authors
-- SPDX-License-Identifier: MIT

-- The catalogue file as it stands. Dimensions are four columns: the text as written, how it is
-- known, and the range it allows in nanometres; all four are NULL when it is unknown. The program
-- makes a file by the steps in migrations/, which a test holds to give this.

-- Bare numbers that the user writes are in this unit. The identity is made with the catalogue and
-- goes into every copy of it: 128 random bits.
CREATE TABLE setting (
    id INTEGER PRIMARY KEY CONSTRAINT one_row CHECK (id = 1),
    unit TEXT NOT NULL CONSTRAINT unit CHECK (unit IN ('in', 'mm')),
    identity TEXT NOT NULL DEFAULT (lower(hex(randomblob(16))))
        CONSTRAINT identity CHECK (length(identity) = 32)
) STRICT;

-- Every number that a body or pilot was ever given: rows are never taken out, so that no number
-- comes twice.
CREATE TABLE tool_number (
    number INTEGER PRIMARY KEY CONSTRAINT number CHECK (number BETWEEN 1 AND 999999999),
    kind TEXT NOT NULL CONSTRAINT kind CHECK (kind IN ('body', 'pilot'))
) STRICT;

-- Who has a tool, since when (UTC, ISO 8601) and by which day it is due back. Outside history, so
-- that a borrower's name can be forgotten.
CREATE TABLE loan (
    number INTEGER PRIMARY KEY REFERENCES tool_number (number),
    name TEXT NOT NULL CONSTRAINT name CHECK (name <> ''),
    since TEXT NOT NULL,
    due TEXT
) STRICT;

-- Loans that are over, until they are purged.
CREATE TABLE closed_loan (
    id INTEGER PRIMARY KEY,
    number INTEGER NOT NULL REFERENCES tool_number (number),
    name TEXT NOT NULL CONSTRAINT name CHECK (name <> ''),
    since TEXT NOT NULL,
    due TEXT,
    back TEXT NOT NULL
) STRICT;

-- One change: what the user asked for, and when (UTC, ISO 8601). A snapshot holds every row of
-- every kept table, after a migration.
CREATE TABLE change_group (
    id INTEGER PRIMARY KEY,
    at TEXT NOT NULL,
    schema_version INTEGER NOT NULL,
    words TEXT NOT NULL,
    undoes INTEGER UNIQUE REFERENCES change_group (id),
    snapshot INTEGER NOT NULL DEFAULT 0 CONSTRAINT snapshot CHECK (snapshot IN (0, 1))
) STRICT;

-- One changed row: before and after are the whole row as JSON, NULL where there was or is none;
-- rowkey is the primary key as a JSON array, number that of the tool it is about.
CREATE TABLE history (
    id INTEGER PRIMARY KEY,
    grp INTEGER NOT NULL REFERENCES change_group (id) DEFERRABLE INITIALLY DEFERRED,
    tbl TEXT NOT NULL,
    rowkey TEXT NOT NULL,
    number INTEGER,
    before TEXT,
    after TEXT,
    digest TEXT NOT NULL
) STRICT;
CREATE INDEX history_number ON history (number);
CREATE INDEX history_grp ON history (grp);
CREATE INDEX history_row ON history (tbl, rowkey) WHERE number IS NULL AND tbl <> 'change_group';

-- The place of every entry, apart from the entries: a sum of its number, group, tool and own sum,
-- and of the place before it. In a file older than this table it begins with a snapshot.
CREATE TABLE history_chain (
    entry INTEGER PRIMARY KEY,
    sum TEXT NOT NULL
) STRICT;

-- A counterbore or spotfacer, as found.
CREATE TABLE body (
    number INTEGER PRIMARY KEY REFERENCES tool_number (number),
    tool_set TEXT NOT NULL,
    kind TEXT NOT NULL CONSTRAINT kind CHECK (
        kind IN ('counterbore', 'spotfacer', 'back spotfacer', 'other', 'unknown')),
    cut_dia TEXT, cut_dia_how TEXT, cut_dia_lo INTEGER, cut_dia_hi INTEGER,
    flutes INTEGER CONSTRAINT flutes CHECK (flutes > 0),
    pilot_kind TEXT NOT NULL CONSTRAINT pilot_kind CHECK (
        pilot_kind IN ('integral', 'removable', 'none', 'unknown')),
    pilot_dia TEXT, pilot_dia_how TEXT, pilot_dia_lo INTEGER, pilot_dia_hi INTEGER,
    pilot_length TEXT, pilot_length_how TEXT, pilot_length_lo INTEGER, pilot_length_hi INTEGER,
    fluted INTEGER CONSTRAINT fluted CHECK (fluted IN (0, 1)),
    bore TEXT, bore_how TEXT, bore_lo INTEGER, bore_hi INTEGER,
    bore_depth TEXT, bore_depth_how TEXT, bore_depth_lo INTEGER, bore_depth_hi INTEGER,
    retention TEXT CONSTRAINT retention CHECK (
        retention IN ('set screw', 'threaded', 'detent', 'cross pin', 'sleeve', 'other')),
    set_screw TEXT NOT NULL,
    set_screw_at TEXT, set_screw_at_how TEXT, set_screw_at_lo INTEGER, set_screw_at_hi INTEGER,
    reach TEXT, reach_how TEXT, reach_lo INTEGER, reach_hi INTEGER,
    shank_dia TEXT, shank_dia_how TEXT, shank_dia_lo INTEGER, shank_dia_hi INTEGER,
    shank_kind TEXT NOT NULL,
    material TEXT NOT NULL,
    condition TEXT CONSTRAINT condition CHECK (
        condition IN ('good', 'fair', 'dull', 'dirty', 'rough', 'broken')),
    marking TEXT NOT NULL,
    place TEXT NOT NULL,
    note TEXT NOT NULL,
    retired TEXT,
    CONSTRAINT cut_dia CHECK (
        coalesce(cut_dia, cut_dia_how, cut_dia_lo, cut_dia_hi) IS NULL
        OR (cut_dia IS NOT NULL AND cut_dia_lo <= cut_dia_hi
            AND cut_dia_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE),
    CONSTRAINT pilot_dia CHECK (
        coalesce(pilot_dia, pilot_dia_how, pilot_dia_lo, pilot_dia_hi) IS NULL
        OR (pilot_dia IS NOT NULL AND pilot_dia_lo <= pilot_dia_hi
            AND pilot_dia_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE),
    CONSTRAINT pilot_length CHECK (
        coalesce(pilot_length, pilot_length_how, pilot_length_lo, pilot_length_hi) IS NULL
        OR (pilot_length IS NOT NULL AND pilot_length_lo <= pilot_length_hi
            AND pilot_length_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE),
    CONSTRAINT bore CHECK (
        coalesce(bore, bore_how, bore_lo, bore_hi) IS NULL
        OR (bore IS NOT NULL AND bore_lo <= bore_hi
            AND bore_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE),
    CONSTRAINT bore_depth CHECK (
        coalesce(bore_depth, bore_depth_how, bore_depth_lo, bore_depth_hi) IS NULL
        OR (bore_depth IS NOT NULL AND bore_depth_lo <= bore_depth_hi
            AND bore_depth_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE),
    CONSTRAINT set_screw_at CHECK (
        coalesce(set_screw_at, set_screw_at_how, set_screw_at_lo, set_screw_at_hi) IS NULL
        OR (set_screw_at IS NOT NULL AND set_screw_at_lo <= set_screw_at_hi
            AND set_screw_at_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE),
    CONSTRAINT reach CHECK (
        coalesce(reach, reach_how, reach_lo, reach_hi) IS NULL
        OR (reach IS NOT NULL AND reach_lo <= reach_hi
            AND reach_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE),
    CONSTRAINT shank_dia CHECK (
        coalesce(shank_dia, shank_dia_how, shank_dia_lo, shank_dia_hi) IS NULL
        OR (shank_dia IS NOT NULL AND shank_dia_lo <= shank_dia_hi
            AND shank_dia_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE)
) STRICT;

-- A removable pilot, as found, and the body it is in.
CREATE TABLE pilot (
    number INTEGER PRIMARY KEY REFERENCES tool_number (number),
    tool_set TEXT NOT NULL,
    pilot_dia TEXT, pilot_dia_how TEXT, pilot_dia_lo INTEGER, pilot_dia_hi INTEGER,
    pilot_length TEXT, pilot_length_how TEXT, pilot_length_lo INTEGER, pilot_length_hi INTEGER,
    fluted INTEGER CONSTRAINT fluted CHECK (fluted IN (0, 1)),
    shank_dia TEXT, shank_dia_how TEXT, shank_dia_lo INTEGER, shank_dia_hi INTEGER,
    shank_length TEXT, shank_length_how TEXT, shank_length_lo INTEGER, shank_length_hi INTEGER,
    has_flat INTEGER CONSTRAINT has_flat CHECK (has_flat IN (0, 1)),
    flat_at TEXT, flat_at_how TEXT, flat_at_lo INTEGER, flat_at_hi INTEGER,
    flat_length TEXT, flat_length_how TEXT, flat_length_lo INTEGER, flat_length_hi INTEGER,
    flat_depth TEXT, flat_depth_how TEXT, flat_depth_lo INTEGER, flat_depth_hi INTEGER,
    material TEXT NOT NULL,
    condition TEXT CONSTRAINT condition CHECK (
        condition IN ('good', 'fair', 'dull', 'dirty', 'rough', 'broken')),
    in_body INTEGER UNIQUE REFERENCES body (number),
    place TEXT NOT NULL,
    note TEXT NOT NULL,
    retired TEXT,
    CONSTRAINT pilot_dia CHECK (
        coalesce(pilot_dia, pilot_dia_how, pilot_dia_lo, pilot_dia_hi) IS NULL
        OR (pilot_dia IS NOT NULL AND pilot_dia_lo <= pilot_dia_hi
            AND pilot_dia_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE),
    CONSTRAINT pilot_length CHECK (
        coalesce(pilot_length, pilot_length_how, pilot_length_lo, pilot_length_hi) IS NULL
        OR (pilot_length IS NOT NULL AND pilot_length_lo <= pilot_length_hi
            AND pilot_length_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE),
    CONSTRAINT shank_dia CHECK (
        coalesce(shank_dia, shank_dia_how, shank_dia_lo, shank_dia_hi) IS NULL
        OR (shank_dia IS NOT NULL AND shank_dia_lo <= shank_dia_hi
            AND shank_dia_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE),
    CONSTRAINT shank_length CHECK (
        coalesce(shank_length, shank_length_how, shank_length_lo, shank_length_hi) IS NULL
        OR (shank_length IS NOT NULL AND shank_length_lo <= shank_length_hi
            AND shank_length_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE),
    CONSTRAINT flat_at CHECK (
        coalesce(flat_at, flat_at_how, flat_at_lo, flat_at_hi) IS NULL
        OR (flat_at IS NOT NULL AND flat_at_lo <= flat_at_hi
            AND flat_at_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE),
    CONSTRAINT flat_length CHECK (
        coalesce(flat_length, flat_length_how, flat_length_lo, flat_length_hi) IS NULL
        OR (flat_length IS NOT NULL AND flat_length_lo <= flat_length_hi
            AND flat_length_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE),
    CONSTRAINT flat_depth CHECK (
        coalesce(flat_depth, flat_depth_how, flat_depth_lo, flat_depth_hi) IS NULL
        OR (flat_depth IS NOT NULL AND flat_depth_lo <= flat_depth_hi
            AND flat_depth_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE)
) STRICT;

-- What a body or pilot needs before use, in order.
CREATE TABLE work (
    number INTEGER NOT NULL REFERENCES tool_number (number),
    position INTEGER NOT NULL CONSTRAINT position CHECK (position > 0),
    task TEXT NOT NULL,
    PRIMARY KEY (number, position)
) STRICT, WITHOUT ROWID;

-- A person put this pilot in this body; gone when either part was changed since.
CREATE TABLE trial (
    pilot INTEGER NOT NULL REFERENCES pilot (number),
    body INTEGER NOT NULL REFERENCES body (number),
    how TEXT NOT NULL CONSTRAINT how CHECK (
        how IN ('slides and holds', 'slides', 'binds', 'loose', 'will not go')),
    PRIMARY KEY (pilot, body)
) STRICT, WITHOUT ROWID;

-- The shop's own screws. name_key is the name in lower case without extra blanks.
CREATE TABLE own_screw (
    name_key TEXT NOT NULL PRIMARY KEY CONSTRAINT name CHECK (name_key <> ''),
    name TEXT NOT NULL,
    head_dia TEXT, head_dia_how TEXT, head_dia_lo INTEGER, head_dia_hi INTEGER,
    head_height TEXT, head_height_how TEXT, head_height_lo INTEGER, head_height_hi INTEGER,
    screw_dia TEXT, screw_dia_how TEXT, screw_dia_lo INTEGER, screw_dia_hi INTEGER,
    drive TEXT NOT NULL,
    drive_size TEXT NOT NULL,
    note TEXT NOT NULL,
    CONSTRAINT head_dia CHECK (
        coalesce(head_dia, head_dia_how, head_dia_lo, head_dia_hi) IS NULL
        OR (head_dia IS NOT NULL AND head_dia_lo <= head_dia_hi
            AND head_dia_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE),
    CONSTRAINT head_height CHECK (
        coalesce(head_height, head_height_how, head_height_lo, head_height_hi) IS NULL
        OR (head_height IS NOT NULL AND head_height_lo <= head_height_hi
            AND head_height_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE),
    CONSTRAINT screw_dia CHECK (
        coalesce(screw_dia, screw_dia_how, screw_dia_lo, screw_dia_hi) IS NULL
        OR (screw_dia IS NOT NULL AND screw_dia_lo <= screw_dia_hi
            AND screw_dia_how IN ('unstated', 'mark', 'rule', 'caliper', 'micrometer',
                'pin gauge', 'test hole', 'guess')) IS TRUE)
) STRICT, WITHOUT ROWID;

-- The screws the shop wants to be able to counterbore, in order of entry.
CREATE TABLE house (
    id INTEGER PRIMARY KEY,
    screw_key TEXT NOT NULL CONSTRAINT screw CHECK (screw_key <> ''),
    hole_key TEXT NOT NULL,
    screw TEXT NOT NULL,
    hole TEXT NOT NULL,
    note TEXT NOT NULL,
    UNIQUE (screw_key, hole_key)
) STRICT;

-- The shop's own limits, by the name of the default that each replaces.
CREATE TABLE practice (
    name TEXT NOT NULL PRIMARY KEY CONSTRAINT name CHECK (name <> ''),
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- Machines: what the spindle takes, its speeds in turns a minute with spaces between them (where
-- variable, the slowest and the fastest), and how far the quill travels.
CREATE TABLE machine (
    name_key TEXT NOT NULL PRIMARY KEY CONSTRAINT name CHECK (name_key <> ''),
    name TEXT NOT NULL,
    chuck_lo INTEGER,
    chuck_hi INTEGER CONSTRAINT chuck_range CHECK (chuck_lo <= chuck_hi),
    morse INTEGER CONSTRAINT morse CHECK (morse BETWEEN 0 AND 7),
    speeds TEXT CONSTRAINT speeds CHECK (speeds <> '' AND speeds NOT GLOB '*[^0-9 ]*'),
    variable INTEGER CONSTRAINT variable CHECK (
        (variable IS NULL) = (speeds IS NULL) AND variable IN (0, 1)),
    travel INTEGER CONSTRAINT travel CHECK (travel > 0),
    CONSTRAINT chuck_whole CHECK ((chuck_lo IS NULL) = (chuck_hi IS NULL))
) STRICT, WITHOUT ROWID;

-- The bars that the shop turns pilots from, by diameter in nanometres; with no rows it is taken to
-- have the usual ones.
CREATE TABLE stock (
    diameter INTEGER PRIMARY KEY CONSTRAINT diameter CHECK (diameter > 0)
) STRICT;

-- What the columns of a person's own files are called here: for files of one kind with one header
-- row (folded, as a row of CSV), our names in its order, empty for a column that is left out.
CREATE TABLE column_map (
    kind TEXT NOT NULL CONSTRAINT kind CHECK (kind IN ('bodies', 'pilots', 'screws', 'house')),
    header TEXT NOT NULL CONSTRAINT header CHECK (header <> ''),
    ours TEXT NOT NULL,
    PRIMARY KEY (kind, header)
) STRICT, WITHOUT ROWID;

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
CREATE INDEX body_by_marking ON body (marking) WHERE marking <> '';
CREATE INDEX body_retired ON body (number) WHERE retired IS NOT NULL;

-- The triggers write the history, so that no statement can forget it. The functions are the
-- program's: counterpart_row and counterpart_key make JSON, counterpart_group gives the change that
-- is going on, counterpart_digest sums up a row. Without them a change to these tables fails. A
-- test holds every trigger to name every column.
CREATE TRIGGER body_insert AFTER INSERT ON body
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'body' AS tbl, counterpart_key(NEW.number) AS rowkey, NEW.number AS number,
        NULL AS before,
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
            'retired', NEW.retired) AS after);
END;
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
CREATE TRIGGER body_delete AFTER DELETE ON body
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'body' AS tbl, counterpart_key(OLD.number) AS rowkey, OLD.number AS number,
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
        NULL AS after);
END;

CREATE TRIGGER pilot_insert AFTER INSERT ON pilot
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'pilot' AS tbl, counterpart_key(NEW.number) AS rowkey, NEW.number AS number,
        NULL AS before,
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
            'place', NEW.place, 'note', NEW.note, 'retired', NEW.retired) AS after);
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
CREATE TRIGGER pilot_delete AFTER DELETE ON pilot
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'pilot' AS tbl, counterpart_key(OLD.number) AS rowkey, OLD.number AS number,
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
        NULL AS after);
END;

CREATE TRIGGER work_insert AFTER INSERT ON work
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'work' AS tbl, counterpart_key(NEW.number, NEW.position) AS rowkey, NEW.number AS number,
        NULL AS before,
        counterpart_row(
            'number', NEW.number, 'position', NEW.position, 'task', NEW.task) AS after);
END;
CREATE TRIGGER work_update AFTER UPDATE ON work
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'work' AS tbl, counterpart_key(NEW.number, NEW.position) AS rowkey, NEW.number AS number,
        counterpart_row(
            'number', OLD.number, 'position', OLD.position, 'task', OLD.task) AS before,
        counterpart_row(
            'number', NEW.number, 'position', NEW.position, 'task', NEW.task) AS after)
    WHERE before IS NOT after;
END;
CREATE TRIGGER work_delete AFTER DELETE ON work
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'work' AS tbl, counterpart_key(OLD.number, OLD.position) AS rowkey, OLD.number AS number,
        counterpart_row(
            'number', OLD.number, 'position', OLD.position, 'task', OLD.task) AS before,
        NULL AS after);
END;

CREATE TRIGGER trial_insert AFTER INSERT ON trial
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'trial' AS tbl, counterpart_key(NEW.pilot, NEW.body) AS rowkey, NEW.pilot AS number,
        NULL AS before,
        counterpart_row(
            'pilot', NEW.pilot, 'body', NEW.body, 'how', NEW.how) AS after);
END;
CREATE TRIGGER trial_update AFTER UPDATE ON trial
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'trial' AS tbl, counterpart_key(NEW.pilot, NEW.body) AS rowkey, NEW.pilot AS number,
        counterpart_row(
            'pilot', OLD.pilot, 'body', OLD.body, 'how', OLD.how) AS before,
        counterpart_row(
            'pilot', NEW.pilot, 'body', NEW.body, 'how', NEW.how) AS after)
    WHERE before IS NOT after;
END;
CREATE TRIGGER trial_delete AFTER DELETE ON trial
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'trial' AS tbl, counterpart_key(OLD.pilot, OLD.body) AS rowkey, OLD.pilot AS number,
        counterpart_row(
            'pilot', OLD.pilot, 'body', OLD.body, 'how', OLD.how) AS before,
        NULL AS after);
END;

CREATE TRIGGER own_screw_insert AFTER INSERT ON own_screw
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'own_screw' AS tbl, counterpart_key(NEW.name_key) AS rowkey, NULL AS number,
        NULL AS before,
        counterpart_row(
            'name_key', NEW.name_key, 'name', NEW.name, 'head_dia', NEW.head_dia,
            'head_dia_how', NEW.head_dia_how, 'head_dia_lo', NEW.head_dia_lo,
            'head_dia_hi', NEW.head_dia_hi, 'head_height', NEW.head_height,
            'head_height_how', NEW.head_height_how, 'head_height_lo', NEW.head_height_lo,
            'head_height_hi', NEW.head_height_hi, 'screw_dia', NEW.screw_dia,
            'screw_dia_how', NEW.screw_dia_how, 'screw_dia_lo', NEW.screw_dia_lo,
            'screw_dia_hi', NEW.screw_dia_hi, 'drive', NEW.drive, 'drive_size', NEW.drive_size,
            'note', NEW.note) AS after);
END;
CREATE TRIGGER own_screw_update AFTER UPDATE ON own_screw
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'own_screw' AS tbl, counterpart_key(NEW.name_key) AS rowkey, NULL AS number,
        counterpart_row(
            'name_key', OLD.name_key, 'name', OLD.name, 'head_dia', OLD.head_dia,
            'head_dia_how', OLD.head_dia_how, 'head_dia_lo', OLD.head_dia_lo,
            'head_dia_hi', OLD.head_dia_hi, 'head_height', OLD.head_height,
            'head_height_how', OLD.head_height_how, 'head_height_lo', OLD.head_height_lo,
            'head_height_hi', OLD.head_height_hi, 'screw_dia', OLD.screw_dia,
            'screw_dia_how', OLD.screw_dia_how, 'screw_dia_lo', OLD.screw_dia_lo,
            'screw_dia_hi', OLD.screw_dia_hi, 'drive', OLD.drive, 'drive_size', OLD.drive_size,
            'note', OLD.note) AS before,
        counterpart_row(
            'name_key', NEW.name_key, 'name', NEW.name, 'head_dia', NEW.head_dia,
            'head_dia_how', NEW.head_dia_how, 'head_dia_lo', NEW.head_dia_lo,
            'head_dia_hi', NEW.head_dia_hi, 'head_height', NEW.head_height,
            'head_height_how', NEW.head_height_how, 'head_height_lo', NEW.head_height_lo,
            'head_height_hi', NEW.head_height_hi, 'screw_dia', NEW.screw_dia,
            'screw_dia_how', NEW.screw_dia_how, 'screw_dia_lo', NEW.screw_dia_lo,
            'screw_dia_hi', NEW.screw_dia_hi, 'drive', NEW.drive, 'drive_size', NEW.drive_size,
            'note', NEW.note) AS after)
    WHERE before IS NOT after;
END;
CREATE TRIGGER own_screw_delete AFTER DELETE ON own_screw
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'own_screw' AS tbl, counterpart_key(OLD.name_key) AS rowkey, NULL AS number,
        counterpart_row(
            'name_key', OLD.name_key, 'name', OLD.name, 'head_dia', OLD.head_dia,
            'head_dia_how', OLD.head_dia_how, 'head_dia_lo', OLD.head_dia_lo,
            'head_dia_hi', OLD.head_dia_hi, 'head_height', OLD.head_height,
            'head_height_how', OLD.head_height_how, 'head_height_lo', OLD.head_height_lo,
            'head_height_hi', OLD.head_height_hi, 'screw_dia', OLD.screw_dia,
            'screw_dia_how', OLD.screw_dia_how, 'screw_dia_lo', OLD.screw_dia_lo,
            'screw_dia_hi', OLD.screw_dia_hi, 'drive', OLD.drive, 'drive_size', OLD.drive_size,
            'note', OLD.note) AS before,
        NULL AS after);
END;

CREATE TRIGGER house_insert AFTER INSERT ON house
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'house' AS tbl, counterpart_key(NEW.id) AS rowkey, NULL AS number,
        NULL AS before,
        counterpart_row(
            'id', NEW.id, 'screw_key', NEW.screw_key, 'hole_key', NEW.hole_key,
            'screw', NEW.screw, 'hole', NEW.hole, 'note', NEW.note) AS after);
END;
CREATE TRIGGER house_update AFTER UPDATE ON house
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'house' AS tbl, counterpart_key(NEW.id) AS rowkey, NULL AS number,
        counterpart_row(
            'id', OLD.id, 'screw_key', OLD.screw_key, 'hole_key', OLD.hole_key,
            'screw', OLD.screw, 'hole', OLD.hole, 'note', OLD.note) AS before,
        counterpart_row(
            'id', NEW.id, 'screw_key', NEW.screw_key, 'hole_key', NEW.hole_key,
            'screw', NEW.screw, 'hole', NEW.hole, 'note', NEW.note) AS after)
    WHERE before IS NOT after;
END;
CREATE TRIGGER house_delete AFTER DELETE ON house
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'house' AS tbl, counterpart_key(OLD.id) AS rowkey, NULL AS number,
        counterpart_row(
            'id', OLD.id, 'screw_key', OLD.screw_key, 'hole_key', OLD.hole_key,
            'screw', OLD.screw, 'hole', OLD.hole, 'note', OLD.note) AS before,
        NULL AS after);
END;

CREATE TRIGGER practice_insert AFTER INSERT ON practice
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'practice' AS tbl, counterpart_key(NEW.name) AS rowkey, NULL AS number,
        NULL AS before,
        counterpart_row(
            'name', NEW.name, 'value', NEW.value) AS after);
END;
CREATE TRIGGER practice_update AFTER UPDATE ON practice
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'practice' AS tbl, counterpart_key(NEW.name) AS rowkey, NULL AS number,
        counterpart_row(
            'name', OLD.name, 'value', OLD.value) AS before,
        counterpart_row(
            'name', NEW.name, 'value', NEW.value) AS after)
    WHERE before IS NOT after;
END;
CREATE TRIGGER practice_delete AFTER DELETE ON practice
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'practice' AS tbl, counterpart_key(OLD.name) AS rowkey, NULL AS number,
        counterpart_row(
            'name', OLD.name, 'value', OLD.value) AS before,
        NULL AS after);
END;

CREATE TRIGGER machine_insert AFTER INSERT ON machine
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'machine' AS tbl, counterpart_key(NEW.name_key) AS rowkey, NULL AS number,
        NULL AS before,
        counterpart_row(
            'name_key', NEW.name_key, 'name', NEW.name, 'chuck_lo', NEW.chuck_lo,
            'chuck_hi', NEW.chuck_hi, 'morse', NEW.morse, 'speeds', NEW.speeds,
            'variable', NEW.variable, 'travel', NEW.travel) AS after);
END;
CREATE TRIGGER machine_update AFTER UPDATE ON machine
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'machine' AS tbl, counterpart_key(NEW.name_key) AS rowkey, NULL AS number,
        counterpart_row(
            'name_key', OLD.name_key, 'name', OLD.name, 'chuck_lo', OLD.chuck_lo,
            'chuck_hi', OLD.chuck_hi, 'morse', OLD.morse, 'speeds', OLD.speeds,
            'variable', OLD.variable, 'travel', OLD.travel) AS before,
        counterpart_row(
            'name_key', NEW.name_key, 'name', NEW.name, 'chuck_lo', NEW.chuck_lo,
            'chuck_hi', NEW.chuck_hi, 'morse', NEW.morse, 'speeds', NEW.speeds,
            'variable', NEW.variable, 'travel', NEW.travel) AS after)
    WHERE before IS NOT after;
END;
CREATE TRIGGER machine_delete AFTER DELETE ON machine
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'machine' AS tbl, counterpart_key(OLD.name_key) AS rowkey, NULL AS number,
        counterpart_row(
            'name_key', OLD.name_key, 'name', OLD.name, 'chuck_lo', OLD.chuck_lo,
            'chuck_hi', OLD.chuck_hi, 'morse', OLD.morse, 'speeds', OLD.speeds,
            'variable', OLD.variable, 'travel', OLD.travel) AS before,
        NULL AS after);
END;

CREATE TRIGGER stock_insert AFTER INSERT ON stock
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'stock' AS tbl, counterpart_key(NEW.diameter) AS rowkey, NULL AS number,
        NULL AS before,
        counterpart_row(
            'diameter', NEW.diameter) AS after);
END;
CREATE TRIGGER stock_update AFTER UPDATE ON stock
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'stock' AS tbl, counterpart_key(NEW.diameter) AS rowkey, NULL AS number,
        counterpart_row(
            'diameter', OLD.diameter) AS before,
        counterpart_row(
            'diameter', NEW.diameter) AS after)
    WHERE before IS NOT after;
END;
CREATE TRIGGER stock_delete AFTER DELETE ON stock
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'stock' AS tbl, counterpart_key(OLD.diameter) AS rowkey, NULL AS number,
        counterpart_row(
            'diameter', OLD.diameter) AS before,
        NULL AS after);
END;

CREATE TRIGGER column_map_insert AFTER INSERT ON column_map
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'column_map' AS tbl, counterpart_key(NEW.kind, NEW.header) AS rowkey, NULL AS number,
        NULL AS before,
        counterpart_row(
            'kind', NEW.kind, 'header', NEW.header, 'ours', NEW.ours) AS after);
END;
CREATE TRIGGER column_map_update AFTER UPDATE ON column_map
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'column_map' AS tbl, counterpart_key(NEW.kind, NEW.header) AS rowkey, NULL AS number,
        counterpart_row(
            'kind', OLD.kind, 'header', OLD.header, 'ours', OLD.ours) AS before,
        counterpart_row(
            'kind', NEW.kind, 'header', NEW.header, 'ours', NEW.ours) AS after)
    WHERE before IS NOT after;
END;
CREATE TRIGGER column_map_delete AFTER DELETE ON column_map
BEGIN
    INSERT INTO history (grp, tbl, rowkey, number, before, after, digest)
    SELECT counterpart_group(), tbl, rowkey, number, before, after,
        counterpart_digest(tbl, rowkey, before, after)
    FROM (SELECT
        'column_map' AS tbl, counterpart_key(OLD.kind, OLD.header) AS rowkey, NULL AS number,
        counterpart_row(
            'kind', OLD.kind, 'header', OLD.header, 'ours', OLD.ours) AS before,
        NULL AS after);
END;
