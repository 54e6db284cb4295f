package org.toeline.assist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Fits the picture of a ball to sub-pixel: a blurred disc whose light follows a matt sphere's (nine spherical harmonics:
 * Basri and Jacobs, IEEE PAMI 25:218, 2003, so that a shaded underside is the ball still), before a ground that differs
 * around it. Pixels that fit neither (a mark on the ball, the club head) lose their weight; where the ball's own light is
 * not seen just inside the rim, that part of the rim is closed: something lies over it.
 *
 * <p>Light adds up in the camera before it is encoded, so a half covered pixel is brighter than half way. How the camera
 * encodes is not known; {@code gamma} is the exponent assumed.
 */
final class BallFit {

    private static final int SHAPE = 4;
    private static final int LIGHT = MattSphere.HARMONICS;
    private static final int ROUNDS = 12;
    private static final double AT_REST_PX = 0.004;
    private static final double GROUND_PX = 4;
    /** The blur expected, pixels (natural logarithm), a pixel's own square included, and its spread. */
    private static final double USUAL_BLUR = Math.log(0.85);
    private static final double BLUR_SPREAD = 0.35;
    private static final double LEAST_NOISE = 1.5;
    private static final double OPEN_SHARE = 0.6;
    /** Where the ball stands off the ground by less than this share of where it does most, its rim is in shade. */
    private static final double LIT_SHARE = 0.58;

    private record Pixel(int x, int y, double level) {
    }

    private final double gamma;
    private final List<Pixel> pixels = new ArrayList<>();
    private final double innerPx;
    private final int sectors;
    private final double[] v;
    private final boolean[] open;
    /** Where the ball is seen up to the rim, lit or not, and how much it stands off the ground there, grey levels. */
    private final boolean[] ball;
    private final double[] contrast;
    private double noise = 8;
    private double[][] inverse = new double[0][0];

    /** @param open which parts of the rim are seen, by angle from x towards y, as first guessed */
    BallFit(Colours colours, Circle start, boolean[] open, double gamma) {
        this.gamma = gamma;
        this.sectors = open.length;
        this.open = open.clone();
        this.ball = open.clone();
        this.contrast = new double[sectors];
        this.innerPx = start.r() > 14 ? start.r() * 0.45 : 0;
        double reach = start.r() + GROUND_PX + 2;
        for (int y = (int) (start.y() - reach); y <= start.y() + reach; y++) {
            for (int x = (int) (start.x() - reach); x <= start.x() + reach; x++) {
                double d = Math.hypot(x + 0.5 - start.x(), y + 0.5 - start.y());
                if (d <= reach && d >= innerPx - 2 && colours.holds(x, y)) {
                    pixels.add(new Pixel(x, y, colours.of(x, y, 0)));
                }
            }
        }
        v = new double[SHAPE + LIGHT + sectors];
        v[0] = start.x();
        v[1] = start.y();
        v[2] = start.r();
        v[3] = USUAL_BLUR;
        begin();
    }

    static int sectors(double r) {
        return Math.max(14, Math.min(48, (int) Math.round(2 * Math.PI * r / 2.2)));
    }

    static int sector(double angle, int sectors) {
        return Math.floorMod((int) Math.floor(angle / (2 * Math.PI) * sectors), sectors);
    }

    /** Plain first values: the ball as bright as the brighter part of what is inside, the ground as just outside. */
    private void begin() {
        double[] inside = pixels.stream().filter(p -> depth(p) > 1.5 && open[sector(p)])
                .mapToDouble(p -> light(p.level)).sorted().toArray();
        v[SHAPE] = inside.length == 0 ? 0.5 : inside[inside.length * 2 / 3];
        for (int k = 0; k < sectors; k++) {
            int at = k;
            double[] outside = pixels.stream().filter(p -> depth(p) < -1.5 && depth(p) > -GROUND_PX && sector(p) == at)
                    .mapToDouble(p -> light(p.level)).sorted().toArray();
            v[SHAPE + LIGHT + k] = outside.length == 0 ? 0.2 : outside[outside.length / 2];
        }
    }

    /** How far inside the rim, pixels. */
    private double depth(Pixel p) {
        return v[2] - Math.hypot(p.x + 0.5 - v[0], p.y + 0.5 - v[1]);
    }

    private int sector(Pixel p) {
        return sector(Math.atan2(p.y + 0.5 - v[1], p.x + 0.5 - v[0]), sectors);
    }

    private double light(double level) {
        return Math.pow(Math.max(level, 1) / 255, gamma);
    }

    /** Whether it came to rest near where it began, on numbers. */
    boolean run() {
        double startR = v[2];
        double startX = v[0];
        double startY = v[1];
        for (int round = 0; round < ROUNDS; round++) {
            if (round > 2) {
                gate();
            }
            double[] before = {v[0], v[1], v[2]};
            step(round < 2);
            boolean lost = !(v[2] > 2.5) || Math.abs(v[2] - startR) > 2 + 0.25 * startR
                    || Math.hypot(v[0] - startX, v[1] - startY) > 2 + 0.25 * startR;
            if (lost || Arrays.stream(v).anyMatch(d -> !Double.isFinite(d))) {
                return false;
            }
            if (round > 4 && Math.abs(v[0] - before[0]) + Math.abs(v[1] - before[1]) + Math.abs(v[2] - before[2])
                    < AT_REST_PX) {
                break;
            }
        }
        return inverse.length > 0;
    }

    Circle circle() {
        return new Circle(v[0], v[1], v[2]);
    }

    double noise() {
        return noise;
    }

    boolean[] open() {
        return open.clone();
    }

    /** Standard deviation of the centre (the larger of the two directions) and of the radius, pixels. */
    double[] sigmas() {
        return new double[] {noise * Math.sqrt(Math.max(inverse[0][0], inverse[1][1])), noise * Math.sqrt(inverse[2][2])};
    }

    /** Misfit in units of a noise: bounded for each pixel, so that what lies over the ball does not decide. */
    double misfit(double unit) {
        double sum = 0;
        double[] model = new double[v.length];
        for (Pixel p : pixels) {
            double e = depth(p) > -GROUND_PX && open[sector(p)] ? (p.level - model(p, v, model)) / unit : 0;
            sum += Math.min(e * e, 9);
        }
        return sum;
    }

    /** Whether the ball is seen up to the rim in a sector, in light or in shade. */
    boolean ball(int sector) {
        return ball[sector];
    }

    /** Root mean square misfit at the open rim, grey levels. */
    double rimMisfit() {
        double[] scratch = new double[v.length];
        double squares = 0;
        int n = 0;
        for (Pixel p : pixels) {
            if (Math.abs(depth(p)) < 2.5 && open[sector(p)]) {
                double e = p.level - model(p, v, scratch);
                squares += e * e;
                n++;
            }
        }
        return n == 0 ? 255 : Math.sqrt(squares / n);
    }

    /** Ball over ground at the rim of a sector, grey levels. */
    double contrast(int sector) {
        return contrast[sector];
    }

    /** The ground beside a sector, grey levels. */
    double ground(int sector) {
        return shown(v[SHAPE + LIGHT + sector]);
    }

    private double shown(double light) {
        return 255 * Math.pow(Math.max(light, 1e-5), 1 / gamma);
    }

    /**
     * Closes the parts of the rim inside which the ball is not seen, and those in its own shade, where it fades into what
     * is around it; opens the others.
     */
    private void gate() {
        int[] all = new int[sectors];
        int[] fits = new int[sectors];
        double[] sum = new double[sectors];
        double[] scratch = new double[v.length];
        double zone = Math.min(0.5 * v[2], 3.5);
        for (Pixel p : pixels) {
            double depth = depth(p);
            if (depth > 0.8 && depth < 0.8 + zone) {
                int k = sector(p);
                all[k]++;
                fits[k] += Math.abs(p.level - model(p, v, scratch)) < 4 * noise ? 1 : 0;
                sum[k] += p.level;
            }
        }
        for (int k = 0; k < sectors; k++) {
            int before = Math.floorMod(k - 1, sectors);
            int after = (k + 1) % sectors;
            int n = 2 * all[k] + all[before] + all[after];
            ball[k] = n > 0 && 2 * fits[k] + fits[before] + fits[after] >= OPEN_SHARE * n && fits[k] >= 0.5 * all[k];
            contrast[k] = n == 0 ? 0 : (2 * sum[k] + sum[before] + sum[after]) / n - shown(v[SHAPE + LIGHT + k]);
        }
        double[] strong = IntStream.range(0, sectors).filter(k -> ball[k]).mapToDouble(k -> Math.abs(contrast[k])).sorted()
                .toArray();
        double lit = strong.length == 0 ? 0 : LIT_SHARE * strong[(int) (0.85 * (strong.length - 1))];
        for (int k = 0; k < sectors; k++) {
            int before = Math.floorMod(k - 1, sectors);
            int after = (k + 1) % sectors;
            // next to a part that is covered the cover's edge reaches in
            open[k] = ball[k] && ball[before] && ball[after] && Math.abs(contrast[k]) >= lit;
        }
    }

    /** The level a pixel should have; the rates of the light's and the ground's values go where they belong. */
    private double model(Pixel p, double[] at, double[] rates) {
        double dx = p.x + 0.5 - at[0];
        double dy = p.y + 0.5 - at[1];
        double d = Math.max(0.3, Math.hypot(dx, dy));
        double sigma = Math.exp(at[3]);
        // a blurred rim falls through one half nearer to the middle: by σ²/2r
        double share = MattSphere.covered((at[2] - d) / sigma - sigma / (2 * Math.max(d, at[2] / 2)));
        double in = Math.min(1, 0.99 * at[2] / d);
        double[] y = MattSphere.harmonics(in * dx / at[2], in * dy / at[2]);
        double place = place(p, at);
        int k = node(p, at);
        int next = (k + 1) % sectors;
        double part = place - Math.floor(place);
        double ball = 0;
        for (int j = 0; j < LIGHT; j++) {
            ball += at[SHAPE + j] * y[j];
        }
        double ground = (1 - part) * at[SHAPE + LIGHT + k] + part * at[SHAPE + LIGHT + next];
        double light = Math.max(1e-5, share * ball + (1 - share) * ground);
        double rate = 255 / gamma * Math.pow(light, 1 / gamma - 1);
        for (int j = 0; j < LIGHT; j++) {
            rates[SHAPE + j] = rate * share * y[j];
        }
        rates[SHAPE + LIGHT + k] = rate * (1 - share) * (1 - part);
        rates[SHAPE + LIGHT + next] = rate * (1 - share) * part;
        return shown(light);
    }

    /** Where among the ground's values a pixel lies, by its angle; each value holds for the middle of its sector. */
    private double place(Pixel p, double[] at) {
        return Math.atan2(p.y + 0.5 - at[1], p.x + 0.5 - at[0]) / (2 * Math.PI) * sectors - 0.5;
    }

    /** The first of the two of the ground's values a pixel lies between. */
    private int node(Pixel p, double[] at) {
        return Math.floorMod((int) Math.floor(place(p, at)), sectors);
    }

    private void step(boolean onlyLight) {
        int n = v.length;
        double[][] normal = new double[n][n];
        double[] right = new double[n];
        double[] rates = new double[n];
        double[] scratch = new double[n];
        List<Double> off = new ArrayList<>();
        int[] which = new int[SHAPE + LIGHT + 2];
        double[] shifted = v.clone();
        for (Pixel p : pixels) {
            double depth = depth(p);
            if (depth < -GROUND_PX || depth > v[2] - innerPx || depth < 2 && !open[sector(p)]) {
                continue;
            }
            double e = p.level - model(p, v, rates);
            int k = node(p, v);
            // the spread is that of the parts that are ball; what covers the rest must not widen it
            if (open[sector(p)]) {
                off.add(Math.abs(e));
            }
            double u = e / (4.7 * noise);
            double weight = Math.abs(u) >= 1 ? 0 : (1 - u * u) * (1 - u * u);
            if (weight <= 0 && depth > -0.5) {
                continue;
            }
            weight = Math.max(weight, 0.02);
            for (int j = 0; j < SHAPE; j++) {
                shifted[j] = v[j] + 1e-3;
                rates[j] = onlyLight ? 0 : (model(p, shifted, scratch) - (p.level - e)) / 1e-3;
                shifted[j] = v[j];
            }
            for (int j = 0; j < SHAPE + LIGHT; j++) {
                which[j] = j;
            }
            which[SHAPE + LIGHT] = SHAPE + LIGHT + k;
            which[SHAPE + LIGHT + 1] = SHAPE + LIGHT + (k + 1) % sectors;
            for (int a : which) {
                right[a] += weight * rates[a] * e;
                for (int b : which) {
                    normal[a][b] += weight * rates[a] * rates[b];
                }
            }
        }
        priors(normal, right, onlyLight);
        move(normal, right);
        double[] sorted = off.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        noise = sorted.length == 0 ? noise : Math.max(LEAST_NOISE, 1.48 * sorted[sorted.length / 2]);
    }

    private void move(double[][] normal, double[] right) {
        inverse = Symmetric.inverse(normal);
        if (inverse.length == 0) {
            v[0] = Double.NaN;
            return;
        }
        for (int i = 0; i < v.length; i++) {
            double by = 0;
            for (int j = 0; j < v.length; j++) {
                by += inverse[i][j] * right[j];
            }
            v[i] += i < SHAPE ? Math.max(-0.7, Math.min(0.7, by)) : by;
        }
        v[3] = Math.max(Math.log(0.22), Math.min(Math.log(2.2), v[3]));
    }

    /** What is believed beforehand, in units of the noise: the blur, a smooth light, a ground that changes gently. */
    private void priors(double[][] normal, double[] right, boolean onlyLight) {
        double unit = noise * noise;
        for (int j = 0; j < SHAPE; j++) {
            normal[j][j] += onlyLight ? 1e6 : 1e-6;
        }
        add(normal, right, 3, USUAL_BLUR - v[3], unit / (BLUR_SPREAD * BLUR_SPREAD));
        double scale = Math.max(0.05, v[SHAPE]);
        for (int j = 1; j < LIGHT; j++) {
            double spread = (j <= 3 ? 0.5 : 0.15) * scale;
            add(normal, right, SHAPE + j, -v[SHAPE + j], unit / (spread * spread));
        }
        normal[SHAPE][SHAPE] += 1e-6;
        for (int k = 0; k < sectors; k++) {
            int a = SHAPE + LIGHT + k;
            int b = SHAPE + LIGHT + (k + 1) % sectors;
            double weight = unit / (0.3 * 0.3 * scale * scale);
            double e = v[b] - v[a];
            normal[a][a] += weight + 1e-6;
            normal[b][b] += weight;
            normal[a][b] -= weight;
            normal[b][a] -= weight;
            right[a] += weight * e;
            right[b] -= weight * e;
        }
    }

    private static void add(double[][] normal, double[] right, int i, double off, double weight) {
        normal[i][i] += weight;
        right[i] += weight * off;
    }
}
