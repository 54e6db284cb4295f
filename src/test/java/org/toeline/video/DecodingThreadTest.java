package org.toeline.video;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_GRAY8;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_get_buffer;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.video.TestClips.Coding;

/** Whatever is decoded ahead, kept or dropped, whoever asks and in whichever order: the frame asked for comes. */
class DecodingThreadTest {

    private static final int FRAMES = 150;
    /** 320 × 192 in 4:2:0, about. */
    private static final long FRAME_BYTES = 100_000;

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void clip() {
        file = TestClips.write(
                folder.resolve("long.mp4"),
                new Coding("mpeg4", "mp4", 60, 2, 0),
                LongStream.range(0, FRAMES).map(i -> i * 33).toArray());
    }

    private static void check(Clip clip, int at) throws ClipException {
        assertThat(TestClips.number(clip.frame(at))).isEqualTo(at);
    }

    /** From hardly anything kept to everything kept. */
    @ParameterizedTest
    @ValueSource(ints = {0, 6, 17, 60, 1000})
    void howeverLittleIsKept(int kept) throws ClipException {
        try (Clip clip = Clip.open(file, kept * FRAME_BYTES)) {
            for (int i = FRAMES - 1; i >= 0; i--) {
                check(clip, i);
            }
            SplittableRandom random = new SplittableRandom(kept);
            int at = 70;
            for (int k = 0; k < 400; k++) {
                int far = random.nextInt(30) == 0 ? random.nextInt(FRAMES) - at : random.nextInt(-2, 3);
                at = Math.max(0, Math.min(FRAMES - 1, at + far));
                check(clip, at);
            }
            comesToRest();
        }
    }

    /** What is decoded ahead is kept, and not decoded again and again. */
    private static void comesToRest() {
        Thread decoding = Thread.getAllStackTraces().keySet().stream()
                .filter(t -> t.getName().equals("decoding long.mp4"))
                .findFirst()
                .orElseThrow();
        long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
        while (decoding.getState() != Thread.State.WAITING && System.nanoTime() < deadline) {
            Thread.onSpinWait();
        }
        assertThat(decoding.getState()).isEqualTo(Thread.State.WAITING);
    }

    @Test
    void anArrayIsUsedAgain() throws ClipException {
        try (Clip clip = Clip.open(file)) {
            int[] pixels = new int[TestClips.WIDTH * TestClips.HEIGHT];
            for (int at : new int[] {3, 100, 4}) {
                clip.show(at, pixels);
                assertThat(pixels).isEqualTo(clip.frame(at).argb());
            }
            assertThatIllegalArgumentException().isThrownBy(() -> clip.show(0, new int[7]));
        }
    }

    /** Whatever was made ahead: stepping shows the same pixels as a conversion when asked. */
    @Test
    void picturesMadeAheadAreTheSame() throws ClipException {
        try (Clip clip = Clip.open(file);
                Clip plain = Clip.open(file)) {
            int[] pixels = new int[TestClips.WIDTH * TestClips.HEIGHT];
            SplittableRandom random = new SplittableRandom(3);
            int at = 40;
            for (int k = 0; k < 300; k++) {
                at = Math.max(0, Math.min(FRAMES - 1, at + (k / 30 % 2 == 0 ? 1 : -1) * random.nextInt(3)));
                plain.show(at, pixels);
                assertThat(clip.frame(at).argb()).isEqualTo(pixels);
            }
        }
    }

    /** A step back over the key frame may come next, so what is before it is decoded without being asked for. */
    @Test
    void theGroupBeforeAKeyFrameIsFetchedAtOnce() throws ClipException {
        try (Clip clip = Clip.open(file)) {
            int key = clip.keyFrame(FRAMES - 20);
            assertThat(key).isPositive();
            check(clip, key);
            long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
            while (!clip.kept(key - 1) && System.nanoTime() < deadline) {
                Thread.onSpinWait();
            }
            assertThat(clip.kept(key - 1)).isTrue();
            check(clip, key + 1);
            check(clip, key - 1);
        }
    }

    @Test
    void manyAskAtOnce() throws Exception {
        try (Clip clip = Clip.open(file)) {
            List<CompletableFuture<Void>> all = new ArrayList<>();
            for (int seed = 0; seed < 4; seed++) {
                SplittableRandom random = new SplittableRandom(seed);
                all.add(CompletableFuture.runAsync(() -> {
                    for (int k = 0; k < 60; k++) {
                        try {
                            check(clip, random.nextInt(FRAMES));
                        } catch (ClipException e) {
                            throw new IllegalStateException(e);
                        }
                    }
                }));
            }
            for (CompletableFuture<Void> one : all) {
                one.get(30, TimeUnit.SECONDS);
            }
        }
    }

    @Test
    void closingEndsWaiting() throws Exception {
        Clip clip = Clip.open(file);
        CountDownLatch begun = new CountDownLatch(5);
        CompletableFuture<Throwable> end = CompletableFuture.supplyAsync(() -> {
            SplittableRandom random = new SplittableRandom(5);
            try {
                while (true) {
                    check(clip, random.nextInt(FRAMES));
                    begun.countDown();
                }
            } catch (ClipException | IllegalStateException e) {
                return e;
            }
        });
        assertThat(begun.await(30, TimeUnit.SECONDS)).isTrue();
        clip.close();
        assertThat(end.get(30, TimeUnit.SECONDS)).isInstanceOf(IllegalStateException.class);
        assertThatIllegalStateException().isThrownBy(() -> clip.frame(0));
    }

    /** Bounded by bytes; those farthest from the centre go. */
    @Test
    void theCacheKeepsToItsBytes() {
        AVFrame frame = av_frame_alloc();
        frame.width(1024).height(100).format(AV_PIX_FMT_GRAY8);
        assertThat(av_frame_get_buffer(frame, 64)).isZero();
        try (FrameCache cache = new FrameCache(1 << 20, 1)) {
            for (int i = 0; i < 50; i++) {
                cache.put(i, frame, 20);
            }
            assertThat(cache.most()).isBetween(4, 10);
            assertThat(cache.has(20)).isTrue();
            assertThat(cache.has(0)).isFalse();
            assertThat(cache.has(49)).isFalse();
            assertThat(20 - cache.firstMissing(20, -1) + cache.firstMissing(20, 1) - 20 - 1)
                    .isEqualTo(cache.most());
        } finally {
            av_frame_free(frame);
        }
    }
}
