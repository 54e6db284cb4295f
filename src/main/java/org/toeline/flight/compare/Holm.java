package org.toeline.flight.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Many comparisons at once (Holm 1979, Scand. J. Stat. 6:65): the smallest p is held against the chance over all, the next
 * against the chance over one less, until one fails. That any of those passed is false happens with at most that chance.
 */
final class Holm {

    /** 5 %: what the 95 % intervals leave. */
    static final double CHANCE = 0.05;

    private Holm() {}

    /** The keys whose comparisons hold, all of them allowed for. */
    static <K> Set<K> holding(Map<K, Double> p) {
        List<Map.Entry<K, Double>> ordered = new ArrayList<>(p.entrySet());
        ordered.sort(Comparator.comparingDouble(Map.Entry::getValue));
        Set<K> holding = new HashSet<>();
        for (int i = 0; i < ordered.size() && ordered.get(i).getValue() <= CHANCE / (ordered.size() - i); i++) {
            holding.add(ordered.get(i).getKey());
        }
        return holding;
    }
}
