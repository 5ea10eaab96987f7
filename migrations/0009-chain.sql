-- SPDX-FileCopyrightText: 2026 The Counterpart authors
-- SPDX-License-Identifier: MIT

-- The place of every entry of the history, apart from the entries: a sum of its number, group, tool
-- and own sum, and of the place before it. It begins with the snapshot that follows this step.
CREATE TABLE history_chain (
    entry INTEGER PRIMARY KEY,
    sum TEXT NOT NULL
) STRICT;
CREATE INDEX history_row ON history (tbl, rowkey) WHERE number IS NULL AND tbl <> 'change_group';

-- A row is changed only if it is as its newest entry left it. (A row that was not there has none to
-- be held against.)
CREATE TRIGGER history_insert AFTER INSERT ON history
BEGIN
    SELECT counterpart_follow(NEW.tbl, NEW.rowkey, NEW.number, NEW.before, iif(NEW.number IS NULL,
        (SELECT after FROM history WHERE tbl = NEW.tbl AND rowkey = NEW.rowkey
            AND number IS NULL AND tbl <> 'change_group' AND id < NEW.id ORDER BY id DESC LIMIT 1),
        (SELECT after FROM history WHERE number = NEW.number AND tbl = NEW.tbl
            AND rowkey = NEW.rowkey AND id < NEW.id ORDER BY id DESC LIMIT 1)))
    WHERE NEW.before IS NOT NULL;
    INSERT INTO history_chain (entry, sum)
    VALUES (NEW.id, counterpart_digest(
        (SELECT sum FROM history_chain WHERE entry = NEW.id - 1),
        NEW.id, NEW.grp, NEW.number, NEW.digest));
END;
