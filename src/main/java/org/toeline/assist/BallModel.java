package org.toeline.assist;

/**
 * The picture of a ball that a camera should make: {@link BlurredSphere} before a ground whose light differs around it, both
 * possibly behind a cover with a straight edge (a club head), blurred alike, then encoded. Light adds up in the camera before
 * it is encoded, so a half covered pixel is brighter than half way.
 *
 * <p>Its values, in this order: middle x and y, radius and blur (natural logarithm) in pixels; nine of the ball's light; the
 * ground's light at even angles from x towards y; when there is a cover, the direction to it (radians, from x towards y), how
 * far beyond the patch's middle it begins (pixels), and its light. Light is 0 to 1.
 */
final class BallModel {

    static final int SHAPE = 4;
    static final int LIGHT = 9;
    static final int COVER = 3;

    final int sectors;
    final boolean covered;
    private final double gamma;
    private final double middleX;
    private final double middleY;
    private double[] v = new double[0];
    private BlurredSphere sphere = new BlurredSphere(0.1);
    private final double[] value = new double[BlurredSphere.RADIAL];
    private final double[] outward = new double[BlurredSphere.RADIAL];
    private final double[] wider = new double[BlurredSphere.RADIAL];
    private final double[] share = new double[BlurredSphere.RADIAL];
    private final int[] which;
    private final double[] turn = new double[BlurredSphere.RADIAL];

    /**
     * @param gamma   the exponent by which the camera encodes light
     * @param middleX from where the cover's distance is counted, pixels
     */
    BallModel(int sectors, double gamma, Circle middle, boolean covered) {
        this.sectors = sectors;
        this.gamma = gamma;
        this.middleX = middle.x();
        this.middleY = middle.y();
        this.covered = covered;
        which = new int[SHAPE + LIGHT + 2 + (covered ? COVER : 0)];
        for (int j = 0; j < which.length; j++) {
            which[j] = j < SHAPE + LIGHT ? j : j - 2 + sectors;
        }
    }

    int values() {
        return SHAPE + LIGHT + sectors + (covered ? COVER : 0);
    }

    int cover() {
        return SHAPE + LIGHT + sectors;
    }

    void set(double[] values) {
        v = values;
        sphere = new BlurredSphere(Math.exp(v[3]) / v[2]);
    }

    double gamma() {
        return gamma;
    }

    double light(double level) {
        return Math.pow(Math.max(level, 1) / 255, gamma);
    }

    double shown(double light) {
        return 255 * Math.pow(Math.max(light, 1e-5), 1 / gamma);
    }

    /** The ground's light beside a sector. */
    double ground(int sector) {
        return v[SHAPE + LIGHT + sector];
    }

    /** The ball's own light, the same from all sides. */
    double ballLight() {
        return v[SHAPE];
    }

    double radius() {
        return v[2];
    }

    /** How far inside the rim a place lies, pixels. */
    double depth(double x, double y) {
        return v[2] - Math.hypot(x - v[0], y - v[1]);
    }

    /** Beside which part of the rim a place lies. */
    int sector(double x, double y) {
        return Rim.sector(Math.atan2(y - v[1], x - v[0]), sectors);
    }

    /** How much of a place is hidden by the cover, 0 to 1. */
    double hidden(double x, double y) {
        return covered ? covered(past(x, y) / Math.exp(v[3])) : 0;
    }

    /** How far beyond the cover's edge a place lies, pixels; far before it where there is none. */
    double past(double x, double y) {
        if (!covered) {
            return Double.NEGATIVE_INFINITY;
        }
        int c = cover();
        return (x - middleX) * Math.cos(v[c]) + (y - middleY) * Math.sin(v[c]) - v[c + 1];
    }

    /** Normal distribution function, to 1e-4 and better (logistic of a cubic, Page 1977). */
    static double covered(double u) {
        return 1 / (1 + Math.exp(-1.5976 * u - 0.07056 * u * u * u));
    }

    /** The level at a place, the middle of a pixel, and its change with each of the values that {@link #which} names. */
    double level(double x, double y, double[] rates) {
        double dx = x - v[0];
        double dy = y - v[1];
        double d = Math.max(0.3, Math.hypot(dx, dy));
        double cos = dx / d;
        double sin = dy / d;
        double rho = d / v[2];
        sphere.at(rho, value, outward, wider);
        turned(cos, sin);
        double place = Math.atan2(dy, dx) / (2 * Math.PI) * sectors - 0.5;
        int k = Math.floorMod((int) Math.floor(place), sectors);
        int next = (k + 1) % sectors;
        double part = place - Math.floor(place);
        double first = v[SHAPE + LIGHT + k];
        double second = v[SHAPE + LIGHT + next];
        double ground = (1 - part) * first + part * second;
        double groundTurn = (second - first) * sectors / (2 * Math.PI);

        double seen = dot(share, value) + (1 - value[0]) * ground;
        double out = dot(share, outward) - outward[0] * ground;
        double around = dot(turn, value) + (1 - value[0]) * groundTurn;
        double blurrier = dot(share, wider) - wider[0] * ground;

        double hidden = hidden(x, y);
        double light = (1 - hidden) * seen + (covered ? hidden * v[cover() + 2] : 0);
        double shown = shown(light);
        double rate = shown / (gamma * Math.max(light, 1e-5));
        double open = rate * (1 - hidden);
        rates[0] = open * (-out * cos / v[2] + around * sin / d);
        rates[1] = open * (-out * sin / v[2] - around * cos / d);
        rates[2] = open * (-out * rho - blurrier) / v[2];
        rates[3] = open * blurrier;
        lights(open, cos, sin, rates);
        which[SHAPE + LIGHT] = SHAPE + LIGHT + k;
        which[SHAPE + LIGHT + 1] = SHAPE + LIGHT + next;
        rates[SHAPE + LIGHT + k] = open * (1 - value[0]) * (1 - part);
        rates[SHAPE + LIGHT + next] = open * (1 - value[0]) * part;
        if (covered) {
            coverRates(x, y, hidden, rate, rate * (v[cover() + 2] - seen), rates);
        }
        return shown;
    }

    /** The values that the last level depended on. */
    int[] which() {
        return which;
    }

    /** How much of the last place asked for is the ball's, hidden or not, 0 to 1. */
    double ball() {
        return value[0];
    }

    private void coverRates(double x, double y, double hidden, double rate, double step, double[] rates) {
        int c = cover();
        double blur = Math.exp(v[3]);
        double u = past(x, y) / blur;
        double steep = step * Math.exp(-u * u / 2) / Math.sqrt(2 * Math.PI) / blur;
        rates[c] = steep * (-(x - middleX) * Math.sin(v[c]) + (y - middleY) * Math.cos(v[c]));
        rates[c + 1] = -steep;
        rates[c + 2] = rate * hidden;
        rates[3] -= steep * u * blur;
    }

    /** What each radial function counts at an angle, and how that changes with the angle. */
    private void turned(double cos, double sin) {
        double[] a = v;
        int l = SHAPE;
        double cos2 = cos * cos - sin * sin;
        double sin2 = 2 * sin * cos;
        share[0] = a[l] - 0.67 * a[l + 3] - 1.5 * a[l + 8];
        share[1] = a[l + 3];
        share[2] = 3 * a[l + 8];
        share[3] = a[l + 1] * cos + a[l + 2] * sin;
        share[4] = a[l + 5] * cos + a[l + 6] * sin;
        share[5] = a[l + 7] * cos2 + a[l + 4] / 2 * sin2;
        turn[3] = a[l + 2] * cos - a[l + 1] * sin;
        turn[4] = a[l + 6] * cos - a[l + 5] * sin;
        turn[5] = a[l + 4] * cos2 - 2 * a[l + 7] * sin2;
    }

    /** The rates of the nine harmonics: 1, x, y, z − 0.67, xy, xz, yz, x² − y², 3z² − 1.5. */
    private void lights(double rate, double cos, double sin, double[] rates) {
        int l = SHAPE;
        rates[l] = rate * value[0];
        rates[l + 1] = rate * value[3] * cos;
        rates[l + 2] = rate * value[3] * sin;
        rates[l + 3] = rate * (value[1] - 0.67 * value[0]);
        rates[l + 4] = rate * value[5] * sin * cos;
        rates[l + 5] = rate * value[4] * cos;
        rates[l + 6] = rate * value[4] * sin;
        rates[l + 7] = rate * value[5] * (cos * cos - sin * sin);
        rates[l + 8] = rate * (3 * value[2] - 1.5 * value[0]);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int j = 0; j < BlurredSphere.RADIAL; j++) {
            sum += a[j] * b[j];
        }
        return sum;
    }
}
