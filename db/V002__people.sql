-- People, their crews, PINs and sessions. These rows say how things are now and may change; what must be remembered of a
-- change is in the record book.

CREATE TABLE people_crew (
    id   INTEGER PRIMARY KEY,
    name TEXT    NOT NULL UNIQUE,
    demo INTEGER NOT NULL CHECK (demo IN (0, 1))  -- 1: invented, and every page says so
) STRICT;

CREATE TABLE people_person (
    id         INTEGER PRIMARY KEY,
    name       TEXT    NOT NULL,
    crew_id    INTEGER NOT NULL REFERENCES people_crew (id),
    roles      TEXT    NOT NULL,                         -- words of beltmark.web.Role with a blank between
    language   TEXT    NOT NULL,                         -- tag of beltmark.texts.Language
    graduation TEXT    NOT NULL,                         -- name of beltmark.core.units.Graduation
    active     INTEGER NOT NULL CHECK (active IN (0, 1)),
    UNIQUE (crew_id, name)
) STRICT;

CREATE TABLE people_pin (
    person_id   INTEGER PRIMARY KEY REFERENCES people_person (id),
    hash        TEXT    NOT NULL,                              -- see beltmark.people.PinHash
    tries       INTEGER NOT NULL CHECK (tries BETWEEN 0 AND 10), -- taken before the PIN is compared, given back when right
    must_change INTEGER NOT NULL CHECK (must_change IN (0, 1))  -- 1: given out by somebody else, good for one sign-in
) STRICT;

CREATE TABLE people_session (
    token_hash    BLOB    PRIMARY KEY CHECK (length(token_hash) = 32),  -- SHA-256 of what the browser holds
    person_id     INTEGER NOT NULL REFERENCES people_person (id),
    started_at_ms INTEGER NOT NULL,
    seen_at_ms    INTEGER NOT NULL                                      -- written at most once a minute
) STRICT, WITHOUT ROWID;

CREATE INDEX people_session_of_person ON people_session (person_id);
