package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.toeline.assist.Track.Outcome;
import org.toeline.geometry.ImagePoint;
import org.toeline.video.Clip;
import org.toeline.video.Frame;
import org.toeline.video.Progress;

/** On drawn textures moved by known amounts, and on the sample clips, whose truth knows each landmark frame by frame. */
class FollowTest {

    private static final int SIDE = 200;
    private static final ImagePoint MIDDLE = new ImagePoint(100, 100);

    /** Waves of several lengths and directions, moved; noise of two grey levels. */
    private static Frame cloth(int index, double dx, double dy, SplittableRandom random) {
        int[] argb = new int[SIDE * SIDE];
        for (int i = 0; i < argb.length; i++) {
            double x = i % SIDE + 0.5 - dx;
            double y = i / SIDE + 0.5 - dy;
            double v = 128
                    + 30 * Math.sin(x / 3.1 + y / 7.3)
                    + 25 * Math.sin(y / 4.7 - x / 9.1)
                    + 20 * Math.sin(x / 11 + 1);
            argb[i] = grey(v + 2 * random.nextGaussian());
        }
        return new Frame(index, index / 60.0, SIDE, SIDE, argb);
    }

    private static int grey(double level) {
        return 0xff000000 | 0x010101 * (int) Math.max(0, Math.min(255, Math.round(level)));
    }

    /** Sway of 0.7 px across and 0.3 px up and down, drawn from a sine: its standard deviation is amplitude / √2. */
    @Test
    void aKnownSwayIsReported() throws Exception {
        SplittableRandom random = new SplittableRandom(3);
        List<Frame> frames = new ArrayList<>();
        for (int i = 0; i < 41; i++) {
            frames.add(cloth(i, Math.sin(2 * Math.PI * i / 20), 0.42 * Math.cos(2 * Math.PI * i / 20), random));
        }
        Track track = Follow.through(frames, 20, List.of(MIDDLE)).get(0);
        assertThat(track.outcome()).isEqualTo(Outcome.HELD);
        assertThat(track.steps()).hasSize(41);
        // the marked frame is 0.42 px below the middle of the sway
        assertThat(track.mean().xPx()).isCloseTo(100, within(0.05));
        assertThat(track.mean().yPx()).isCloseTo(100 - 0.42, within(0.05));
        assertThat(track.spreadXPx().orElseThrow()).isCloseTo(Math.sqrt(0.5), within(0.05));
        assertThat(track.spreadYPx().orElseThrow()).isCloseTo(0.42 * Math.sqrt(0.5), within(0.05));
        Sway sway = Follow.sway(List.of(track)).orElseThrow();
        assertThat(sway.acrossPx()).isCloseTo(Math.sqrt(0.5), within(0.05));
    }

    /** Something else comes to lie where the mark was: it must not be followed. */
    @Test
    void driftIsRefused() throws Exception {
        SplittableRandom random = new SplittableRandom(4);
        List<Frame> frames = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            Frame frame = cloth(i, 0, 0, random);
            for (int p = 0; p < SIDE * SIDE && i >= 10; p++) {
                if (p % SIDE < 60 + 4 * (i - 10)) {
                    frame.argb()[p] = grey(60 + 40 * Math.sin(p % SIDE / 2.3 - p / SIDE / 3.7 + 0.5 * i));
                }
            }
            frames.add(frame);
        }
        List<Track> tracks = Follow.through(frames, 0, List.of(MIDDLE, new ImagePoint(180, 100)));
        assertThat(tracks.get(0).outcome()).isEqualTo(Outcome.LOST);
        assertThat(tracks.get(1).outcome()).isEqualTo(Outcome.HELD);
        for (Track.Step step : tracks.get(0).steps()) {
            assertThat(step.at().distancePx(MIDDLE)).isLessThan(0.5);
        }
    }

    @Test
    void aPlainSurfaceGivesNothingToHold() throws Exception {
        List<Frame> frames = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            int[] argb = new int[SIDE * SIDE];
            java.util.Arrays.fill(argb, grey(120));
            frames.add(new Frame(i, i / 60.0, SIDE, SIDE, argb));
        }
        List<Track> tracks = Follow.through(frames, 2, List.of(MIDDLE, new ImagePoint(1, 1)));
        assertThat(tracks.get(0).outcome()).isEqualTo(Outcome.NOTHING_TO_HOLD);
        assertThat(tracks.get(1).outcome()).isEqualTo(Outcome.OUTSIDE);
        assertThat(Follow.sway(tracks)).isEmpty();
    }

    /** Against the truth files: head and shoulders within half a pixel, feet within a tenth, sway to a tenth. */
    @ParameterizedTest
    @CsvSource({"before, face-on", "left-handed, down-the-line"})
    void theSamplePlayerIsFollowed(String lesson, String view) throws Exception {
        Path folder = Path.of("sample-media", lesson);
        JsonNode truth =
                new ObjectMapper().readTree(folder.resolve(view + ".truth.json").toFile());
        double from = truth.path("still").path("from").asDouble();
        double to = truth.path("still").path("to").asDouble();
        List<String> names = List.of("head-centre", "lead-shoulder", "lead-heel", "trail-toe", "lead-wrist");
        List<Map<Double, ImagePoint>> where =
                names.stream().map(n -> moments(truth, n, from, to)).toList();
        try (Clip clip = Clip.open(folder.resolve(view + ".mp4"))) {
            double marked = where.get(0).keySet().stream()
                    .filter(s -> s > 2.3)
                    .findFirst()
                    .orElseThrow();
            List<Track> tracks = Follow.through(
                            clip,
                            new StillSpan(from, to - 0.02, marked),
                            marked,
                            where.stream().map(w -> w.get(marked)).toList(),
                            Progress.NONE)
                    .orElseThrow();
            for (int i = 0; i < names.size(); i++) {
                assertThat(tracks.get(i).outcome()).as(names.get(i)).isEqualTo(Outcome.HELD);
                double most = i < 2 ? 0.5 : 0.15;
                for (Track.Step step : tracks.get(i).steps()) {
                    ImagePoint true0 = nearest(where.get(i), step.seconds());
                    assertThat(step.at().distancePx(true0)).as(names.get(i)).isLessThan(most);
                }
            }
            double trueSway = deviation(
                    where.get(1).values().stream().mapToDouble(ImagePoint::xPx).toArray());
            assertThat(Follow.sway(tracks.subList(1, 2)).orElseThrow().acrossPx())
                    .isCloseTo(trueSway, within(0.1));
        }
    }

    @Test
    void stopsWhenAsked() throws Exception {
        try (Clip clip = Clip.open(Path.of("sample-media/before/face-on.mp4"))) {
            assertThat(Follow.through(
                            clip,
                            new StillSpan(1.7, 2.7, 2.3),
                            2.3,
                            List.of(new ImagePoint(621, 179)),
                            share -> share > 0.3 ? Progress.Step.STOP : Progress.Step.GO_ON))
                    .isEmpty();
        }
    }

    private static Map<Double, ImagePoint> moments(JsonNode truth, String landmark, double from, double to) {
        Map<Double, ImagePoint> all = new TreeMap<>();
        for (JsonNode moment : truth.path("moments")) {
            double s = moment.path("time").asDouble();
            if (s >= from && s <= to) {
                JsonNode l = moment.path("landmarks").path(landmark);
                all.put(s, new ImagePoint(l.path(3).asDouble(), l.path(4).asDouble()));
            }
        }
        return all;
    }

    private static ImagePoint nearest(Map<Double, ImagePoint> moments, double seconds) {
        return moments.entrySet().stream()
                .min(java.util.Comparator.comparingDouble(e -> Math.abs(e.getKey() - seconds)))
                .orElseThrow()
                .getValue();
    }

    private static double deviation(double[] v) {
        double mean = java.util.Arrays.stream(v).average().orElseThrow();
        return Math.sqrt(
                java.util.Arrays.stream(v).map(x -> (x - mean) * (x - mean)).sum() / (v.length - 1));
    }
}
