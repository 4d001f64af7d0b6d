-- Certificates that were issued, and those that were revoked. A later certificate of the same person and qualification
-- takes the place of the earlier ones; nothing has to be written for that.

CREATE TABLE certificate_issued (
    seq           INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    serial        TEXT    NOT NULL UNIQUE CHECK (length(serial) = 22),  -- 128 random bits
    person_id     INTEGER NOT NULL REFERENCES people_person (id),
    qualification TEXT    NOT NULL,
    from_date     TEXT    NOT NULL CHECK (from_date IS date(from_date)),
    to_date       TEXT    NOT NULL CHECK (to_date IS date(to_date) AND to_date >= from_date),  -- the last day
    token         TEXT    NOT NULL CHECK (length(token) BETWEEN 1 AND 2000)  -- what is printed: payload and signature
) STRICT;

CREATE INDEX certificate_issued_of_person ON certificate_issued (person_id, qualification, seq);

CREATE TRIGGER certificate_issued_no_replace BEFORE INSERT ON certificate_issued
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM certificate_issued WHERE seq = NEW.seq OR serial = NEW.serial);
END;

CREATE TRIGGER certificate_issued_no_update BEFORE UPDATE ON certificate_issued
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER certificate_issued_no_delete BEFORE DELETE ON certificate_issued
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;

CREATE TABLE certificate_revoked (
    seq    INTEGER PRIMARY KEY REFERENCES recordbook_entry (seq),
    of_seq INTEGER NOT NULL UNIQUE REFERENCES certificate_issued (seq),
    reason TEXT    NOT NULL CHECK (length(reason) BETWEEN 1 AND 300)
) STRICT;

CREATE TRIGGER certificate_revoked_no_replace BEFORE INSERT ON certificate_revoked
BEGIN
    SELECT RAISE(ABORT, 'records are never replaced')
    WHERE EXISTS (SELECT 1 FROM certificate_revoked WHERE seq = NEW.seq OR of_seq = NEW.of_seq);
END;

CREATE TRIGGER certificate_revoked_no_update BEFORE UPDATE ON certificate_revoked
BEGIN
    SELECT RAISE(ABORT, 'records are never changed');
END;

CREATE TRIGGER certificate_revoked_no_delete BEFORE DELETE ON certificate_revoked
BEGIN
    SELECT RAISE(ABORT, 'records are never deleted');
END;
