-- Totals over first attempts: of each person the first finished sitting of a quiz. Statistics of questions follow from
-- them, so that no page reads the history. Each total is kept for the crew the person was in and once more for all crews
-- (crew_id 0), by the month (UTC) the sitting was finished in. They move in the change that records the result.

-- How many people had each score.
CREATE TABLE lockout_first_score (
    quiz    TEXT    NOT NULL,
    crew_id INTEGER NOT NULL,
    month   TEXT    NOT NULL,  -- 2026-11
    asked   INTEGER NOT NULL,  -- how many questions the paper had
    score   INTEGER NOT NULL,
    people  INTEGER NOT NULL,
    passed  INTEGER NOT NULL,
    PRIMARY KEY (quiz, crew_id, month, asked, score)
) STRICT, WITHOUT ROWID;

-- How many people with each score were asked a question, and how many of them had it right.
CREATE TABLE lockout_first_question (
    quiz     TEXT    NOT NULL,
    crew_id  INTEGER NOT NULL,
    month    TEXT    NOT NULL,
    question TEXT    NOT NULL,
    asked    INTEGER NOT NULL,
    score    INTEGER NOT NULL,
    people   INTEGER NOT NULL,
    hits     INTEGER NOT NULL,
    PRIMARY KEY (quiz, crew_id, month, question, asked, score)
) STRICT, WITHOUT ROWID;

-- How many people missed an option in some way.
CREATE TABLE lockout_first_miss (
    quiz     TEXT    NOT NULL,
    crew_id  INTEGER NOT NULL,
    month    TEXT    NOT NULL,
    question TEXT    NOT NULL,
    kind     TEXT    NOT NULL,  -- chosen, left-out, too-early
    option   TEXT    NOT NULL,
    people   INTEGER NOT NULL,
    PRIMARY KEY (quiz, crew_id, month, question, kind, option)
) STRICT, WITHOUT ROWID;

-- The latest critical misses first.
CREATE INDEX lockout_critical_latest ON lockout_critical (quiz, last_result DESC);

-- What was recorded before these tables were there. Ways of missing an order are not told apart; they count from now on.
CREATE TEMP TABLE first_attempt AS
SELECT r.*, strftime('%Y-%m', r.finished_at_ms / 1000, 'unixepoch') AS month
FROM lockout_result r
WHERE r.seq = (SELECT min(f.seq) FROM lockout_result f WHERE f.person_id = r.person_id AND f.quiz = r.quiz);

INSERT INTO lockout_first_score (quiz, crew_id, month, asked, score, people, passed)
SELECT f.quiz, iif(n.rollup, 0, f.crew_id), f.month, f.asked, f.right_answers, count(*), sum(f.passed)
FROM first_attempt f CROSS JOIN (SELECT 0 AS rollup UNION ALL SELECT 1) n
GROUP BY 1, 2, 3, 4, 5;

INSERT INTO lockout_first_question (quiz, crew_id, month, question, asked, score, people, hits)
SELECT f.quiz, iif(n.rollup, 0, f.crew_id), f.month, a.question, f.asked, f.right_answers, count(*),
    sum(a.judgement = 'right')
FROM first_attempt f
CROSS JOIN (SELECT 0 AS rollup UNION ALL SELECT 1) n
JOIN lockout_answer a ON a.sitting = f.sitting
GROUP BY 1, 2, 3, 4, 5, 6;

INSERT INTO lockout_first_miss (quiz, crew_id, month, question, kind, option, people)
SELECT f.quiz, iif(n.rollup, 0, f.crew_id), f.month, a.question, 'chosen', c.value, count(*)
FROM first_attempt f
CROSS JOIN (SELECT 0 AS rollup UNION ALL SELECT 1) n
JOIN lockout_answer a ON a.sitting = f.sitting
JOIN recordbook_entry e ON e.seq = a.seq
JOIN json_each(e.body, '$.chosen') c
WHERE a.judgement = 'wrong' AND json_extract(e.body, '$.kind') <> 'put-in-order'
    AND c.value NOT IN (SELECT k.value FROM json_each(e.body, '$.right') k)
GROUP BY 1, 2, 3, 4, 5, 6;

INSERT INTO lockout_first_miss (quiz, crew_id, month, question, kind, option, people)
SELECT f.quiz, iif(n.rollup, 0, f.crew_id), f.month, a.question, 'left-out', k.value, count(*)
FROM first_attempt f
CROSS JOIN (SELECT 0 AS rollup UNION ALL SELECT 1) n
JOIN lockout_answer a ON a.sitting = f.sitting
JOIN recordbook_entry e ON e.seq = a.seq
JOIN json_each(e.body, '$.right') k
WHERE a.judgement = 'wrong' AND json_extract(e.body, '$.kind') = 'several-of'
    AND k.value NOT IN (SELECT c.value FROM json_each(e.body, '$.chosen') c)
GROUP BY 1, 2, 3, 4, 5, 6;

DROP TABLE first_attempt;
