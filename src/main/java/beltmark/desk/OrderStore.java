package beltmark.desk;

import beltmark.web.Option;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** The statements of retraining orders, and of who was trained when. */
final class OrderStore {

    private static final String ORDERS = """
            SELECT o.seq, o.person_id, p.name AS person, c.name AS crew, o.code, o.ordered_on, o.due_on,
                d.seq IS NULL AS open
            FROM desk_order o
            JOIN people_person p ON p.id = o.person_id
            JOIN people_crew c ON c.id = p.crew_id
            LEFT JOIN desk_order_closed d ON d.of_seq = o.seq
            """;

    private static final String LIST_OPEN = ORDERS + "WHERE d.seq IS NULL ORDER BY o.due_on, p.name";

    private static final String FIND = ORDERS + "WHERE o.seq = :order";

    private static final String LIST_PEOPLE = """
            SELECT p.id, p.name || ', ' || c.name AS label
            FROM people_person p JOIN people_crew c ON c.id = p.crew_id
            WHERE p.active = 1 ORDER BY c.name, p.name""";

    private static final String STANDING = """
            SELECT f.seq, f.person_id, f.happened_on FROM qualification_fact f
            WHERE f.nth IS NULL AND NOT EXISTS (SELECT 1 FROM qualification_fact w
                WHERE w.person_id = f.person_id AND w.nth IS NULL AND w.kind = 'withdrawal' AND w.of_seq = f.seq)
            """;

    /** Whoever had passed the paper for authorized employees has to pass that one again, and not an easier one. */
    private static final String FIND_PAPER = STANDING + """
                AND f.person_id = :person AND f.kind = 'quiz-passed' AND f.seq > :order
                AND (f.subject = 'lockout' OR NOT EXISTS (SELECT 1 FROM qualification_fact b
                    WHERE b.person_id = :person AND b.nth IS NULL AND b.kind = 'quiz-passed' AND b.subject = 'lockout'
                        AND b.seq < :order))
            ORDER BY f.seq LIMIT 1""";

    private static final String FIND_DEMONSTRATION = STANDING + """
                AND f.person_id = :person AND f.kind = 'demonstration' AND f.seq > :order
                AND f.happened_on >= (SELECT ordered_on FROM desk_order WHERE seq = :order)
            ORDER BY f.seq LIMIT 1""";

    private static final String ADD = """
            INSERT INTO desk_order (seq, person_id, code, ordered_on, due_on)
            VALUES (:seq, :person, :code, :on, :due)""";

    private static final String ADD_CLOSED = """
            INSERT INTO desk_order_closed (seq, of_seq, trained_on, paper_seq)
            VALUES (:seq, :order, :trained, :paper)""";

    private static final String LIST_TRAINED = """
            SELECT p.id, p.name, t.day
            FROM people_person p LEFT JOIN (
                SELECT s.person_id, s.happened_on AS day FROM (
            """ + STANDING + """
                    AND f.kind = 'quiz-passed') s
                UNION
                SELECT o.person_id, d.trained_on FROM desk_order_closed d JOIN desk_order o ON o.seq = d.of_seq
            ) t ON t.person_id = p.id
            WHERE p.active = 1 ORDER BY p.name, p.id, t.day""";

    List<Order> listOpen(Handle handle) {
        return handle.createQuery(LIST_OPEN).map(OrderStore::toOrder).list();
    }

    Optional<Order> find(Handle handle, long order) {
        return handle.createQuery(FIND)
                .bind("order", order)
                .map(OrderStore::toOrder)
                .findOne();
    }

    /** {@return everybody of the site to choose from} */
    List<Option> listPeople(Handle handle) {
        return handle.createQuery(LIST_PEOPLE)
                .map((row, context) -> new Option(row.getString("id"), row.getString("label")))
                .list();
    }

    Optional<Proof> findPaper(Handle handle, Order order) {
        return findProof(handle, FIND_PAPER, order);
    }

    Optional<Proof> findDemonstration(Handle handle, Order order) {
        return findProof(handle, FIND_DEMONSTRATION, order);
    }

    private static Optional<Proof> findProof(Handle handle, String statement, Order order) {
        return handle.createQuery(statement)
                .bind("person", order.personId())
                .bind("order", order.record())
                .map((row, context) -> new Proof(row.getLong("seq"), LocalDate.parse(row.getString("happened_on"))))
                .findOne();
    }

    void add(Handle handle, long record, long person, LocalDate on, OrderMade made) {
        handle.createUpdate(ADD)
                .bind("seq", record)
                .bind("person", person)
                .bind("code", made.code())
                .bind("on", on.toString())
                .bind("due", made.dueOn().toString())
                .execute();
    }

    void addClosed(Handle handle, long record, OrderClosed closed) {
        handle.createUpdate(ADD_CLOSED)
                .bind("seq", record)
                .bind("order", closed.order())
                .bind("trained", closed.trainedOn().toString())
                .bind("paper", closed.paper())
                .execute();
    }

    /** {@return everybody of the site with the days of training, by name} */
    List<Trained> listTrained(Handle handle) {
        Map<Long, List<LocalDate>> days = new LinkedHashMap<>();
        Map<Long, String> names = new HashMap<>();
        handle.createQuery(LIST_TRAINED)
                .map((row, context) -> {
                    names.put(row.getLong("id"), row.getString("name"));
                    List<LocalDate> own = days.computeIfAbsent(row.getLong("id"), person -> new ArrayList<>());
                    String day = row.getString("day");
                    return day == null || own.add(LocalDate.parse(day));
                })
                .forEach(added -> {});
        return days.entrySet().stream()
                .map(one -> new Trained(names.getOrDefault(one.getKey(), ""), one.getValue()))
                .toList();
    }

    private static Order toOrder(ResultSet row, StatementContext context) throws SQLException {
        return new Order(
                row.getLong("seq"),
                row.getLong("person_id"),
                row.getString("person"),
                row.getString("crew"),
                row.getString("code"),
                LocalDate.parse(row.getString("ordered_on")),
                LocalDate.parse(row.getString("due_on")),
                row.getBoolean("open"));
    }
}
