package org.toeline.scene;

import java.util.Arrays;
import org.toeline.camera.Camera;

/** Colours the pixels that {@link Raster} found covered: once for each surface in a pixel. */
final class Surface {

    private static final int FINE = Raster.FINE;

    private final Raster raster;
    private final Vec eye;
    private final double focalPx;
    private final Vec forward;
    private final Swatch swatch = new Swatch();
    private final int[] seen = new int[FINE * FINE];
    private final int[] count = new int[FINE * FINE];
    private final int[] sample = new int[FINE * FINE];

    Surface(Raster raster, Camera camera) {
        this.raster = raster;
        this.eye = Vec.of(camera.pose().position());
        this.forward = Vec.of(camera.pose().forward());
        this.focalPx = camera.lens().focalPx();
    }

    /** Lays the surfaces in a pixel over the colour behind them. */
    void over(int x, int y, float[] colour) {
        int kinds = 0;
        int covered = 0;
        Arrays.fill(count, 0);
        for (int s = 0; s < FINE * FINE; s++) {
            // the middle first, so that it stands for its surface
            int place = (s + FINE * FINE / 2) % (FINE * FINE);
            int triangle = raster.triangleAt(x * FINE + place % FINE, y * FINE + place / FINE);
            if (triangle < 0) {
                continue;
            }
            covered++;
            int mesh = raster.meshOf(triangle);
            int k = 0;
            while (k < kinds && seen[k] != mesh) {
                k++;
            }
            if (k == kinds) {
                seen[kinds] = mesh;
                sample[kinds++] = place;
            }
            count[k]++;
        }
        if (covered == 0) {
            return;
        }
        float left = 1 - covered / (float) (FINE * FINE);
        for (int c = 0; c < 3; c++) {
            colour[c] *= left;
        }
        for (int k = 0; k < kinds; k++) {
            shade(seen[k], x * FINE + sample[k] % FINE, y * FINE + sample[k] / FINE);
            float share = count[k] / (float) (FINE * FINE);
            colour[0] += (float) (share * swatch.red);
            colour[1] += (float) (share * swatch.green);
            colour[2] += (float) (share * swatch.blue);
        }
    }

    private void shade(int m, int fineX, int fineY) {
        Mesh mesh = raster.meshes.get(m);
        int triangle = raster.triangleAt(fineX, fineY) - raster.firstTriangleOf(m);
        int a = mesh.triangles()[3 * triangle];
        int b = mesh.triangles()[3 * triangle + 1];
        int c = mesh.triangles()[3 * triangle + 2];
        float[] s = raster.screen[m];
        double px = fineX + 0.5;
        double py = fineY + 0.5;
        double area = (s[3 * b] - s[3 * a]) * (s[3 * c + 1] - s[3 * a + 1])
                - (s[3 * b + 1] - s[3 * a + 1]) * (s[3 * c] - s[3 * a]);
        double wa = ((s[3 * b] - px) * (s[3 * c + 1] - py) - (s[3 * b + 1] - py) * (s[3 * c] - px)) / area;
        double wb = ((s[3 * c] - px) * (s[3 * a + 1] - py) - (s[3 * c + 1] - py) * (s[3 * a] - px)) / area;
        double wc = 1 - wa - wb;
        Vec rest = mix(mesh.at(), a, b, c, wa, wb, wc);
        Vec posed = mix(raster.posed[m], a, b, c, wa, wb, wc);
        Vec n = mix(raster.normals[m], a, b, c, wa, wb, wc).unit();
        double open = wa * mesh.open()[a] + wb * mesh.open()[b] + wc * mesh.open()[c];
        double lit = wa * mesh.lit()[a] + wb * mesh.lit()[b] + wc * mesh.lit()[c];
        double fine = posed.minus(eye).dot(forward) / focalPx;
        mesh.part().paint().at(rest.x(), rest.y(), rest.z(), fine, swatch);
        light(n, eye.minus(posed).unit(), open, lit);
    }

    private void light(Vec n, Vec view, double open, double lit) {
        double facing = n.dot(Light.KEY);
        double wrapped = Math.max(0, (facing + 0.18) / 1.18);
        double sky = Light.SKY_STRENGTH * open * (0.72 + 0.28 * n.z());
        double strength = sky + Light.KEY_STRENGTH * lit * wrapped;
        double gloss = swatch.gloss;
        swatch.times(strength);
        if (gloss > 0) {
            Vec half = Light.KEY.plus(view).unit();
            double glint = 0.45 * lit * Math.pow(Math.max(0, n.dot(half)), 42);
            double rim = 0.20 * open * Math.pow(1 - Math.max(0, n.dot(view)), 3) + 0.05 * Math.max(0, n.z());
            double add = gloss * (glint + rim);
            swatch.red += add;
            swatch.green += add;
            swatch.blue += add;
        }
    }

    private static Vec mix(float[] f, int a, int b, int c, double wa, double wb, double wc) {
        return new Vec(
                wa * f[3 * a] + wb * f[3 * b] + wc * f[3 * c],
                wa * f[3 * a + 1] + wb * f[3 * b + 1] + wc * f[3 * c + 1],
                wa * f[3 * a + 2] + wb * f[3 * b + 2] + wc * f[3 * c + 2]);
    }
}
