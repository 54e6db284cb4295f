package org.toeline.assist;

import java.util.SplittableRandom;
import org.toeline.video.Frame;

/**
 * Pictures whose truth is known: painted at many points in each pixel, in light, as a sensor gathers it; blurred, encoded
 * as sRGB (IEC 61966-2-1) and given noise in grey levels.
 */
final class Drawn {

    /** What is at a point of the picture; colours 0 to 255 as they would be shown. */
    interface Paint {
        /** @param rgb where red, green and blue go */
        void at(double xPx, double yPx, double[] rgb);
    }

    /** Points across one pixel. */
    private static final int FINE = 3;

    private Drawn() {}

    static Frame picture(int width, int height, double blurPx, double noise, SplittableRandom random, Paint paint) {
        int w = width * FINE;
        int h = height * FINE;
        float[][] light = new float[3][w * h];
        double[] rgb = new double[3];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                paint.at((x + 0.5) / FINE, (y + 0.5) / FINE, rgb);
                for (int c = 0; c < 3; c++) {
                    light[c][y * w + x] = light(rgb[c]);
                }
            }
        }
        int[] argb = new int[width * height];
        java.util.Arrays.fill(argb, 0xff000000);
        for (int c = 0; c < 3; c++) {
            float[] blurred = blurred(light[c], w, h, blurPx * FINE);
            for (int i = 0; i < argb.length; i++) {
                double sum = 0;
                for (int k = 0; k < FINE * FINE; k++) {
                    sum += blurred[(i / width * FINE + k / FINE) * w + i % width * FINE + k % FINE];
                }
                double level = shown(sum / (FINE * FINE)) + noise * random.nextGaussian();
                argb[i] |= (int) Math.max(0, Math.min(255, Math.round(level))) << 8 * (2 - c);
            }
        }
        return new Frame(0, 0, width, height, argb);
    }

    /** Of sixteenths of levels, as powers are slow. */
    private static final float[] LIGHT = new float[255 * 16 + 1];

    static {
        for (int i = 0; i < LIGHT.length; i++) {
            double v = i / (255.0 * 16);
            LIGHT[i] = (float) (v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4));
        }
    }

    private static float light(double level) {
        return LIGHT[(int) Math.round(16 * Math.max(0, Math.min(255, level)))];
    }

    private static double shown(double light) {
        return 255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055);
    }

    private static float[] blurred(float[] in, int w, int h, double sigma) {
        int reach = (int) Math.ceil(2.7 * sigma);
        float[] kernel = new float[2 * reach + 1];
        float sum = 0;
        for (int k = -reach; k <= reach; k++) {
            kernel[k + reach] = (float) Math.exp(-k * k / (2 * sigma * sigma));
            sum += kernel[k + reach];
        }
        for (int k = 0; k < kernel.length; k++) {
            kernel[k] /= sum;
        }
        float[] across = new float[in.length];
        float[] out = new float[in.length];
        for (int y = 0; y < h; y++) {
            for (int k = -reach; k <= reach; k++) {
                float weight = kernel[k + reach];
                for (int x = 0; x < w; x++) {
                    across[y * w + x] += weight * in[y * w + Math.max(0, Math.min(w - 1, x + k))];
                }
            }
        }
        for (int y = 0; y < h; y++) {
            for (int k = -reach; k <= reach; k++) {
                float weight = kernel[k + reach];
                int from = w * Math.max(0, Math.min(h - 1, y + k));
                for (int x = 0; x < w; x++) {
                    out[y * w + x] += weight * across[from + x];
                }
            }
        }
        return out;
    }

    /** Repeatable roughness of a surface, about −1 to 1, of grains so many pixels across. */
    static double grain(double x, double y, int seed) {
        int i = (int) Math.floor(x);
        int j = (int) Math.floor(y);
        double u = x - i;
        double v = y - j;
        return (1 - v) * ((1 - u) * lattice(i, j, seed) + u * lattice(i + 1, j, seed))
                + v * ((1 - u) * lattice(i, j + 1, seed) + u * lattice(i + 1, j + 1, seed));
    }

    private static double lattice(int i, int j, int seed) {
        int h = 31 * (31 * seed + i) * 0x9E3779B1 + j * 0x85EBCA77;
        h = (h ^ h >>> 16) * 0x7FEB352D;
        h = (h ^ h >>> 15) * 0x846CA68B;
        return ((h ^ h >>> 16) & 0xffff) / 32767.5 - 1;
    }
}
