package org.toeline.video;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.video.TestClips.Coding;

/** A list that was kept gives the same clip without reading it; another file's, or a damaged one, is never used. */
class KeptIndexesTest {

    private static final int FRAMES = 90;

    @TempDir
    Path folder;

    private Path file;
    private KeptIndexes kept;

    @BeforeEach
    void clip() {
        file = clip("clip.mp4", FRAMES, 33);
        kept = KeptIndexes.in(folder.resolve("lists"), 0);
    }

    private Path clip(String name, int frames, long step) {
        return TestClips.write(
                folder.resolve(name),
                new Coding("mpeg4", "mp4", 30, 2, 0),
                LongStream.range(0, frames).map(i -> 100 + i * step).toArray());
    }

    /** Opens it, tries every frame, and says how often the reading was told of: once, if it was not read. */
    private int opened(Path from, int frames) throws ClipException {
        List<Double> told = new ArrayList<>();
        try (Clip clip = Clip.open(
                        from,
                        share -> {
                            told.add(share);
                            return Progress.Step.GO_ON;
                        },
                        kept)
                .orElseThrow()) {
            assertThat(clip.frameCount()).isEqualTo(frames);
            assertThat(clip.mostBetween()).isEqualTo(2);
            for (int i = frames - 1; i >= 0; i--) {
                assertThat(TestClips.number(clip.frame(i))).isEqualTo(i);
            }
            try (Clip plain = Clip.open(from)) {
                assertThat(clip.info()).isEqualTo(plain.info());
                for (int i = 0; i < frames; i++) {
                    assertThat(clip.seconds(i)).isEqualTo(plain.seconds(i));
                    assertThat(clip.keyFrame(i)).isEqualTo(plain.keyFrame(i));
                }
            }
        }
        return told.size();
    }

    private List<Path> lists() throws IOException {
        try (Stream<Path> all = Files.list(folder.resolve("lists"))) {
            return all.toList();
        }
    }

    @Test
    void theSecondOpeningReadsNothing() throws Exception {
        assertThat(opened(file, FRAMES)).isGreaterThan(20);
        assertThat(lists()).hasSize(1).allMatch(f -> f.toString().endsWith(".frames"));
        assertThat(opened(file, FRAMES)).isEqualTo(1);
        Path moved = Files.move(file, folder.resolve("moved.mp4"));
        assertThat(opened(moved, FRAMES)).as("the same file elsewhere").isEqualTo(1);
    }

    @Test
    void anotherFileInItsPlaceIsRead() throws Exception {
        opened(file, FRAMES);
        Files.move(clip("other.mp4", 70, 40), file, StandardCopyOption.REPLACE_EXISTING);
        assertThat(opened(file, 70)).isGreaterThan(20);
        assertThat(lists()).hasSize(2);
    }

    /** Cut, of another kind, or with any byte flipped. */
    @ParameterizedTest
    @ValueSource(ints = {-2, -1, 0, 5, 14, 40})
    void aDamagedListIsReplaced(int damage) throws Exception {
        opened(file, FRAMES);
        Path list = lists().get(0);
        byte[] whole = Files.readAllBytes(list);
        byte[] bytes = damage == -1
                ? new byte[0]
                : damage == -2 ? java.util.Arrays.copyOf(whole, whole.length / 2) : whole.clone();
        if (damage >= 0) {
            bytes[damage] ^= 0x10;
        }
        Files.write(list, bytes);
        assertThat(opened(file, FRAMES)).isGreaterThan(20);
        assertThat(Files.readAllBytes(list)).isEqualTo(whole);
    }

    @Test
    void whereTheyCannotBeKeptNothingIsLost() throws Exception {
        kept = KeptIndexes.in(Files.writeString(folder.resolve("a-file"), "in the way"), 0);
        assertThat(opened(file, FRAMES)).isGreaterThan(20);
        assertThat(opened(file, FRAMES)).isGreaterThan(20);
    }

    /** Short clips are read in a moment; a stream without a table of its frames has to be read to be found about in. */
    @Test
    void notEverythingIsKept() throws Exception {
        kept = KeptIndexes.in(folder.resolve("lists"));
        opened(file, FRAMES);
        assertThat(folder.resolve("lists")).doesNotExist();
        kept = KeptIndexes.in(folder.resolve("lists"), 0);
        Path stream = TestClips.write(
                folder.resolve("clip.ts"),
                new Coding("libopenh264", "ts", 30, 0, 0),
                LongStream.range(0, FRAMES).map(i -> i * 40).toArray());
        try (Clip clip = Clip.open(stream, Progress.NONE, kept).orElseThrow()) {
            assertThat(clip.frameCount()).isPositive();
        }
        assertThat(folder.resolve("lists")).doesNotExist();
    }
}
