package org.toeline.ledger.store;

import java.nio.file.Path;
import java.util.List;

/**
 * What a deletion took with it.
 *
 * @param lessons      how many lessons
 * @param clips        how many copied clips
 * @param stillHolding backups from before, which hold it still
 */
public record Deleted(int lessons, int clips, List<Path> stillHolding) {

    public Deleted {
        stillHolding = List.copyOf(stillHolding);
    }
}
