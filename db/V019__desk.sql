-- The coordinator's desk: who was ordered to be retrained, what closed the order, and the inspections of procedures.
CREATE TABLE desk_order (
    seq        INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    person_id  INTEGER NOT NULL REFERENCES people_person (id),
    code       TEXT    NOT NULL CHECK (code IN ('job', 'machine', 'procedure', 'inspection', 'belief')),
    ordered_on TEXT    NOT NULL CHECK (ordered_on IS date(ordered_on)),
    due_on     TEXT    NOT NULL CHECK (due_on IS date(due_on) AND due_on >= ordered_on)
) STRICT;

CREATE TRIGGER desk_order_no_replace BEFORE INSERT ON desk_order
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM desk_order WHERE seq = NEW.seq);
END;

CREATE TRIGGER desk_order_no_update BEFORE UPDATE ON desk_order
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER desk_order_no_delete BEFORE DELETE ON desk_order
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

CREATE TABLE desk_order_closed (
    seq        INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    of_seq     INTEGER NOT NULL UNIQUE REFERENCES desk_order (seq),
    trained_on TEXT    NOT NULL CHECK (trained_on IS date(trained_on)),
    paper_seq  INTEGER NOT NULL REFERENCES recordbook_entry (seq)  -- the paper that was passed after the order
) STRICT;

CREATE TRIGGER desk_order_closed_no_replace BEFORE INSERT ON desk_order_closed
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM desk_order_closed WHERE seq = NEW.seq OR of_seq = NEW.of_seq);
END;

CREATE TRIGGER desk_order_closed_no_update BEFORE UPDATE ON desk_order_closed
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER desk_order_closed_no_delete BEFORE DELETE ON desk_order_closed
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

-- What 29 CFR 1910.147(c)(6)(ii) asks for: the machine, the date, the employees included, the person who inspected.
CREATE TABLE desk_inspection (
    seq          INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    procedure    TEXT    NOT NULL,
    inspected_on TEXT    NOT NULL CHECK (inspected_on IS date(inspected_on)),
    inspector_id INTEGER NOT NULL REFERENCES people_person (id),
    finding      INTEGER NOT NULL CHECK (finding IN (0, 1))
) STRICT;

CREATE INDEX desk_inspection_of_procedure ON desk_inspection (procedure, inspected_on);

CREATE TRIGGER desk_inspection_no_replace BEFORE INSERT ON desk_inspection
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM desk_inspection WHERE seq = NEW.seq);
END;

CREATE TRIGGER desk_inspection_no_update BEFORE UPDATE ON desk_inspection
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER desk_inspection_no_delete BEFORE DELETE ON desk_inspection
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

CREATE TABLE desk_inspection_included (
    seq       INTEGER NOT NULL REFERENCES desk_inspection (seq),
    person_id INTEGER NOT NULL REFERENCES people_person (id),
    PRIMARY KEY (seq, person_id)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER desk_inspection_included_no_replace BEFORE INSERT ON desk_inspection_included
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM desk_inspection_included WHERE seq = NEW.seq AND person_id = NEW.person_id);
END;

CREATE TRIGGER desk_inspection_included_no_update BEFORE UPDATE ON desk_inspection_included
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER desk_inspection_included_no_delete BEFORE DELETE ON desk_inspection_included
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;
