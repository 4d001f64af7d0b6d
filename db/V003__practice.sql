-- Practice: what was answered is in the record book; practice_answer and practice_figure spell it out by column.

-- One person's going at one problem; changes when it is finished.
CREATE TABLE practice_attempt (
    id             INTEGER PRIMARY KEY,
    person_id      INTEGER NOT NULL,
    family         TEXT    NOT NULL,
    version        INTEGER NOT NULL,
    code           TEXT    NOT NULL,
    card           TEXT    NOT NULL,
    finished_at_ms INTEGER,          -- null while a part is open
    clean          INTEGER NOT NULL, -- 1 when finished with every part right at the first answer
    UNIQUE (person_id, family, version, code)
) STRICT;

-- One answer to a part, or the leaving of one.
CREATE TABLE practice_answer (
    seq            INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    attempt_id     INTEGER NOT NULL REFERENCES practice_attempt (id),
    part           TEXT    NOT NULL,
    verdict        TEXT    NOT NULL, -- of the worst blank; own-figure or steps-shown when the part was left
    answered_at_ms INTEGER NOT NULL
) STRICT;

CREATE INDEX practice_answer_attempt ON practice_answer (attempt_id, seq);

CREATE TRIGGER practice_answer_no_replace BEFORE INSERT ON practice_answer
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM practice_answer WHERE seq = NEW.seq);
END;

CREATE TRIGGER practice_answer_no_update BEFORE UPDATE ON practice_answer
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER practice_answer_no_delete BEFORE DELETE ON practice_answer
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

-- What was typed into each blank of an answer.
CREATE TABLE practice_figure (
    seq       INTEGER NOT NULL REFERENCES practice_answer (seq),
    blank     TEXT    NOT NULL,
    typed     TEXT    NOT NULL,
    length_nm INTEGER, -- as read, for a length
    option    TEXT,    -- as picked, for a choice
    verdict   TEXT    NOT NULL,
    slip      TEXT,
    PRIMARY KEY (seq, blank)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER practice_figure_no_replace BEFORE INSERT ON practice_figure
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM practice_figure WHERE seq = NEW.seq AND blank = NEW.blank);
END;

CREATE TRIGGER practice_figure_no_update BEFORE UPDATE ON practice_figure
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER practice_figure_no_delete BEFORE DELETE ON practice_figure
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

-- A running total for the crew board, kept up with every finished attempt.
CREATE TABLE practice_tally (
    person_id          INTEGER NOT NULL,
    family             TEXT    NOT NULL,
    attempts           INTEGER NOT NULL, -- finished ones
    clean_count        INTEGER NOT NULL,
    last_clean_at_ms   INTEGER,
    last_clean_attempt INTEGER REFERENCES practice_attempt (id),
    PRIMARY KEY (person_id, family)
) STRICT, WITHOUT ROWID;
