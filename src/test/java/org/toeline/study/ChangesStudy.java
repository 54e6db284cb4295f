package org.toeline.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.toeline.across.AcrossLessons;
import org.toeline.across.ChangeCall;
import org.toeline.across.Family;
import org.toeline.across.LessonChange;
import org.toeline.across.OwnSpread;
import org.toeline.across.Trend;
import org.toeline.ledger.store.rows.LessonFindings;
import org.toeline.ledger.store.rows.StatedFinding;
import org.toeline.posture.PostureEstimator;
import org.toeline.reading.Measured;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;
import org.toeline.reading.Readings;

/**
 * How often a change or a trend is said where there is none, and how often one is found that there is. What lessons err by is what the
 * estimator errs by in simulated scenes, all readings of a scene together; two lessons of a player are two scenes with the truth
 * taken off, so that nothing a player's body has to do with it cancels out. On top of it players vary from address to address:
 * each reading by the usual spread, times a steadiness of the player's own that is a third larger or smaller (log-normal).
 * Repeats and lessons are drawn from the same pool: repeats each anew, as if everything were set up again between them, and once
 * more all with one and the same error, as if nothing of it differed while the camera stayed where it was; what is true lies
 * between the two. Arguments: scenes, comparisons.
 */
public final class ChangesStudy {

    private static final double STEADINESS = 1.0 / 3;
    private static final int[] LESSONS = {3, 4, 5, 7, 10};
    private static final int[] REPEATS = {0, 3, 6, 12};

    /** Between repeats of one setup. */
    private enum Camera {
        MOVED,
        STAYED
    }

    /** What one scene erred by, and what it said it might. */
    private record Erred(Map<ReadingKind, Measured> by) {}

    private final List<Erred> pool = new ArrayList<>();
    private final int comparisons;
    private final Random random = new Random(5);

    private ChangesStudy(int scenes, int comparisons) {
        this.comparisons = comparisons;
        for (int seed = 1; seed <= scenes; seed++) {
            pool.add(erred(new RandomScene(seed, SceneKind.BOTH_AND_RODS)));
        }
    }

    public static void main(String[] args) {
        ChangesStudy study = new ChangesStudy(Integer.parseInt(args[0]), Integer.parseInt(args[1]));
        System.out.printf("%d scenes, %d comparisons of each kind%n", study.pool.size(), study.comparisons);
        study.changes(Camera.MOVED);
        study.changes(Camera.STAYED);
        study.trends();
        study.trendsOfRepeats();
        study.power(ReadingKind.SHOULDERS_TO_FEET, 5);
        study.power(ReadingKind.SHOULDERS_TO_FEET, 10);
        study.power(ReadingKind.SHOULDER_TILT, 5);
        study.power(ReadingKind.BALL_TO_LEAD_SHOULDER, 5);
    }

    private static Erred erred(RandomScene scene) {
        Map<ReadingKind, Double> truths = new EnumMap<>(ReadingKind.class);
        Readings.of(scene.truth()).forEach(r -> truths.put(r.kind(), r.shownValue()));
        Map<ReadingKind, Measured> by = new EnumMap<>(ReadingKind.class);
        for (Reading r : Readings.of(PostureEstimator.estimate(scene.sheet))) {
            Double truth = truths.get(r.kind());
            if (truth != null) {
                Measured shown = Measured.shown(r);
                by.put(r.kind(), new Measured(shown.value() - truth, shown.standardUncertainty()));
            }
        }
        return new Erred(by);
    }

    /** One address of a player of that steadiness, true value nought. */
    private Map<ReadingKind, Measured> lesson(double steadiness) {
        return lesson(steadiness, drawn());
    }

    private Erred drawn() {
        return pool.get(random.nextInt(pool.size()));
    }

    private Map<ReadingKind, Measured> lesson(double steadiness, Erred of) {
        Map<ReadingKind, Measured> lesson = new EnumMap<>(ReadingKind.class);
        of.by.forEach((kind, erred) -> {
            double own = steadiness * OwnSpread.usual(kind).standardDeviation() * random.nextGaussian();
            lesson.put(kind, new Measured(erred.value() + own, erred.standardUncertainty()));
        });
        return lesson;
    }

    private double steadiness(boolean varies) {
        return varies ? Math.exp(STEADINESS * random.nextGaussian()) : 0;
    }

    private Map<ReadingKind, OwnSpread> spreads(double steadiness, int repeats, Camera camera) {
        List<Map<ReadingKind, Measured>> again = new ArrayList<>();
        Erred first = drawn();
        for (int i = 0; i < repeats; i++) {
            again.add(lesson(steadiness, camera == Camera.STAYED ? first : drawn()));
        }
        Map<ReadingKind, OwnSpread> spreads = new EnumMap<>(ReadingKind.class);
        for (ReadingKind kind : ReadingKind.values()) {
            List<Measured> of = again.stream()
                    .filter(l -> l.containsKey(kind))
                    .map(l -> l.get(kind))
                    .toList();
            spreads.put(kind, OwnSpread.ofRepeats(List.of(of), OwnSpread.usual(kind)));
        }
        return spreads;
    }

    private void changes(Camera camera) {
        for (boolean varies : new boolean[] {false, true}) {
            for (int repeats : REPEATS) {
                int any = 0;
                int each = 0;
                int readings = 0;
                for (int i = 0; i < comparisons; i++) {
                    double steadiness = steadiness(varies);
                    Map<ReadingKind, OwnSpread> spreads = spreads(steadiness, repeats, camera);
                    Map<ReadingKind, Measured> a = lesson(steadiness);
                    Map<ReadingKind, Measured> b = lesson(steadiness);
                    a.keySet().retainAll(b.keySet());
                    Family family = new Family(a.size());
                    int real = 0;
                    for (ReadingKind kind : a.keySet()) {
                        real += LessonChange.between(a.get(kind), b.get(kind), spreads.get(kind), family)
                                                .call()
                                        == ChangeCall.REAL
                                ? 1
                                : 0;
                    }
                    any += real > 0 ? 1 : 0;
                    each += real;
                    readings += a.size();
                }
                say(
                        "any false “changed” in a comparison, players " + (varies ? "vary" : "do not vary")
                                + ", repeats " + repeats + ", camera " + camera,
                        any,
                        comparisons);
                say("  of each reading", each, readings);
            }
        }
    }

    private void trends() {
        for (int lessons : LESSONS) {
            int any = 0;
            int each = 0;
            int readings = 0;
            for (int i = 0; i < comparisons; i++) {
                double steadiness = steadiness(true);
                List<Map<ReadingKind, Measured>> line = new ArrayList<>();
                for (int k = 0; k < lessons; k++) {
                    line.add(lesson(steadiness));
                }
                int real = 0;
                Map<ReadingKind, Measured> first = line.get(0);
                for (ReadingKind kind : first.keySet()) {
                    List<Trend.Point> points = new ArrayList<>();
                    for (int k = 0; k < lessons; k++) {
                        Measured m = line.get(k).get(kind);
                        if (m != null) {
                            points.add(new Trend.Point(k, m));
                        }
                    }
                    if (points.size() >= 3
                            && Trend.of(points, OwnSpread.usual(kind), new Family(first.size()))
                                            .orElseThrow()
                                            .call()
                                    == ChangeCall.REAL) {
                        real++;
                    }
                }
                any += real > 0 ? 1 : 0;
                each += real;
                readings += first.size();
            }
            say("any false trend over " + lessons + " lessons", any, comparisons);
            say("  of each reading", each, readings);
        }
    }

    /** Three lessons, in each of which one setup was addressed several times while the camera stayed where it was. */
    private void trendsOfRepeats() {
        for (int repeats : new int[] {2, 4}) {
            int any = 0;
            for (int i = 0; i < comparisons; i++) {
                double steadiness = steadiness(true);
                List<LessonFindings> line = new ArrayList<>();
                for (int lesson = 0; lesson < 3; lesson++) {
                    Erred erred = drawn();
                    for (int k = 0; k < repeats; k++) {
                        line.add(new LessonFindings(
                                line.size() + 1, Optional.empty(), "s" + lesson, findings(lesson(steadiness, erred))));
                    }
                }
                any += AcrossLessons.of(line).stream()
                                .anyMatch(a -> a.trend()
                                        .filter(t -> t.call() == ChangeCall.REAL)
                                        .isPresent())
                        ? 1
                        : 0;
            }
            say("any false trend over 3 setups of " + repeats + " addresses, camera STAYED", any, comparisons);
        }
    }

    private static List<StatedFinding> findings(Map<ReadingKind, Measured> lesson) {
        List<StatedFinding> findings = new ArrayList<>();
        lesson.forEach((kind, m) -> findings.add(new StatedFinding(
                kind.id(),
                m.value(),
                m.standardUncertainty(),
                m.value() - 1.96 * m.standardUncertainty(),
                m.value() + 1.96 * m.standardUncertainty(),
                kind.unit().id(),
                Optional.empty(),
                Optional.empty(),
                StatedFinding.Place.ONE_OF_MANY)));
        return findings;
    }

    private void power(ReadingKind kind, double change) {
        for (int repeats : REPEATS) {
            int found = 0;
            int alone = 0;
            int of = 0;
            for (int i = 0; i < comparisons; i++) {
                double steadiness = steadiness(true);
                OwnSpread spread = spreads(steadiness, repeats, Camera.MOVED).get(kind);
                Map<ReadingKind, Measured> a = lesson(steadiness);
                Map<ReadingKind, Measured> b = lesson(steadiness);
                a.keySet().retainAll(b.keySet());
                Measured from = a.get(kind);
                Measured to = b.get(kind);
                if (from == null || to == null) {
                    continue;
                }
                Measured moved = new Measured(to.value() + change, to.standardUncertainty());
                of++;
                ToDoubleFunction<Family> real =
                        f -> LessonChange.between(from, moved, spread, f).call() == ChangeCall.REAL ? 1 : 0;
                found += (int) real.applyAsDouble(new Family(a.size()));
                alone += (int) real.applyAsDouble(Family.ALONE);
            }
            String what = kind.id() + " changed by " + change + ", repeats " + repeats + ": ";
            say(what + "found", found, of);
            say(what + "would be, were it looked at alone", alone, of);
        }
    }

    private static void say(String what, int count, int of) {
        System.out.printf(Locale.ROOT, "%-90s %6.2f %%%n", what, 100.0 * count / of);
    }
}
