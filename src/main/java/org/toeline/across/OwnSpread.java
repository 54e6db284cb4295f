package org.toeline.across;

import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import org.toeline.geometry.Finite;
import org.toeline.reading.Measured;
import org.toeline.reading.ReadingKind;

/**
 * How much a player varies from one address to the next, apart from how well each is measured: what players usually do, until
 * this one's own repeats say more.
 *
 * @param standardDeviation s, in the unit of the figures, 0 or more
 * @param degreesOfFreedom  how much is known of it, above 0: as if it came from so many independent differences
 * @param repeats           how many differences of this player's own are in it; 0 when it is the usual one alone
 */
public record OwnSpread(double standardDeviation, double degreesOfFreedom, int repeats) {

    /** Fewer repeats than these tell next to nothing of a player. */
    public static final int LEAST_REPEATS = 3;

    /** Players differ in steadiness by a third or so: as if the usual spread were learnt from so many differences. */
    private static final double USUAL_FREEDOM = 5;

    /** More than these are as good as certainty, and keep the distributions' sums finite. */
    private static final double CERTAIN = 1e4;

    private static final double USUAL_DEG = 1.5;
    private static final double USUAL_CM = 1.5;
    private static final double USUAL_MM = 3;
    private static final double USUAL_PERCENT = 3;
    private static final double USUAL_RATIO = 0.04;

    public OwnSpread {
        Finite.require(standardDeviation, "standardDeviation");
        Finite.require(degreesOfFreedom, "degreesOfFreedom");
        if (standardDeviation < 0 || degreesOfFreedom <= 0 || repeats < 0) {
            throw new IllegalArgumentException("a spread of " + standardDeviation + " from " + degreesOfFreedom
                    + " degrees of freedom and " + repeats + " repeats; none may be negative");
        }
    }

    /** Whether this player's own repeats are in it. */
    public boolean isKnown() {
        return repeats >= LEAST_REPEATS;
    }

    /**
     * What players usually do, in the reading's unit. That of the sizes is common practice: 1 to 2° and 1 to 2 cm between
     * addresses that are meant to be the same. Which of the alignments vary, and that steadiness differs with skill, is in Langdown,
     * Bridge and Li 2013, Int. J. Golf Sci. 2(1), of whose tables nothing is used here.
     */
    public static OwnSpread usual(ReadingKind kind) {
        double s =
                switch (kind.unit()) {
                    case DEGREE -> USUAL_DEG;
                    case CENTIMETRE -> USUAL_CM;
                    case MILLIMETRE -> USUAL_MM;
                    case PERCENT -> kind == ReadingKind.BALL_ABOVE_CROWN ? 2 * USUAL_MM : USUAL_PERCENT;
                    case RATIO -> USUAL_RATIO;
                };
        return new OwnSpread(s, USUAL_FREEDOM, 0);
    }

    /**
     * From repeated addresses: each group holds one setup addressed several times. The pooled variance within the groups is that
     * of the player plus as much of measuring as differed between them. How much that was, nobody knows: filmed from one place,
     * repeats err together, and taking all of u² off would call a player steadier than they are. So none is taken off. It is averaged
     * with the usual spread, each by how much it tells: repeats that are measured worse than players vary say little of the player,
     * however many they are (Satterthwaite 1946, Biometrics Bull. 2:110).
     */
    public static OwnSpread ofRepeats(List<List<Measured>> groups, OwnSpread usual) {
        double squares = 0;
        double measuring = 0;
        int freedom = 0;
        for (List<Measured> group : groups) {
            if (group.size() < 2) {
                continue;
            }
            double mean = group.stream().mapToDouble(Measured::value).average().orElseThrow();
            double meanVariance = group.stream()
                    .mapToDouble(m -> square(m.standardUncertainty()))
                    .average()
                    .orElseThrow();
            squares += group.stream().mapToDouble(m -> square(m.value() - mean)).sum();
            measuring += meanVariance * (group.size() - 1);
            freedom += group.size() - 1;
        }
        double before = square(usual.standardDeviation);
        if (freedom == 0 || before == 0) {
            return usual;
        }
        double own = squares / freedom;
        double tells = freedom * square(before / (before + measuring / freedom));
        double together = usual.degreesOfFreedom + tells;
        double s = Math.sqrt((usual.degreesOfFreedom * before + tells * own) / together);
        return new OwnSpread(s, Math.min(together, CERTAIN), freedom);
    }

    /** How much is known of u² + c·s², when u is known and s is this. */
    double freedomOf(double measuringVariance, double timesVariance) {
        double own = timesVariance * square(standardDeviation);
        double share = own / (own + measuringVariance);
        return Math.min(CERTAIN, degreesOfFreedom / Math.max(square(share), degreesOfFreedom / CERTAIN));
    }

    /** Student's t that is exceeded to either side with the given probability. */
    static double exceeded(double probability, double freedom) {
        return new TDistribution(freedom).inverseCumulativeProbability(1 - probability / 2);
    }

    private static double square(double x) {
        return x * x;
    }
}
