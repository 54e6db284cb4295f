package org.toeline.video;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.toeline.video.TestClips.Coding;

/** Property: a quick pass tells pictures in order of time, each that of its time, none farther apart than it may be. */
class GreyScanTest {

    private static final double STEP_S = 1 / 30.0;
    private static final int FRAMES = 120;

    @TempDir
    Path folder;

    private static List<GreyPicture> scan(Clip clip) throws ClipException {
        List<GreyPicture> all = new ArrayList<>();
        GreyScan.of(clip, TestClips.WIDTH, STEP_S, picture -> {
            all.add(picture);
            return GreyScan.Visitor.Step.GO_ON;
        });
        return all;
    }

    private static void check(Clip clip, List<GreyPicture> pictures) {
        for (int i = 0; i < pictures.size(); i++) {
            GreyPicture picture = pictures.get(i);
            int frame = clip.indexAt(picture.seconds());
            assertThat(TestClips.number(new Frame(frame, 0, picture.width(), picture.height(), opaque(picture.grey()))))
                    .isEqualTo(frame);
            assertThat(i == 0 || picture.seconds() > pictures.get(i - 1).seconds())
                    .isTrue();
        }
    }

    private static int[] opaque(float[] grey) {
        int[] pixels = new int[grey.length];
        for (int i = 0; i < grey.length; i++) {
            pixels[i] = 0xFF000000 | (int) grey[i] * 0x10101;
        }
        return pixels;
    }

    private static double widestStep(List<GreyPicture> pictures) {
        double widest = 0;
        for (int i = 1; i < pictures.size(); i++) {
            widest = Math.max(
                    widest, pictures.get(i).seconds() - pictures.get(i - 1).seconds());
        }
        return widest;
    }

    /** Two of three frames are put in between: only every third, 0.05 s apart, is looked at. */
    @Test
    void framesInBetweenAreLeftOut() throws ClipException {
        Path file = TestClips.write(
                folder.resolve("between.mp4"),
                new Coding("mpeg4", "mp4", 60, 2, 0),
                LongStream.range(0, FRAMES)
                        .map(i -> Math.round(i * 1000 / 60.0))
                        .toArray());
        try (Clip clip = Clip.open(file)) {
            assertThat(clip.mostBetween()).isEqualTo(2);
            List<GreyPicture> pictures = scan(clip);
            check(clip, pictures);
            assertThat(widestStep(pictures)).isLessThan(0.06);
            assertThat(pictures).hasSizeBetween(FRAMES / 3 - 1, FRAMES / 3 + 4);
        }
    }

    /** Where a step is too long, more is looked at from there on, and nothing is told twice. */
    @Test
    void moreIsLookedAtWhereTooMuchIsLeftOut() throws ClipException {
        Path file = TestClips.write(
                folder.resolve("pause.mp4"),
                new Coding("mpeg4", "mp4", 60, 2, 0),
                LongStream.range(0, FRAMES)
                        .map(i -> Math.round(i * 1000 / 60.0) + (i < 50 ? 0 : 500))
                        .toArray());
        try (Clip clip = Clip.open(file)) {
            List<GreyPicture> pictures = scan(clip);
            check(clip, pictures);
            assertThat(pictures.stream()
                            .filter(p -> p.seconds() > clip.seconds(50))
                            .count())
                    .isGreaterThanOrEqualTo(22);
            assertThat(pictures.stream().map(p -> clip.indexAt(p.seconds())))
                    .containsSequence(48, 51)
                    .doesNotHaveDuplicates();
        }
    }

    /** Where nothing is put in between, every second frame of 60 a second is far enough from the one before. */
    @Test
    void withoutFramesInBetweenAllAreDecoded() throws ClipException {
        Path file = TestClips.write(
                folder.resolve("plain.mp4"),
                new Coding("mpeg4", "mp4", 60, 0, 0),
                LongStream.range(0, FRAMES)
                        .map(i -> Math.round(i * 1000 / 60.0))
                        .toArray());
        try (Clip clip = Clip.open(file)) {
            assertThat(clip.mostBetween()).isZero();
            List<GreyPicture> pictures = scan(clip);
            check(clip, pictures);
            assertThat(pictures).hasSize(FRAMES / 2);
        }
    }
}
