-- What practice shows of each person, kept up with every answer and worked out again from the records at any time.

CREATE TABLE mastery_skill (
    person_id   INTEGER NOT NULL,
    family      TEXT    NOT NULL,
    known       REAL    NOT NULL,  -- the chance that the skill is known
    answers     INTEGER NOT NULL,  -- problems, each counted once
    in_a_row    INTEGER NOT NULL,
    row_since   TEXT,
    level       INTEGER NOT NULL,  -- step of the ladder
    due_on      TEXT,
    mastered_on TEXT,
    PRIMARY KEY (person_id, family)
) STRICT, WITHOUT ROWID;

-- First answers to a part, right or not: the chances that each slip of the part had.
CREATE TABLE mastery_part (
    person_id INTEGER NOT NULL,
    part      TEXT    NOT NULL,
    family    TEXT    NOT NULL,
    chances   INTEGER NOT NULL,
    rights    INTEGER NOT NULL,
    PRIMARY KEY (person_id, part)
) STRICT, WITHOUT ROWID;

-- The slips a person has made at a first answer; chances and rights are counted from the two numbers kept here.
CREATE TABLE mastery_slip (
    person_id   INTEGER NOT NULL,
    part        TEXT    NOT NULL,
    slip        TEXT    NOT NULL,
    matches     INTEGER NOT NULL,
    chances_off INTEGER NOT NULL,  -- chances of the part that no longer count
    rights_off  INTEGER NOT NULL,  -- rights of the part at the last match
    last_on     TEXT    NOT NULL,
    PRIMARY KEY (person_id, part, slip)
) STRICT, WITHOUT ROWID;

CREATE TABLE mastery_person (
    person_id INTEGER PRIMARY KEY,
    skill     REAL    NOT NULL,  -- rating in logits
    answers   INTEGER NOT NULL
) STRICT;

CREATE TABLE mastery_family (
    family     TEXT    PRIMARY KEY,
    difficulty REAL    NOT NULL,  -- rating in logits
    asked      INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
