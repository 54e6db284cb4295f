package org.toeline.video;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.toeline.video.PlainDecode.Shown;

/**
 * Property: whatever a phone or an editor makes, stepping to a frame, stepping back to it and jumping to it show the
 * pixels and the time that decoding the clip once from its beginning gives, every frame.
 */
class PhoneClipTest {

    /** A step of the finest time base among these clips. */
    private static final double SAME_TIME_S = 1e-6;

    private static final String NOISE = " -vf noise=alls=12:allf=t+u";

    @TempDir
    Path folder;

    private static void checkEveryFrame(Path file, int frames) throws ClipException {
        List<Shown> plain = PlainDecode.of(file);
        assertThat(plain).hasSize(frames);
        try (Clip clip = Clip.open(file)) {
            assertThat(clip.frameCount()).isEqualTo(frames);
            for (int i = 0; i < frames; i++) {
                check(clip.frame(i), i, plain.get(i), "forwards");
            }
            for (int i = frames - 1; i >= 0; i--) {
                check(clip.frame(i), i, plain.get(i), "backwards");
            }
            SplittableRandom random = new SplittableRandom(17);
            for (int k = 0; k < Math.min(60, frames); k++) {
                int i = random.nextInt(frames);
                check(clip.frame(i), i, plain.get(i), "jumped to");
                check(clip.frameAt(plain.get(i).seconds()), i, plain.get(i), "at its time");
            }
        }
        try (Clip clip = Clip.open(file)) {
            for (int i = frames - 1; i >= 0; i--) {
                check(clip.frame(i), i, plain.get(i), "backwards from the end");
            }
        }
    }

    private static void check(Frame frame, int place, Shown plain, String how) {
        assertThat(frame.index()).isEqualTo(place);
        assertThat(frame.seconds())
                .as("time of frame %d %s", place, how)
                .isCloseTo(plain.seconds(), within(SAME_TIME_S));
        assertThat(Arrays.hashCode(frame.argb()))
                .as("pixels of frame %d %s", place, how)
                .isEqualTo(plain.pixels());
    }

    private Path made(String suffix, int sourceFrames, String options) throws Exception {
        String encoder = options.replaceFirst(".*-c:v (\\S+).*", "$1");
        assumeTrue(PhoneClips.canMake(encoder), "ffmpeg with " + encoder + " is not installed");
        return PhoneClips.make(PhoneClips.source(folder, sourceFrames), folder.resolve("clip." + suffix), options);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "B-frames, mp4, 80, -c:v libx264 -preset veryfast -bf 3 -g 30",
        "open groups, mp4, 80, -c:v libx264 -preset veryfast -x264-params open-gop=1:keyint=20:bframes=4:scenecut=0",
        "open groups of HEVC, mp4, 80, -c:v libx265 -preset ultrafast -x265-params"
                + " open-gop=1:keyint=20:bframes=4:log-level=0",
        "a group of 250, mp4, 290, -c:v libx264 -preset veryfast -bf 2 -g 250 -keyint_min 250 -sc_threshold 0",
        "H.264 4:4:4, mp4, 40, -c:v libx264 -preset veryfast -pix_fmt yuv444p",
        "H.264 4:2:2 10 bit, mov, 40, -c:v libx264 -preset veryfast -pix_fmt yuv422p10le",
        "VP9, webm, 40, -c:v libvpx-vp9 -deadline realtime -cpu-used 8 -g 25",
        "AV1, mp4, 40, -c:v libsvtav1 -preset 12 -g 25",
        "begins at 2.5 s, mp4, 40, -c:v libx264 -preset veryfast -bf 2 -g 15 -output_ts_offset 2.5",
        "transport stream, ts, 40, -c:v libx264 -preset veryfast -bf 2 -g 15",
        "fragments, mp4, 40, -c:v libx264 -preset veryfast -bf 2 -g 10 -movflags frag_keyframe+empty_moov",
        "fields, mp4, 40, -c:v libx264 -preset veryfast -flags +ildct+ilme -g 15",
    })
    void everyFrame(String what, String suffix, int frames, String options) throws Exception {
        checkEveryFrame(made(suffix, frames, "|" + options + NOISE), frames);
    }

    @Test
    void twoHundredAndFortyASecond() throws Exception {
        checkEveryFrame(made("mp4", 200, "-r 240 |-c:v libx264 -preset veryfast -bf 2 -g 120 -r 240" + NOISE), 200);
    }

    /** Two of three frames are kept, at their times. */
    @Test
    void variableRate() throws Exception {
        checkEveryFrame(
                made(
                        "mp4",
                        90,
                        "|-c:v libx264 -preset veryfast -bf 2 -g 20 -vsync vfr"
                                + " -vf select=not(eq(mod(n\\,3)\\,1)),noise=alls=12:allf=t+u"),
                60);
    }

    /** Trimmed without coding anew: the file holds frames before its first that are decoded and not shown. */
    @Test
    void editList() throws Exception {
        Path whole =
                made("mp4", 90, "|-c:v libx264 -preset veryfast -bf 2 -g 30 -keyint_min 30 -sc_threshold 0" + NOISE);
        Path cut = PhoneClips.make(whole, folder.resolve("cut.mp4"), "-ss 1.5 |-c copy");
        List<Shown> shown = PlainDecode.of(cut);
        assertThat(shown)
                .as("45 frames are left, those before them are not shown")
                .hasSizeBetween(44, 46);
        checkEveryFrame(cut, shown.size());
        try (Clip clip = Clip.open(cut)) {
            assertThat(TestClips.number(clip.frame(0))).as("trimmed at 1.5 s").isBetween(44, 46);
        }
    }

    @ParameterizedTest
    @CsvSource({"90", "180", "270"})
    void turned(int degrees) throws Exception {
        checkEveryFrame(
                made("mp4", 30, "|-c:v libx264 -preset veryfast -bf 2 -g 10 -metadata:s:v rotate=" + degrees + NOISE),
                30);
    }

    /** Shown as wide as its pixels are: 320 × 4/3 by 192. */
    @Test
    void pixelsThatAreNotSquare() throws Exception {
        Path file = made("mp4", 30, "|-c:v libx264 -preset veryfast -bf 2 -g 10 -vf setsar=4/3,noise=alls=12:allf=t+u");
        checkEveryFrame(file, 30);
        try (Clip clip = Clip.open(file)) {
            assertThat(clip.info().width()).isEqualTo(427);
            assertThat(clip.info().height()).isEqualTo(192);
        }
    }

    @ParameterizedTest
    @CsvSource({"libx264 -pix_fmt yuv444p, mp4", "libvpx-vp9 -deadline realtime -cpu-used 8, webm"})
    void oddSizes(String encoder, String suffix) throws Exception {
        Path file = made(suffix, 30, "|-c:v " + encoder + " -g 10 -vf scale=333:187,setsar=1,noise=alls=12:allf=t+u");
        checkEveryFrame(file, 30);
        try (Clip clip = Clip.open(file)) {
            assertThat(clip.info().width()).isEqualTo(333);
            assertThat(clip.info().height()).isEqualTo(187);
        }
    }

    @ParameterizedTest
    @CsvSource({"tv", "pc"})
    void limitedAndFullRange(String range) throws Exception {
        checkEveryFrame(
                made(
                        "mp4",
                        30,
                        "|-c:v libx264 -preset veryfast -bf 2 -g 10 -color_range " + range + " -vf scale=out_range="
                                + range + ",noise=alls=12:allf=t+u"),
                30);
    }

    @Test
    void fourThousandPixelsOfTenBits() throws Exception {
        Path file = made(
                "mp4",
                14,
                "|-c:v libx265 -preset ultrafast -pix_fmt yuv420p10le -tag:v hvc1"
                        + " -x265-params keyint=10:bframes=2:log-level=0 -vf scale=3840:2160");
        checkEveryFrame(file, 14);
    }
}
