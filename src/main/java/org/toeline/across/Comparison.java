package org.toeline.across;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.toeline.ledger.store.rows.LessonFindings;

/**
 * A player's lessons with a club, and what changed from one chosen lesson to a later one.
 *
 * @param lessons in their order
 * @param earlier the number of one of them; {@code later} too; the same when there is only one
 * @param rows    the real changes first, then those too close to call, then the rest, each in the catalogue's order
 */
public record Comparison(List<LessonFindings> lessons, int earlier, int later, List<Row> rows) {

    /**
     * One reading.
     *
     * @param change empty when one of the chosen lessons does not have the reading
     */
    public record Row(AcrossLessons across, Optional<LessonChange> change) {

        public Optional<ChangeCall> call() {
            return change.map(LessonChange::call);
        }
    }

    public Comparison {
        lessons = List.copyOf(lessons);
        rows = List.copyOf(rows);
    }

    /** A pure function; {@code lessons} holds both lessons. */
    public static Comparison of(List<LessonFindings> lessons, int earlier, int later) {
        require(lessons, earlier);
        require(lessons, later);
        List<Row> rows = new ArrayList<>();
        AcrossLessons.of(lessons).forEach(a -> rows.add(new Row(a, a.change(earlier, later))));
        rows.sort(
                Comparator.comparingInt(row -> row.call().map(Comparison::rank).orElse(ChangeCall.values().length)));
        return new Comparison(lessons, earlier, later, rows);
    }

    private static void require(List<LessonFindings> lessons, int id) {
        if (lessons.stream().noneMatch(l -> l.lessonId() == id)) {
            throw new IllegalArgumentException(
                    "lesson " + id + " is none of the " + lessons.size() + " that are compared");
        }
    }

    private static int rank(ChangeCall call) {
        return switch (call) {
            case REAL -> 0;
            case TOO_CLOSE -> 1;
            case NOT_SHOWN -> 2;
        };
    }

    /** The place of a lesson among the lessons, from 0; −1 when it is none of them. */
    public int indexOf(int lessonId) {
        for (int i = 0; i < lessons.size(); i++) {
            if (lessons.get(i).lessonId() == lessonId) {
                return i;
            }
        }
        return -1;
    }
}
