package org.toeline.assist;

import java.util.List;
import java.util.stream.IntStream;
import org.toeline.assist.BallPatch.Pixel;

/**
 * The rim of a ball in sectors, by angle from x towards y, and which of them tell where it is: those inside which the ball's
 * own light is seen and where it stands off the ground.
 */
final class Rim {

    private static final double OPEN_SHARE = 0.6;
    /** A ball's light may differ from a smooth one's by this share of it: dimples, print, the shade of what is near. */
    private static final double SHADE = 0.1;
    /** Where the ball stands off its ground by less than this share of what its bright parts would, its rim is in shade. */
    private static final double LIT_SHARE = 0.5;
    /** Below this a ball hardly stands off its ground, grey levels. */
    private static final double LEAST_CONTRAST = 12;

    final int sectors;
    private final boolean[] open;
    private final boolean[] ball;
    private final double[] contrast;
    private final double[] level;

    Rim(boolean[] open) {
        this.sectors = open.length;
        this.open = open.clone();
        this.ball = open.clone();
        this.contrast = new double[sectors];
        this.level = new double[sectors];
    }

    static int sectors(double r) {
        return Math.max(14, Math.min(36, (int) Math.round(2 * Math.PI * r / 2.2)));
    }

    static int sector(double angle, int sectors) {
        return Math.floorMod((int) Math.floor(angle / (2 * Math.PI) * sectors), sectors);
    }

    boolean open(int sector) {
        return open[sector];
    }

    boolean[] open() {
        return open.clone();
    }

    /** Whether the ball is seen up to the rim in a sector, in light or in shade. */
    boolean ball(int sector) {
        return ball[sector];
    }

    /** The ball just inside the rim of a sector, grey levels. */
    double level(int sector) {
        return level[sector];
    }

    /** Ball over ground at the rim of a sector, grey levels. */
    double contrast(int sector) {
        return contrast[sector];
    }

    /**
     * Closes the parts of the rim inside which the ball is not seen, and those in its own shade, where it fades into what
     * is around it; opens the others.
     *
     * @param misfit of each pixel, grey levels
     */
    void look(List<Pixel> pixels, double[] misfit, double noise, BallModel model) {
        int[] all = new int[sectors];
        int[] fits = new int[sectors];
        double[] sum = new double[sectors];
        double zone = Math.min(0.5 * model.radius(), 3.5);
        double tolerance = Math.max(4 * noise, SHADE * model.shown(model.ballLight()));
        for (int i = 0; i < misfit.length; i++) {
            Pixel p = pixels.get(i);
            double depth = model.depth(p.middleX(), p.middleY());
            if (depth > 0.8 && depth < 0.8 + zone) {
                int k = model.sector(p.middleX(), p.middleY());
                all[k]++;
                boolean hidden = model.hidden(p.middleX(), p.middleY()) > 0.5;
                fits[k] += Math.abs(misfit[i]) < tolerance && !hidden ? 1 : 0;
                sum[k] += p.level();
            }
        }
        for (int k = 0; k < sectors; k++) {
            int before = Math.floorMod(k - 1, sectors);
            int after = (k + 1) % sectors;
            int n = 2 * all[k] + all[before] + all[after];
            ball[k] = n > 0 && 2 * fits[k] + fits[before] + fits[after] >= OPEN_SHARE * n && fits[k] >= 0.5 * all[k];
            level[k] = n == 0 ? 0 : (2 * sum[k] + sum[before] + sum[after]) / n;
            contrast[k] = n == 0 ? 0 : level[k] - model.shown(model.ground(k));
        }
        openUp(model.covered);
    }

    private void openUp(boolean covered) {
        double[] bright = IntStream.range(0, sectors)
                .filter(k -> ball[k])
                .mapToDouble(k -> level[k])
                .sorted()
                .toArray();
        double lit = bright.length == 0 ? 0 : bright[(int) (0.85 * (bright.length - 1))];
        for (int k = 0; k < sectors; k++) {
            int before = Math.floorMod(k - 1, sectors);
            int after = (k + 1) % sectors;
            // next to a part that is covered the cover's edge reaches in, unless that edge is part of the model
            open[k] = ball[k]
                    && (covered || ball[before] && ball[after])
                    && Math.abs(contrast[k]) >= LEAST_CONTRAST
                    && Math.abs(contrast[k]) >= LIT_SHARE * Math.abs(lit - level[k] + contrast[k]);
        }
    }

    /**
     * The longest stretch of the rim where the ball is not seen.
     *
     * @param share    of the whole rim
     * @param angleRad of its middle, from x towards y
     */
    record Gap(double share, double angleRad) {}

    Gap gap() {
        Gap longest = new Gap(0, 0);
        int run = 0;
        for (int k = 0; k < 2 * sectors; k++) {
            run = ball[k % sectors] ? 0 : Math.min(run + 1, sectors);
            if (run > longest.share * sectors) {
                longest = new Gap((double) run / sectors, 2 * Math.PI * (k + 1 - run / 2.0) / sectors);
            }
        }
        return longest;
    }

    double openShare() {
        int n = 0;
        for (boolean o : open) {
            n += o ? 1 : 0;
        }
        return (double) n / sectors;
    }
}
