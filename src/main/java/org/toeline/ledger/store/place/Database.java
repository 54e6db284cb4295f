package org.toeline.ledger.store.place;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.place.LedgerException.Fault;

/**
 * One connection to the ledger's database, used by one thread at a time. After anything went wrong the connection is
 * closed, which rolls back what was not committed, and the next call opens another.
 */
public final class Database implements AutoCloseable {

    private static final Sentences SENTENCES = Sentences.of(Database.class);

    /** What is done with a connection; a write is one transaction. */
    public interface Work<T> {
        T with(Handle handle) throws LedgerException;
    }

    /** What is read with a bare connection: at the start of the program, when JDBI and its parser are not loaded yet. */
    public interface PlainWork<T> {
        T with(Connection connection) throws SQLException;
    }

    private interface Once<T> {
        T go() throws LedgerException, SQLException;
    }

    /** Whether the ledger may be written. */
    public enum Access {
        WRITE,
        READ_ONLY
    }

    private static final int ATTEMPTS = 5;
    private static final long TRUSTED_NANOS = 5_000_000_000L;

    private final LedgerPlace place;
    private final DataSource source;
    private final Access access;
    private final Optional<Presence> presence;
    private final Optional<String> limits;
    private final ReentrantLock lock = new ReentrantLock();
    private @Nullable Jdbi jdbi;
    private @Nullable Connection connection;
    private @Nullable Handle handle;
    private long lastUsed;
    private boolean closed;

    public Database(LedgerPlace place, DataSource source, Access access) {
        this(place, source, access, Optional.empty(), Optional.empty());
    }

    /** @param presence that the ledger is open, given up when it is closed */
    public Database(LedgerPlace place, DataSource source, Access access, Presence presence) {
        this(place, source, access, Optional.of(presence), Optional.empty());
    }

    /** @param limits of what a server's role may do, in a sentence; empty where it may do everything */
    public Database(LedgerPlace place, DataSource source, Access access, Optional<String> limits) {
        this(place, source, access, Optional.empty(), limits);
    }

    private Database(
            LedgerPlace place, DataSource source, Access access, Optional<Presence> presence, Optional<String> limits) {
        this.presence = presence;
        this.limits = limits;
        this.place = place;
        this.source = source;
        this.access = access;
    }

    public LedgerPlace place() {
        return place;
    }

    public Access access() {
        return access;
    }

    public Optional<String> limits() {
        return limits;
    }

    /** All that is read is of one moment. @param cannot what to say when it fails, such as “the lessons could not be read” */
    public <T> T read(String cannot, Work<T> work) throws LedgerException {
        return attempt(cannot, () -> {
            Handle open = handle();
            return ofOneMoment(() -> work.with(open));
        });
    }

    private <T> T ofOneMoment(Once<T> work) throws LedgerException, SQLException {
        // the bare words: the connections to a file begin every other transaction as one that writes
        execute(
                place instanceof LedgerPlace.Server
                        ? "begin isolation level repeatable read read only"
                        : "begin deferred");
        boolean done = false;
        try {
            T read = work.go();
            execute("commit");
            done = true;
            return read;
        } finally {
            if (!done) {
                disconnect();
            }
        }
    }

    private void execute(String sql) throws SQLException {
        try (Statement statement = connected().createStatement()) {
            statement.execute(sql);
        }
    }

    /** Outside any transaction, for what the database does only there. */
    public <T> T alone(String cannot, Work<T> work) throws LedgerException {
        return attempt(cannot, () -> work.with(handle()));
    }

    /** The same with a bare connection. */
    public <T> T readPlain(String cannot, PlainWork<T> work) throws LedgerException {
        return attempt(cannot, () -> ofOneMoment(() -> work.with(connected())));
    }

    /** One transaction: all of it or nothing. */
    public <T> T write(String cannot, Work<T> work) throws LedgerException {
        if (access == Access.READ_ONLY && limits.isPresent()) {
            throw new LedgerException(
                    Fault.NOT_ALLOWED, SENTENCES.of("fault.not-allowed", place.name(), cannot, limits.get()));
        }
        if (access == Access.READ_ONLY) {
            throw new LedgerException(Fault.READ_ONLY, SENTENCES.of("fault.read-only", place.name(), cannot));
        }
        return attempt(cannot, () -> handle().inTransaction(work::with));
    }

    private <T> T attempt(String cannot, Once<T> work) throws LedgerException {
        lock.lock();
        try {
            if (closed) {
                throw new LedgerException(Fault.OTHER, SENTENCES.of("fault.closed", place.name()));
            }
            for (int attempt = 1; ; attempt++) {
                try {
                    return work.go();
                } catch (JdbiException | SQLException e) {
                    disconnect();
                    if (attempt == ATTEMPTS || !Faults.passes(e)) {
                        throw Faults.of(e, cannot, place);
                    }
                }
            }
        } finally {
            lastUsed = System.nanoTime();
            lock.unlock();
        }
    }

    private Handle handle() throws SQLException {
        connected();
        if (handle == null) {
            if (jdbi == null) {
                jdbi = Jdbi.create(this::connected);
            }
            handle = jdbi.open();
        }
        return handle;
    }

    private Connection connected() throws SQLException {
        Connection open = connection;
        if (open != null
                && place instanceof LedgerPlace.Server
                && System.nanoTime() - lastUsed > TRUSTED_NANOS
                && !open.isValid(2)) {
            disconnect();
            open = null;
        }
        if (open == null) {
            open = source.getConnection();
            connection = open;
        }
        return open;
    }

    private void disconnect() {
        Connection open = connection;
        connection = null;
        handle = null;
        if (open != null) {
            try {
                open.close();
            } catch (SQLException e) {
                // what is broken already cannot be closed in order; the next call has a connection of its own
            }
        }
    }

    @Override
    public void close() {
        lock.lock();
        try {
            closed = true;
            disconnect();
            presence.ifPresent(Presence::close);
        } finally {
            lock.unlock();
        }
    }
}
