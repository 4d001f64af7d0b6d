-- Calendars of what runs out in a crew. Whoever has the address of one may read it until it is revoked; of the token in
-- the address only the hash is stored. That one was made or revoked is in the record book.
CREATE TABLE expiry_feed (
    id            INTEGER PRIMARY KEY,
    crew_id       INTEGER NOT NULL REFERENCES people_crew (id),
    token_hash    BLOB    NOT NULL UNIQUE CHECK (length(token_hash) = 32),  -- SHA-256
    language      TEXT    NOT NULL,                                         -- tag of beltmark.texts.Language
    made_by       INTEGER NOT NULL REFERENCES people_person (id),
    made_at_ms    INTEGER NOT NULL,
    revoked_at_ms INTEGER
) STRICT;

CREATE INDEX expiry_feed_of_crew ON expiry_feed (crew_id);
