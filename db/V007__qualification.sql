-- What counts for or against a qualification, as features wrote it down with their records. Two times are kept of each
-- fact: the day at the site on which it happened, and when it was recorded. A correction is a later fact.

CREATE TABLE qualification_fact (
    seq         INTEGER NOT NULL REFERENCES recordbook_entry (seq),
    number      INTEGER NOT NULL CHECK (number > 0),  -- within the record: 1, 2, ...
    kind        TEXT    NOT NULL CHECK (kind IN (
        'clean', 'quiz-passed', 'paper-passed', 'demonstration', 'hold', 'event', 'release', 'withdrawal')),
    scope       TEXT    NOT NULL CHECK (scope IN ('person', 'card', 'procedure', 'all')),
    person_id   INTEGER CHECK ((person_id IS NOT NULL) = (scope = 'person')),
    scope_id    TEXT    CHECK ((scope_id IS NOT NULL) = (scope IN ('card', 'procedure'))),
    subject     TEXT    NOT NULL,                     -- family, quiz, paper, card or event; empty where there is none
    by_person   INTEGER,                              -- who signed a demonstration
    of_seq      INTEGER,                              -- the record that is released or withdrawn
    happened_on TEXT    NOT NULL CHECK (happened_on IS date(happened_on)),  -- the day at the site, as 2026-03-05
    known_at_ms INTEGER NOT NULL,                     -- when the record was stored
    nth         INTEGER CHECK ((nth IS NOT NULL) = (kind = 'clean')),  -- of the family's clean problems; only the first ones are here
    CHECK ((by_person IS NOT NULL) = (kind = 'demonstration')),
    CHECK ((of_seq IS NOT NULL) = (kind IN ('release', 'withdrawal'))),
    CHECK (scope = 'person' OR kind IN ('hold', 'event', 'release', 'withdrawal')),
    PRIMARY KEY (seq, number)
) STRICT;

CREATE INDEX qualification_fact_of_person ON qualification_fact (person_id) WHERE nth IS NULL;
CREATE INDEX qualification_fact_clean ON qualification_fact (person_id, nth, subject) WHERE nth IS NOT NULL;
CREATE INDEX qualification_fact_for_many ON qualification_fact (scope) WHERE person_id IS NULL;

CREATE TRIGGER qualification_fact_no_replace BEFORE INSERT ON qualification_fact
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM qualification_fact WHERE seq = NEW.seq AND number = NEW.number);
END;

CREATE TRIGGER qualification_fact_no_update BEFORE UPDATE ON qualification_fact
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER qualification_fact_no_delete BEFORE DELETE ON qualification_fact
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

-- The days on which a person did something that is on record, each once. Only the days after a long gap, and those
-- that were told late, are read in number; all others only to find the last one before a day.
CREATE TABLE qualification_activity (
    person_id   INTEGER NOT NULL,
    day         TEXT    NOT NULL CHECK (day IS date(day)),
    seq         INTEGER NOT NULL REFERENCES recordbook_entry (seq),
    known_at_ms INTEGER NOT NULL,
    gap_days    INTEGER NOT NULL,                         -- since the day before it that was then on record; 0 for the first
    late        INTEGER NOT NULL CHECK (late IN (0, 1)),  -- 1: a later day was on record already
    PRIMARY KEY (person_id, day)
) STRICT, WITHOUT ROWID;

CREATE INDEX qualification_activity_gap ON qualification_activity (person_id, day) WHERE gap_days >= 28 OR late = 1;

CREATE TRIGGER qualification_activity_no_replace BEFORE INSERT ON qualification_activity
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM qualification_activity WHERE person_id = NEW.person_id AND day = NEW.day);
END;

CREATE TRIGGER qualification_activity_no_update BEFORE UPDATE ON qualification_activity
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER qualification_activity_no_delete BEFORE DELETE ON qualification_activity
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

-- What is on record already.

INSERT INTO qualification_fact (seq, number, kind, scope, person_id, subject, happened_on, known_at_ms)
SELECT r.seq, 1, 'quiz-passed', 'person', r.person_id, r.quiz,
    date(r.finished_at_ms / 1000, 'unixepoch', 'localtime'), e.recorded_at_ms
FROM lockout_result r JOIN recordbook_entry e ON e.seq = r.seq
WHERE r.passed = 1;

INSERT INTO qualification_fact (seq, number, kind, scope, person_id, subject, by_person, happened_on, known_at_ms)
SELECT d.seq, 1, 'demonstration', 'person', d.person_id, d.card, d.assessor_id, d.happened_on, e.recorded_at_ms
FROM signoff_demonstration d JOIN recordbook_entry e ON e.seq = d.seq;

INSERT INTO qualification_fact (seq, number, kind, scope, person_id, subject, happened_on, known_at_ms, nth)
SELECT seq, 1, 'clean', 'person', person_id, family, day, known, nth
FROM (
    SELECT e.seq, t.person_id, t.family, date(t.finished_at_ms / 1000, 'unixepoch', 'localtime') AS day,
        e.recorded_at_ms AS known, row_number() OVER (PARTITION BY t.person_id, t.family ORDER BY e.seq) AS nth
    FROM practice_attempt t
        JOIN recordbook_entry e ON e.seq = (SELECT max(seq) FROM practice_answer WHERE attempt_id = t.id)
    WHERE t.clean = 1)
WHERE nth <= 10;

INSERT INTO qualification_activity (person_id, day, seq, known_at_ms, gap_days, late)
SELECT person_id, day, seq, known,
    coalesce(CAST(julianday(day) - julianday(lag(day) OVER (PARTITION BY person_id ORDER BY day)) AS INTEGER), 0), 0
FROM (
    SELECT subject AS person_id, date(happened_at_ms / 1000, 'unixepoch', 'localtime') AS day,
        min(seq) AS seq, min(recorded_at_ms) AS known
    FROM recordbook_entry
    WHERE kind IN ('practice.answer', 'practice.leaving', 'lockout.answer', 'signoff.demonstration')
    GROUP BY 1, 2);

-- The evidence of a cell shows the latest problems of a family without reading all of them.
CREATE INDEX practice_attempt_finished ON practice_attempt (person_id, family, finished_at_ms);
