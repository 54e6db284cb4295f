package org.toeline.ledger;

import java.util.Objects;

/** A document cannot be read or written; the message is one sentence that names the file, the place, what is allowed. */
public final class DocumentException extends Exception {

    private static final long serialVersionUID = 1;

    public DocumentException(String message) {
        super(message);
    }

    /** The sentence for the person; never empty. */
    @Override
    public String getMessage() {
        return Objects.requireNonNull(super.getMessage());
    }
}
