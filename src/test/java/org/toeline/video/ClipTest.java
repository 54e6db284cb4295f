package org.toeline.video;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.video.TestClips.Coding;
import org.toeline.video.TestClips.Shown;

/** The frame asked for is the frame shown: every frame of clips that say in their pixels which frame they are. */
class ClipTest {

    private static final Coding PLAIN = new Coding("libopenh264", "mp4", 30, 0, 0);

    @TempDir
    Path folder;

    private static long[] even(int count, long from, long step) {
        return LongStream.range(0, count).map(i -> from + i * step).toArray();
    }

    /** A long file's reading is told of, and ends when told to. */
    @Test
    void openingTellsHowFarItIsAndStops() throws ClipException {
        Path file = TestClips.write(folder.resolve("told.mp4"), PLAIN, even(90, 0, 33));
        List<Double> told = new ArrayList<>();
        try (Clip clip = Clip.open(file, share -> {
                    told.add(share);
                    return Progress.Step.GO_ON;
                })
                .orElseThrow()) {
            assertThat(TestClips.number(clip.frame(88))).isEqualTo(88);
        }
        assertThat(told).isSorted().doesNotHaveDuplicates().hasSizeGreaterThan(20);
        assertThat(told.get(0)).isZero();
        assertThat(told.get(told.size() - 1)).as("the last packets").isBetween(0.6, 1.0);
        for (double after : new double[] {0, 0.5}) {
            told.clear();
            assertThat(Clip.open(file, share -> {
                        told.add(share);
                        return share >= after ? Progress.Step.STOP : Progress.Step.GO_ON;
                    }))
                    .isEmpty();
            assertThat(told.get(told.size() - 1))
                    .as("nothing is read after that")
                    .isBetween(after, after + 0.1);
        }
    }

    private static void checkEverywhere(Path file, long[] millis) throws ClipException {
        try (Clip clip = Clip.open(file)) {
            int n = millis.length;
            assertThat(clip.frameCount()).isEqualTo(n);
            SplittableRandom random = new SplittableRandom(3);
            int[] order = new int[3 * n];
            for (int i = 0; i < n; i++) {
                order[i] = i;
                order[n + i] = n - 1 - i;
                order[2 * n + i] = random.nextInt(n);
            }
            for (int i : order) {
                Frame frame = clip.frame(i);
                assertThat(TestClips.number(frame)).isEqualTo(i);
                assertThat(frame.seconds()).isCloseTo(millis[i] / 1000.0, within(0.0015));
            }
            for (int i = 0; i < n; i++) {
                assertThat(clip.indexAt(millis[i] / 1000.0))
                        .as("written to the millisecond")
                        .isEqualTo(i);
                long half = i + 1 < n ? (millis[i] + millis[i + 1]) / 2 : millis[i] + 20;
                assertThat(clip.indexAt(half / 1000.0)).isEqualTo(i);
            }
            assertThat(clip.indexAt(-5)).isZero();
            assertThat(clip.indexAt(1e6)).isEqualTo(n - 1);
        }
    }

    @ParameterizedTest
    @CsvSource({"libopenh264, mp4, 12, 0", "mpeg4, mp4, 20, 2", "mpeg4, mkv, 120, 2", "libvpx-vp9, webm, 40, 0"})
    void everyFrameForwardsBackwardsAndAtRandom(String encoder, String suffix, int group, int bFrames)
            throws ClipException {
        long[] millis = even(90, 0, 33);
        checkEverywhere(
                TestClips.write(folder.resolve("a." + suffix), new Coding(encoder, suffix, group, bFrames, 0), millis),
                millis);
    }

    @Test
    void framesOfUnevenLength() throws ClipException {
        SplittableRandom random = new SplittableRandom(9);
        long[] millis = new long[70];
        for (int i = 1; i < millis.length; i++) {
            millis[i] = millis[i - 1] + random.nextLong(4, 330);
        }
        checkEverywhere(
                TestClips.write(folder.resolve("uneven.mkv"), new Coding("mpeg4", "mkv", 15, 2, 0), millis), millis);
    }

    @Test
    void aClipThatBeginsLater() throws ClipException {
        long[] millis = even(40, 5000, 20);
        Path file = TestClips.write(folder.resolve("later.mkv"), new Coding("libopenh264", "mkv", 30, 0, 0), millis);
        checkEverywhere(file, millis);
        try (Clip clip = Clip.open(file)) {
            assertThat(clip.info().startSeconds()).isCloseTo(5.0, within(0.0015));
        }
    }

    /** The white block of the top left corner goes where the turn takes it. */
    @ParameterizedTest
    @ValueSource(ints = {90, 180, 270})
    void shownUpright(int rotation) throws ClipException {
        Path file = TestClips.write(
                folder.resolve("turned.mp4"), new Coding("libopenh264", "mp4", 30, 0, rotation), even(5, 0, 33));
        try (Clip clip = Clip.open(file)) {
            boolean portrait = rotation != 180;
            assertThat(clip.info().rotation()).isEqualTo(rotation);
            assertThat(clip.info().mirrored()).isFalse();
            assertThat(clip.info().remarks()).isEmpty();
            assertThat(clip.info().width()).isEqualTo(portrait ? TestClips.HEIGHT : TestClips.WIDTH);
            Frame frame = clip.frame(0);
            int right = frame.width() - 16;
            int bottom = frame.height() - 16;
            int[] at = rotation == 90
                    ? new int[] {right, 16}
                    : rotation == 180 ? new int[] {right, bottom} : new int[] {16, bottom};
            assertThat(frame.grey(at[0], at[1])).isGreaterThan(180);
        }
    }

    /** Mirrored, then turned: the white block of the stored top left corner shows where both take it, and it is said. */
    @ParameterizedTest
    @CsvSource({"0, right, top", "90, right, bottom", "180, left, bottom", "270, left, top"})
    void mirroredIsShownAndSaid(int rotation, String side, String end) throws ClipException {
        Path file = TestClips.write(
                folder.resolve("mirrored.mp4"),
                new Coding("libopenh264", "mp4", 30, 0, rotation, Shown.MIRRORED),
                even(5, 0, 33));
        try (Clip clip = Clip.open(file)) {
            assertThat(clip.info().mirrored()).isTrue();
            assertThat(clip.info().rotation()).isEqualTo(rotation);
            assertThat(clip.info().remarks()).singleElement().asString().contains("mirrored");
            Frame frame = clip.frame(0);
            int x = side.equals("right") ? frame.width() - 16 : 16;
            int y = end.equals("bottom") ? frame.height() - 16 : 16;
            assertThat(frame.grey(x, y)).isGreaterThan(180);
        }
    }

    /** Limited range BT.709: luma 220 and 40 without colour are 237.5 and 27.9 of 255 (ITU-R BT.709-6, 3.4). */
    @Test
    void greyLevelsAreThoseOfTheStandard() throws ClipException {
        Path file = TestClips.write(folder.resolve("grey.mp4"), PLAIN, even(3, 0, 33));
        try (Clip clip = Clip.open(file)) {
            Frame frame = clip.frame(0);
            assertThat(frame.grey(16, 16)).isCloseTo(237.5, within(3.0));
            assertThat(frame.grey(160, 96)).isCloseTo(27.9, within(3.0));
        }
    }

    @Test
    void whatIsNoClipIsRefusedWithASentence() throws Exception {
        Path text = Files.writeString(folder.resolve("text.mp4"), "nothing that moves");
        for (Path bad : Arrays.asList(text, folder, folder.resolve("none.mp4"))) {
            assertThatExceptionOfType(ClipException.class)
                    .isThrownBy(() -> Clip.open(bad))
                    .withMessageContaining(bad.toString())
                    .satisfies(e -> assertThat(e.getMessage()).doesNotContain("\n"));
        }
    }

    /** Cut at every tenth of its length: opened and read as far as it goes, or refused; never anything else. */
    @Test
    void aClipCutShort() throws Exception {
        Path whole = TestClips.write(
                folder.resolve("whole.mkv"), new Coding("libopenh264", "mkv", 10, 0, 0), even(60, 0, 33));
        byte[] bytes = Files.readAllBytes(whole);
        for (int tenth = 1; tenth < 10; tenth++) {
            Path cut = Files.write(
                    folder.resolve("cut" + tenth + ".mkv"), Arrays.copyOf(bytes, bytes.length * tenth / 10));
            try (Clip clip = Clip.open(cut)) {
                for (int i = 0; i + 1 < clip.frameCount(); i++) {
                    assertThat(TestClips.number(clip.frame(i))).isEqualTo(i);
                }
            } catch (ClipException e) {
                assertThat(e.getMessage()).contains("cut" + tenth);
            }
        }
    }

    @Test
    void closingTwiceIsOnce() throws ClipException {
        Clip clip = Clip.open(TestClips.write(folder.resolve("c.mp4"), PLAIN, even(3, 0, 33)));
        clip.close();
        assertThatCode(clip::close).doesNotThrowAnyException();
        assertThatThrownBy(() -> clip.frame(0)).isInstanceOf(IllegalStateException.class);
        assertThat(Thread.getAllStackTraces().keySet())
                .as("its threads are gone")
                .noneMatch(t -> t.isAlive() && t.getName().contains("c.mp4"));
    }
}
