package org.toeline.posture;

/** Takes the rows of the least-squares problem one by one; the arrays may be used again after the call. */
interface RowSink {

    /**
     * @param residual (predicted − known) / standard deviation
     * @param count    how many entries of the arrays count
     * @param index    unknowns the residual depends on
     * @param slope    its derivatives by them
     */
    void row(double residual, int count, int[] index, double[] slope);
}
