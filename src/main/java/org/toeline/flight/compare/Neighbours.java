package org.toeline.flight.compare;

/**
 * Which shots of two setups were hit near each other: how many pairs lie so many shots apart within each setup, and how many
 * across them. It hangs on the order of hitting alone, not on any figure.
 *
 * @param first  pairs within the first setup, by how far apart
 * @param second pairs within the second
 * @param across pairs of one shot of each
 * @param shots  shots of each setup
 * @param runs   runs of shots of one setup
 * @param pairs  shots that follow one of their own setup
 */
record Neighbours(double[] first, double[] second, double[] across, int[] shots, int runs, int pairs) {

    /** Farther apart a shot says nothing of another. */
    private static final int LAGS = 10;

    static Neighbours of(boolean[] second) {
        int[] shots = {0, 0};
        for (boolean s : second) {
            shots[s ? 1 : 0]++;
        }
        int lags = Math.max(0, Math.min(LAGS, second.length - 1));
        double[][] within = new double[2][lags + 1];
        double[] across = new double[lags + 1];
        for (int lag = 1; lag <= lags; lag++) {
            for (int i = lag; i < second.length; i++) {
                if (second[i] == second[i - lag]) {
                    within[second[i] ? 1 : 0][lag]++;
                } else {
                    across[lag]++;
                }
            }
        }
        int runs = second.length == 0 ? 0 : lags == 0 ? 1 : 1 + (int) across[1];
        return new Neighbours(within[0], within[1], across, shots, runs, Math.max(0, second.length - runs));
    }

    /**
     * What all pairs add to a variance when neighbours are alike by rho, and those farther apart by its powers: the sum of rho to
     * the power of each pair's distance, times both shots' shares.
     */
    double added(double rho, double firstShare, double secondShare) {
        double sum = 0;
        double power = 1;
        for (int lag = 1; lag < across.length; lag++) {
            power *= rho;
            sum += power
                    * (first[lag] * firstShare * firstShare
                            + second[lag] * secondShare * secondShare
                            - across[lag] * firstShare * secondShare);
        }
        return 2 * sum;
    }
}
