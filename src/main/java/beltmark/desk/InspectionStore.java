package beltmark.desk;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The statements of the inspections of procedures. */
final class InspectionStore {

    private static final String LIST_MACHINES = """
            SELECT v.procedure, v.machine, v.version,
                (SELECT f.entered_at_ms FROM procedure_version f WHERE f.procedure = v.procedure AND f.version = 1)
                    AS entered_at_ms,
                i.inspected_on, coalesce(p.name, '') AS inspector, coalesce(i.finding, 0) AS finding,
                coalesce((SELECT group_concat(e.name, ', ') FROM desk_inspection_included n
                    JOIN people_person e ON e.id = n.person_id WHERE n.seq = i.seq), '') AS included
            FROM procedure_version v
            LEFT JOIN desk_inspection i ON i.seq = (SELECT l.seq FROM desk_inspection l
                WHERE l.procedure = v.procedure ORDER BY l.inspected_on DESC, l.seq DESC LIMIT 1)
            LEFT JOIN people_person p ON p.id = i.inspector_id
            WHERE v.version = (SELECT max(n.version) FROM procedure_version n WHERE n.procedure = v.procedure)
            ORDER BY v.machine""";

    private static final String ADD = """
            INSERT INTO desk_inspection (seq, procedure, inspected_on, inspector_id, finding)
            VALUES (:seq, :procedure, :on, :inspector, :finding)""";

    private static final String ADD_INCLUDED =
            "INSERT INTO desk_inspection_included (seq, person_id) VALUES (:seq, :person)";

    private static final String LIST_FINDINGS = """
            SELECT i.seq FROM desk_inspection i
            WHERE i.procedure = :procedure AND i.finding = 1 AND i.inspected_on <= :on AND i.seq < :seq
            ORDER BY i.seq""";

    /** {@return the machines with a written procedure, by name} */
    List<Machine> listMachines(Handle handle, ZoneId zone) {
        return handle.createQuery(LIST_MACHINES)
                .map((row, context) -> toMachine(row, zone))
                .list();
    }

    void add(Handle handle, long record, InspectionMade made) {
        handle.createUpdate(ADD)
                .bind("seq", record)
                .bind("procedure", made.procedure())
                .bind("on", made.inspectedOn().toString())
                .bind("inspector", made.inspector())
                .bind("finding", made.finding())
                .execute();
        for (long person : made.included()) {
            handle.createUpdate(ADD_INCLUDED)
                    .bind("seq", record)
                    .bind("person", person)
                    .execute();
        }
    }

    /** {@return the records of the earlier inspections with findings that one without any settles} */
    List<Long> listSettled(Handle handle, long record, InspectionMade made) {
        return handle.createQuery(LIST_FINDINGS)
                .bind("procedure", made.procedure())
                .bind("on", made.inspectedOn().toString())
                .bind("seq", record)
                .mapTo(Long.class)
                .list();
    }

    private static Machine toMachine(ResultSet row, ZoneId zone) throws SQLException {
        return new Machine(
                row.getString("procedure"),
                row.getString("machine"),
                row.getInt("version"),
                LocalDate.ofInstant(Instant.ofEpochMilli(row.getLong("entered_at_ms")), zone),
                Optional.ofNullable(row.getString("inspected_on")).map(LocalDate::parse),
                row.getString("inspector"),
                row.getString("included"),
                row.getBoolean("finding"));
    }
}
