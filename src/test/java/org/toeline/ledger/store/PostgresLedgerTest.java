package org.toeline.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The ledger on a real PostgreSQL server, a database a test. */
class PostgresLedgerTest extends LedgerContract {

    private static EmbeddedPostgres server;
    private String database = "postgres";

    @BeforeAll
    static void start() throws Exception {
        server = EmbeddedPostgres.builder().setPGStartupWait(java.time.Duration.ofSeconds(90)).start();
        create("model", "template1");
        Ledger.open(place("model"), "first").close();
    }

    private static LedgerPlace.Server place(String database) {
        return new LedgerPlace.Server(server.getJdbcUrl("postgres", database), "postgres", "");
    }

    private static void create(String database, String model) throws SQLException {
        try (Connection connection = server.getPostgresDatabase().getConnection();
             Statement statement = connection.createStatement()) {
            statement.execute("create database " + database + " template " + model);
        }
    }

    @AfterAll
    static void stop() throws IOException {
        server.close();
    }

    @BeforeEach
    @Override
    void openOne() throws Exception {
        database = "t" + Long.toString(System.nanoTime(), 36);
        create(database, "model");
        super.openOne();
    }

    @Override
    Ledger open(String bay, Clock clock) throws LedgerException {
        return Ledger.open(place(database), bay, clock, UnaryOperator.identity());
    }

    @Test
    void tenBaysLoseNothing() throws Exception {
        Writers.Outcome outcome = Writers.run(place(database), 10, 15);
        assertThat(outcome.kept()).isEqualTo(150);
        assertThat(outcome.conflicts()).as("they did meet").isPositive();
    }

    @Test
    void aServerThatDoesNotAnswerIsSaid() {
        LedgerPlace.Server nowhere = new LedgerPlace.Server("jdbc:postgresql://localhost:1/none?password=secret", "x", "secret");
        assertThatExceptionOfType(LedgerException.class).isThrownBy(() -> Ledger.open(nowhere, "bay 1").close())
                .satisfies(e -> assertThat(e.fault()).isEqualTo(LedgerException.Fault.UNREACHABLE))
                .withMessageStartingWith("jdbc:postgresql://localhost:1/none:").withMessageNotContaining("secret");
    }

    @Test
    void aNewerServersLedgerIsRefused() throws Exception {
        try (Connection connection = server.getDatabase("postgres", database).getConnection();
             Statement statement = connection.createStatement()) {
            statement.execute("insert into flyway_schema_history select 99, '7', description, type, script, checksum, installed_by, "
                    + "installed_on, execution_time, success from flyway_schema_history where version = '1'");
        }
        assertThatExceptionOfType(LedgerException.class).isThrownBy(() -> Ledger.open(place(database), "bay 1").close())
                .satisfies(e -> assertThat(e.fault()).isEqualTo(LedgerException.Fault.NEWER));
    }
}
