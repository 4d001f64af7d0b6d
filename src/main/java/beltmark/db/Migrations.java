package beltmark.db;

import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.configuration.FluentConfiguration;

/** The numbered scripts of the folder db, each run once, in order, in a transaction of its own. */
final class Migrations {

    private Migrations() {}

    static void run(DataSource source) {
        try {
            new Flyway(configured(source)).migrate();
        } catch (FlywayException e) {
            throw new CannotOpen(
                    "The data was written by another version of Beltmark, or a migration failed; nothing was changed. "
                            + e.getMessage(),
                    e);
        }
    }

    /** Migrates an empty database as far as another one was. */
    static void runUpTo(String version, DataSource source) {
        try {
            new Flyway(configured(source).target(version)).migrate();
        } catch (FlywayException e) {
            throw new CannotOpen("The data is of version " + version + ", which this Beltmark does not know.", e);
        }
    }

    private static FluentConfiguration configured(DataSource source) {
        return Flyway.configure()
                .dataSource(source)
                .locations("classpath:db")
                .validateMigrationNaming(true)
                .cleanDisabled(true)
                // by default later migrations of a newer program would be passed over in silence
                .ignoreMigrationPatterns(new String[0]);
    }
}
