package org.toeline.ledger.store.place;

import java.io.IOException;
import java.nio.file.Files;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;
import org.toeline.language.Sentences;
import org.toeline.ledger.store.place.LedgerException.Fault;

/** Says in a sentence what a database reported. */
public final class Faults {

    private static final Sentences SENTENCES = Sentences.of(Faults.class);

    /** PostgreSQL's state of a privilege that is missing. */
    private static final String NOT_ALLOWED = "42501";

    private static final long NO_ROOM_BYTES = 64 << 10;

    private Faults() {}

    /** @param what what could not be done, such as “the lesson could not be saved” */
    public static LedgerException of(Throwable reported, String what, LedgerPlace place) {
        Fault told = fault(reported);
        Fault fault = told == Fault.OTHER && isFull(place) ? Fault.FULL : told;
        String where = place.name();
        String reason = secretless(reason(reported), place);
        String message =
                switch (fault) {
                    case DAMAGED -> SENTENCES.of("fault.damaged", where);
                    case READ_ONLY -> SENTENCES.of("fault.read-only", where, what);
                    case FULL -> SENTENCES.of("fault.full", where, what);
                    case BUSY -> SENTENCES.of("fault.busy", where, what);
                    case UNREACHABLE -> SENTENCES.of("fault.unreachable", where, what, reason);
                    case NOT_ALLOWED -> SENTENCES.of("fault.not-allowed", where, what, limits(place));
                    default -> SENTENCES.of("fault.other", where, what, reason);
                };
        return new LedgerException(fault, message, reported);
    }

    /** What the role may do instead; asked anew, since a transaction in which something failed answers nothing. */
    private static String limits(LedgerPlace place) {
        String role = "";
        if (place instanceof LedgerPlace.Server server) {
            role = server.user();
            try (Connection connection = Sources.server(server).getConnection()) {
                Optional<String> limits = Rights.of(connection).limits();
                if (limits.isPresent()) {
                    return limits.get();
                }
            } catch (SQLException e) {
                // what may be done cannot be asked, so only what may not is said
            }
        }
        return SENTENCES.of("rights.not-this", role);
    }

    /** What runs out of room while it maps a file reports an input or output error of any kind. */
    public static boolean isFull(LedgerPlace place) {
        try {
            return place instanceof LedgerPlace.Folder folder
                    && Files.getFileStore(folder.folder()).getUsableSpace() < NO_ROOM_BYTES;
        } catch (IOException e) {
            return false;
        }
    }

    public static Fault fault(Throwable reported) {
        Optional<SQLException> sql = sql(reported);
        if (sql.isPresent() && sql.get() instanceof SQLiteException e) {
            return ofSqlite(e.getResultCode());
        }
        String state = sql.map(SQLException::getSQLState).orElse("");
        if (state == null
                || state.startsWith("08")
                || state.startsWith("28")
                || state.startsWith("57P")
                || state.startsWith("3D")) {
            return Fault.UNREACHABLE;
        }
        if (state.equals(NOT_ALLOWED)) {
            return Fault.NOT_ALLOWED;
        }
        return state.equals("53100")
                ? Fault.FULL
                : state.equals("25006") ? Fault.READ_ONLY : passes(reported) ? Fault.BUSY : Fault.OTHER;
    }

    private static Fault ofSqlite(SQLiteErrorCode code) {
        return switch (SQLiteErrorCode.getErrorCode(code.code & 0xff)) {
            case SQLITE_CORRUPT, SQLITE_NOTADB -> Fault.DAMAGED;
            case SQLITE_READONLY, SQLITE_PERM, SQLITE_CANTOPEN -> Fault.READ_ONLY;
            case SQLITE_FULL -> Fault.FULL;
            case SQLITE_BUSY, SQLITE_LOCKED -> Fault.BUSY;
            default -> Fault.OTHER;
        };
    }

    /**
     * Whether trying again may succeed: two writers met and the database let one go first, or took away what the other was about to
     * write to, which the next look finds out.
     */
    static boolean passes(Throwable reported) {
        String state = sql(reported).map(SQLException::getSQLState).orElse("");
        return "40001".equals(state) || "40P01".equals(state) || "23503".equals(state);
    }

    private static Optional<SQLException> sql(Throwable reported) {
        for (Throwable t = reported; t != null; t = t.getCause()) {
            if (t instanceof SQLException e) {
                return Optional.of(e);
            }
        }
        return Optional.empty();
    }

    /** A driver repeats the address it could not make sense of. */
    private static String secretless(String reason, LedgerPlace place) {
        if (!(place instanceof LedgerPlace.Server server)) {
            return reason;
        }
        String told = reason.replace(server.url(), server.name());
        return server.password().isEmpty() ? told : told.replace(server.password(), "…");
    }

    public static String reason(Throwable reported) {
        Throwable cause = sql(reported).map(e -> (Throwable) e).orElse(reported);
        String message = cause.getMessage() == null
                ? ""
                : cause.getMessage().lines().findFirst().orElse("").strip();
        return message.isEmpty() ? cause.getClass().getSimpleName() : message;
    }
}
