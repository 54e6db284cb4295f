package org.toeline.window;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A sample clip with the number of each frame written into it as light and dark squares on the wall, and two squares of one
 * colour by which its picture is found again, however it was scaled and cut.
 *
 * @param faceOn whether the square before the number is light
 */
record NumberedClip(Path file, boolean faceOn) {

    static final int WIDTH = 1280;
    static final int HEIGHT = 720;

    private static final int BITS = 8;
    private static final int SQUARE = Placed.SQUARE;
    private static final int STEP = 18;
    private static final int FIRST_X = 690;
    private static final int TOP_Y = 120;
    /** Two squares of one colour, in corners that stay in a still of a player face-on. */
    private static final int[] ONE = {760, 160};

    private static final int[] OTHER = {700, 400};

    static NumberedClip make(Path sample, Path file, boolean faceOn) throws IOException, InterruptedException {
        StringBuilder filter = new StringBuilder();
        filter.append(box(FIRST_X - 4, TOP_Y - 4, STEP * (BITS + 1) + 4, SQUARE + 8, "black", ""));
        filter.append(box(FIRST_X, TOP_Y, SQUARE, SQUARE, faceOn ? "white" : "black", ""));
        for (int bit = 0; bit < BITS; bit++) {
            filter.append(box(
                    FIRST_X + STEP * (bit + 1),
                    TOP_Y,
                    SQUARE,
                    SQUARE,
                    "white",
                    ":enable='mod(floor((n+%d)/%d),2)'".formatted(1 << bit, 2 << bit)));
        }
        filter.append(Placed.square(ONE)).append(',').append(Placed.square(OTHER));
        draw(sample, file, filter.toString());
        return new NumberedClip(file, faceOn);
    }

    /** @param filter of FFmpeg, which draws into every frame */
    static void draw(Path sample, Path file, String filter) throws IOException, InterruptedException {
        Shell.run(
                "ffmpeg",
                "-v",
                "error",
                "-y",
                "-i",
                sample.toString(),
                "-vf",
                filter,
                "-c:v",
                "libx264",
                "-preset",
                "veryfast",
                "-crf",
                "16",
                "-g",
                "30",
                "-pix_fmt",
                "yuv420p",
                file.toString());
    }

    private static String box(int x, int y, int width, int height, String colour, String more) {
        return "drawbox=x=%d:y=%d:w=%d:h=%d:color=%s:t=fill%s,".formatted(x, y, width, height, colour, more);
    }

    /** What is read from a picture: which of the clips it is of, and which frame. */
    record Read(boolean faceOn, int frame) {}

    /** Empty where there is none, or none large enough to be read. */
    static Optional<Placed> in(Picture picture) {
        return Placed.in(picture, ONE, OTHER);
    }

    static Read read(Picture picture, Placed placed) {
        int frame = 0;
        for (int bit = BITS - 1; bit >= 0; bit--) {
            // Gray's code: from frame to frame one square changes, which hardly shows in what moves
            boolean above = (frame >> bit + 1 & 1) == 1;
            frame |= light(picture, placed, bit + 1) != above ? 1 << bit : 0;
        }
        return new Read(light(picture, placed, 0), frame);
    }

    private static boolean light(Picture picture, Placed placed, int square) {
        double half = SQUARE / 2.0;
        return picture.light(placed.x(FIRST_X + STEP * square + half), placed.y(TOP_Y + half)) > 128;
    }
}
