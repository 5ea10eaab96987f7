-- SPDX-FileCopyrightText: 2026 The Counterpart authors
-- SPDX-License-Identifier: MIT

-- The place of every entry of the history, apart from the entries: a sum of its number, group, tool
-- and own sum, and of the place before it. It begins with the snapshot that follows this step.
CREATE TABLE history_chain (
    entry INTEGER PRIMARY KEY,
    sum TEXT NOT NULL
) STRICT;

-- The newest entry about a row that is no tool's.
CREATE INDEX history_row ON history (tbl, rowkey) WHERE number IS NULL AND tbl <> 'change_group';
