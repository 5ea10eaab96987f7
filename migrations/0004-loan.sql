-- SPDX-FileCopyrightText: 2026 The Counterpart authors
-- SPDX-License-Identifier: MIT

-- Loans that are over, until they are purged. Outside history, like the open ones.

CREATE TABLE closed_loan (
    id INTEGER PRIMARY KEY,
    number INTEGER NOT NULL REFERENCES tool_number (number),
    name TEXT NOT NULL CONSTRAINT name CHECK (name <> ''),
    since TEXT NOT NULL,
    due TEXT,
    back TEXT NOT NULL
) STRICT;
