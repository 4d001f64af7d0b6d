-- Fills an empty site with 1,000 people in 40 crews and :answers answers over the last :days days; see LargeSite.
DROP TRIGGER recordbook_entry_must_follow;
CREATE TEMP TABLE span AS SELECT CAST(unixepoch() AS INTEGER) * 1000 AS until_ms, :days * 86400000 AS length_ms, :answers / 5 AS attempts;
INSERT INTO people_crew (name, demo)
    WITH n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 40) SELECT printf('Large crew %02d', i), 1 FROM n;
INSERT INTO people_person (name, crew_id, roles, language, graduation, active)
    WITH n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < 999)
    SELECT printf('Person %04d', i), (SELECT min(id) FROM people_crew WHERE name LIKE 'Large crew%') + i / 25, iif(i % 25 = 0, 'supervisor', 'new-hire'),
        'en', 'SIXTEENTH_INCH', 1 FROM n;
CREATE TEMP TABLE base AS SELECT (SELECT min(id) FROM people_person WHERE name LIKE 'Person 0%') AS person,
    (SELECT coalesce(max(seq), 0) FROM recordbook_entry) AS seq;
-- five answers to an attempt, each attempt on one day, the people in turn
INSERT INTO practice_attempt (id, person_id, family, version, code, card, finished_at_ms, clean)
    WITH n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i + 1 < (SELECT attempts FROM span))
    SELECT i + 1, base.person + i % 1000, CASE i / 1000 % 4 WHEN 0 THEN 'bench' WHEN 1 THEN 'mount-marks' WHEN 2 THEN 'orientation' ELSE 'spring-length' END,
        1, printf('L%x', i), 'wide-belt-rig', until_ms - length_ms + length_ms / attempts * i, i % 7 > 2
    FROM n, span, base;
INSERT INTO recordbook_entry (seq, format, kind, operation, subject, actor, happened_at_ms, recorded_at_ms, body, previous_hash, hash)
    WITH n(k) AS (SELECT 0 UNION ALL SELECT k + 1 FROM n WHERE k < 4)
    SELECT base.seq + (t.id - 1) * 5 + k + 1, 1, 'practice.answer', printf('large-%d-%d', t.id, k), t.person_id, t.person_id, t.finished_at_ms, t.finished_at_ms,
        '{"family":"bench","part":"mount-mark","figures":[]}', zeroblob(32), randomblob(32)
    FROM practice_attempt t, n, base WHERE t.code LIKE 'L%' ORDER BY t.id, k;
INSERT INTO practice_answer (seq, attempt_id, part, verdict, answered_at_ms)
    SELECT e.seq, (e.seq - base.seq - 1) / 5 + 1, 'mount-mark', 'right', e.happened_at_ms FROM recordbook_entry e, base WHERE e.seq > base.seq;
INSERT INTO practice_figure (seq, blank, typed, length_nm, option, verdict, slip)
    SELECT a.seq, 'left', '28 3/8', 720725000, NULL, 'right', NULL FROM practice_answer a, base WHERE a.seq > base.seq;
-- each year everybody sits the quiz twice and shows a set-up on each card
CREATE TEMP TABLE work AS
    WITH y(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM y WHERE (i + 1) * 365 < :days), k(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM k WHERE i < 4),
        p(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM p WHERE i < 999)
    SELECT row_number() OVER () + (SELECT max(seq) FROM recordbook_entry) AS seq, base.person + p.i AS person, k.i AS what,
        until_ms - (y.i * 365 + (p.i * 7 + k.i * 3) % 420) * 86400000 AS at_ms
    FROM y, p, k, base, span ORDER BY y.i DESC;
INSERT INTO recordbook_entry (seq, format, kind, operation, subject, actor, happened_at_ms, recorded_at_ms, body, previous_hash, hash)
    SELECT seq, 1, 'large.work', 'large-work-' || seq, person, person, at_ms, at_ms, '{"meaning":"shown"}', zeroblob(32), randomblob(32) FROM work ORDER BY seq;
INSERT INTO lockout_sitting (seq, person_id, quiz, version, seed, started_at_ms)
    SELECT seq, person, 'lockout', 1, 1, at_ms FROM work WHERE what < 2;
INSERT INTO lockout_result (seq, sitting, person_id, crew_id, quiz, version, right_answers, asked, needed, critical_misses, passed, finished_at_ms)
    SELECT seq, seq, person, 1, 'lockout', 1, 20, 20, 16, '', what, at_ms FROM work WHERE what < 2;
INSERT INTO signoff_demonstration (seq, person_id, assessor_id, card, card_version, tip, blade_nm, orientation, conveyor, happened_on)
    SELECT seq, person, 1, CASE what WHEN 2 THEN 'wide-belt-rig' WHEN 3 THEN 'narrow-belt-rig' ELSE 'incline-rig' END, 1, 'carbide', 500000000, 'overslung', 'Bora',
        date(at_ms / 1000, 'unixepoch', 'localtime') FROM work WHERE what >= 2;
INSERT INTO qualification_fact (seq, number, kind, scope, person_id, subject, happened_on, known_at_ms)
    SELECT seq, 1, 'quiz-passed', 'person', person, 'lockout', date(at_ms / 1000, 'unixepoch', 'localtime'), at_ms FROM work WHERE what = 1;
INSERT INTO qualification_fact (seq, number, kind, scope, person_id, subject, by_person, happened_on, known_at_ms)
    SELECT d.seq, 1, 'demonstration', 'person', d.person_id, d.card, 1, d.happened_on, w.at_ms FROM work w JOIN signoff_demonstration d ON d.seq = w.seq;
INSERT INTO qualification_fact (seq, number, kind, scope, person_id, subject, happened_on, known_at_ms, nth)
    SELECT last, 1, 'clean', 'person', person_id, family, day, finished_at_ms, nth FROM (
        SELECT base.seq + t.id * 5 AS last, t.person_id, t.family, date(t.finished_at_ms / 1000, 'unixepoch', 'localtime') AS day, t.finished_at_ms,
            row_number() OVER (PARTITION BY t.person_id, t.family ORDER BY t.id) AS nth
        FROM practice_attempt t, base WHERE t.clean = 1 AND t.code LIKE 'L%') WHERE nth <= 10;
INSERT INTO qualification_activity (person_id, day, seq, known_at_ms, gap_days, late)
    SELECT person_id, day, seq, known,
        coalesce(CAST(julianday(day) - julianday(lag(day) OVER (PARTITION BY person_id ORDER BY day)) AS INTEGER), 0), 0
    FROM (SELECT subject AS person_id, date(happened_at_ms / 1000, 'unixepoch', 'localtime') AS day, min(recordbook_entry.seq) AS seq, min(recorded_at_ms) AS known
        FROM recordbook_entry, base WHERE recordbook_entry.seq > base.seq GROUP BY 1, 2);
DROP TABLE work;
DROP TABLE base;
DROP TABLE span;
