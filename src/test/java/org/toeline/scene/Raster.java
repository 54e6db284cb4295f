package org.toeline.scene;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.toeline.camera.Camera;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;

/** Moves surfaces to a pose, projects them through a camera and finds the nearest one at nine places in each pixel. */
final class Raster {

    static final int FINE = 3;

    private final int width;
    private final int height;
    private final Camera camera;
    final List<Mesh> meshes;
    /** Posed places and normals, and x, y (in ninths of pixels) and depth, of each mesh's corners. */
    final float[][] posed;

    final float[][] normals;
    final float[][] screen;
    private final float[] nearest;
    private final int[] owner;
    private final int[] firstTriangle;
    private int fromX;
    private int fromY;
    private int toX;
    private int toY;

    Raster(List<Mesh> meshes, Camera camera, int width, int height) {
        this.meshes = meshes;
        this.camera = camera;
        this.width = width;
        this.height = height;
        posed = meshes.stream().map(m -> new float[m.at().length]).toArray(float[][]::new);
        normals = meshes.stream().map(m -> new float[m.at().length]).toArray(float[][]::new);
        screen = meshes.stream().map(m -> new float[m.at().length]).toArray(float[][]::new);
        nearest = new float[width * height * FINE * FINE];
        owner = new int[nearest.length];
        firstTriangle = new int[meshes.size() + 1];
        for (int m = 0; m < meshes.size(); m++) {
            firstTriangle[m + 1] = firstTriangle[m] + meshes.get(m).triangles().length / 3;
        }
    }

    void draw(double[][] moves) {
        for (int m = 0; m < meshes.size(); m++) {
            pose(m, moves);
            project(m);
        }
        bound();
        for (int y = fromY * FINE; y < toY * FINE; y++) {
            int row = y * width * FINE;
            Arrays.fill(nearest, row + fromX * FINE, row + toX * FINE, Float.MAX_VALUE);
            Arrays.fill(owner, row + fromX * FINE, row + toX * FINE, -1);
        }
        for (int m = 0; m < meshes.size(); m++) {
            fill(m);
        }
    }

    int fromX() {
        return fromX;
    }

    int fromY() {
        return fromY;
    }

    int toX() {
        return toX;
    }

    int toY() {
        return toY;
    }

    /** The triangle at one of the nine places of a pixel, over all meshes; −1 for none. */
    int triangleAt(int fineX, int fineY) {
        return owner[fineY * width * FINE + fineX];
    }

    int meshOf(int triangle) {
        int found = Arrays.binarySearch(firstTriangle, triangle);
        int m = found >= 0 ? found : -found - 2;
        while (firstTriangle[m + 1] == triangle) {
            m++;
        }
        return m;
    }

    int firstTriangleOf(int mesh) {
        return firstTriangle[mesh];
    }

    private void pose(int m, double[][] moves) {
        Mesh mesh = meshes.get(m);
        float[] at = mesh.at();
        float[] n = mesh.normal();
        double[] b = new double[12];
        for (int c = 0; c < mesh.corners(); c++) {
            int i = 3 * c;
            Arrays.fill(b, 0);
            for (int k = 0; k < 3; k++) {
                float w = mesh.weights()[i + k];
                if (w > 0.001f) {
                    double[] move = moves[mesh.bones()[i + k]];
                    for (int e = 0; e < 12; e++) {
                        b[e] += w * move[e];
                    }
                }
            }
            for (int r = 0; r < 3; r++) {
                int e = 4 * r;
                posed[m][i + r] = (float) (b[e] * at[i] + b[e + 1] * at[i + 1] + b[e + 2] * at[i + 2] + b[e + 3]);
                normals[m][i + r] = (float) (b[e] * n[i] + b[e + 1] * n[i + 1] + b[e + 2] * n[i + 2]);
            }
        }
    }

    private void project(int m) {
        float[] p = posed[m];
        for (int i = 0; i < p.length; i += 3) {
            WorldPoint w = new WorldPoint(p[i], p[i + 1], p[i + 2]);
            Optional<ImagePoint> pixel = camera.project(w);
            screen[m][i + 2] = pixel.isPresent() ? (float) camera.depthM(w) : -1;
            screen[m][i] = pixel.map(q -> (float) (q.xPx() * FINE)).orElse(0f);
            screen[m][i + 1] = pixel.map(q -> (float) (q.yPx() * FINE)).orElse(0f);
        }
    }

    private void bound() {
        float lowX = Float.MAX_VALUE;
        float lowY = Float.MAX_VALUE;
        float highX = 0;
        float highY = 0;
        for (float[] s : screen) {
            for (int i = 0; i < s.length; i += 3) {
                if (s[i + 2] > 0) {
                    lowX = Math.min(lowX, s[i]);
                    lowY = Math.min(lowY, s[i + 1]);
                    highX = Math.max(highX, s[i]);
                    highY = Math.max(highY, s[i + 1]);
                }
            }
        }
        fromX = Math.max(0, Math.min(width, (int) (lowX / FINE) - 1));
        fromY = Math.max(0, Math.min(height, (int) (lowY / FINE) - 1));
        toX = Math.max(fromX, Math.min(width, (int) (highX / FINE) + 2));
        toY = Math.max(fromY, Math.min(height, (int) (highY / FINE) + 2));
    }

    private void fill(int m) {
        int[] t = meshes.get(m).triangles();
        float[] s = screen[m];
        for (int i = 0; i < t.length; i += 3) {
            int a = 3 * t[i];
            int b = 3 * t[i + 1];
            int c = 3 * t[i + 2];
            if (s[a + 2] > 0 && s[b + 2] > 0 && s[c + 2] > 0) {
                triangle(s, a, b, c, firstTriangle[m] + i / 3);
            }
        }
    }

    private void triangle(float[] s, int a, int b, int c, int id) {
        float area = (s[b] - s[a]) * (s[c + 1] - s[a + 1]) - (s[b + 1] - s[a + 1]) * (s[c] - s[a]);
        // corners run anticlockwise seen from outside in the world, hence clockwise on a picture whose y runs down
        if (area >= 0) {
            return;
        }
        int x0 = Math.max(fromX * FINE, (int) Math.ceil(Math.min(s[a], Math.min(s[b], s[c])) - 0.5f));
        int x1 = Math.min(toX * FINE - 1, (int) Math.floor(Math.max(s[a], Math.max(s[b], s[c])) - 0.5f));
        int y0 = Math.max(fromY * FINE, (int) Math.ceil(Math.min(s[a + 1], Math.min(s[b + 1], s[c + 1])) - 0.5f));
        int y1 = Math.min(toY * FINE - 1, (int) Math.floor(Math.max(s[a + 1], Math.max(s[b + 1], s[c + 1])) - 0.5f));
        float over = 1 / area;
        for (int y = y0; y <= y1; y++) {
            float py = y + 0.5f;
            int row = y * width * FINE;
            for (int x = x0; x <= x1; x++) {
                float px = x + 0.5f;
                float wa = ((s[b] - px) * (s[c + 1] - py) - (s[b + 1] - py) * (s[c] - px)) * over;
                float wb = ((s[c] - px) * (s[a + 1] - py) - (s[c + 1] - py) * (s[a] - px)) * over;
                float wc = 1 - wa - wb;
                if (wa >= 0 && wb >= 0 && wc >= 0) {
                    float z = wa * s[a + 2] + wb * s[b + 2] + wc * s[c + 2];
                    if (z < nearest[row + x]) {
                        nearest[row + x] = z;
                        owner[row + x] = id;
                    }
                }
            }
        }
    }
}
