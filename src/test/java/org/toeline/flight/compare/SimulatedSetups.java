package org.toeline.flight.compare;

import java.util.SplittableRandom;

/**
 * Shots of two setups whose difference is known: normal about their middles, and with them, when wanted, one mishit in
 * ten (each shot by its own chance) that lies 3 to 8 standard deviations off.
 */
final class SimulatedSetups {

    /** Where mishits go. */
    enum Mishits {
        NONE("none", 0, 0),
        BOTH_SHORT("one in ten, short, both setups", 0.1, 0.1),
        FIRST_SHORT("one in ten, short, first setup only", 0.1, 0),
        EITHER_SIDE("one in ten, to either side, both setups", 0.1, 0.1);

        final String words;
        final double first;
        final double second;

        Mishits(String words, double first, double second) {
            this.words = words;
            this.first = first;
            this.second = second;
        }
    }

    private static final double TRUE_DIFFERENCE = 2.5;

    private final SplittableRandom random;
    private final Mishits mishits;

    SimulatedSetups(long seed, Mishits mishits) {
        this.random = new SplittableRandom(seed);
        this.mishits = mishits;
    }

    double[] shots(int count, double middle, double spread, double mishitShare) {
        double[] shots = new double[count];
        for (int i = 0; i < count; i++) {
            boolean mishit = random.nextDouble() < mishitShare;
            double side = mishits == Mishits.EITHER_SIDE && random.nextBoolean() ? 1 : -1;
            shots[i] = middle + spread * (mishit ? side * random.nextDouble(3, 8) : random.nextGaussian());
        }
        return shots;
    }

    /** The share of trials whose 95 % interval holds the true difference. */
    double coverage(int first, int second, double spreadRatio, int trials) {
        int held = 0;
        for (int i = 0; i < trials; i++) {
            Estimate estimate = Estimate.of(
                    Centre.of(shots(first, 0, 1, mishits.first)),
                    Centre.of(shots(second, TRUE_DIFFERENCE, spreadRatio, mishits.second)));
            held += estimate.low() <= TRUE_DIFFERENCE && TRUE_DIFFERENCE <= estimate.high() ? 1 : 0;
        }
        return held / (double) trials;
    }
}
