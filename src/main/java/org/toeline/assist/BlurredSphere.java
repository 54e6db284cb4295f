package org.toeline.assist;

import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * How a matt sphere looks through a blurring lens. Its light before blurring is a sum of the nine spherical harmonics (Basri
 * and Jacobs, IEEE PAMI 25:218, 2003), which on the disc are radial functions times cos mθ or sin mθ; a round Gaussian blur
 * keeps m, so that what is left is a table of six blurred radial functions for each blur. Lengths are in radii of the sphere.
 *
 * <p>The radial functions are, with z = √(1 − ρ²): 1, z and z² (m = 0), ρ and ρz (m = 1), ρ² (m = 2), each 0 beyond the rim.
 */
final class BlurredSphere {

    /** How many radial functions there are. */
    static final int RADIAL = 6;

    /** Blurs are this far apart, natural logarithm. */
    private static final double STEP = 0.03;

    private static final double LEAST = Math.log(0.002);
    private static final int BLURS = 220;
    /** Beyond this many blurs from the rim nothing changes any more. */
    private static final double REACH = 6;

    private static final int PER_BLUR = 8;
    private static final int PLACES = (int) (2 * REACH * PER_BLUR) + 1;
    private static final AtomicReferenceArray<double[]> TABLES = new AtomicReferenceArray<>(BLURS);

    private final double logBlur;
    private final double blur;
    private final double[] lower;
    private final double[] upper;
    private final double part;

    /** @param blur standard deviation of the blur, radii */
    BlurredSphere(double blur) {
        double place = Math.max(0, Math.min(BLURS - 1.001, (Math.log(blur) - LEAST) / STEP));
        logBlur = LEAST + place * STEP;
        this.blur = Math.exp(logBlur);
        int at = (int) place;
        part = place - at;
        lower = table(at);
        upper = table(at + 1);
    }

    /**
     * The radial functions at a distance from the middle, radii.
     *
     * @param value   where they go
     * @param outward their change per radius outward
     * @param wider   their change per natural logarithm of the blur
     */
    void at(double rho, double[] value, double[] outward, double[] wider) {
        double u = (rho - 1) / blur;
        if (u >= REACH) {
            java.util.Arrays.fill(value, 0);
            java.util.Arrays.fill(outward, 0);
            java.util.Arrays.fill(wider, 0);
        } else if (u <= -REACH) {
            inside(rho, value, outward);
            java.util.Arrays.fill(wider, 0);
        } else {
            double place = Math.min((u + REACH) * PER_BLUR, PLACES - 1.001);
            int i = RADIAL * (int) place;
            double f = place - (int) place;
            for (int j = 0; j < RADIAL; j++) {
                double low = lower[i + j] + f * (lower[i + RADIAL + j] - lower[i + j]);
                double high = upper[i + j] + f * (upper[i + RADIAL + j] - upper[i + j]);
                double slope = (1 - part) * (lower[i + RADIAL + j] - lower[i + j])
                        + part * (upper[i + RADIAL + j] - upper[i + j]);
                value[j] = (1 - part) * low + part * high;
                outward[j] = slope * PER_BLUR / blur;
                wider[j] = (high - low) / STEP - u * slope * PER_BLUR;
            }
        }
    }

    private static void inside(double rho, double[] value, double[] outward) {
        radial(rho, value);
        double z = value[1];
        outward[0] = 0;
        outward[1] = -rho / z;
        outward[2] = -2 * rho;
        outward[3] = 1;
        outward[4] = z - rho * rho / z;
        outward[5] = 2 * rho;
    }

    private static void radial(double rho, double[] value) {
        double zz = Math.max(1e-4, 1 - rho * rho);
        double z = Math.sqrt(zz);
        value[0] = 1;
        value[1] = z;
        value[2] = zz;
        value[3] = rho;
        value[4] = rho * z;
        value[5] = rho * rho;
    }

    private static double[] table(int at) {
        double[] made = TABLES.get(at);
        if (made == null) {
            made = blurred(Math.exp(LEAST + at * STEP));
            TABLES.set(at, made);
        }
        return made;
    }

    /** Blurs along a radius what {@link #across} has blurred across it. */
    private static double[] blurred(double blur) {
        double step = blur / PER_BLUR;
        double from = Math.max(-1, 1 - 2 * REACH * blur);
        int n = (int) Math.ceil((1 - from) / step);
        step = (1 - from) / n;
        double[][] strip = new double[n][];
        for (int i = 0; i < n; i++) {
            strip[i] = across(from + (i + 0.5) * step, blur);
        }
        double[] table = new double[PLACES * RADIAL];
        for (int k = 0; k < PLACES; k++) {
            double rho = 1 + blur * ((double) k / PER_BLUR - REACH);
            int first = Math.max(0, (int) ((rho - REACH * blur - from) / step));
            int last = Math.min(n - 1, (int) ((rho + REACH * blur - from) / step));
            for (int i = first; i <= last; i++) {
                double a = (from + (i + 0.5) * step - rho) / blur;
                double weight = step / blur * gauss(a);
                for (int j = 0; j < RADIAL; j++) {
                    table[k * RADIAL + j] += weight * strip[i][j];
                }
            }
        }
        return table;
    }

    /** The radial functions times cos mθ at a distance along the radius, blurred in the direction across it. */
    private static double[] across(double x, double blur) {
        double[] sum = new double[RADIAL];
        double[] value = new double[RADIAL];
        double half = Math.min(REACH * blur, Math.sqrt(Math.max(0, 1 - x * x)));
        int n = 24;
        for (int k = 0; k < n; k++) {
            // y = half · sin: even steps of the angle take the square root at the rim in their stride
            double angle = Math.PI / 2 * (k + 0.5) / n;
            double y = half * Math.sin(angle);
            double weight = 2 * half * Math.cos(angle) * Math.PI / 2 / n * gauss(y / blur) / blur;
            double rho = Math.hypot(x, y);
            radial(rho, value);
            double cos = rho > 1e-9 ? x / rho : 1;
            double[] turned = {1, 1, 1, cos, cos, 2 * cos * cos - 1};
            for (int j = 0; j < RADIAL; j++) {
                sum[j] += weight * value[j] * turned[j];
            }
        }
        return sum;
    }

    private static double gauss(double a) {
        return Math.exp(-a * a / 2) / Math.sqrt(2 * Math.PI);
    }
}
