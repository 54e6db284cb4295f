package org.toeline.video;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Property: a small picture is that of its own frame, whatever the order, in memory and beyond. */
class QuickFilmTest {

    private static final Path CLIP = Path.of("sample-media", "before", "tee.mp4");
    /** Grey levels of 255: what coding small pictures may change of a frame's mean over a sixteenth of it. */
    private static final double CODED = 4;

    @TempDir
    Path folder;

    private static QuickFilm made(Clip clip, long mostBytes) throws Exception {
        QuickFilm film = new QuickFilm(clip, mostBytes);
        while (!film.ended()) {
            Thread.onSpinWait();
        }
        return film;
    }

    /** Mean grey levels of sixteen parts. */
    private static double[] parts(int[] argb, int width, int height) {
        double[] sums = new double[16];
        int[] counts = new int[16];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int part = y * 4 / height * 4 + x * 4 / width;
                int p = argb[y * width + x];
                sums[part] += ((p >> 16 & 255) + (p >> 8 & 255) + (p & 255)) / 3.0;
                counts[part]++;
            }
        }
        for (int i = 0; i < sums.length; i++) {
            sums[i] /= counts[i];
        }
        return sums;
    }

    private static void isAlike(QuickFilm film, Clip clip, int frame) throws Exception {
        int[] small = new int[film.widthPx() * film.heightPx()];
        assertThat(film.draw(frame, small)).as("frame %d is ready", frame).isTrue();
        Frame exact = clip.frame(frame);
        assertThat(parts(small, film.widthPx(), film.heightPx()))
                .as("frame %d", frame)
                .containsExactly(
                        parts(exact.argb(), exact.width(), exact.height()), org.assertj.core.data.Offset.offset(CODED));
    }

    @Test
    void everyFrameIsItsOwnInAnyOrder() throws Exception {
        try (Clip clip = Clip.open(CLIP);
                QuickFilm film = made(clip, 64L << 20)) {
            assertThat(film.ready()).isEqualTo(clip.frameCount());
            assertThat(film.fault()).isEmpty();
            Random lot = new Random(5);
            for (int i = 0; i < 20; i++) {
                isAlike(film, clip, lot.nextInt(clip.frameCount()));
            }
        }
    }

    /** Every frame carries its number as ten black and white blocks in a row, five rows high. */
    @Test
    void turnedAndWithFramesBetweenFrames() throws Exception {
        long[] times = new long[60];
        for (int i = 0; i < times.length; i++) {
            times[i] = i * 33L;
        }
        Path turned = TestClips.write(folder.resolve("t.mp4"), new TestClips.Coding("mpeg4", ".mp4", 12, 2, 90), times);
        try (Clip clip = Clip.open(turned);
                QuickFilm film = made(clip, 64L << 20)) {
            assertThat(film.ready()).isEqualTo(clip.frameCount());
            for (int i = 0; i < clip.frameCount(); i += 7) {
                isAlike(film, clip, i);
            }
        }
    }

    /** What does not fit into the memory allowed goes to a file. */
    @Test
    void beyondItsMemoryItGoesOn() throws Exception {
        try (Clip clip = Clip.open(CLIP);
                QuickFilm film = made(clip, 200_000)) {
            assertThat(film.bytes()).isLessThanOrEqualTo(200_000);
            for (int frame : new int[] {clip.frameCount() - 1, 0, clip.frameCount() / 2}) {
                isAlike(film, clip, frame);
            }
        }
    }

    /** A clip cut short opens and claims its old length; it is said where it ends, and what there is can be seen. */
    @Test
    void aClipThatEndsEarlySaysSo() throws Exception {
        Path cut = Files.copy(CLIP, folder.resolve("cut.mp4"));
        try (Clip clip = Clip.open(cut)) {
            try (RandomAccessFile file = new RandomAccessFile(cut.toFile(), "rw")) {
                // the list of frames may lie at the end of the file, so it is cut after it was read
                file.setLength(file.length() / 2);
            }
            try (QuickFilm film = new QuickFilm(clip)) {
                while (!film.ended()) {
                    Thread.onSpinWait();
                }
                assertThat(film.ready()).isLessThan(clip.frameCount());
                assertThat(film.fault().orElseThrow()).contains("cut.mp4");
            } catch (ClipException e) {
                assertThat(e).hasMessageContaining("cut.mp4");
            }
        }
    }
}
