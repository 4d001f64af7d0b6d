package beltmark.db;

import beltmark.core.units.Length;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.argument.AbstractArgumentFactory;
import org.jdbi.v3.core.argument.Argument;
import org.jdbi.v3.core.config.ConfigRegistry;
import org.jdbi.v3.core.mapper.ColumnMapper;
import org.jdbi.v3.core.spi.JdbiPlugin;
import org.jdbi.v3.core.statement.StatementContext;
import org.jspecify.annotations.Nullable;

/** How our types are columns: a {@link Length} is an INTEGER of nanometres, an {@link Instant} one of epoch milliseconds. */
final class Columns implements JdbiPlugin {

    @Override
    public void customizeJdbi(Jdbi jdbi) {
        jdbi.registerArgument(new LengthArgument());
        jdbi.registerArgument(new InstantArgument());
        jdbi.registerColumnMapper(Length.class, new LengthMapper());
        jdbi.registerColumnMapper(Instant.class, new InstantMapper());
    }

    private static final class LengthArgument extends AbstractArgumentFactory<Length> {

        LengthArgument() {
            super(Types.BIGINT);
        }

        @Override
        protected Argument build(Length length, ConfigRegistry config) {
            return (position, statement, context) -> statement.setLong(position, length.nanometres());
        }
    }

    private static final class InstantArgument extends AbstractArgumentFactory<Instant> {

        InstantArgument() {
            super(Types.BIGINT);
        }

        @Override
        protected Argument build(Instant instant, ConfigRegistry config) {
            return (position, statement, context) -> statement.setLong(position, instant.toEpochMilli());
        }
    }

    private static final class LengthMapper implements ColumnMapper<@Nullable Length> {

        @Override
        public @Nullable Length map(ResultSet row, int column, StatementContext context) throws SQLException {
            long nanometres = row.getLong(column);
            return row.wasNull() ? null : Length.ofNanometres(nanometres);
        }
    }

    private static final class InstantMapper implements ColumnMapper<@Nullable Instant> {

        @Override
        public @Nullable Instant map(ResultSet row, int column, StatementContext context) throws SQLException {
            long milliseconds = row.getLong(column);
            return row.wasNull() ? null : Instant.ofEpochMilli(milliseconds);
        }
    }
}
