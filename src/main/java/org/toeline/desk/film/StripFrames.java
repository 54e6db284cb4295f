package org.toeline.desk.film;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.toeline.video.QuickFilm;

/** The row of small frames, each made when its picture is ready. */
final class StripFrames {

    private final List<Optional<WritableImage>> made = new ArrayList<>();
    private Optional<Reel> of = Optional.empty();
    private double width;
    private double height;

    /** Those of another film, or of another size, are made anew. */
    void prepare(Reel reel, double widthPx, double heightPx) {
        boolean same = of.filter(r -> r.film() == reel.film()).isPresent() && widthPx == width && heightPx == height;
        if (same) {
            return;
        }
        of = Optional.of(reel);
        width = widthPx;
        height = heightPx;
        made.clear();
        for (int i = 0; i < count(reel); i++) {
            made.add(Optional.empty());
        }
    }

    private int count(Reel reel) {
        double each = height * reel.film().widthPx() / reel.film().heightPx();
        return (int) Math.max(1, Math.min(100, Math.round(width / Math.max(12, each))));
    }

    /** Draws those there are; answers whether all are there. */
    boolean draw(GraphicsContext g, double y) {
        Reel reel = of.orElseThrow();
        double each = width / made.size();
        boolean all = true;
        for (int i = 0; i < made.size(); i++) {
            if (made.get(i).isEmpty()) {
                made.set(i, small(reel, (i + 0.5) / made.size(), each));
            }
            all &= made.get(i).isPresent();
            double x = i * each;
            made.get(i).ifPresent(image -> g.drawImage(image, x, y));
        }
        return all;
    }

    /** The frame at a share of the clip, its middle cut out where it is wider than its place. */
    private Optional<WritableImage> small(Reel reel, double share, double each) {
        QuickFilm film = reel.film();
        int frame = Math.min(
                reel.clip().frameCount() - 1, (int) (share * reel.clip().frameCount()));
        int[] from = new int[film.widthPx() * film.heightPx()];
        if (!film.draw(frame, from)) {
            return Optional.empty();
        }
        int w = (int) Math.max(1, Math.ceil(each));
        int h = (int) Math.max(1, Math.round(height));
        double scale = Math.min(film.widthPx() / (double) w, film.heightPx() / (double) h);
        double left = (film.widthPx() - w * scale) / 2;
        double top = (film.heightPx() - h * scale) / 2;
        int[] to = new int[w * h];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                to[y * w + x] = mean(from, film.widthPx(), left + x * scale, top + y * scale, scale);
            }
        }
        WritableImage image = new WritableImage(w, h);
        image.getPixelWriter().setPixels(0, 0, w, h, PixelFormat.getIntArgbInstance(), to, 0, w);
        return Optional.of(image);
    }

    private static int mean(int[] from, int width, double left, double top, double side) {
        int x1 = (int) (left + side);
        int y1 = (int) (top + side);
        int red = 0;
        int green = 0;
        int blue = 0;
        int n = 0;
        for (int y = (int) top; y < Math.max((int) top + 1, y1); y++) {
            for (int x = (int) left; x < Math.max((int) left + 1, x1); x++) {
                int p = from[Math.min(from.length - 1, y * width + x)];
                red += p >> 16 & 255;
                green += p >> 8 & 255;
                blue += p & 255;
                n++;
            }
        }
        return 0xff000000 | red / n << 16 | green / n << 8 | blue / n;
    }
}
