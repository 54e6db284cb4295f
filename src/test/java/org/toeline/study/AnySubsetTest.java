package org.toeline.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.toeline.advice.Advice;
import org.toeline.advice.Assessment;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.FloorMark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.ViewMarks;
import org.toeline.posture.Posture;
import org.toeline.posture.PostureEstimator;
import org.toeline.reading.Reading;
import org.toeline.reading.Readings;

/** Whatever a coach has marked so far, in whatever order: finite readings, wider the less there is, never a failure. */
class AnySubsetTest {

    /** Of so many nonsensical sheets one is judged too. */
    private static final int JUDGED = 4;

    @Test
    void anySubsetOfMarksIsAnswered() {
        SplittableRandom random = new SplittableRandom(12);
        for (int i = 0; i < 400; i++) {
            SceneKind kind = SceneKind.values()[i % SceneKind.values().length];
            MarkSheet sheet = thinned(new RandomScene(5000 + i, kind).sheet, random);
            Assessment assessment = Assessment.of(sheet);
            for (Reading r : assessment.readings()) {
                assertThat(r.value()).isFinite();
                assertThat(r.standardUncertainty()).isFinite().isPositive();
                assertThat(r.low()).isLessThan(r.high());
            }
        }
    }

    /** Marks anywhere in the picture, a rod upright, an upright lying: a slip of the hand on a turned clip. */
    @Test
    void nonsenseIsAnsweredToo() {
        SplittableRandom random = new SplittableRandom(13);
        for (int i = 0; i < 400; i++) {
            SceneKind kind = SceneKind.values()[i % SceneKind.values().length];
            MarkSheet sheet = scattered(thinned(new RandomScene(9000 + i, kind).sheet, random), random);
            Posture posture = PostureEstimator.estimate(sheet);
            if (i % JUDGED == 0) {
                // the gate fits such a sheet anew with every slip undone, which takes half a second
                Advice advice = Assessment.of(sheet).advice();
                assertThat(advice.withheld().isPresent() && advice.isJudged()).isFalse();
            }
            for (ViewMarks v : sheet.views()) {
                posture.camera(v.view())
                        .ifPresent(c -> assertThat(c.pose().pitchRad()).isBetween(-Math.PI / 2, Math.PI / 2));
            }
            for (Reading r : Readings.of(posture)) {
                assertThat(r.value()).isFinite();
                assertThat(r.standardUncertainty()).isFinite().isPositive();
                assertThat(r.low()).isLessThan(r.high());
            }
        }
    }

    private static MarkSheet scattered(MarkSheet sheet, SplittableRandom random) {
        MarkSheet out = sheet;
        double share = random.nextDouble();
        for (ViewMarks v : sheet.views()) {
            ViewMarks some = v;
            for (Mark mark : v.marks()) {
                some = random.nextDouble() < share
                        ? some.withMark(Mark.placed(mark.landmark(), anywhere(v, random), mark.sigmaPx()))
                        : some;
            }
            for (FloorMark mark : v.floorMarks()) {
                some = random.nextDouble() < share
                        ? some.withFloorMark(new FloorMark(mark.pointId(), anywhere(v, random), mark.sigmaPx()))
                        : some;
            }
            List<VerticalMark> lying = v.verticals().stream()
                    .map(u -> random.nextDouble() < share
                            ? new VerticalMark(anywhere(v, random), anywhere(v, random), u.sigmaPx())
                            : u)
                    .toList();
            out = out.withView(some.withVerticals(lying));
        }
        return out;
    }

    private static ImagePoint anywhere(ViewMarks view, SplittableRandom random) {
        return new ImagePoint(random.nextDouble() * view.widthPx(), random.nextDouble() * view.heightPx());
    }

    private static MarkSheet thinned(MarkSheet sheet, SplittableRandom random) {
        MarkSheet out = sheet;
        double kept = random.nextDouble();
        for (ViewMarks v : sheet.views()) {
            if (random.nextInt(5) == 0) {
                out = out.withoutView(v.view());
                continue;
            }
            ViewMarks some = v;
            for (var mark : v.marks()) {
                some = random.nextDouble() < kept ? some : some.withoutMark(mark.landmark());
            }
            for (var mark : v.floorMarks()) {
                some = random.nextDouble() < kept ? some : some.withoutFloorMark(mark.pointId());
            }
            some = random.nextBoolean() ? some : some.withBall(Optional.empty());
            some = random.nextBoolean() ? some : some.withVerticals(List.of());
            out = out.withView(some);
        }
        List<ViewMarks> views = new ArrayList<>(out.views());
        return views.isEmpty() ? sheet : out;
    }
}
