-- The record book: an append-only ledger. Every answer, result and sign-off is one row here, linked to the row before it
-- by hash = SHA-256(0x00 || envelope); the envelope is described at beltmark.recordbook.Envelope.
-- Nothing is ever updated or deleted: a correction is a later record.

CREATE TABLE recordbook_entry (
    seq            INTEGER PRIMARY KEY CHECK (seq > 0),                  -- 1, 2, 3 … without gaps
    format         INTEGER NOT NULL CHECK (format > 0),                  -- of the envelope, now 1
    kind           TEXT    NOT NULL CHECK (kind GLOB '[a-z]*.[a-z]*'),   -- <feature>.<noun>
    operation      TEXT    NOT NULL UNIQUE CHECK (length(operation) BETWEEN 1 AND 200),
    subject        INTEGER NOT NULL,                                     -- the person it is about
    actor          INTEGER NOT NULL,                                     -- the person who did it
    happened_at_ms INTEGER NOT NULL,                                     -- when it is said to have happened
    recorded_at_ms INTEGER NOT NULL,                                     -- when it was stored, never before the row above
    body           TEXT    NOT NULL CHECK (json_valid(body)),            -- the exact text that was hashed
    previous_hash  BLOB    NOT NULL CHECK (length(previous_hash) = 32),  -- 32 zero bytes in the first row
    hash           BLOB    NOT NULL UNIQUE CHECK (length(hash) = 32)
) STRICT;

-- Refuses what would let INSERT OR REPLACE and upserts get at an earlier row, and any row that does not follow the last.
CREATE TRIGGER recordbook_entry_must_follow BEFORE INSERT ON recordbook_entry
BEGIN
    SELECT RAISE(ABORT, 'record book: the number must be the last one plus 1')
    WHERE NEW.seq IS NOT 1 + (SELECT coalesce(max(seq), 0) FROM recordbook_entry);
    SELECT RAISE(ABORT, 'record book: the operation is already recorded')
    WHERE EXISTS (SELECT 1 FROM recordbook_entry WHERE operation = NEW.operation);
    SELECT RAISE(ABORT, 'record book: the hash is already there')
    WHERE EXISTS (SELECT 1 FROM recordbook_entry WHERE hash = NEW.hash);
    SELECT RAISE(ABORT, 'record book: the previous hash must be that of the last record')
    WHERE NEW.previous_hash IS NOT
        coalesce((SELECT hash FROM recordbook_entry ORDER BY seq DESC LIMIT 1), zeroblob(32));
    SELECT RAISE(ABORT, 'record book: the time must not be before that of the last record')
    WHERE NEW.recorded_at_ms < (SELECT recorded_at_ms FROM recordbook_entry ORDER BY seq DESC LIMIT 1);
END;

CREATE TRIGGER recordbook_entry_no_update BEFORE UPDATE ON recordbook_entry
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER recordbook_entry_no_delete BEFORE DELETE ON recordbook_entry
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

-- Pattern for the other migrations. A table that spells out the body of a kind of record, so that it can be asked by
-- column, is itself never changed. It has the record's number as its key and carries three triggers of its own. The first
-- is needed because INSERT OR REPLACE deletes without firing delete triggers on a connection that has
-- recursive_triggers off; give it one more SELECT for each further UNIQUE column.
--
--   CREATE TABLE practice_answer (
--       seq INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
--       ...
--   ) STRICT;
--   CREATE TRIGGER practice_answer_no_replace BEFORE INSERT ON practice_answer
--   BEGIN
--       SELECT RAISE(ABORT, 'records are never replaced')
--       WHERE EXISTS (SELECT 1 FROM practice_answer WHERE seq = NEW.seq);
--   END;
--   CREATE TRIGGER practice_answer_no_update BEFORE UPDATE ON practice_answer
--   BEGIN
--       SELECT RAISE(ABORT, 'records are never changed');
--   END;
--   CREATE TRIGGER practice_answer_no_delete BEFORE DELETE ON practice_answer
--   BEGIN
--       SELECT RAISE(ABORT, 'records are never deleted');
--   END;
--
-- RecordTablesTest finds every table whose primary key refers to recordbook_entry (seq) and tries to change it. A table
-- that is meant to change (a running total, a session) must not have such a key.
