package org.toeline.study;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.toeline.advice.Assessment;
import org.toeline.advice.Finding;
import org.toeline.advice.Judge;
import org.toeline.advice.RangeBook;
import org.toeline.advice.Verdict;
import org.toeline.mark.Club;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.posture.Doubt;
import org.toeline.posture.Posture;
import org.toeline.posture.PostureEstimator;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;
import org.toeline.reading.Readings;

/**
 * What earlier versions said without having earned it, asked again, for the table in {@code docs/accuracy.md}. Argument: the
 * number of scenes for each question (default 200).
 */
public final class EarlierFaultsStudy {

    private static final double OPEN_RAD = Math.toRadians(20);

    private EarlierFaultsStudy() {}

    public static void main(String[] args) {
        int scenes = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        doubted(SceneKind.BOTH_AND_RODS, View.DOWN_THE_LINE, Landmark.LEAD_SHOULDER, scenes);
        doubted(SceneKind.FACE_ON, View.FACE_ON, Landmark.TRAIL_SHOULDER, scenes);
        open(scenes);
        lowBends(scenes);
        nonsense(Math.max(1, scenes / 20));
        suggested(scenes / 4);
        child(scenes / 4);
    }

    /** A right mark that is doubted, and whether the readings it decides hold the truth then. */
    private static void doubted(SceneKind kind, View view, Landmark landmark, int scenes) {
        int doubts = 0;
        Tally tilt = new Tally();
        Tally turn = new Tally();
        for (int i = 0; i < scenes; i++) {
            RandomScene scene = new RandomScene(610_000 + i, kind);
            Posture posture = PostureEstimator.estimate(scene.sheet);
            for (Doubt doubt : posture.doubts()) {
                doubts += doubt.moves() && doubt.view() == view && doubt.mark().equals(landmark.id()) ? 1 : 0;
            }
            add(tilt, ReadingKind.SHOULDER_TILT, posture, scene);
            add(turn, ReadingKind.SHOULDERS_TO_FEET, posture, scene);
        }
        say(
                "%s: %s, %s, right and doubted in %d of %d; tilt %.1f° rms, %.1f %% covered; shoulders to feet %.1f° rms,"
                        + " %.1f %% covered",
                kind.words,
                landmark.id(),
                view.id(),
                doubts,
                scenes,
                Math.toDegrees(tilt.rms()),
                100 * tilt.coverage(),
                Math.toDegrees(turn.rms()),
                100 * turn.coverage());
    }

    private static void add(Tally tally, ReadingKind kind, Posture posture, RandomScene scene) {
        Reading truth = Readings.of(kind, scene.truth()).orElseThrow();
        Readings.of(kind, posture)
                .ifPresent(r -> tally.add(
                        r.value(),
                        r.low(),
                        r.high(),
                        truth.value(),
                        truth.spread().standardUncertainty()));
    }

    private static void open(int scenes) {
        ReadingKind kind = ReadingKind.SHOULDERS_TO_FEET;
        Tally tally = new Tally();
        for (int i = 0; tally.count() < scenes; i++) {
            RandomScene scene = new RandomScene(640_000 + i, SceneKind.BOTH_AND_RODS);
            double truth = Readings.of(kind, scene.truth()).orElseThrow().value();
            if (Math.abs(truth) >= OPEN_RAD) {
                add(tally, kind, PostureEstimator.estimate(scene.sheet), scene);
            }
        }
        say(
                "players 20° open or more: shoulders to feet %.1f° rms, %.1f %% covered",
                Math.toDegrees(tally.rms()), 100 * tally.coverage());
    }

    /** Drivers bent by 9 to 20°, seen from the front alone. */
    private static void lowBends(int scenes) {
        Tally tally = new Tally();
        int[] called = new int[Verdict.values().length];
        var range =
                RangeBook.shipped().range(ReadingKind.FORWARD_BEND, Club.DRIVER).orElseThrow();
        for (int i = 0; i < scenes; i++) {
            RandomScene scene = new RandomScene(
                    670_000 + i,
                    SceneKind.FACE_ON,
                    List.of(Club.DRIVER),
                    (club, random) -> new RandomPlayer(
                                    random,
                                    club,
                                    new RandomPlayer.Build(
                                            OptionalDouble.of(random.nextDouble(9, 20)),
                                            OptionalDouble.empty(),
                                            OptionalDouble.empty()))
                            .player());
            Posture posture = PostureEstimator.estimate(scene.sheet);
            add(tally, ReadingKind.FORWARD_BEND, posture, scene);
            called[
                    Judge.verdict(Readings.of(ReadingKind.FORWARD_BEND, posture).orElseThrow(), range)
                            .ordinal()]++;
        }
        say(
                "drivers bent by 9 to 20°, face-on alone: bend %.1f %% covered, ± %.1f°; called in range %d, out %d of %d",
                100 * tally.coverage(),
                Math.toDegrees(tally.meanWidth() / 2),
                called[Verdict.IN_RANGE.ordinal()],
                called[Verdict.OUT_LOW.ordinal()] + called[Verdict.OUT_HIGH.ordinal()],
                scenes);
    }

    private static void nonsense(int each) {
        int lessons = 0;
        int firsts = 0;
        for (Nonsense nonsense : Nonsense.values()) {
            ContradictionStudy.Count count =
                    ContradictionStudy.spoilt(nonsense, SceneKind.BOTH_AND_RODS, 690_000, each);
            lessons += count.lessons;
            firsts += count.firsts;
        }
        say("nonsense: %d lessons, a first thing named in %d", lessons, firsts);
    }

    /** Every landmark suggested and none accepted. */
    private static void suggested(int scenes) {
        int judged = 0;
        for (int i = 0; i < scenes; i++) {
            MarkSheet sheet = new RandomScene(720_000 + i, SceneKind.BOTH_AND_RODS).sheet;
            for (ViewMarks v : sheet.views()) {
                for (Mark m : v.marks()) {
                    sheet = sheet.withView(sheet.view(v.view())
                            .orElseThrow()
                            .withMark(new Mark(m.landmark(), m.at(), m.sigmaPx(), Mark.Origin.SUGGESTED)));
                }
            }
            Assessment assessment = Assessment.of(sheet);
            judged += (int) assessment.advice().findings().stream()
                    .filter(f -> f.verdict().filter(Verdict::isOut).isPresent())
                    .filter(f -> !f.kind().landmarks().isEmpty())
                    .count();
        }
        say("landmarks suggested, none accepted: %d lessons, %d verdicts of “out” that rest on them", scenes, judged);
    }

    private static void child(int scenes) {
        int told = 0;
        for (int i = 0; i < scenes; i++) {
            Assessment lesson = SameProportionsTest.lesson(750_000 + i, Club.DRIVER, 1.20);
            told += (int) lesson.advice().findings().stream()
                    .filter(f -> f.kind() == ReadingKind.STANCE_WIDTH)
                    .filter(Finding::isJudged)
                    .count();
        }
        say("children of 1.20 m: %d lessons, told of centimetres of stance in %d", scenes, told);
    }

    private static void say(String format, Object... values) {
        System.out.printf(Locale.ROOT, "* " + format + "%n", values);
    }
}
