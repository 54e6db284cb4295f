package org.toeline.across;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.stat.inference.OneWayAnova;
import org.junit.jupiter.api.Test;

/** Reliability against the worked tables of the papers that define it, and against a general statistics library. */
class ReliabilityReferenceTest {

    /** Shrout and Fleiss 1979, Psychol. Bull. 86:420, table 2: six targets, four judges (data from memory). */
    private static final double[][] SHROUT_FLEISS = {
        {9, 2, 5, 8}, {6, 1, 3, 2}, {8, 4, 6, 8}, {7, 1, 2, 6}, {10, 5, 6, 9}, {6, 2, 4, 7}
    };

    /** Weir 2005, J. Strength Cond. Res. 19:231, table 1, trials A1 and A2 (data from memory). */
    private static final double[][] WEIR = {
        {146, 140}, {148, 152}, {170, 152}, {90, 99}, {157, 145}, {156, 153}, {176, 167}, {205, 218}
    };

    /** Half of the last digit that is published. */
    private static final double TWO_DIGITS = 0.005;

    private static final double FOUR_DIGITS = 0.00005;

    @Test
    void shroutAndFleiss() {
        Reliability r = Reliability.of(SHROUT_FLEISS);
        assertThat(r.icc11()).as("published as .17").isCloseTo(0.1657, within(FOUR_DIGITS));
        assertThat(r.icc21()).as("published as .29").isCloseTo(0.2898, within(FOUR_DIGITS));
        assertThat(r.icc31()).as("published as .71").isCloseTo(0.7148, within(FOUR_DIGITS));
        assertThat(r.betweenSubjects()).as("published BMS").isCloseTo(11.24, within(TWO_DIGITS));
        assertThat(r.within()).as("published WMS").isCloseTo(6.26, within(TWO_DIGITS));
        assertThat(r.betweenTrials()).as("published JMS").isCloseTo(32.49, within(TWO_DIGITS));
        assertThat(r.error()).as("published EMS").isCloseTo(1.02, within(TWO_DIGITS));
    }

    /** F 0.53 for the trials, and .973 for the mean of two, are what others print who teach from the same table. */
    @Test
    void weir() {
        Reliability r = Reliability.of(WEIR);
        assertThat(r.betweenTrials() / r.error()).isCloseTo(0.53, within(TWO_DIGITS));
        assertThat(r.icc31()).isCloseTo(0.95, within(TWO_DIGITS));
        assertThat(r.icc21()).isCloseTo(0.95, within(TWO_DIGITS));
        assertThat(2 * r.icc31() / (1 + r.icc31())).as("of the mean of two").isCloseTo(0.973, within(0.0005));
        assertThat(r.standardErrorOfMeasurement()).as("√57.107").isCloseTo(7.557, within(0.0005));
        assertThat(r.minimalDifference()).as("1.96·√2·7.557").isCloseTo(20.95, within(TWO_DIGITS));
    }

    /** A published repeat study: residual mean square 1.64, smallest detectable difference 3.55 (J. Am. Soc. Nephrol.). */
    @Test
    void aPublishedSmallestDetectableDifference() {
        assertThat(new Reliability(19.67, 379.76, 1.64, 7, 72, 2).minimalDifference())
                .isCloseTo(3.55, within(TWO_DIGITS));
    }

    /** One way, the ratio of the mean squares is the library's F. */
    @Test
    void agreesWithAStatisticsLibrary() {
        SplittableRandom random = new SplittableRandom(5);
        for (int round = 0; round < 50; round++) {
            int k = 2 + random.nextInt(4);
            double[][] figures = new double[3 + random.nextInt(6)][k];
            List<double[]> groups = new ArrayList<>();
            for (double[] row : figures) {
                double level = random.nextDouble(-5, 5);
                for (int j = 0; j < k; j++) {
                    row[j] = level + random.nextDouble(-2, 2);
                }
                groups.add(row);
            }
            double f = new OneWayAnova().anovaFValue(groups);
            Reliability r = Reliability.of(figures);
            assertThat(r.betweenSubjects() / r.within()).isCloseTo(f, within(1e-9 * (1 + f)));
            assertThat(r.icc11()).isCloseTo((f - 1) / (f + k - 1), within(1e-9));
        }
    }

    @Test
    void refusesWhatHasNoRepeats() {
        assertThatIllegalArgumentException().isThrownBy(() -> Reliability.of(new double[][] {{1, 2}}));
        assertThatIllegalArgumentException().isThrownBy(() -> Reliability.of(new double[][] {{1, 2}, {1}}));
    }
}
