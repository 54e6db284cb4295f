package org.toeline.ledger.store.place;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The ledger cannot do what was asked. The message is one sentence: what, where, what was kept, what to do. */
public final class LedgerException extends Exception {

    private static final long serialVersionUID = 1;

    /** What is wrong, for a caller that can offer a way out. */
    public enum Fault {
        /** The file is cut or altered; {@link #backup()} is the newest copy that was verified. */
        DAMAGED,
        /** There are backups or media but no ledger. */
        MISSING,
        /** Written by a newer version of the program. */
        NEWER,
        /** The folder or the file cannot be written. */
        READ_ONLY,
        /** The disk is full; nothing was changed. */
        FULL,
        /** Somebody else is writing and does not come to an end. */
        BUSY,
        /** The server does not answer or refuses. */
        UNREACHABLE,
        /** The server's role may not do it. */
        NOT_ALLOWED,
        /** What was asked for is not there. */
        UNKNOWN,
        OTHER
    }

    private final Fault fault;
    private final transient @Nullable Path backup;

    public LedgerException(Fault fault, String message) {
        this(fault, message, Optional.empty());
    }

    public LedgerException(Fault fault, String message, Optional<Path> backup) {
        super(message);
        this.fault = fault;
        this.backup = backup.orElse(null);
    }

    public LedgerException(Fault fault, String message, Throwable cause) {
        super(message, cause);
        this.fault = fault;
        this.backup = null;
    }

    public Fault fault() {
        return fault;
    }

    /** The newest verified backup, where there is one and it is a way out. */
    public Optional<Path> backup() {
        return Optional.ofNullable(backup);
    }

    /** The sentence for the person; never empty. */
    @Override
    public String getMessage() {
        return Objects.requireNonNull(super.getMessage());
    }
}
