-- SPDX-FileCopyrightText: 2026 The Counterpart authors
-- SPDX-License-Identifier: MIT

-- The cut-down question for the one screw. Run from the top of the sources.
PRAGMA temp_store = MEMORY;
CREATE TEMP TABLE asked AS SELECT * FROM screw WHERE id = 0;
.read tests/speed/ask.sql
