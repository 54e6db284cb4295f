package org.toeline.ledger.store;

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

/** The ledger on a real PostgreSQL server, a database a test. */
class PostgresLedgerTest extends LedgerContract {

    private static EmbeddedPostgres server;
    private String database = "postgres";

    @BeforeAll
    static void start() throws Exception {
        server = EmbeddedPostgres.start();
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
}
