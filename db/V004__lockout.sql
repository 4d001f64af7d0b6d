-- The lockout quiz. The first three tables spell out records and are never changed; the others are totals that the
-- review reads instead of the whole history, written in the same transaction as the record that moves them.

-- A sitting: one person, one version of the quiz, one order of questions and options that follows from the seed.
CREATE TABLE lockout_sitting (
    seq           INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    person_id     INTEGER NOT NULL,
    quiz          TEXT    NOT NULL,
    version       INTEGER NOT NULL,
    seed          INTEGER NOT NULL,
    started_at_ms INTEGER NOT NULL
) STRICT;

CREATE TRIGGER lockout_sitting_no_replace BEFORE INSERT ON lockout_sitting
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM lockout_sitting WHERE seq = NEW.seq);
END;
CREATE TRIGGER lockout_sitting_no_update BEFORE UPDATE ON lockout_sitting
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;
CREATE TRIGGER lockout_sitting_no_delete BEFORE DELETE ON lockout_sitting
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

-- The one answer to a question of a sitting; what was shown and the key are in the body of the record.
CREATE TABLE lockout_answer (
    seq            INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    sitting        INTEGER NOT NULL REFERENCES lockout_sitting (seq),
    question       TEXT    NOT NULL,
    chosen         TEXT    NOT NULL,  -- ids of the options chosen, or all in the order given, with blanks between
    judgement      TEXT    NOT NULL CHECK (judgement IN ('right', 'wrong')),
    answered_at_ms INTEGER NOT NULL,
    UNIQUE (sitting, question)
) STRICT;

CREATE TRIGGER lockout_answer_no_replace BEFORE INSERT ON lockout_answer
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM lockout_answer WHERE seq = NEW.seq);
    SELECT RAISE(ABORT, 'the question is already answered')
    WHERE EXISTS (SELECT 1 FROM lockout_answer WHERE sitting = NEW.sitting AND question = NEW.question);
END;
CREATE TRIGGER lockout_answer_no_update BEFORE UPDATE ON lockout_answer
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;
CREATE TRIGGER lockout_answer_no_delete BEFORE DELETE ON lockout_answer
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

-- What came of a finished sitting.
CREATE TABLE lockout_result (
    seq             INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    sitting         INTEGER NOT NULL UNIQUE REFERENCES lockout_sitting (seq),
    person_id       INTEGER NOT NULL,
    crew_id         INTEGER NOT NULL,  -- the crew of the person at that time
    quiz            TEXT    NOT NULL,
    version         INTEGER NOT NULL,
    right_answers   INTEGER NOT NULL,
    asked           INTEGER NOT NULL,
    needed          INTEGER NOT NULL,
    critical_misses TEXT    NOT NULL,  -- ids of the questions, with blanks between
    passed          INTEGER NOT NULL CHECK (passed IN (0, 1)),
    finished_at_ms  INTEGER NOT NULL
) STRICT;

CREATE INDEX lockout_result_of_person ON lockout_result (person_id, seq);

CREATE TRIGGER lockout_result_no_replace BEFORE INSERT ON lockout_result
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM lockout_result WHERE seq = NEW.seq);
    SELECT RAISE(ABORT, 'the sitting has a result')
    WHERE EXISTS (SELECT 1 FROM lockout_result WHERE sitting = NEW.sitting);
END;
CREATE TRIGGER lockout_result_no_update BEFORE UPDATE ON lockout_result
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;
CREATE TRIGGER lockout_result_no_delete BEFORE DELETE ON lockout_result
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

-- Where each person stands: the sitting that waits to be finished, the last result, the last result that passed.
CREATE TABLE lockout_standing (
    person_id     INTEGER NOT NULL,
    quiz          TEXT    NOT NULL,
    open_sitting  INTEGER,
    last_result   INTEGER,
    passed_result INTEGER,
    PRIMARY KEY (person_id, quiz)
) STRICT, WITHOUT ROWID;

-- How often each question was asked and missed, over finished sittings.
CREATE TABLE lockout_count (
    quiz     TEXT    NOT NULL,
    version  INTEGER NOT NULL,
    crew_id  INTEGER NOT NULL,
    question TEXT    NOT NULL,
    asked    INTEGER NOT NULL,
    missed   INTEGER NOT NULL,
    PRIMARY KEY (quiz, version, crew_id, question)
) STRICT, WITHOUT ROWID;

-- How often each option was missed, and in which way, over finished sittings.
CREATE TABLE lockout_miss (
    quiz     TEXT    NOT NULL,
    version  INTEGER NOT NULL,
    crew_id  INTEGER NOT NULL,
    question TEXT    NOT NULL,
    kind     TEXT    NOT NULL,  -- chosen, left-out, too-early
    option   TEXT    NOT NULL,
    times    INTEGER NOT NULL,
    PRIMARY KEY (quiz, version, crew_id, question, kind, option)
) STRICT, WITHOUT ROWID;

-- The critical questions each person has missed, and in which result last.
CREATE TABLE lockout_critical (
    person_id   INTEGER NOT NULL,
    quiz        TEXT    NOT NULL,
    question    TEXT    NOT NULL,
    times       INTEGER NOT NULL,
    last_result INTEGER NOT NULL,
    PRIMARY KEY (person_id, quiz, question)
) STRICT, WITHOUT ROWID;
