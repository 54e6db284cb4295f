package org.toeline.across;

/**
 * How repeatable a figure is over several subjects, each measured the same number of times: the two-way analysis of variance
 * and what follows from it (Shrout and Fleiss 1979, Psychol. Bull. 86:420; Weir 2005, J. Strength Cond. Res. 19:231).
 *
 * @param betweenSubjects mean square between subjects
 * @param betweenTrials   mean square between trials
 * @param error           residual mean square
 * @param within          mean square within subjects, trials and residual together
 * @param subjects        number of subjects, 2 or more
 * @param trials          number of trials, 2 or more
 */
public record Reliability(
        double betweenSubjects, double betweenTrials, double error, double within, int subjects, int trials) {

    /** Two-sided 95 % of the normal distribution. */
    private static final double SURE = 1.96;

    /** @param figures a row a subject, a column a trial, all rows of one length */
    public static Reliability of(double[][] figures) {
        int n = figures.length;
        int k = n == 0 ? 0 : figures[0].length;
        if (n < 2 || k < 2) {
            throw new IllegalArgumentException(n + " subjects with " + k + " trials; at least two of each are needed");
        }
        double grand = 0;
        double[] rows = new double[n];
        double[] columns = new double[k];
        for (int i = 0; i < n; i++) {
            if (figures[i].length != k) {
                throw new IllegalArgumentException(
                        "subject " + (i + 1) + " has " + figures[i].length + " trials, not " + k);
            }
            for (int j = 0; j < k; j++) {
                grand += figures[i][j] / (n * k);
                rows[i] += figures[i][j] / k;
                columns[j] += figures[i][j] / n;
            }
        }
        double total = 0;
        double subjects = 0;
        double trials = 0;
        for (int i = 0; i < n; i++) {
            subjects += k * Math.pow(rows[i] - grand, 2);
            for (int j = 0; j < k; j++) {
                total += Math.pow(figures[i][j] - grand, 2);
            }
        }
        for (int j = 0; j < k; j++) {
            trials += n * Math.pow(columns[j] - grand, 2);
        }
        return new Reliability(
                subjects / (n - 1),
                trials / (k - 1),
                (total - subjects - trials) / ((n - 1) * (k - 1)),
                (total - subjects) / (n * (k - 1)),
                n,
                k);
    }

    /** ICC(1,1): each subject measured by trials of its own. */
    public double icc11() {
        return (betweenSubjects - within) / (betweenSubjects + (trials - 1) * within);
    }

    /** ICC(2,1): the same trials for all, drawn from many; a shift between trials counts against agreement. */
    public double icc21() {
        return (betweenSubjects - error)
                / (betweenSubjects + (trials - 1) * error + trials * (betweenTrials - error) / subjects);
    }

    /** ICC(3,1): the same trials for all; a shift between trials does not count. */
    public double icc31() {
        return (betweenSubjects - error) / (betweenSubjects + (trials - 1) * error);
    }

    /** The standard error of measurement, √(residual mean square), in the figures' unit. */
    public double standardErrorOfMeasurement() {
        return Math.sqrt(error);
    }

    /** 1.96·√2·SEM. */
    public double minimalDifference() {
        return SURE * Math.sqrt(2) * standardErrorOfMeasurement();
    }
}
