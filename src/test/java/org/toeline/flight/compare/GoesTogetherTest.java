package org.toeline.flight.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.toeline.flight.ShotFigure;

/** Readings beside launch figures over lessons. */
class GoesTogetherTest {

    private final SplittableRandom random = new SplittableRandom(41);

    /** Lessons with ten readings, of which one, the tilt, makes the launch angle as strongly as asked. */
    private List<LessonFigures> lessons(int count, double strength) {
        List<LessonFigures> lessons = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Map<String, Double> readings = new HashMap<>();
            for (int k = 0; k < 9; k++) {
                readings.put("reading-" + k, random.nextGaussian());
            }
            double tilt = random.nextGaussian();
            readings.put("shoulder-tilt", tilt);
            lessons.add(new LessonFigures(
                    readings,
                    Map.of(
                            ShotFigure.LAUNCH_ANGLE,
                            strength * tilt + random.nextGaussian(),
                            ShotFigure.SPIN_RATE,
                            random.nextGaussian(),
                            ShotFigure.CARRY,
                            random.nextGaussian())));
        }
        return lessons;
    }

    @Test
    void whatGoesTogetherComesFirstWithItsLessons() {
        List<GoesTogether> all = GoesTogether.of(lessons(20, 4));
        assertThat(all).hasSize(30);
        GoesTogether first = all.get(0);
        assertThat(first.reading()).isEqualTo("shoulder-tilt");
        assertThat(first.figure()).isEqualTo(ShotFigure.LAUNCH_ANGLE);
        assertThat(first.shown()).isTrue();
        assertThat(first.words()).startsWith("goes with, over 20 lessons");
    }

    /** Thirty pairs of nothing: some interval leaves out zero nearly always, but hardly ever is one called shown. */
    @Test
    void chanceIsAllowedFor() {
        int trials = 300;
        int shown = 0;
        int looksShown = 0;
        for (int i = 0; i < trials; i++) {
            List<GoesTogether> all = GoesTogether.of(lessons(14, 0));
            shown += all.stream().anyMatch(GoesTogether::shown) ? 1 : 0;
            looksShown += all.stream().anyMatch(g -> g.correlation().shown()) ? 1 : 0;
            all.stream()
                    .filter(g -> g.correlation().shown() && !g.shown())
                    .findFirst()
                    .ifPresent(g -> assertThat(g.words()).startsWith("may go together by chance"));
        }
        assertThat(shown / (double) trials).isLessThan(0.05 + 3 * Math.sqrt(0.05 * 0.95 / trials));
        assertThat(looksShown / (double) trials).isGreaterThan(0.5);
    }

    @Test
    void onlyLessonsWithBothCount() {
        List<LessonFigures> lessons = new ArrayList<>(lessons(8, 4));
        lessons.add(new LessonFigures(Map.of("shoulder-tilt", 1.0), Map.of()));
        lessons.add(new LessonFigures(Map.of(), Map.of(ShotFigure.LAUNCH_ANGLE, 1.0)));
        assertThat(GoesTogether.of(lessons))
                .allSatisfy(g -> assertThat(g.correlation().lessons()).isEqualTo(8));
        assertThat(GoesTogether.of(lessons.subList(0, 4))).isEmpty();
    }

    /** The textbook case: 0.01, 0.04, 0.03, 0.005 of four at 5 %: 0.005 ≤ 0.0125 and 0.01 ≤ 0.0167 hold, 0.03 > 0.025. */
    @Test
    void holmStopsAtTheFirstThatFails() {
        assertThat(Holm.holding(Map.of("a", 0.01, "b", 0.04, "c", 0.03, "d", 0.005)))
                .containsExactlyInAnyOrder("a", "d");
        assertThat(Holm.holding(Map.of("a", 0.04))).containsExactly("a");
        assertThat(Holm.holding(Map.<String, Double>of())).isEmpty();
    }
}
