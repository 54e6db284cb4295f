package org.toeline.ledger.store.place;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.OptionalInt;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.place.LedgerException.Fault;

/** The tables, and how they came to be: the migrations in {@code schema}, the same for both databases. */
public final class Schema {

    private static final Sentences SENTENCES = Sentences.of(Schema.class);

    /** The number of the newest migration. */
    public static final int LATEST = 3;

    /** Held, so that its level stays: what goes wrong is thrown, and told by who catches it. */
    private static final Logger FLYWAY_LOG = Logger.getLogger("org.flywaydb");

    /** Of version 4 (RFC 9562, section 5.4), made by SQLite. */
    private static final String RANDOM_UUID = "lower(hex(randomblob(4)) || '-' || hex(randomblob(2)) || '-4' || "
            + "substr(hex(randomblob(2)), 2) || '-a' || substr(hex(randomblob(2)), 2) || '-' || hex(randomblob(6)))";

    private Schema() {}

    /** The version of a database's tables; empty when it has none of ours. */
    public static OptionalInt version(DataSource source) throws SQLException {
        try (Connection connection = source.getConnection()) {
            return version(connection);
        }
    }

    public static OptionalInt version(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            try (ResultSet tables = connection.getMetaData().getTables(null, null, "flyway_schema_history", null)) {
                if (!tables.next()) {
                    return OptionalInt.empty();
                }
            }
            int latest = -1;
            try (ResultSet rows = statement.executeQuery(
                    "select version from flyway_schema_history where success = true and version is not null")) {
                while (rows.next()) {
                    latest = Math.max(latest, Integer.parseInt(rows.getString(1)));
                }
            }
            return latest < 0 ? OptionalInt.empty() : OptionalInt.of(latest);
        } catch (NumberFormatException e) {
            throw new SQLException(SENTENCES.of("opening.history"), e);
        }
    }

    /** Refuses what a newer program wrote. */
    public static void requireKnown(OptionalInt version, String name) throws LedgerException {
        if (version.isPresent() && version.getAsInt() > LATEST) {
            throw new LedgerException(Fault.NEWER, SENTENCES.of("opening.new", name, version.getAsInt(), LATEST));
        }
    }

    public static void migrate(DataSource source, LedgerPlace place) throws LedgerException {
        migrateTo(source, place, LATEST);
    }

    /** All steps in one transaction: the old tables or the new ones. */
    public static void migrateTo(DataSource source, LedgerPlace place, int target) throws LedgerException {
        FLYWAY_LOG.setLevel(Level.OFF);
        boolean server = place instanceof LedgerPlace.Server;
        FluentConfiguration flyway = Flyway.configure(Schema.class.getClassLoader())
                .dataSource(source)
                .locations("classpath:org/toeline/ledger/store/schema")
                .group(true)
                .target(Integer.toString(target))
                .placeholders(Map.of(
                        "binary",
                        server ? "collate \"C\"" : "",
                        "uuid",
                        server ? "cast(gen_random_uuid() as varchar(36))" : RANDOM_UUID))
                .connectRetries(0);
        try {
            flyway.load().migrate();
        } catch (FlywayException e) {
            throw Faults.of(e, SENTENCES.of("cannot.bring-up-to", target), place);
        }
    }
}
