package beltmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import beltmark.db.Database;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jdbi.v3.core.Handle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages must not get slower with the years: no statement behind one reads a whole table of records. */
class QueryPlanTest {

    /** Tables with a row for each record; the record's number is their key. */
    private static final Pattern OF_RECORDS = Pattern.compile(
            "(?i)\\b(recordbook_entry|lockout_(?:sitting|answer|result)"
                    + "|practice_(?:attempt|answer|figure)|signoff_demonstration|qualification_(?:fact|activity))\\b(?: AS)? ?([a-z]\\b)?");

    /** The export is the whole history, and what it is built on is never run by itself. */
    private static final Set<String> EXPORT = Set.of("ReviewStore.FINISHED", "ReviewStore.LIST_FINISHED");

    @TempDir
    Path folder;

    @Test
    void noPageReadsTheWholeHistory() throws ReflectiveOperationException {
        List<String> slow = new ArrayList<>();
        int seen = 0;
        try (Database database = Database.open(folder)) {
            for (Field field : statements()) {
                String name = field.getDeclaringClass().getSimpleName() + "." + field.getName();
                String statement = String.valueOf(field.get(null));
                if (!EXPORT.contains(name) && database.read(handle -> scansRecords(handle, statement))) {
                    slow.add(name);
                }
                seen++;
            }
        }
        assertFalse(seen == 0);
        assertEquals(List.of(), slow);
    }

    private static boolean scansRecords(Handle handle, String statement) {
        List<String> plan = handle.createQuery("EXPLAIN QUERY PLAN " + statement.replaceAll(":\\w+", "1"))
                .map((row, context) -> row.getString("detail"))
                .list();
        List<String> names = new ArrayList<>();
        Matcher tables = OF_RECORDS.matcher(statement);
        while (tables.find()) {
            names.add(tables.group(2) == null ? tables.group(1) : tables.group(2));
        }
        return plan.stream().anyMatch(step -> names.stream().anyMatch(name -> step.matches("SCAN " + name + "\\b.*")));
    }

    private static List<Field> statements() {
        List<Field> fields = new ClassFileImporter()
                        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                        .importPackages(
                                "beltmark.lockout",
                                "beltmark.review",
                                "beltmark.board",
                                "beltmark.qualification",
                                "beltmark.jobcheck",
                                "beltmark.expiry")
                        .stream()
                        .filter(type -> type.getSimpleName().endsWith("Store"))
                        .map(JavaClass::reflect)
                        .flatMap(type -> Arrays.stream(type.getDeclaredFields()))
                        .filter(field -> Modifier.isStatic(field.getModifiers()) && field.getType() == String.class)
                        .toList();
        fields.forEach(field -> field.setAccessible(true));
        return fields;
    }
}
