-- Packs of practice on paper: who got which problems.
CREATE TABLE practice_pack (
    seq        INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    trainer_id INTEGER NOT NULL,
    crew_id    INTEGER NOT NULL, -- the crew of the trainer at that time
    made_at_ms INTEGER NOT NULL
) STRICT;

CREATE TRIGGER practice_pack_no_replace BEFORE INSERT ON practice_pack
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM practice_pack WHERE seq = NEW.seq);
END;

CREATE TRIGGER practice_pack_no_update BEFORE UPDATE ON practice_pack
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER practice_pack_no_delete BEFORE DELETE ON practice_pack
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

CREATE TABLE practice_pack_problem (
    seq       INTEGER NOT NULL REFERENCES practice_pack (seq),
    person_id INTEGER NOT NULL,
    place     INTEGER NOT NULL, -- 1, 2, … on the person's sheet
    family    TEXT    NOT NULL,
    version   INTEGER NOT NULL,
    code      TEXT    NOT NULL,
    PRIMARY KEY (seq, person_id, place)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER practice_pack_problem_no_replace BEFORE INSERT ON practice_pack_problem
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM practice_pack_problem
        WHERE seq = NEW.seq AND person_id = NEW.person_id AND place = NEW.place);
END;

CREATE TRIGGER practice_pack_problem_no_update BEFORE UPDATE ON practice_pack_problem
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER practice_pack_problem_no_delete BEFORE DELETE ON practice_pack_problem
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;
