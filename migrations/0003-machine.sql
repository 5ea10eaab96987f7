-- SPDX-FileCopyrightText: 2026 The Counterpart authors
-- SPDX-License-Identifier: MIT

-- The speeds and the travel of the machines, for the operation sheet.

DROP TRIGGER machine_insert;
DROP TRIGGER machine_update;
DROP TRIGGER machine_delete;

-- Turns a minute with spaces between them; where variable, the slowest and the fastest.
ALTER TABLE machine ADD COLUMN speeds TEXT CONSTRAINT speeds CHECK (
    speeds <> '' AND speeds NOT GLOB '*[^0-9 ]*');
ALTER TABLE machine ADD COLUMN variable INTEGER CONSTRAINT variable CHECK (
    (variable IS NULL) = (speeds IS NULL) AND variable IN (0, 1));
-- Of the quill.
ALTER TABLE machine ADD COLUMN travel INTEGER CONSTRAINT travel CHECK (travel > 0);

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
