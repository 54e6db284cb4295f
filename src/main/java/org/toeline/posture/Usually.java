package org.toeline.posture;

/** A sum of unknowns that usually has a certain value: one row, Σ factor·x − mean over the standard deviation. */
final class Usually implements Knowledge {

    private final Source source;
    private final double mean;
    private final double sigma;
    private final int[] index;
    private final double[] factor;
    private final double[] slope;

    Usually(Source source, double mean, double sigma, int[] index, double[] factor) {
        this.source = source;
        this.mean = mean;
        this.sigma = sigma;
        this.index = index;
        this.factor = factor;
        this.slope = new double[factor.length];
        for (int i = 0; i < factor.length; i++) {
            slope[i] = factor[i] / sigma;
        }
    }

    static Usually one(Source source, int index, double mean, double sigma) {
        return new Usually(source, mean, sigma, new int[] {index}, new double[] {1});
    }

    static Usually difference(Source source, int index, int less, double mean, double sigma) {
        return new Usually(source, mean, sigma, new int[] {index, less}, new double[] {1, -1});
    }

    @Override
    public Source source() {
        return source;
    }

    @Override
    public void rows(State state, RowSink sink) {
        double sum = -mean;
        for (int i = 0; i < index.length; i++) {
            sum += factor[i] * state.x[index[i]];
        }
        sink.row(sum / sigma, index.length, index, slope);
    }
}
