package org.toeline.assist;

import java.util.SplittableRandom;
import org.toeline.geometry.ImagePoint;
import org.toeline.video.Frame;

/** A ball drawn where it is known to be: shaded as a matt sphere, on a ground with its texture, part of it hidden if asked. */
record DrawnBall(double x, double y, double diameterPx, Ground ground, Cover cover, Frame frame) {

    static final double NOISE = 4;

    /** What it lies on. */
    enum Ground {
        GRASS,
        MAT,
        TEE,
        BRIGHT;

        void at(double x, double y, double ballX, double ballY, double r, int seed, double[] rgb) {
            switch (this) {
                case GRASS ->
                    set(
                            rgb,
                            82,
                            122,
                            76,
                            22 * Drawn.grain(x / 1.6, y / 2.6, seed) + 10 * Drawn.grain(x / 7, y / 6, seed + 1));
                case MAT ->
                    set(
                            rgb,
                            70,
                            104,
                            72,
                            9 * Math.sin(x * 1.9) * Math.sin(y * 1.9) + 6 * Drawn.grain(x / 3, y / 3, seed));
                case TEE -> {
                    boolean tee = y > ballY && Math.abs(x - ballX) < 0.28 * r;
                    if (tee) {
                        set(rgb, 205, 165, 95, 0);
                    } else {
                        GRASS.at(x, y, ballX, ballY, r, seed, rgb);
                    }
                }
                default -> set(rgb, 158, 160, 154, 4 * Drawn.grain(x / 4, y / 4, seed));
            }
        }

        private static void set(double[] rgb, double red, double green, double blue, double more) {
            rgb[0] = red + more;
            rgb[1] = green + more;
            rgb[2] = blue + 0.7 * more;
        }
    }

    /** What lies over it. */
    enum Cover {
        NONE,
        HALF
    }

    static DrawnBall random(double diameterPx, Ground ground, Cover cover, SplittableRandom random) {
        double r = diameterPx / 2;
        int side = (int) (diameterPx + 44);
        double x = side / 2.0 + random.nextDouble(-1, 1);
        double y = side / 2.0 + random.nextDouble(-1, 1);
        double light = random.nextDouble(-2.4, -0.7);
        double lx = Math.cos(light);
        double ly = Math.sin(light);
        int seed = random.nextInt(1 << 20);
        double bound = x - random.nextDouble(0, 0.15) * r;
        Frame frame = Drawn.picture(side, side, random.nextDouble(0.5, 1.2), NOISE, random, (px, py, rgb) -> {
            double u = (px - x) / r;
            double v = (py - y) / r;
            if (cover == Cover.HALF && px < bound && Math.abs(py - y) < 1.4 * r + 6) {
                rgb[0] = 38;
                rgb[1] = 39;
                rgb[2] = 43;
            } else if (u * u + v * v <= 1) {
                java.util.Arrays.fill(rgb, lit(u, v, lx, ly));
            } else {
                ground.at(px, py, x, y, r, seed, rgb);
            }
        });
        return new DrawnBall(x, y, diameterPx, ground, cover, frame);
    }

    /** Close by, the toe of a white shoe behind it: brighter than the ball's lower half, darker than its upper one. */
    static DrawnBall beforeAShoe(double diameterPx, SplittableRandom random) {
        double r = diameterPx / 2;
        int side = (int) (3.4 * diameterPx + 44);
        double x = side / 2.0 + random.nextDouble(-1, 1);
        double y = side / 2.0 + random.nextDouble(-1, 1);
        double light = random.nextDouble(-2.2, -0.9);
        double lx = Math.cos(light);
        double ly = Math.sin(light);
        double shoeX = x + random.nextDouble(-0.9, 0.9) * r;
        double shoeY = y - random.nextDouble(0.3, 0.9) * r;
        double across = random.nextDouble(1.2, 2.4) * r;
        double high = random.nextDouble(0.8, 1.4) * r;
        double white = random.nextDouble(205, 238);
        int seed = random.nextInt(1 << 20);
        Frame frame = Drawn.picture(side, side, random.nextDouble(0.5, 1.2), NOISE, random, (px, py, rgb) -> {
            double u = (px - x) / r;
            double v = (py - y) / r;
            double along = (px - shoeX) / across;
            double up = (py - shoeY) / high;
            if (u * u + v * v <= 1) {
                java.util.Arrays.fill(rgb, lit(u, v, lx, ly));
            } else if (along * along + up * up <= 1) {
                java.util.Arrays.fill(rgb, white * (0.94 - 0.1 * up));
            } else {
                Ground.GRASS.at(px, py, x, y, r, seed, rgb);
            }
        });
        return new DrawnBall(x, y, diameterPx, Ground.GRASS, Cover.NONE, frame);
    }

    /** A matt sphere's light, grey levels. */
    private static double lit(double u, double v, double lx, double ly) {
        return 246 * (0.84 + 0.10 * (u * lx + v * ly) + 0.06 * Math.sqrt(1 - u * u - v * v));
    }

    /** Somewhere on the part that is seen. */
    ImagePoint click(SplittableRandom random) {
        double r = diameterPx / 2;
        double off = cover == Cover.HALF ? 0.4 * r : 0;
        return new ImagePoint(x + off + random.nextDouble(-0.3, 0.3) * r, y + random.nextDouble(-0.3, 0.3) * r);
    }
}
