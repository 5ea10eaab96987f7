-- SPDX-FileCopyrightText: 2026 The Counterpart authors
-- SPDX-License-Identifier: MIT

-- What the columns of a person's own files are called here: for files of one kind with one header
-- row (folded, as a row of CSV), our names in its order, empty for a column that is left out.
CREATE TABLE column_map (
    kind TEXT NOT NULL CONSTRAINT kind CHECK (kind IN ('bodies', 'pilots', 'screws', 'house')),
    header TEXT NOT NULL CONSTRAINT header CHECK (header <> ''),
    ours TEXT NOT NULL,
    PRIMARY KEY (kind, header)
) STRICT, WITHOUT ROWID;

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
