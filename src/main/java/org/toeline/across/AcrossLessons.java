package org.toeline.across;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.toeline.ledger.store.rows.LessonFindings;
import org.toeline.ledger.store.rows.StatedFinding;
import org.toeline.reading.Measured;
import org.toeline.reading.ReadingKind;

/**
 * One reading of a player over lessons, as stated each time, in the unit a person reads.
 *
 * @param points in the order of the lessons
 * @param spread the player's own, learnt from setups that were addressed again
 * @param family the readings that are looked at with it
 */
public record AcrossLessons(String reading, String unit, List<Point> points, OwnSpread spread, Family family) {

    /** What one lesson said. */
    public record Point(int lessonId, String setup, Measured measured, StatedFinding finding) {}

    public AcrossLessons {
        points = List.copyOf(points);
    }

    /** All readings that any of the lessons has, in the order in which they first come; a pure function. */
    public static List<AcrossLessons> of(List<LessonFindings> lessons) {
        Map<String, List<Point>> byReading = new LinkedHashMap<>();
        for (LessonFindings lesson : lessons) {
            for (StatedFinding finding : lesson.findings()) {
                byReading
                        .computeIfAbsent(finding.reading(), r -> new ArrayList<>())
                        .add(new Point(lesson.lessonId(), lesson.setup(), finding.measured(), finding));
            }
        }
        List<AcrossLessons> all = new ArrayList<>();
        Family family = new Family(Math.max(1, byReading.size()));
        byReading.forEach((reading, points) -> all.add(new AcrossLessons(
                reading,
                points.get(0).finding().unit(),
                points,
                OwnSpread.ofRepeats(repeats(points), usual(reading, points)),
                family)));
        return all;
    }

    /** Of a reading that this program does not know, what it measured tells how much is little. */
    private static OwnSpread usual(String reading, List<Point> points) {
        return Arrays.stream(ReadingKind.values())
                .filter(k -> k.id().equals(reading))
                .findFirst()
                .map(OwnSpread::usual)
                .orElseGet(() -> new OwnSpread(points.get(0).measured().standardUncertainty(), 1, 0));
    }

    private static List<List<Measured>> repeats(List<Point> points) {
        Map<String, List<Measured>> setups = new LinkedHashMap<>();
        for (Point point : points) {
            if (!point.setup().isEmpty()) {
                setups.computeIfAbsent(point.setup(), s -> new ArrayList<>()).add(point.measured());
            }
        }
        return List.copyOf(setups.values());
    }

    /** From the first lesson to the last; empty with fewer than two. */
    public Optional<LessonChange> change() {
        return points.size() < 2
                ? Optional.empty()
                : Optional.of(LessonChange.between(
                        points.get(0).measured(), points.get(points.size() - 1).measured(), spread, family));
    }

    /** From one lesson to another; empty when either does not have this reading, or both are the same. */
    public Optional<LessonChange> change(int earlierLesson, int laterLesson) {
        Optional<Point> earlier = point(earlierLesson);
        Optional<Point> later = point(laterLesson);
        return earlier.isEmpty() || later.isEmpty() || earlierLesson == laterLesson
                ? Optional.empty()
                : Optional.of(LessonChange.between(
                        earlier.get().measured(), later.get().measured(), spread, family));
    }

    /** What a lesson said, if it has this reading. */
    public Optional<Point> point(int lessonId) {
        return points.stream().filter(p -> p.lessonId() == lessonId).findFirst();
    }

    /**
     * For each lesson, in their order, which no clock can disturb; empty with fewer than three setups. What was one setup is one
     * point, told no surer than one address of it: the camera stood where it stood, and erred the same each time.
     */
    public Optional<Trend> trend() {
        Map<String, List<Integer>> setups = new LinkedHashMap<>();
        for (int i = 0; i < points.size(); i++) {
            String setup = points.get(i).setup();
            setups.computeIfAbsent(setup.isEmpty() ? "#" + i : "=" + setup, s -> new ArrayList<>())
                    .add(i);
        }
        if (setups.size() < 3) {
            return Optional.empty();
        }
        return Trend.of(setups.values().stream().map(this::middle).toList(), spread, family);
    }

    private Trend.Point middle(List<Integer> places) {
        double x = 0;
        double value = 0;
        double variance = 0;
        for (int i : places) {
            Measured measured = points.get(i).measured();
            x += i;
            value += measured.value();
            variance += Math.pow(measured.standardUncertainty(), 2);
        }
        int n = places.size();
        return new Trend.Point(x / n, new Measured(value / n, Math.sqrt(variance / n)));
    }
}
