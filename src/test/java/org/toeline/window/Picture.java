package org.toeline.window;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import javax.imageio.ImageIO;

/** Pixels: of the screen, of a still, of a clip's frame. */
record Picture(int width, int height, int[] rgb) {

    /** Smaller ones are seen in small pictures, of which nothing could be read. */
    private static final int LEAST_SQUARE_PX = 12;

    static Picture of(Path file) throws IOException {
        BufferedImage image = ImageIO.read(file.toFile());
        int[] rgb = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        return new Picture(image.getWidth(), image.getHeight(), rgb);
    }

    /** Of rows of red, green and blue. */
    static Picture of(int width, int height, byte[] bytes) {
        int[] rgb = new int[width * height];
        for (int i = 0; i < rgb.length; i++) {
            rgb[i] = (bytes[3 * i] & 0xff) << 16 | (bytes[3 * i + 1] & 0xff) << 8 | bytes[3 * i + 2] & 0xff;
        }
        return new Picture(width, height, rgb);
    }

    int light(int x, int y) {
        return x < 0 || y < 0 || x >= width || y >= height ? 0 : rgb[y * width + x] >> 8 & 0xff;
    }

    /** Between pixels, one of the three colours. */
    double at(double x, double y, int shift) {
        int left = (int) Math.max(0, Math.min(width - 2, Math.floor(x)));
        int top = (int) Math.max(0, Math.min(height - 2, Math.floor(y)));
        double dx = x - left;
        double dy = y - top;
        int i = top * width + left;
        return (1 - dy) * ((1 - dx) * colour(i, shift) + dx * colour(i + 1, shift))
                + dy * ((1 - dx) * colour(i + width, shift) + dx * colour(i + width + 1, shift));
    }

    private int colour(int i, int shift) {
        return rgb[i] >> shift & 0xff;
    }

    /** The centres of the patches of the colour that the squares have. */
    List<double[]> squares() {
        boolean[] seen = new boolean[rgb.length];
        List<double[]> found = new ArrayList<>();
        for (int i = 0; i < rgb.length; i++) {
            if (!seen[i] && ofSquare(i)) {
                patch(i, seen, found);
            }
        }
        return found;
    }

    private void patch(int from, boolean[] seen, List<double[]> found) {
        Deque<Integer> left = new ArrayDeque<>(List.of(from));
        seen[from] = true;
        double x = 0;
        double y = 0;
        int count = 0;
        int[] box = {width, height, 0, 0};
        while (!left.isEmpty()) {
            int i = left.pop();
            x += i % width;
            y += i / width;
            count++;
            box[0] = Math.min(box[0], i % width);
            box[1] = Math.min(box[1], i / width);
            box[2] = Math.max(box[2], i % width);
            box[3] = Math.max(box[3], i / width);
            for (int next : new int[] {i - 1, i + 1, i - width, i + width}) {
                if (next >= 0 && next < rgb.length && !seen[next] && ofSquare(next)) {
                    seen[next] = true;
                    left.push(next);
                }
            }
        }
        int across = box[2] - box[0] + 1;
        int down = box[3] - box[1] + 1;
        // a shirt may have the colour, but hardly the shape
        boolean square = Math.abs(across - down) <= 2 && count > 0.7 * across * down;
        if (square && count >= LEAST_SQUARE_PX) {
            found.add(new double[] {x / count, y / count});
        }
    }

    private boolean ofSquare(int i) {
        return colour(i, 16) > 170 && colour(i, 8) < 110 && colour(i, 0) > 170;
    }
}
