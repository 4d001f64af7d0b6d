-- The question bank: what the coordinator sets for single questions, which rule sets the site works under, which
-- questions a sitting drew, and the site's own written procedures, which questions are made from. All are records.

-- One setting of a switch; of each question and switch the latest row counts.
CREATE TABLE bank_switch (
    seq       INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    question  TEXT    NOT NULL,
    switch    TEXT    NOT NULL CHECK (switch IN ('confirmed', 'retired')),
    is_on     INTEGER NOT NULL CHECK (is_on IN (0, 1)),
    person_id INTEGER NOT NULL,
    set_at_ms INTEGER NOT NULL
) STRICT;

CREATE INDEX bank_switch_of_question ON bank_switch (question, switch, seq);

CREATE TRIGGER bank_switch_no_replace BEFORE INSERT ON bank_switch
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM bank_switch WHERE seq = NEW.seq);
END;
CREATE TRIGGER bank_switch_no_update BEFORE UPDATE ON bank_switch
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;
CREATE TRIGGER bank_switch_no_delete BEFORE DELETE ON bank_switch
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

-- The rule sets the site works under; the latest row counts.
CREATE TABLE bank_rules (
    seq          INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    rule_sets    TEXT    NOT NULL,  -- ids with blanks between
    person_id    INTEGER NOT NULL,
    chosen_at_ms INTEGER NOT NULL
) STRICT;

CREATE TRIGGER bank_rules_no_replace BEFORE INSERT ON bank_rules
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM bank_rules WHERE seq = NEW.seq);
END;
CREATE TRIGGER bank_rules_no_update BEFORE UPDATE ON bank_rules
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;
CREATE TRIGGER bank_rules_no_delete BEFORE DELETE ON bank_rules
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

-- What a sitting asks, where the questions were drawn for it.
CREATE TABLE lockout_drawn (
    seq       INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),  -- the record that opened the sitting
    questions TEXT    NOT NULL                                        -- ids with blanks between
) STRICT;

CREATE TRIGGER lockout_drawn_no_replace BEFORE INSERT ON lockout_drawn
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM lockout_drawn WHERE seq = NEW.seq);
END;
CREATE TRIGGER lockout_drawn_no_update BEFORE UPDATE ON lockout_drawn
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;
CREATE TRIGGER lockout_drawn_no_delete BEFORE DELETE ON lockout_drawn
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

CREATE INDEX lockout_sitting_of_person ON lockout_sitting (person_id, quiz);

-- A version of a machine's written procedure; what it says is in the body of the record. The latest version counts.
CREATE TABLE procedure_version (
    seq           INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    procedure     TEXT    NOT NULL,  -- the id of the procedure, made from the machine's name
    version       INTEGER NOT NULL CHECK (version > 0),
    machine       TEXT    NOT NULL,
    person_id     INTEGER NOT NULL,
    entered_at_ms INTEGER NOT NULL,
    UNIQUE (procedure, version)
) STRICT;

CREATE TRIGGER procedure_version_no_replace BEFORE INSERT ON procedure_version
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM procedure_version WHERE seq = NEW.seq);
    SELECT RAISE(ABORT, 'that version is there')
    WHERE EXISTS (SELECT 1 FROM procedure_version WHERE procedure = NEW.procedure AND version = NEW.version);
END;
CREATE TRIGGER procedure_version_no_update BEFORE UPDATE ON procedure_version
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;
CREATE TRIGGER procedure_version_no_delete BEFORE DELETE ON procedure_version
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

-- Who holds a procedure: has passed a paper that asked about this version of it.
CREATE TABLE procedure_holder (
    procedure TEXT    NOT NULL,
    version   INTEGER NOT NULL,
    person_id INTEGER NOT NULL,
    result    INTEGER NOT NULL,  -- the record of the last result that passed
    PRIMARY KEY (procedure, version, person_id)
) STRICT, WITHOUT ROWID;
