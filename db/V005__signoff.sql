-- Demonstrations that were signed off. What was signed is in the record book; these tables spell it out by column.

CREATE TABLE signoff_demonstration (
    seq          INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    person_id    INTEGER NOT NULL REFERENCES people_person (id),
    assessor_id  INTEGER NOT NULL REFERENCES people_person (id),
    card         TEXT    NOT NULL,
    card_version INTEGER NOT NULL,
    tip          TEXT    NOT NULL,
    blade_nm     INTEGER NOT NULL,
    orientation  TEXT    NOT NULL,
    conveyor     TEXT    NOT NULL CHECK (length(conveyor) BETWEEN 1 AND 60),
    happened_on  TEXT    NOT NULL CHECK (happened_on IS date(happened_on)),  -- the day at the site, as 2026-03-05
    CHECK (assessor_id <> person_id)
) STRICT;

CREATE INDEX signoff_demonstration_of_person ON signoff_demonstration (person_id, card, happened_on);
CREATE INDEX signoff_demonstration_of_assessor ON signoff_demonstration (assessor_id, seq);

CREATE TRIGGER signoff_demonstration_no_replace BEFORE INSERT ON signoff_demonstration
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM signoff_demonstration WHERE seq = NEW.seq);
END;

CREATE TRIGGER signoff_demonstration_no_update BEFORE UPDATE ON signoff_demonstration
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER signoff_demonstration_no_delete BEFORE DELETE ON signoff_demonstration
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

-- Nobody signs off themselves, not even by a record without a row above.
CREATE TRIGGER signoff_demonstration_by_another BEFORE INSERT ON recordbook_entry
WHEN NEW.kind = 'signoff.demonstration' AND NEW.subject = NEW.actor
BEGIN
    SELECT RAISE(ABORT, 'nobody signs off themselves');
END;

-- The as-left measures of a demonstration. Nothing is wanted of a belt mark; the mount mark hangs from it.
CREATE TABLE signoff_measure (
    seq          INTEGER NOT NULL REFERENCES signoff_demonstration (seq),
    measure      TEXT    NOT NULL,
    side         TEXT    NOT NULL CHECK (side IN ('left', 'right')),
    typed        TEXT    NOT NULL,
    measured_nm  INTEGER NOT NULL,
    wanted_nm    INTEGER,
    tolerance_nm INTEGER,
    PRIMARY KEY (seq, measure, side)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER signoff_measure_no_replace BEFORE INSERT ON signoff_measure
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM signoff_measure
        WHERE seq = NEW.seq AND measure = NEW.measure AND side = NEW.side);
END;

CREATE TRIGGER signoff_measure_no_update BEFORE UPDATE ON signoff_measure
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER signoff_measure_no_delete BEFORE DELETE ON signoff_measure
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;
