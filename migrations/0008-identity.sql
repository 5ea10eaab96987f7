-- SPDX-FileCopyrightText: 2026 The Counterpart authors
-- SPDX-License-Identifier: MIT

-- Which catalogue a file is a state of, so that copies of two catalogues can lie in one folder.
-- A table whose column has no constant default is made anew.

CREATE TABLE older_setting AS SELECT id, unit FROM setting;
DROP TABLE setting;
CREATE TABLE setting (
    id INTEGER PRIMARY KEY CONSTRAINT one_row CHECK (id = 1),
    unit TEXT NOT NULL CONSTRAINT unit CHECK (unit IN ('in', 'mm')),
    identity TEXT NOT NULL DEFAULT (lower(hex(randomblob(16))))
        CONSTRAINT identity CHECK (length(identity) = 32)
) STRICT;
INSERT INTO setting (id, unit) SELECT id, unit FROM older_setting;
DROP TABLE older_setting;
