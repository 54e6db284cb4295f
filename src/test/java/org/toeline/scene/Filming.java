package org.toeline.scene;

import org.toeline.camera.Camera;
import org.toeline.camera.Lens;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;

/** One camera filming one stage. Not thread-safe: each clip has its own. */
final class Filming {

    private static final int BACKGROUND_FINE = 3;
    private static final double NOISE = 1.1;

    private final Scenario scenario;
    private final Camera camera;
    private final int width;
    private final int height;
    private final Raster raster;
    private final FloorShadow shadow;
    private final float[] bay;
    private final float[] floor;
    private final Surface surface;

    Filming(Scenario scenario, Stage stage, View view, int width, int height) {
        this.scenario = scenario;
        this.width = width;
        this.height = height;
        Camera full = scenario.camera(view);
        double share = width / (double) Scenario.WIDTH;
        Lens l = full.lens();
        this.camera = new Camera(
                new Lens(l.focalPx() * share, l.cxPx() * share, l.cyPx() * share, l.k1(), l.k2()), full.pose());
        this.raster = new Raster(stage.meshes(), camera, width, height);
        this.shadow = view == View.TEE
                ? new FloorShadow(-0.6, -0.4, 0.6, 1.2, 0.003)
                : new FloorShadow(-1.6, -0.8, 1.8, 2.4, 0.008);
        this.bay = new float[3 * width * height];
        this.floor = new float[2 * width * height];
        this.surface = new Surface(raster, camera);
        background();
    }

    private void background() {
        Bay room = new Bay(scenario.floor().points(), scenario.wall(), scenario.panel());
        Hit hit = new Hit();
        Vec from = Vec.of(camera.pose().position());
        int n = BACKGROUND_FINE;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int at = y * width + x;
                floor[2 * at] = Float.NaN;
                for (int s = 0; s < n * n; s++) {
                    Vec ray = ray(x + (s % n + 0.5) / n, y + (s / n + 0.5) / n);
                    room.look(from, ray, 1 / camera.lens().focalPx(), hit);
                    bay[3 * at] += (float) (hit.swatch.red / (n * n));
                    bay[3 * at + 1] += (float) (hit.swatch.green / (n * n));
                    bay[3 * at + 2] += (float) (hit.swatch.blue / (n * n));
                    if (s == n * n / 2 && hit.floor) {
                        floor[2 * at] = (float) hit.t;
                        floor[2 * at + 1] = (float) hit.h;
                    }
                }
            }
        }
    }

    /** Direction through a pixel, unit depth along the axis; the lens has no distortion. */
    private Vec ray(double xPx, double yPx) {
        Lens l = camera.lens();
        double x = (xPx - l.cxPx()) / l.focalPx();
        double y = (yPx - l.cyPx()) / l.focalPx();
        return Vec.of(camera.pose().forward())
                .plus(Vec.of(camera.pose().right()).times(x))
                .plus(Vec.of(camera.pose().down()).times(y));
    }

    /** The picture at a moment, mirrored for a left-handed player, with the noise of its frame. */
    Picture frame(double[][] moves, int number) {
        raster.draw(moves);
        shadow.cast(raster.meshes, raster.posed);
        byte[] rgb = new byte[3 * width * height];
        float[] colour = new float[3];
        for (int y = 0; y < height; y++) {
            boolean rows = y >= raster.fromY() && y < raster.toY();
            for (int x = 0; x < width; x++) {
                int at = y * width + x;
                double left = Float.isNaN(floor[2 * at]) ? 1 : shadow.left(floor[2 * at], floor[2 * at + 1]);
                colour[0] = (float) (bay[3 * at] * left);
                colour[1] = (float) (bay[3 * at + 1] * left);
                colour[2] = (float) (bay[3 * at + 2] * left);
                if (rows && x >= raster.fromX() && x < raster.toX()) {
                    surface.over(x, y, colour);
                }
                double noise = noise(at, number);
                for (int c = 0; c < 3; c++) {
                    rgb[3 * at + c] = (byte) Math.round(Math.max(0, Math.min(255, Light.shown(colour[c]) + noise)));
                }
            }
        }
        Picture picture = new Picture(width, height, rgb);
        return scenario.handedness() == Handedness.LEFT ? picture.mirrored() : picture;
    }

    /** About normal: the sum of two even draws. */
    private static double noise(int pixel, int frame) {
        int h = Grain.hash(pixel * 31 + frame * 0x3C6EF35F);
        return NOISE * ((h & 255) + (h >> 8 & 255) - 255) / 104.0;
    }
}
