package org.toeline.ledger.store;

import java.nio.file.Path;
import java.time.Clock;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.io.TempDir;

/** The ledger in a file. */
class SqliteLedgerTest extends LedgerContract {

    @TempDir
    private Path folder;

    @Override
    Ledger open(String bay, Clock clock) throws LedgerException {
        return Ledger.open(new LedgerPlace.Folder(folder), bay, clock, UnaryOperator.identity());
    }
}
