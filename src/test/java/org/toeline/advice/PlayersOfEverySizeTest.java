package org.toeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.toeline.mark.Club;
import org.toeline.mark.Stature;
import org.toeline.posture.Source;
import org.toeline.reading.Normal;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;

/** Players with the same proportions, from a child of 1.10 m to a man of 2.05 m, are told the same. */
class PlayersOfEverySizeTest {

    private static final RangeBook SHIPPED = RangeBook.shipped();
    private static final double SMALLEST_M = 1.10;
    private static final double TALLEST_M = 2.05;
    private static final double STEP_M = 0.05;
    /** The size as marks tell it, a share of it: about 4 cm of an adult. */
    private static final double SIZE_SIGMA = 0.025;

    /** Where a reading stands to its range at the usual size: below, at the limits, within, above. */
    private static final double[] PLACES = {-0.9, -0.3, 0.02, 0.3, 0.5, 0.8, 1.02, 1.4, 2.1};

    private static Optional<Verdict> said(ReadingKind kind, Range usual, double place, double half, double heightM) {
        boolean grows = usual.scaling() == Range.Scaling.STATURE;
        double scale = grows ? heightM / Range.USUAL_STATURE_M : 1;
        double width = usual.high() - usual.low();
        double value = (usual.low() + place * width) * scale;
        Reading reading = new Reading(kind, value, new Normal(value, half * width * scale / 1.96), Source.MARKS);
        Club club = usual.clubs().iterator().next();
        return Judge.finding(reading, club, SHIPPED, new Stature(heightM, SIZE_SIGMA * heightM))
                .verdict();
    }

    @Test
    void theSameProportionsAreJudgedTheSame() {
        int compared = 0;
        Map<Verdict, Integer> seen = new HashMap<>();
        for (ReadingKind kind : ReadingKind.values()) {
            for (Club club : Club.values()) {
                Optional<Range> usual = SHIPPED.range(kind, club);
                if (usual.isEmpty()) {
                    continue;
                }
                for (double place : PLACES) {
                    for (double half : new double[] {0.08, 0.2}) {
                        Optional<Verdict> grown = said(kind, usual.get(), place, half, Range.USUAL_STATURE_M);
                        seen.merge(grown.orElseThrow(), 1, Integer::sum);
                        for (double m = SMALLEST_M; m <= TALLEST_M + 1e-9; m += STEP_M) {
                            Optional<Verdict> said = said(kind, usual.get(), place, half, m);
                            boolean child = m < Range.GROWN_M && usual.get().whom() == Range.Whom.GROWN;
                            assertThat(said)
                                    .as(kind.id() + " " + club.id() + " " + m + " m at " + place)
                                    .isEqualTo(child ? Optional.of(Verdict.NOT_FOR_CHILDREN) : grown);
                            compared++;
                        }
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(20_000);
        assertThat(seen).containsKeys(Verdict.IN_RANGE, Verdict.OUT_LOW, Verdict.OUT_HIGH, Verdict.TOO_CLOSE);
    }

    /** A child is told nothing by centimetres of adults, and all that is an angle or a ratio is judged. */
    @Test
    void lengthsOfTheBodyAreForTheGrownAlone() {
        for (ReadingKind kind : ReadingKind.values()) {
            for (Club club : Club.values()) {
                SHIPPED.range(kind, club).ifPresent(r -> {
                    boolean length = kind.unit() == org.toeline.reading.Unit.CENTIMETRE;
                    assertThat(r.scaling() == Range.Scaling.STATURE)
                            .as(kind.id())
                            .isEqualTo(length);
                    if (length) {
                        assertThat(r.whom()).as(kind.id() + " " + club.id()).isEqualTo(Range.Whom.GROWN);
                    }
                });
            }
        }
    }
}
