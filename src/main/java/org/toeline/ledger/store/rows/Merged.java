package org.toeline.ledger.store.rows;

import java.util.Map;

/**
 * Two players who were one.
 *
 * @param player   who stays, as kept
 * @param versions the lessons that are theirs now, each with the version it has since
 */
public record Merged(Player player, Map<Integer, Integer> versions) {

    public Merged {
        versions = Map.copyOf(versions);
    }
}
