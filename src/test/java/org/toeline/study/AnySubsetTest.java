package org.toeline.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.toeline.advice.Assessment;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.ViewMarks;
import org.toeline.reading.Reading;

/** Whatever a coach has marked so far, in whatever order: finite readings, wider the less there is, never a failure. */
class AnySubsetTest {

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
