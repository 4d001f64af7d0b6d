-- Sign-off, continued: demonstrations that were not passed, what a reader of the evidence is warned of, who may be an
-- assessor without the qualification, and photos.

-- A demonstration that was not passed. It never counts, so it is no row of signoff_demonstration.
CREATE TABLE signoff_not_passed (
    seq         INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    person_id   INTEGER NOT NULL REFERENCES people_person (id),
    assessor_id INTEGER NOT NULL REFERENCES people_person (id),
    card        TEXT    NOT NULL,
    conveyor    TEXT    NOT NULL CHECK (length(conveyor) BETWEEN 1 AND 60),
    happened_on TEXT    NOT NULL CHECK (happened_on IS date(happened_on)),
    missed      TEXT    NOT NULL CHECK (missed <> ''),  -- the critical observations without a yes, between blanks
    CHECK (assessor_id <> person_id)
) STRICT;

CREATE INDEX signoff_not_passed_of_person ON signoff_not_passed (person_id, card, happened_on);
CREATE INDEX signoff_not_passed_of_assessor ON signoff_not_passed (assessor_id, seq);

CREATE TRIGGER signoff_not_passed_no_replace BEFORE INSERT ON signoff_not_passed
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM signoff_not_passed WHERE seq = NEW.seq);
END;

CREATE TRIGGER signoff_not_passed_no_update BEFORE UPDATE ON signoff_not_passed
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER signoff_not_passed_no_delete BEFORE DELETE ON signoff_not_passed
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

CREATE TRIGGER signoff_not_passed_by_another BEFORE INSERT ON recordbook_entry
WHEN NEW.kind = 'signoff.not-passed' AND NEW.subject = NEW.actor
BEGIN
    SELECT RAISE(ABORT, 'nobody signs off themselves');
END;

-- What a reader of a signed record must not overlook.
CREATE TABLE signoff_flag (
    seq  INTEGER NOT NULL REFERENCES recordbook_entry (seq),
    flag TEXT    NOT NULL CHECK (flag IN ('explained', 'trained-by-assessor', 'appointed-assessor')),
    PRIMARY KEY (seq, flag)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER signoff_flag_no_replace BEFORE INSERT ON signoff_flag
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM signoff_flag WHERE seq = NEW.seq AND flag = NEW.flag);
END;

CREATE TRIGGER signoff_flag_no_update BEFORE UPDATE ON signoff_flag
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER signoff_flag_no_delete BEFORE DELETE ON signoff_flag
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

-- Appointments: for these days somebody may be assessor on a hardware without holding its qualification. The latest one of
-- a person and a card counts, so one that ends earlier takes it back.
CREATE TABLE signoff_assessor (
    seq       INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    person_id INTEGER NOT NULL REFERENCES people_person (id),
    card      TEXT    NOT NULL,
    first_day TEXT    NOT NULL CHECK (first_day IS date(first_day)),
    last_day  TEXT    NOT NULL CHECK (last_day IS date(last_day))
) STRICT;

CREATE INDEX signoff_assessor_of_person ON signoff_assessor (person_id, card, seq);

CREATE TRIGGER signoff_assessor_no_replace BEFORE INSERT ON signoff_assessor
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM signoff_assessor WHERE seq = NEW.seq);
END;

CREATE TRIGGER signoff_assessor_no_update BEFORE UPDATE ON signoff_assessor
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER signoff_assessor_no_delete BEFORE DELETE ON signoff_assessor
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

-- Photos of what was left, each in the data folder under its hash.
CREATE TABLE signoff_photo (
    seq    INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    of_seq INTEGER NOT NULL REFERENCES recordbook_entry (seq),  -- the signed record
    sha256 TEXT    NOT NULL CHECK (length(sha256) = 64)
) STRICT;

CREATE INDEX signoff_photo_of ON signoff_photo (of_seq, seq);

CREATE TRIGGER signoff_photo_no_replace BEFORE INSERT ON signoff_photo
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM signoff_photo WHERE seq = NEW.seq);
END;

CREATE TRIGGER signoff_photo_no_update BEFORE UPDATE ON signoff_photo
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER signoff_photo_no_delete BEFORE DELETE ON signoff_photo
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;
