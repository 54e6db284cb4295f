package org.toeline.scene;

import java.util.Arrays;

/** Cuts a part's field into triangles: one corner in each cell that the surface passes, then moved onto it. */
final class Mesher {

    private final Part part;
    private final double cell;
    private final double[] low;
    private final int nx;
    private final int ny;
    private final int nz;
    private final float[] field;
    private final int[] cornerOfCell;
    private float[] at = new float[3 * 4096];
    private int corners;
    private int[] triangles = new int[3 * 8192];
    private int used;

    Mesher(Part part) {
        this.part = part;
        this.cell = part.cellM();
        double[] box = part.box();
        low = new double[] {box[0], box[1], box[2]};
        nx = (int) Math.ceil((box[3] - box[0]) / cell) + 1;
        ny = (int) Math.ceil((box[4] - box[1]) / cell) + 1;
        nz = (int) Math.ceil((box[5] - box[2]) / cell) + 1;
        field = new float[nx * ny * nz];
        cornerOfCell = new int[field.length];
    }

    /** Corners, normals and triangles; the rest of the mesh is for {@link Shading}. */
    Mesh mesh() {
        fill();
        placeCorners();
        joinCorners();
        float[] places = Arrays.copyOf(at, 3 * corners);
        float[] normals = new float[3 * corners];
        for (int i = 0; i < corners; i++) {
            settle(places, normals, 3 * i);
        }
        byte[] bones = new byte[3 * corners];
        float[] weights = new float[3 * corners];
        Weights.of(part, places, bones, weights);
        return new Mesh(
                part,
                places,
                normals,
                Arrays.copyOf(triangles, used),
                bones,
                weights,
                new float[corners],
                new float[corners]);
    }

    private int index(int i, int j, int k) {
        return (k * ny + j) * nx + i;
    }

    private void fill() {
        for (int k = 0; k < nz; k++) {
            for (int j = 0; j < ny; j++) {
                int i = 0;
                while (i < nx) {
                    double d = part.distance(low[0] + i * cell, low[1] + j * cell, low[2] + k * cell);
                    field[index(i, j, k)] = (float) d;
                    // far from the surface the next samples cannot reach it: the field grows at most as the distance
                    int skip = Math.min(nx - i, (int) (Math.abs(d) * 0.6 / cell));
                    for (int s = 1; s < skip; s++) {
                        field[index(i + s, j, k)] = (float) d;
                    }
                    i += Math.max(1, skip);
                }
            }
        }
    }

    private void placeCorners() {
        Arrays.fill(cornerOfCell, -1);
        for (int k = 0; k < nz - 1; k++) {
            for (int j = 0; j < ny - 1; j++) {
                for (int i = 0; i < nx - 1; i++) {
                    placeCorner(i, j, k);
                }
            }
        }
    }

    private void placeCorner(int i, int j, int k) {
        double sx = 0;
        double sy = 0;
        double sz = 0;
        int crossings = 0;
        for (int e = 0; e < 12; e++) {
            int axis = e / 4;
            int a = e & 1;
            int b = e >> 1 & 1;
            int di = axis == 0 ? 0 : a;
            int dj = axis == 1 ? 0 : axis == 0 ? a : b;
            int dk = axis == 2 ? 0 : b;
            float f0 = field[index(i + di, j + dj, k + dk)];
            float f1 = field[
                    index(i + di + (axis == 0 ? 1 : 0), j + dj + (axis == 1 ? 1 : 0), k + dk + (axis == 2 ? 1 : 0))];
            if (f0 < 0 != f1 < 0) {
                double share = f0 / (f0 - f1);
                sx += i + di + (axis == 0 ? share : 0);
                sy += j + dj + (axis == 1 ? share : 0);
                sz += k + dk + (axis == 2 ? share : 0);
                crossings++;
            }
        }
        if (crossings == 0) {
            return;
        }
        if (3 * corners + 3 > at.length) {
            at = Arrays.copyOf(at, at.length * 2);
        }
        at[3 * corners] = (float) (low[0] + cell * sx / crossings);
        at[3 * corners + 1] = (float) (low[1] + cell * sy / crossings);
        at[3 * corners + 2] = (float) (low[2] + cell * sz / crossings);
        cornerOfCell[index(i, j, k)] = corners++;
    }

    private void joinCorners() {
        for (int k = 1; k < nz - 1; k++) {
            for (int j = 1; j < ny - 1; j++) {
                for (int i = 1; i < nx - 1; i++) {
                    boolean in = field[index(i, j, k)] < 0;
                    if (in != field[index(i + 1, j, k)] < 0) {
                        quad(in, index(i, j - 1, k - 1), index(i, j, k - 1), index(i, j, k), index(i, j - 1, k));
                    }
                    if (in != field[index(i, j + 1, k)] < 0) {
                        quad(in, index(i - 1, j, k - 1), index(i - 1, j, k), index(i, j, k), index(i, j, k - 1));
                    }
                    if (in != field[index(i, j, k + 1)] < 0) {
                        quad(in, index(i - 1, j - 1, k), index(i, j - 1, k), index(i, j, k), index(i - 1, j, k));
                    }
                }
            }
        }
    }

    private void quad(boolean forwards, int a, int b, int c, int d) {
        if (used + 6 > triangles.length) {
            triangles = Arrays.copyOf(triangles, triangles.length * 2);
        }
        int[] q = {cornerOfCell[a], cornerOfCell[b], cornerOfCell[c], cornerOfCell[d]};
        int[] order = forwards ? new int[] {0, 1, 2, 0, 2, 3} : new int[] {0, 2, 1, 0, 3, 2};
        for (int o : order) {
            triangles[used++] = q[o];
        }
    }

    /** Two steps down the field's gradient onto the surface, and the normal there. */
    private void settle(float[] p, float[] n, int i) {
        double e = cell * 0.25;
        for (int step = 0; step < 3; step++) {
            double x = p[i];
            double y = p[i + 1];
            double z = p[i + 2];
            double gx = (part.distance(x + e, y, z) - part.distance(x - e, y, z)) / (2 * e);
            double gy = (part.distance(x, y + e, z) - part.distance(x, y - e, z)) / (2 * e);
            double gz = (part.distance(x, y, z + e) - part.distance(x, y, z - e)) / (2 * e);
            double g2 = Math.max(1e-6, gx * gx + gy * gy + gz * gz);
            double g = Math.sqrt(g2);
            n[i] = (float) (gx / g);
            n[i + 1] = (float) (gy / g);
            n[i + 2] = (float) (gz / g);
            if (step < 2) {
                double d = Math.max(-cell, Math.min(cell, part.distance(x, y, z))) / Math.max(g2, 0.25);
                p[i] = (float) (x - d * gx);
                p[i + 1] = (float) (y - d * gy);
                p[i + 2] = (float) (z - d * gz);
            }
        }
    }
}
