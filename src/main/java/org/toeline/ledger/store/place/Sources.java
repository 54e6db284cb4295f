package org.toeline.ledger.store.place;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import javax.sql.DataSource;
import org.postgresql.ds.PGSimpleDataSource;
import org.postgresql.ssl.DefaultJavaSSLFactory;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** How connections are made. */
public final class Sources {

    private static final int WAIT_MS = 10_000;
    private static final int ANSWER_S = 20;

    /** A server may be set to answer before it has written: what this program says is kept would be lost with the server. */
    private static final String KEPT_MEANS_KEPT =
            "select set_config('synchronous_commit', 'on', false) where current_setting('synchronous_commit') = 'off'";

    private Sources() {}

    /** A file that is written: write-ahead log, every commit forced to disk, what is deleted is overwritten. */
    public static DataSource writable(Path file) {
        SQLiteConfig config = base();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        return source(config, "jdbc:sqlite:" + file.toAbsolutePath(), "pragma secure_delete = on");
    }

    /** A file that nobody writes: it is not locked, and no log is made beside it. */
    public static DataSource unchanging(Path file) {
        SQLiteConfig config = base();
        config.setReadOnly(true);
        String address = file.toAbsolutePath().toUri().getRawPath().replace("?", "%3f");
        return source(config, "jdbc:sqlite:file:" + address + "?immutable=1", "pragma query_only = on");
    }

    private static SQLiteConfig base() {
        SQLiteConfig config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        config.setBusyTimeout(WAIT_MS);
        return config;
    }

    private static DataSource source(SQLiteConfig config, String url, String first) {
        SQLiteDataSource source = new SQLiteDataSource(config) {
            @Override
            public org.sqlite.SQLiteConnection getConnection(String user, String password) throws SQLException {
                return begun(super.getConnection(user, password), first);
            }
        };
        source.setUrl(url);
        return source;
    }

    /** With its first statement said; closed where that fails. */
    private static <C extends Connection> C begun(C connection, String first) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(first);
            return connection;
        } catch (SQLException e) {
            try {
                connection.close();
            } catch (SQLException closing) {
                e.addSuppressed(closing);
            }
            throw e;
        }
    }

    private static boolean isThisMachine(PGSimpleDataSource source) {
        String[] names = source.getServerNames();
        return names != null
                && Arrays.stream(names)
                        .allMatch(
                                n -> n.isEmpty() || n.equals("localhost") || n.equals("127.0.0.1") || n.equals("::1"));
    }

    public static DataSource server(LedgerPlace.Server server) {
        PGSimpleDataSource source = new PGSimpleDataSource() {
            @Override
            public Connection getConnection(String user, String password) throws SQLException {
                return begun(super.getConnection(user, password), KEPT_MEANS_KEPT);
            }
        };
        source.setUrl(server.url());
        if (!server.url().contains("sslmode=") && !isThisMachine(source)) {
            // who answers is who was meant, by a certificate that this machine trusts; an address may say
            // “sslmode=disable”
            source.setSslMode("verify-full");
            if (!server.url().contains("sslrootcert=") && !server.url().contains("sslfactory=")) {
                source.setSslfactory(DefaultJavaSSLFactory.class.getName());
            }
        }
        source.setUser(server.user());
        source.setPassword(server.password());
        source.setConnectTimeout(ANSWER_S);
        source.setSocketTimeout(2 * ANSWER_S);
        source.setApplicationName("toeline");
        return source;
    }
}
