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
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every String constant of every Store is a whole statement, and the migrated schema has all that it names. */
class SqlTest {

    @TempDir
    Path folder;

    @Test
    void everyStatementOfEveryStoreFitsTheSchema() {
        List<Field> statements = statementsOfStores();
        assertFalse(statements.isEmpty());
        try (Database database = Database.open(folder)) {
            List<String> faults = database.read(handle -> faults(handle, statements));
            assertEquals(List.of(), faults);
        }
    }

    private static List<Field> statementsOfStores() {
        return new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages("beltmark").stream()
                        .filter(type -> type.getSimpleName().endsWith("Store"))
                        .map(JavaClass::reflect)
                        .flatMap(type -> Arrays.stream(type.getDeclaredFields()))
                        .filter(field -> Modifier.isStatic(field.getModifiers()) && field.getType() == String.class)
                        .toList();
    }

    private static List<String> faults(Handle handle, List<Field> statements) {
        List<String> faults = new ArrayList<>();
        for (Field field : statements) {
            try (PreparedStatement prepared = handle.getConnection().prepareStatement(text(field))) {
                prepared.getParameterMetaData();
            } catch (SQLException e) {
                faults.add(field.getDeclaringClass().getSimpleName() + "." + field.getName() + ": " + e.getMessage());
            }
        }
        return faults;
    }

    /** The statement, with one value in the place of a list that is only known when it runs. */
    private static String text(Field field) {
        try {
            field.setAccessible(true);
            return String.valueOf(field.get(null)).replaceAll("<\\w+>", "1");
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }
}
