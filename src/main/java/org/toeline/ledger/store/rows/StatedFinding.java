package org.toeline.ledger.store.rows;

import java.util.Optional;
import org.toeline.geometry.Finite;
import org.toeline.reading.Measured;

/**
 * A finding as it was stated that day: kept as it was, whatever is measured or recommended differently later. All figures are
 * in {@code unit}, the one a person reads.
 *
 * @param reading the reading's id
 * @param u       standard uncertainty, above zero
 * @param low     lower end of the 95 % interval, {@code high} its upper end
 * @param range   the range as it was used; empty when there was none
 * @param verdict the verdict's id; empty when there was no range
 * @param place   whether it was the first thing to change
 */
public record StatedFinding(
        String reading,
        double value,
        double u,
        double low,
        double high,
        String unit,
        Optional<StatedRange> range,
        Optional<String> verdict,
        Place place) {

    /** Where a finding stood among the others. */
    public enum Place {
        FIRST,
        ONE_OF_MANY
    }

    /** A recommendation as it was used that day. */
    public record StatedRange(double low, double high, double aim, String provenance) {

        public StatedRange {
            Finite.require(low, "low");
            Finite.require(high, "high");
            Finite.require(aim, "aim");
        }
    }

    public StatedFinding {
        Finite.require(value, "value");
        Finite.requirePositive(u, "u");
        Finite.require(low, "low");
        Finite.require(high, "high");
    }

    public Measured measured() {
        return new Measured(value, u);
    }
}
