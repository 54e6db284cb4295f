package org.toeline.assist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.toeline.geometry.ImagePoint;
import org.toeline.video.Clip;
import org.toeline.video.Frame;

/** On drawn bars and edges whose place is known, noise of four grey levels, and on the sample clips. */
class EdgeSnapTest {

    private static final int SIDE = 128;
    private static final double NOISE = 4;
    private static final double[] GRASS = {88, 128, 82};
    private static final double[] RED = {224, 87, 42};
    private static final double[] BLUE = {30, 90, 160};
    private static final double[] SHAFT = {60, 62, 64};

    /** A bar, one of its ends in the picture if {@code halfLength} is short; where its axis runs is known. */
    record Bar(double x, double y, double angle, double width, double halfLength, double[] colour) {

        static Bar random(SplittableRandom random, double widest, double halfLength) {
            double light = random.nextDouble() < 0.5 ? random.nextDouble(20, 60) : random.nextDouble(170, 235);
            double[] colour = random.nextInt(3) == 0 ? new double[] {224, 87, 42} : new double[] {light, light, light};
            return new Bar(
                    random.nextDouble(60, 68),
                    random.nextDouble(60, 68),
                    random.nextDouble(0, Math.PI),
                    random.nextDouble(3, widest),
                    halfLength,
                    colour);
        }

        Frame drawn(SplittableRandom random) {
            int seed = random.nextInt(1 << 20);
            return Drawn.picture(SIDE, SIDE, random.nextDouble(0.5, 1.2), NOISE, random, (px, py, rgb) -> {
                double s = s(px, py);
                double t = t(px, py);
                double rough = 10 * Drawn.grain(px / 2.5, py / 2.5, seed);
                for (int c = 0; c < 3; c++) {
                    rgb[c] = Math.abs(t) <= width / 2 && Math.abs(s) <= halfLength ? colour[c] : GRASS[c] + rough;
                }
            });
        }

        double s(double px, double py) {
            return (px - x) * Math.cos(angle) + (py - y) * Math.sin(angle);
        }

        double t(double px, double py) {
            return (py - y) * Math.cos(angle) - (px - x) * Math.sin(angle);
        }

        ImagePoint at(double s, double t) {
            return new ImagePoint(
                    x + s * Math.cos(angle) - t * Math.sin(angle), y + s * Math.sin(angle) + t * Math.cos(angle));
        }
    }

    @Test
    void aRoughDragSnapsToTheMiddleOfABar() {
        SplittableRandom random = new SplittableRandom(11);
        double squares = 0;
        int covered = 0;
        int n = 60;
        for (int i = 0; i < n; i++) {
            Bar bar = Bar.random(random, 3.7, 1000);
            SnappedLine line = EdgeSnap.along(
                            bar.drawn(random),
                            bar.at(-35, random.nextDouble(-3, 3)),
                            bar.at(35, random.nextDouble(-3, 3)))
                    .orElseThrow();
            double off = bar.t(line.at().xPx(), line.at().yPx());
            squares += off * off / n;
            covered += Math.abs(off) <= 1.96 * line.sigmaAcrossPx() ? 1 : 0;
            assertThat(line.barWidthPx().orElseThrow())
                    .as("width, which blur widens")
                    .isCloseTo(bar.width, within(1.6));
            assertThat(Math.abs(Math.sin(line.directionRad() - bar.angle))).isLessThan(0.02);
        }
        assertThat(Math.sqrt(squares)).as("across, rms").isLessThan(0.15);
        assertThat(covered).as("within the stated interval, of " + n).isGreaterThanOrEqualTo(n * 90 / 100);
    }

    /** A post at the picture's border: what would lie outside cannot be kept with a lesson. */
    @Test
    void whatLeavesThePictureIsCutAtItsBorder() {
        SplittableRandom random = new SplittableRandom(13);
        Bar bar = new Bar(4, 64, Math.PI / 2 + 0.08, 3, 1000, new double[] {210, 210, 210});
        SnappedLine line = EdgeSnap.along(bar.drawn(random), new ImagePoint(8, 10), new ImagePoint(1, 126))
                .orElseThrow();
        assertThat(bar.at(62, 0).xPx()).as("the bar leaves it").isNegative();
        for (ImagePoint end : List.of(line.from(), line.to())) {
            assertThat(end.xPx()).isBetween(0.0, (double) SIDE);
            assertThat(end.yPx()).isBetween(0.0, (double) SIDE);
            assertThat(bar.t(end.xPx(), end.yPx())).as("still on the bar").isCloseTo(0, within(1.0));
        }
        assertThat(line.to().yPx()).as("up to the border").isGreaterThan(100);
    }

    @Test
    void aRoughDragSnapsToAPlainEdge() {
        SplittableRandom random = new SplittableRandom(12);
        for (int i = 0; i < 24; i++) {
            Bar edge = new Bar(64 + random.nextDouble(), 64, random.nextDouble(0, Math.PI), 1, 1, GRASS);
            double dark = random.nextDouble(40, 170);
            double light = dark + random.nextDouble(30, 70);
            Frame frame = Drawn.picture(
                    SIDE,
                    SIDE,
                    0.8,
                    NOISE,
                    random,
                    (px, py, rgb) -> java.util.Arrays.fill(rgb, edge.t(px, py) > 0 ? light : dark));
            SnappedLine line = EdgeSnap.along(
                            frame,
                            edge.at(-35, random.nextDouble(-3.5, 3.5)),
                            edge.at(35, random.nextDouble(-3.5, 3.5)))
                    .orElseThrow();
            assertThat(line.barWidthPx()).isEmpty();
            assertThat(edge.t(line.at().xPx(), line.at().yPx())).isCloseTo(0, within(0.35));
        }
    }

    @Test
    void bothEndsFromOneDrag() {
        SplittableRandom random = new SplittableRandom(13);
        double across = 0;
        double along = 0;
        int n = 24;
        for (int i = 0; i < n; i++) {
            Bar bar = Bar.random(random, 9, random.nextDouble(30, 46));
            double half = bar.halfLength;
            SnappedRod rod = EdgeSnap.rod(
                            bar.drawn(random),
                            bar.at(-half + random.nextDouble(-5, 5), random.nextDouble(-3, 3)),
                            bar.at(half + random.nextDouble(-5, 5), random.nextDouble(-3, 3)))
                    .orElseThrow();
            for (SnappedRod.End end : List.of(rod.from(), rod.to())) {
                assertThat(end.beyond()).isEqualTo(SnappedRod.Beyond.GROUND);
                double s = Math.abs(bar.s(end.at().xPx(), end.at().yPx())) - half;
                double t = bar.t(end.at().xPx(), end.at().yPx());
                assertThat(Math.abs(s)).isLessThan(4 * end.sigmaAlongPx());
                across += t * t / (2 * n);
                along += s * s / (2 * n);
            }
        }
        assertThat(Math.sqrt(across)).as("across, rms").isLessThan(0.2);
        assertThat(Math.sqrt(along)).as("along, rms").isLessThan(0.4);
    }

    /** Something dark lies over the rod's end: it is where the rod is last seen, and said to be so. */
    @Test
    void aCoveredEndIsSaidToBeCovered() {
        SplittableRandom random = new SplittableRandom(14);
        Frame frame = Drawn.picture(200, 120, 0.8, NOISE, random, (px, py, rgb) -> {
            double[] colour = px > 150
                    ? new double[] {30, 30, 34}
                    : Math.abs(py - 60.3) < 2.5 && px > 40 ? new double[] {224, 87, 42} : GRASS;
            System.arraycopy(colour, 0, rgb, 0, 3);
        });
        SnappedRod rod = EdgeSnap.rod(frame, new ImagePoint(38, 62), new ImagePoint(152, 59))
                .orElseThrow();
        assertThat(rod.from().beyond()).isEqualTo(SnappedRod.Beyond.GROUND);
        assertThat(rod.to().beyond()).isEqualTo(SnappedRod.Beyond.COVER);
        assertThat(rod.to().at().xPx()).isCloseTo(150, within(1.0));
    }

    /** A shaft or another rod lies just past an end: the end is not taken to lie behind it. */
    @Test
    void anEndBesideSomethingThatCrossesIsNotSurelySeen() {
        SplittableRandom random = new SplittableRandom(16);
        int wrong = 0;
        int n = 60;
        for (int i = 0; i < n; i++) {
            Bar rod = new Bar(58, 66, random.nextDouble(-0.6, 0.6), random.nextDouble(3, 5), 40, RED);
            double[] colour = i % 2 == 0 ? SHAFT : BLUE;
            double width = random.nextDouble(2.5, 4);
            double angle = rod.angle + random.nextDouble(0.7, Math.PI - 0.7);
            ImagePoint beside = rod.at(rod.halfLength + width / 2 + random.nextDouble(0, 2), 0);
            Bar across = new Bar(beside.xPx(), beside.yPx(), angle, width, 200, colour);
            wrong += endsBehind(rod, across, random) ? 1 : 0;
        }
        assertThat(wrong).as("of " + n).isZero();
    }

    private static boolean endsBehind(Bar rod, Bar across, SplittableRandom random) {
        int seed = random.nextInt(1 << 20);
        Frame frame = Drawn.picture(SIDE, SIDE, 0.8, NOISE, random, (px, py, rgb) -> {
            double rough = 10 * Drawn.grain(px / 2.5, py / 2.5, seed);
            boolean cap = rod.s(px, py) > rod.halfLength - 3;
            double[] own = cap ? new double[] {210, 210, 205} : rod.colour;
            for (int c = 0; c < 3; c++) {
                rgb[c] = Math.abs(across.t(px, py)) <= across.width / 2
                        ? across.colour[c]
                        : Math.abs(rod.t(px, py)) <= rod.width / 2 && Math.abs(rod.s(px, py)) <= rod.halfLength
                                ? own[c]
                                : GRASS[c] + rough;
            }
        });
        Optional<SnappedRod> seen = EdgeSnap.rod(frame, rod.at(-38, 1), rod.at(38, -1));
        return seen.filter(r -> r.to().beyond() == SnappedRod.Beyond.GROUND)
                .filter(r -> Math.abs(rod.s(r.to().at().xPx(), r.to().at().yPx()) - rod.halfLength)
                        > Math.max(3, 4 * r.to().sigmaAlongPx()))
                .isPresent();
    }

    @Test
    void grassAndRoundThingsAreNoEdge() {
        SplittableRandom random = new SplittableRandom(15);
        int snapped = 0;
        for (int i = 0; i < 16; i++) {
            int seed = i;
            Frame grass = Drawn.picture(SIDE, SIDE, 0.6, NOISE, random, (px, py, rgb) -> {
                double rough = 18 * Drawn.grain(px / 2.2, py / 3.1, seed);
                boolean ball = Math.hypot(px - 64, py - 64) < 7;
                for (int c = 0; c < 3; c++) {
                    rgb[c] = ball && seed % 2 == 0 ? 225 : GRASS[c] + rough;
                }
            });
            snapped += EdgeSnap.along(grass, new ImagePoint(34, 58), new ImagePoint(94, 60))
                            .isPresent()
                    ? 1
                    : 0;
        }
        assertThat(snapped).isLessThanOrEqualTo(1);
    }

    /**
     * The rods of the sample clips. They are round, 13 mm across, and lie half in the turf, so the middle of what is seen
     * lies above the axis that the truth gives: by (1 − sine of the line of sight's dip) of half their radius, seen from
     * the side. Where the rod runs away from the camera its ends are seen by their tops, a radius higher.
     */
    @ParameterizedTest
    @CsvSource({
        "before, face-on, rod-near, rod-far",
        "after, face-on, rod-near, rod-far",
        "left-handed, face-on, rod-near, rod-far",
        "all-good, face-on, rod-near, rod-far",
        "before, down-the-line, cross-ball, cross-feet",
        "after, down-the-line, cross-ball, cross-feet",
        "left-handed, down-the-line, cross-ball, cross-feet",
        "before, down-the-line, rod-near, rod-far",
        "after, down-the-line, rod-near, rod-far",
        "left-handed, down-the-line, rod-near, rod-far",
        "all-good, down-the-line, rod-near, rod-far"
    })
    void theSampleRods(String lesson, String view, String first, String second) throws Exception {
        Path folder = Path.of("sample-media", lesson);
        JsonNode truth =
                new ObjectMapper().readTree(folder.resolve(view + ".truth.json").toFile());
        List<ImagePoint> ends = new ArrayList<>();
        for (String id : List.of(first, second)) {
            for (JsonNode p : truth.path("floor")) {
                if (p.path("id").asText().equals(id)) {
                    ends.add(new ImagePoint(p.path("x").asDouble(), p.path("y").asDouble()));
                }
            }
        }
        SplittableRandom random = new SplittableRandom(lesson.hashCode());
        try (Clip clip = Clip.open(folder.resolve(view + ".mp4"))) {
            Frame frame = clip.frameAt(2.3);
            SnappedRod rod = EdgeSnap.rod(
                            frame,
                            ends.get(0).plus(random.nextDouble(-5, 5), random.nextDouble(-5, 5)),
                            ends.get(1).plus(random.nextDouble(-5, 5), random.nextDouble(-5, 5)))
                    .orElseThrow();
            boolean across = Math.abs(ends.get(1).yPx() - ends.get(0).yPx())
                    < Math.abs(ends.get(1).xPx() - ends.get(0).xPx());
            double raised = across ? 0.8 : 1.9;
            for (int i = 0; i < 2; i++) {
                SnappedRod.End end = i == 0 ? rod.from() : rod.to();
                assertThat(rod.onGround(end).yPx() - ends.get(i).yPx())
                        .as("where it touches the ground")
                        .isCloseTo(0, within(0.6));
                assertThat(end.at().yPx() - ends.get(i).yPx()).as("up").isCloseTo(-raised, within(0.4));
                assertThat(end.at().xPx() - ends.get(i).xPx()).as("along").isCloseTo(0, within(1.2));
            }
            if (!across) {
                return;
            }
            ImagePoint run = ends.get(1).plus(-ends.get(0).xPx(), -ends.get(0).yPx());
            ImagePoint low = ends.get(0).plus(0.2 * run.xPx(), 0.2 * run.yPx() + random.nextDouble(-3, 3));
            ImagePoint high = ends.get(0).plus(0.8 * run.xPx(), 0.8 * run.yPx() + random.nextDouble(-3, 3));
            SnappedLine line = EdgeSnap.along(frame, low, high).orElseThrow();
            double share = view.equals("face-on")
                    ? (line.at().xPx() - ends.get(0).xPx()) / run.xPx()
                    : (line.at().yPx() + raised - ends.get(0).yPx()) / run.yPx();
            assertThat(line.at().yPx() - ends.get(0).yPx() - share * run.yPx()).isCloseTo(-raised, within(0.5));
        }
    }

    /** The sides of the door, where a dark seam 4 mm wide lies between leaf and frame. */
    @ParameterizedTest
    @CsvSource({"before, face-on, door-near", "before, face-on, door-far", "left-handed, face-on, door-far"})
    void theSampleDoor(String lesson, String view, String id) throws Exception {
        Path folder = Path.of("sample-media", lesson);
        JsonNode truth =
                new ObjectMapper().readTree(folder.resolve(view + ".truth.json").toFile());
        try (Clip clip = Clip.open(folder.resolve(view + ".mp4"))) {
            for (JsonNode v : truth.path("verticals")) {
                if (v.path("id").asText().equals(id)) {
                    ImagePoint low =
                            new ImagePoint(v.path("x1").asDouble(), v.path("y1").asDouble());
                    ImagePoint high =
                            new ImagePoint(v.path("x2").asDouble(), v.path("y2").asDouble());
                    SnappedLine line = EdgeSnap.along(clip.frameAt(2.3), low.plus(2.5, -40), high.plus(-2, 40))
                            .orElseThrow();
                    StraightLine post = StraightLine.through(low, high);
                    assertThat(post.place(line.from()).t()).isCloseTo(0, within(0.9));
                    assertThat(post.place(line.to()).t()).isCloseTo(0, within(0.9));
                    assertThat(post.place(line.from()).t()
                                    - post.place(line.to()).t())
                            .as("parallel")
                            .isCloseTo(0, within(0.25));
                }
            }
        }
    }
}
