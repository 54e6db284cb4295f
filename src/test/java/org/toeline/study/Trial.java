package org.toeline.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.toeline.posture.Doubt;
import org.toeline.posture.Posture;
import org.toeline.posture.PostureEstimator;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;
import org.toeline.reading.Readings;

/** Many scenes of one kind, estimated and compared with their truth. */
final class Trial {

    final SceneKind kind;
    final Map<ReadingKind, Tally> tallies = new EnumMap<>(ReadingKind.class);
    final Map<ReadingKind, Tally> pictures = new EnumMap<>(ReadingKind.class);
    int scenes;
    int falseDoubts;
    int falseDoubtsThatMove;
    int named;
    final Tally pooled = new Tally();
    /** The readings that the wrong mark's landmark goes into. */
    final Tally ofTheWrong = new Tally();
    /** Of players whose shoulders are turned by more than {@link #TURNED_RAD} from the feet, and of the rest. */
    final Map<ReadingKind, Tally> turned = new EnumMap<>(ReadingKind.class);

    final Map<ReadingKind, Tally> square = new EnumMap<>(ReadingKind.class);
    /** Misfits per degree of freedom. */
    final List<Double> fits = new ArrayList<>();

    double millis;

    private static final double TURNED_RAD = Math.toRadians(12);

    Trial(SceneKind kind) {
        this.kind = kind;
    }

    /** The misfit per degree of freedom that so large a share of the scenes stays below. */
    double fitQuantile(double share) {
        List<Double> sorted = fits.stream().sorted().toList();
        return sorted.get((int) Math.min(sorted.size() - 1, share * sorted.size()));
    }

    void run(long firstSeed, int count) {
        for (int i = 0; i < count; i++) {
            run(new RandomScene(firstSeed + i, kind));
        }
    }

    void run(RandomScene scene) {
        long begun = System.nanoTime();
        Posture posture = PostureEstimator.estimate(scene.sheet);
        List<Reading> readings = Readings.of(posture);
        millis += (System.nanoTime() - begun) / 1e6;
        add(scene, posture, readings);
    }

    private void add(RandomScene scene, Posture posture, List<Reading> readings) {
        scenes++;
        fits.add(posture.fit().perDegreeOfFreedom());
        Posture truth = scene.truth();
        Map<ReadingKind, Reading> truths = new HashMap<>();
        Readings.of(truth).forEach(r -> truths.put(r.kind(), r));
        boolean turns = Math.abs(truths.get(ReadingKind.SHOULDERS_TO_FEET).value()) > TURNED_RAD;
        for (Reading r : readings) {
            Reading t = truths.get(r.kind());
            List<Tally> into = new ArrayList<>(List.of(
                    pooled,
                    tallies.computeIfAbsent(r.kind(), k -> new Tally()),
                    (turns ? turned : square).computeIfAbsent(r.kind(), k -> new Tally())));
            if (scene.wrongLandmark.filter(r.kind().landmarks()::contains).isPresent()) {
                into.add(ofTheWrong);
            }
            into.forEach(tally -> tally.add(
                    r.value(), r.low(), r.high(), t.value(), t.spread().standardUncertainty()));
        }
        if (kind == SceneKind.BOTH_AND_RODS) {
            new PictureReadings(scene.sheet)
                    .all()
                    .forEach((reading, value) -> pictures.computeIfAbsent(reading, k -> new Tally())
                            .add(value, value, value, truths.get(reading).value(), 1));
        }
        boolean wrongNamed = posture.doubts().stream()
                .anyMatch(d -> scene.wrong.equals(java.util.Optional.of(d.view().id() + " " + d.mark())));
        List<Doubt> others = posture.doubts().stream()
                .filter(d -> !scene.wrong.equals(java.util.Optional.of(d.view().id() + " " + d.mark())))
                .toList();
        if (wrongNamed) {
            named++;
        }
        if (!others.isEmpty()) {
            falseDoubts++;
        }
        if (others.stream().anyMatch(Doubt::moves)) {
            falseDoubtsThatMove++;
        }
    }
}
