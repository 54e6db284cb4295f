package org.toeline.assist;

import java.util.ArrayList;
import java.util.List;

/** Finds the steps in a profile of colours sampled every {@link Strip#STEP_PX}. */
final class Steps {

    /**
     * A step of colour.
     *
     * @param t    where it is steepest, sub-sample, pixels from the profile's middle
     * @param rise change of red, green and blue over it, levels per pixel where it is steepest
     */
    record Step(double t, double[] rise) {

        double strength() {
            return Math.sqrt(dot(rise, rise));
        }

        /** How alike the change of colour is: 1 the same way, −1 the opposite. */
        double likeness(Step other) {
            return dot(rise, other.rise) / Math.max(1e-9, strength() * other.strength());
        }
    }

    /** Half the reach of the difference that stands for the slope, samples. */
    private static final int REACH = 2;

    private Steps() {}

    static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    /** All steps at least that steep, levels per pixel, from one side to the other. */
    static List<Step> of(double[][] colours, double leastPerPx) {
        int n = colours.length;
        double[][] slope = new double[n][3];
        double[] size = new double[n];
        for (int i = REACH; i < n - REACH; i++) {
            for (int c = 0; c < 3; c++) {
                slope[i][c] = (colours[i + REACH][c] - colours[i - REACH][c]) / (2 * REACH * Strip.STEP_PX);
            }
            size[i] = Math.sqrt(dot(slope[i], slope[i]));
        }
        List<Step> steps = new ArrayList<>();
        for (int i = REACH + 1; i < n - REACH - 1; i++) {
            if (size[i] >= leastPerPx && top(size, i)) {
                steps.add(new Step((peak(slope, size, i) - (n - 1) / 2.0) * Strip.STEP_PX, slope[i]));
            }
        }
        return steps;
    }

    /** The largest within half a pixel. */
    private static boolean top(double[] size, int i) {
        for (int k = 1; k <= 2; k++) {
            if (size[i] < size[i - k] || size[i] <= size[i + k] && k == 1 || size[i] < size[i + k]) {
                return false;
            }
        }
        return true;
    }

    /** The middle of mass of the slope, in the step's own colour, of what exceeds half of it. */
    private static double peak(double[][] slope, double[] size, int at) {
        double half = size[at] / 2;
        double sum = 0;
        double weight = 0;
        for (int side = -1; side <= 1; side += 2) {
            for (int i = at + (side < 0 ? 0 : 1); i >= 0 && i < slope.length; i += side) {
                double along = dot(slope[i], slope[at]) / size[at] - half;
                if (along <= 0) {
                    break;
                }
                sum += along * i;
                weight += along;
            }
        }
        return weight > 0 ? sum / weight : at;
    }
}
