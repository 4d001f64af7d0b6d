-- Set-up sheets that were kept: what was typed, and what came out, is in the body of the record.
CREATE TABLE sheet_saved (
    seq         INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    crew_id     INTEGER NOT NULL, -- the crew of the person at that time; only that crew sees it
    person_id   INTEGER NOT NULL,
    card        TEXT    NOT NULL,
    tip         TEXT    NOT NULL,
    place       TEXT    NOT NULL,
    saved_at_ms INTEGER NOT NULL
) STRICT;

CREATE INDEX sheet_saved_of_crew ON sheet_saved (crew_id, seq);

CREATE TRIGGER sheet_saved_no_replace BEFORE INSERT ON sheet_saved
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM sheet_saved WHERE seq = NEW.seq);
END;

CREATE TRIGGER sheet_saved_no_update BEFORE UPDATE ON sheet_saved
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER sheet_saved_no_delete BEFORE DELETE ON sheet_saved
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;
