package beltmark.mastery;

import beltmark.core.mastery.Elo;
import beltmark.core.mastery.HabitState;
import beltmark.core.mastery.SkillState;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** All SQL of mastery. */
final class MasteryStore {

    private static final String LIST_SKILLS = "SELECT * FROM mastery_skill WHERE person_id = :person";

    private static final String FIND_SKILL =
            "SELECT * FROM mastery_skill WHERE person_id = :person AND family = :family";

    private static final String KEEP_SKILL = """
            INSERT INTO mastery_skill
                (person_id, family, known, answers, in_a_row, row_since, level, due_on, mastered_on)
            VALUES (:person, :family, :known, :answers, :inARow, :rowSince, :level, :dueOn, :masteredOn)
            ON CONFLICT (person_id, family) DO UPDATE SET
                known = excluded.known, answers = excluded.answers, in_a_row = excluded.in_a_row,
                row_since = excluded.row_since, level = excluded.level, due_on = excluded.due_on,
                mastered_on = excluded.mastered_on
            """;

    private static final String FIND_RATING = """
            SELECT coalesce((SELECT skill FROM mastery_person WHERE person_id = :person), 0) AS skill,
                coalesce((SELECT answers FROM mastery_person WHERE person_id = :person), 0) AS answers,
                coalesce((SELECT difficulty FROM mastery_family WHERE family = :family), 0) AS difficulty,
                coalesce((SELECT asked FROM mastery_family WHERE family = :family), 0) AS asked
            """;

    private static final String KEEP_PERSON_RATING = """
            INSERT INTO mastery_person (person_id, skill, answers) VALUES (:person, :skill, :answers)
            ON CONFLICT (person_id) DO UPDATE SET skill = excluded.skill, answers = excluded.answers
            """;

    private static final String KEEP_FAMILY_RATING = """
            INSERT INTO mastery_family (family, difficulty, asked) VALUES (:family, :difficulty, :asked)
            ON CONFLICT (family) DO UPDATE SET difficulty = excluded.difficulty, asked = excluded.asked
            """;

    private static final String LIST_DIFFICULTIES = "SELECT family, difficulty FROM mastery_family";

    private static final String COUNT_PART = """
            INSERT INTO mastery_part (person_id, part, family, chances, rights)
            VALUES (:person, :part, :family, 1, :rights)
            ON CONFLICT (person_id, part) DO UPDATE SET
                chances = chances + excluded.chances, rights = rights + excluded.rights
            """;

    private static final String FIND_HABIT = """
            SELECT p.family, s.part, s.slip, s.matches, p.chances - 1 - s.chances_off AS chances,
                p.rights - :rights - s.rights_off AS rights, s.last_on
            FROM mastery_slip s JOIN mastery_part p ON p.person_id = s.person_id AND p.part = s.part
            WHERE s.person_id = :person AND s.part = :part AND s.slip = :slip
            """;

    private static final String LIST_HABITS = """
            SELECT p.family, s.part, s.slip, s.matches, p.chances - s.chances_off AS chances,
                p.rights - s.rights_off AS rights, s.last_on
            FROM mastery_slip s JOIN mastery_part p ON p.person_id = s.person_id AND p.part = s.part
            WHERE s.person_id = :person
            ORDER BY s.last_on DESC, s.part, s.slip
            """;

    private static final String KEEP_HABIT = """
            INSERT INTO mastery_slip (person_id, part, slip, matches, chances_off, rights_off, last_on)
            SELECT person_id, part, :slip, :matches, chances - :chances, rights, :lastOn
            FROM mastery_part WHERE person_id = :person AND part = :part
            ON CONFLICT (person_id, part, slip) DO UPDATE SET
                matches = excluded.matches, chances_off = excluded.chances_off,
                rights_off = excluded.rights_off, last_on = excluded.last_on
            """;

    Map<String, SkillState> listSkills(Handle handle, long person) {
        Map<String, SkillState> skills = new HashMap<>();
        handle.createQuery(LIST_SKILLS)
                .bind("person", person)
                .map((row, context) -> Map.entry(row.getString("family"), skill(row)))
                .forEach(entry -> skills.put(entry.getKey(), entry.getValue()));
        return skills;
    }

    Optional<SkillState> findSkill(Handle handle, long person, String family) {
        return handle.createQuery(FIND_SKILL)
                .bind("person", person)
                .bind("family", family)
                .map((row, context) -> skill(row))
                .findOne();
    }

    private static SkillState skill(ResultSet row) throws SQLException {
        return new SkillState(
                row.getDouble("known"),
                row.getInt("answers"),
                row.getInt("in_a_row"),
                day(row, "row_since"),
                row.getInt("level"),
                day(row, "due_on"),
                day(row, "mastered_on"));
    }

    private static @Nullable LocalDate day(ResultSet row, String column) throws SQLException {
        String text = row.getString(column);
        return text == null ? null : LocalDate.parse(text);
    }

    private static @Nullable String text(@Nullable LocalDate day) {
        return day == null ? null : day.toString();
    }

    void keep(Handle handle, long person, String family, SkillState state) {
        handle.createUpdate(KEEP_SKILL)
                .bind("person", person)
                .bind("family", family)
                .bind("known", state.known())
                .bind("answers", state.answers())
                .bind("inARow", state.inARow())
                .bind("rowSince", text(state.rowSince()))
                .bind("level", state.level())
                .bind("dueOn", text(state.dueOn()))
                .bind("masteredOn", text(state.masteredOn()))
                .execute();
    }

    Elo rating(Handle handle, long person, String family) {
        return handle.createQuery(FIND_RATING)
                .bind("person", person)
                .bind("family", family)
                .map((row, context) -> new Elo(
                        row.getDouble("skill"),
                        row.getInt("answers"),
                        row.getDouble("difficulty"),
                        row.getInt("asked")))
                .one();
    }

    void keep(Handle handle, long person, String family, Elo rating) {
        handle.createUpdate(KEEP_PERSON_RATING)
                .bind("person", person)
                .bind("skill", rating.skill())
                .bind("answers", rating.answers())
                .execute();
        handle.createUpdate(KEEP_FAMILY_RATING)
                .bind("family", family)
                .bind("difficulty", rating.difficulty())
                .bind("asked", rating.asked())
                .execute();
    }

    Map<String, Double> difficulties(Handle handle) {
        Map<String, Double> difficulties = new HashMap<>();
        handle.createQuery(LIST_DIFFICULTIES)
                .map((row, context) -> Map.entry(row.getString("family"), row.getDouble("difficulty")))
                .forEach(entry -> difficulties.put(entry.getKey(), entry.getValue()));
        return difficulties;
    }

    void countPart(Handle handle, FirstAnswer answer) {
        handle.createUpdate(COUNT_PART)
                .bind("person", answer.person())
                .bind("part", answer.part())
                .bind("family", answer.family())
                .bind("rights", answer.right() ? 1 : 0)
                .execute();
    }

    /** {@return a slip before this answer, which is already counted with its part} */
    Optional<HabitState> findHabit(Handle handle, FirstAnswer answer, String slip) {
        return handle.createQuery(FIND_HABIT)
                .bind("person", answer.person())
                .bind("part", answer.part())
                .bind("slip", slip)
                .bind("rights", answer.right() ? 1 : 0)
                .map((row, context) -> habit(row).state())
                .findOne();
    }

    List<Habit> listHabits(Handle handle, long person) {
        return handle.createQuery(LIST_HABITS)
                .bind("person", person)
                .map((row, context) -> habit(row))
                .list();
    }

    private static Habit habit(ResultSet row) throws SQLException {
        return new Habit(
                row.getString("family"),
                row.getString("part"),
                row.getString("slip"),
                new HabitState(
                        row.getInt("matches"), row.getInt("chances"), row.getInt("rights"), day(row, "last_on")));
    }

    void keep(Handle handle, FirstAnswer answer, String slip, HabitState state) {
        handle.createUpdate(KEEP_HABIT)
                .bind("person", answer.person())
                .bind("part", answer.part())
                .bind("slip", slip)
                .bind("matches", state.matches())
                .bind("chances", state.chances())
                .bind("lastOn", text(state.lastOn()))
                .execute();
    }
}
