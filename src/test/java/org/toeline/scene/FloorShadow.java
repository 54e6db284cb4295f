package org.toeline.scene;

import java.util.Arrays;
import java.util.List;

/** The shadows of player, club and ball on the floor: cast by the main light, and the dimness close under things. */
final class FloorShadow {

    private static final double CAST_DEPTH = 0.46;
    private static final double DIM_DEPTH = 0.34;
    /** Above this height a shadow has wide soft edges, below it narrow ones. */
    private static final double HIGH_M = 0.30;

    private final double fromT;
    private final double fromH;
    private final double cell;
    private final int nt;
    private final int nh;
    private final float[] near;
    private final float[] far;
    private final float[] under;
    private final float[] spare;

    FloorShadow(double fromT, double fromH, double toT, double toH, double cellM) {
        this.fromT = fromT;
        this.fromH = fromH;
        this.cell = cellM;
        this.nt = (int) Math.ceil((toT - fromT) / cellM);
        this.nh = (int) Math.ceil((toH - fromH) / cellM);
        near = new float[nt * nh];
        far = new float[nt * nh];
        under = new float[nt * nh];
        spare = new float[nt * nh];
    }

    void cast(List<Mesh> meshes, float[][] posed) {
        Arrays.fill(near, 0);
        Arrays.fill(far, 0);
        Arrays.fill(under, 0);
        double slideT = -Light.KEY.x() / Light.KEY.z();
        double slideH = -Light.KEY.y() / Light.KEY.z();
        for (int m = 0; m < meshes.size(); m++) {
            int[] t = meshes.get(m).triangles();
            float[] p = posed[m];
            for (int i = 0; i < t.length; i += 3) {
                int a = 3 * t[i];
                int b = 3 * t[i + 1];
                int c = 3 * t[i + 2];
                float z = p[a + 2];
                fill(z < HIGH_M ? near : far, p, a, b, c, slideT, slideH);
                if (z < 0.16) {
                    fill(under, p, a, b, c, 0, 0);
                }
            }
        }
        blur(near, 0.012);
        blur(far, 0.045);
        blur(under, 0.022);
    }

    /** Share of the floor's light that is left at a place. */
    double left(double t, double h) {
        double x = (t - fromT) / cell - 0.5;
        double y = (h - fromH) / cell - 0.5;
        int i = (int) Math.floor(x);
        int j = (int) Math.floor(y);
        if (i < 0 || j < 0 || i >= nt - 1 || j >= nh - 1) {
            return 1;
        }
        double u = x - i;
        double v = y - j;
        double cast = Math.max(sample(near, i, j, u, v), sample(far, i, j, u, v));
        return (1 - CAST_DEPTH * cast) * (1 - DIM_DEPTH * sample(under, i, j, u, v));
    }

    private double sample(float[] f, int i, int j, double u, double v) {
        int at = j * nt + i;
        return (f[at] * (1 - u) + f[at + 1] * u) * (1 - v) + (f[at + nt] * (1 - u) + f[at + nt + 1] * u) * v;
    }

    private void fill(float[] grid, float[] p, int a, int b, int c, double slideT, double slideH) {
        double ax = (p[a] + slideT * p[a + 2] - fromT) / cell;
        double ay = (p[a + 1] + slideH * p[a + 2] - fromH) / cell;
        double bx = (p[b] + slideT * p[b + 2] - fromT) / cell;
        double by = (p[b + 1] + slideH * p[b + 2] - fromH) / cell;
        double cx = (p[c] + slideT * p[c + 2] - fromT) / cell;
        double cy = (p[c + 1] + slideH * p[c + 2] - fromH) / cell;
        double area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
        if (area == 0) {
            return;
        }
        int x0 = Math.max(0, (int) Math.ceil(Math.min(ax, Math.min(bx, cx)) - 0.5));
        int x1 = Math.min(nt - 1, (int) Math.floor(Math.max(ax, Math.max(bx, cx)) - 0.5));
        int y0 = Math.max(0, (int) Math.ceil(Math.min(ay, Math.min(by, cy)) - 0.5));
        int y1 = Math.min(nh - 1, (int) Math.floor(Math.max(ay, Math.max(by, cy)) - 0.5));
        for (int y = y0; y <= y1; y++) {
            for (int x = x0; x <= x1; x++) {
                double px = x + 0.5;
                double py = y + 0.5;
                double wa = ((bx - px) * (cy - py) - (by - py) * (cx - px)) / area;
                double wb = ((cx - px) * (ay - py) - (cy - py) * (ax - px)) / area;
                if (wa >= -1e-6 && wb >= -1e-6 && wa + wb <= 1 + 1e-6) {
                    grid[y * nt + x] = 1;
                }
            }
        }
    }

    /** Three box blurs, close to a Gaussian of about the radius. */
    private void blur(float[] grid, double radiusM) {
        int r = Math.max(1, (int) Math.round(radiusM / cell));
        for (int pass = 0; pass < 3; pass++) {
            box(grid, spare, nt, nh, 1, nt, r);
            box(spare, grid, nh, nt, nt, 1, r);
        }
    }

    private static void box(float[] from, float[] to, int length, int lines, int step, int lineStep, int r) {
        float share = 1f / (2 * r + 1);
        for (int line = 0; line < lines; line++) {
            int base = line * lineStep;
            float sum = 0;
            for (int i = 0; i < Math.min(r, length); i++) {
                sum += from[base + i * step];
            }
            for (int i = 0; i < length; i++) {
                if (i + r < length) {
                    sum += from[base + (i + r) * step];
                }
                if (i - r - 1 >= 0) {
                    sum -= from[base + (i - r - 1) * step];
                }
                to[base + i * step] = sum * share;
            }
        }
    }
}
