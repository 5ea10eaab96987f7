-- SPDX-FileCopyrightText: 2026 The Counterpart authors
-- SPDX-License-Identifier: MIT

-- The bars of the shop, for the make-list.

-- The bars that the shop turns pilots from, by diameter in nanometres; with no rows it is taken to
-- have the usual ones.
CREATE TABLE stock (
    diameter INTEGER PRIMARY KEY CONSTRAINT diameter CHECK (diameter > 0)
) STRICT;

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
