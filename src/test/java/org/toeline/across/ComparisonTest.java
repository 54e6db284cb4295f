package org.toeline.across;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.toeline.ledger.store.TestLessons;
import org.toeline.ledger.store.rows.LessonFindings;
import org.toeline.ledger.store.rows.StatedFinding;

/** Chosen lessons against each other, and the table of it. */
class ComparisonTest {

    private static LessonFindings lesson(int id, String setup, double tilt) {
        return new LessonFindings(
                id, Optional.of("2026-04-0" + id + "T09:00:00+01:00"), setup, TestLessons.findings(tilt));
    }

    private static final List<LessonFindings> THREE =
            List.of(lesson(1, "", 7), lesson(2, "=1+1", 7.1), lesson(3, "", 14));

    @Test
    void realChangesComeFirst() {
        List<StatedFinding> turned = new java.util.ArrayList<>(TestLessons.findings(7));
        java.util.Collections.reverse(turned);
        Comparison comparison =
                Comparison.of(List.of(new LessonFindings(1, Optional.empty(), "", turned), THREE.get(2)), 1, 3);
        assertThat(comparison.rows())
                .extracting(r -> r.across().reading())
                .containsExactly("shoulder-tilt", "stance-width");
        assertThat(comparison.rows())
                .extracting(r -> r.call().orElseThrow())
                .containsExactly(ChangeCall.REAL, ChangeCall.NOT_SHOWN);
    }

    @Test
    void anyTwoAreCompared() {
        assertThat(Comparison.of(THREE, 1, 2).rows().get(0).call()).contains(ChangeCall.NOT_SHOWN);
        assertThat(Comparison.of(THREE, 2, 3)
                        .rows()
                        .get(0)
                        .change()
                        .orElseThrow()
                        .difference())
                .isEqualTo(6.9);
        assertThat(Comparison.of(THREE, 2, 2).rows().get(0).change()).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> Comparison.of(THREE, 1, 4));
    }

    @Test
    void theTableHasEveryReadingOfEveryLesson() {
        String[] lines = AcrossCsv.of(Comparison.of(THREE, 1, 3)).split("\r\n");
        assertThat(lines).hasSize(1 + 3 * 2);
        int columns = lines[0].split(",", -1).length;
        assertThat(lines).allSatisfy(line -> assertThat(line.split(",", -1)).hasSize(columns));
        assertThat(lines[1])
                .startsWith("shoulder-tilt,deg,1,2026-04-01T09:00:00+01:00,,7.0,1.25,")
                .contains(",earlier,,,,,");
        assertThat(lines[2])
                .as("a text that a spreadsheet would take for a formula")
                .contains(",'=1+1,");
        assertThat(lines[3])
                .contains(",later,7.0,")
                .contains(",real,")
                .as("slope 3.5 a lesson, 2.24 or more by measuring 1.25 and a player's usual 1.5, one of two readings")
                .matches("(?s).*,(real|too-close)");
    }
}
