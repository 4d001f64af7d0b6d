-- Which crew somebody is in, and since when. Kept up to date with the records people.joined, people.moved, people.left
-- and people.returned; the crew in people_person is the one of today.

CREATE TABLE people_membership (
    person_id INTEGER NOT NULL REFERENCES people_person (id),
    from_date TEXT    NOT NULL CHECK (from_date IS date(from_date)),
    to_date   TEXT    CHECK (to_date IS date(to_date) AND to_date >= from_date),  -- the first day no longer, NULL while it lasts
    crew_id   INTEGER NOT NULL REFERENCES people_crew (id),
    PRIMARY KEY (person_id, from_date)
) STRICT, WITHOUT ROWID;

CREATE INDEX people_membership_of_crew ON people_membership (crew_id, from_date);

-- nothing says since when they have been there: as long as anybody may ask about
INSERT INTO people_membership (person_id, from_date, to_date, crew_id)
SELECT id, '0001-01-01', NULL, crew_id FROM people_person;
