package org.toeline.scene;

import java.util.List;

/**
 * One piece of clothing or of the body: shapes melted into each other, and its surface.
 *
 * @param meltM how far apart two shapes begin to melt
 * @param cellM how fine its surface is cut
 */
record Part(String name, List<Shape> shapes, double meltM, double cellM, Paint paint) {

    Part {
        shapes = List.copyOf(shapes);
    }

    double distance(double x, double y, double z) {
        double d = shapes.get(0).distance(x, y, z);
        for (int i = 1; i < shapes.size(); i++) {
            double e = shapes.get(i).distance(x, y, z);
            double h = Math.max(meltM - Math.abs(d - e), 0) / meltM;
            d = Math.min(d, e) - h * h * meltM * 0.25;
        }
        return d;
    }

    double[] box() {
        double[] all = shapes.get(0).box();
        for (Shape shape : shapes) {
            double[] b = shape.box();
            for (int i = 0; i < 3; i++) {
                all[i] = Math.min(all[i], b[i]);
                all[i + 3] = Math.max(all[i + 3], b[i + 3]);
            }
        }
        double margin = meltM * 0.3 + 2 * cellM;
        for (int i = 0; i < 3; i++) {
            all[i] -= margin;
            all[i + 3] += margin;
        }
        return all;
    }
}
