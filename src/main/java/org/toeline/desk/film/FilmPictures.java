package org.toeline.desk.film;

import java.nio.IntBuffer;
import java.util.Optional;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.toeline.video.QuickFilm;

/** A film's small pictures for the screen: a few images in turn, since the one before may still be being drawn. */
public final class FilmPictures {

    private static final int IN_TURN = 3;

    private final QuickFilm film;
    private final int[][] pixels = new int[IN_TURN][];
    private final WritableImage[] images = new WritableImage[IN_TURN];
    private final PixelBuffer<?>[] buffers = new PixelBuffer<?>[IN_TURN];
    private int turn;

    public FilmPictures(QuickFilm film) {
        this.film = film;
        for (int i = 0; i < IN_TURN; i++) {
            pixels[i] = new int[film.widthPx() * film.heightPx()];
            PixelBuffer<IntBuffer> buffer = new PixelBuffer<>(
                    film.widthPx(), film.heightPx(), IntBuffer.wrap(pixels[i]), PixelFormat.getIntArgbPreInstance());
            buffers[i] = buffer;
            images[i] = new WritableImage(buffer);
        }
    }

    /** That frame, if it is ready; the image is good until two more were asked for. */
    public Optional<Image> picture(int frame) {
        turn = (turn + 1) % IN_TURN;
        if (!film.draw(frame, pixels[turn])) {
            return Optional.empty();
        }
        buffers[turn].updateBuffer(all -> null);
        return Optional.of(images[turn]);
    }
}
