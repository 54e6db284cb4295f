package org.toeline.scene;

import java.util.List;

/** Works out, once and at address, how much sky and how much of the main light each corner of the surfaces gets. */
final class Shading {

    private static final int SMOOTHING = 5;
    private static final double[] OPEN_STEPS_M = {0.012, 0.03, 0.065, 0.12};

    private final List<Part> parts;
    private final double[][] boxes;

    Shading(List<Part> parts) {
        this.parts = parts;
        this.boxes = parts.stream().map(Part::box).toArray(double[][]::new);
    }

    void light(Mesh mesh) {
        for (int c = 0; c < mesh.corners(); c++) {
            Vec p = new Vec(mesh.at()[3 * c], mesh.at()[3 * c + 1], mesh.at()[3 * c + 2]);
            Vec n = new Vec(mesh.normal()[3 * c], mesh.normal()[3 * c + 1], mesh.normal()[3 * c + 2]);
            mesh.open()[c] = (float) open(p, n);
            mesh.lit()[c] = (float) lit(p, n);
        }
        for (int pass = 0; pass < SMOOTHING; pass++) {
            smooth(mesh.triangles(), mesh.lit());
        }
        smooth(mesh.triangles(), mesh.open());
    }

    /** Each corner takes the mean of the triangles round it: a march in steps leaves specks. */
    private static void smooth(int[] triangles, float[] values) {
        float[] sum = new float[values.length];
        int[] count = new int[values.length];
        for (int i = 0; i < triangles.length; i += 3) {
            float mean = (values[triangles[i]] + values[triangles[i + 1]] + values[triangles[i + 2]]) / 3;
            for (int k = 0; k < 3; k++) {
                sum[triangles[i + k]] += mean;
                count[triangles[i + k]]++;
            }
        }
        for (int c = 0; c < values.length; c++) {
            if (count[c] > 0) {
                values[c] = sum[c] / count[c];
            }
        }
    }

    private double open(Vec p, Vec n) {
        double hidden = 0;
        double weight = 1;
        for (double step : OPEN_STEPS_M) {
            Vec q = p.plus(n.times(step));
            double d = Math.min(nearest(q), Math.max(q.z(), 0));
            hidden += weight * Math.max(0, step - d) / step;
            weight *= 0.75;
        }
        return Math.max(0.12, 1 - 0.42 * hidden);
    }

    private double lit(Vec p, Vec n) {
        double share = 1;
        double along = 0.015;
        for (int i = 0; i < 22 && along < 0.7; i++) {
            Vec q = p.plus(n.times(0.012)).plus(Light.KEY.times(along));
            double d = nearest(q);
            share = Math.min(share, 0.5 + 0.5 * 9 * d / along);
            if (share <= 0) {
                return 0;
            }
            along += Math.max(0.012, d * 0.8);
        }
        return share * share * (3 - 2 * share);
    }

    private double nearest(Vec q) {
        double d = 0.3;
        for (int i = 0; i < boxes.length; i++) {
            double[] b = boxes[i];
            double away = Math.max(
                    Math.max(Math.max(b[0] - q.x(), q.x() - b[3]), Math.max(b[1] - q.y(), q.y() - b[4])),
                    Math.max(b[2] - q.z(), q.z() - b[5]));
            if (away < d) {
                d = Math.min(d, parts.get(i).distance(q.x(), q.y(), q.z()));
            }
        }
        return d;
    }
}
