package org.toeline.ledger.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What a deletion took with it.
 *
 * @param lessons      how many lessons
 * @param clips        how many copied clips
 * @param stillHolding backups and ledgers set aside from before, which hold it still
 * @param unfinished   why something of it is left, which is taken away when the ledger is opened next
 */
public record Deleted(int lessons, int clips, List<Path> stillHolding, Optional<String> unfinished) {

    public Deleted {
        stillHolding = List.copyOf(stillHolding);
    }
}
