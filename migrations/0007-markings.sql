-- SPDX-FileCopyrightText: 2026 The Counterpart authors
-- SPDX-License-Identifier: MIT

-- Bodies by what is marked on them: a marking that names a screw says what the tool was made for.
CREATE INDEX body_by_marking ON body (marking) WHERE marking <> '';
