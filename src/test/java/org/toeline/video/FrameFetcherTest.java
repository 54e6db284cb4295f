package org.toeline.video;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** Property: what is shown in the end is the frame asked for, and of a jump the key frame before it comes first. */
class FrameFetcherTest {

    private static final Path CLIP = Path.of("sample-media", "before", "face-on.mp4");

    @Test
    void aJumpShowsTheKeyFrameFirst() throws Exception {
        Clip clip = Clip.open(CLIP, 40L << 20);
        int target = clip.frameCount() - 3;
        int key = clip.keyFrame(target);
        assertThat(key).isBetween(0, target);
        assertThat(clip.frame(key).seconds()).isEqualTo(clip.seconds(key));
        List<String> told = new CopyOnWriteArrayList<>();
        try (FrameFetcher fetcher = new FrameFetcher(clip)) {
            await(fetcher, 0, told);
            assertThat(told).as("nothing on the way to the first frame").containsExactly("shown 0");
            await(fetcher, 1, told);
            assertThat(told).as("nor to the next").endsWith("shown 1");
            told.clear();
            await(fetcher, target, told);
            if (target - key > 12 && key > 0) {
                assertThat(told).containsExactly("near " + key, "shown " + target);
            } else {
                assertThat(told).endsWith("shown " + target);
            }
        }
    }

    /** Whatever goes wrong is told: here a clip that was closed under it, which no file can lead to. */
    @Test
    void aFaultThatNoFileLeadsToIsTold() throws Exception {
        Clip clip = Clip.open(CLIP, 40L << 20);
        List<String> told = new CopyOnWriteArrayList<>();
        try (FrameFetcher fetcher = new FrameFetcher(clip)) {
            clip.close();
            await(fetcher, 1, told);
            assertThat(told).containsExactly("fault");
        }
    }

    private static void await(FrameFetcher fetcher, int frame, List<String> told) throws InterruptedException {
        CountDownLatch done = new CountDownLatch(1);
        fetcher.fetch(
                frame,
                near -> told.add("near " + near.index()),
                shown -> {
                    told.add("shown " + shown.index());
                    done.countDown();
                },
                fault -> {
                    told.add("fault");
                    done.countDown();
                });
        assertThat(done.await(30, TimeUnit.SECONDS)).isTrue();
    }
}
