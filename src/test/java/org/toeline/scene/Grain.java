package org.toeline.scene;

/** Repeatable roughness: smooth noise over a lattice, in −1 to 1. */
final class Grain {

    private Grain() {}

    static double at(double x, double y) {
        int i = (int) Math.floor(x);
        int j = (int) Math.floor(y);
        double u = x - i;
        double v = y - j;
        u = u * u * (3 - 2 * u);
        v = v * v * (3 - 2 * v);
        double low = lattice(i, j) * (1 - u) + lattice(i + 1, j) * u;
        double high = lattice(i, j + 1) * (1 - u) + lattice(i + 1, j + 1) * u;
        return low * (1 - v) + high * v;
    }

    static double clouds(double x, double y) {
        return 0.55 * at(x, y) + 0.3 * at(2.1 * x + 9, 2.1 * y) + 0.15 * at(4.3 * x, 4.3 * y + 5);
    }

    private static double lattice(int i, int j) {
        return (hash(i * 0x9E3779B1 + j * 0x85EBCA77) & 0xFFFF) / 32767.5 - 1;
    }

    static int hash(int x) {
        int h = x;
        h ^= h >>> 16;
        h *= 0x7FEB352D;
        h ^= h >>> 15;
        h *= 0x846CA68B;
        return h ^ h >>> 16;
    }
}
