package org.toeline.ledger.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.ledger.store.place.LedgerException;
import org.toeline.ledger.store.place.LedgerPlace;

/** The ledger in a file. */
class SqliteLedgerTest extends LedgerContract {

    @TempDir
    private Path folder;

    @Override
    Ledger open(String bay, Clock clock) throws LedgerException {
        return Ledger.open(new LedgerPlace.Folder(folder), bay, clock, UnaryOperator.identity());
    }

    @Test
    void fourBaysLoseNothing() throws Exception {
        assertThat(Writers.run(new LedgerPlace.Folder(folder.resolve("shared")), 4, 10)
                        .kept())
                .isEqualTo(40);
    }
}
