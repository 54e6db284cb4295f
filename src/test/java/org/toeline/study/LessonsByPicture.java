package org.toeline.study;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.toeline.across.Family;
import org.toeline.across.LessonChange;
import org.toeline.across.OwnSpread;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.DocumentException;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.BallMark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.ViewMarks;
import org.toeline.posture.Posture;
import org.toeline.posture.PostureEstimator;
import org.toeline.reading.Measured;
import org.toeline.reading.ReadingKind;
import org.toeline.reading.Readings;

/**
 * Two sample lessons of one player compared twice: by the tool, and by a protractor and a ruler on the pictures, beside the
 * truth of both. A picture's change is known to what its clicks allow, and to its user nothing else speaks against it.
 */
final class LessonsByPicture {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int CLICKINGS = 500;
    private static final long SEED = 14;
    /** Two-sided 95 % of the normal distribution. */
    private static final double SURE = 1.96;

    private LessonsByPicture() {}

    /** A change from one lesson to the other, in the reading's unit as shown; {@code by} is half of its 95 % interval. */
    record Change(double before, double after, double by) {

        double difference() {
            return after - before;
        }

        /** Whether it says that something changed. */
        boolean says() {
            return Math.abs(difference()) > by;
        }

        /** Whether its 95 % interval lies wholly aside of the true change. */
        boolean isFalse(Change truth) {
            return Math.abs(difference() - truth.difference()) > by;
        }
    }

    /** As many readings as a whole comparison of two lessons has. */
    private static final int TOGETHER = 20;

    /** One reading; the truth's {@code by} is nought. */
    record Row(ReadingKind kind, Change truth, Change tool, LessonChange called, Change picture) {}

    /** Every reading that can be taken off the pictures, of two lessons in {@code sample-media}. */
    static List<Row> rows(String before, String after) throws DocumentException, IOException {
        MarkSheet first = sheet(before);
        MarkSheet second = sheet(after);
        Posture earlier = PostureEstimator.estimate(first);
        Posture later = PostureEstimator.estimate(second);
        Map<ReadingKind, Double> drawnFirst = new PictureReadings(first).all();
        Map<ReadingKind, Double> drawnSecond = new PictureReadings(second).all();
        Map<ReadingKind, Double> spread = changeSpread(first, second);
        List<Row> rows = new ArrayList<>();
        for (ReadingKind kind : drawnFirst.keySet()) {
            Measured was = Measured.shown(Readings.of(kind, earlier).orElseThrow());
            Measured is = Measured.shown(Readings.of(kind, later).orElseThrow());
            LessonChange called = LessonChange.between(was, is, OwnSpread.usual(kind), new Family(TOGETHER));
            double unit = kind.unit().fromInside(1);
            rows.add(new Row(
                    kind,
                    new Change(truth(before, kind), truth(after, kind), 0),
                    new Change(was.value(), is.value(), called.smallestDetectable()),
                    called,
                    new Change(
                            drawnFirst.get(kind) * unit,
                            drawnSecond.get(kind) * unit,
                            SURE * spread.get(kind) * unit)));
        }
        return rows;
    }

    private static MarkSheet sheet(String lesson) throws DocumentException {
        return LessonDocument.read(Path.of("sample-media", lesson, lesson + ".lesson.json"))
                .sheet();
    }

    private static double truth(String lesson, ReadingKind kind) throws IOException {
        return JSON.readTree(
                        Path.of("sample-media", lesson, "face-on.truth.json").toFile())
                .path("readings")
                .path(kind.id())
                .path("value")
                .asDouble();
    }

    /** Standard deviation of each picture's change when both lessons are marked again and again. */
    private static Map<ReadingKind, Double> changeSpread(MarkSheet first, MarkSheet second) {
        SplittableRandom random = new SplittableRandom(SEED);
        Map<ReadingKind, double[]> sums = new EnumMap<>(ReadingKind.class);
        for (int i = 0; i < CLICKINGS; i++) {
            Map<ReadingKind, Double> a = new PictureReadings(clickedAgain(first, random)).all();
            new PictureReadings(clickedAgain(second, random)).all().forEach((kind, b) -> {
                double change = b - a.get(kind);
                double[] sum = sums.computeIfAbsent(kind, k -> new double[2]);
                sum[0] += change;
                sum[1] += change * change;
            });
        }
        Map<ReadingKind, Double> spread = new EnumMap<>(ReadingKind.class);
        sums.forEach((kind, sum) -> spread.put(kind, Math.sqrt(sum[1] / CLICKINGS - Math.pow(sum[0] / CLICKINGS, 2))));
        return spread;
    }

    private static MarkSheet clickedAgain(MarkSheet sheet, SplittableRandom random) {
        MarkSheet again = sheet;
        for (ViewMarks v : sheet.views()) {
            ViewMarks moved = v.withBall(v.ball()
                    .map(b -> new BallMark(
                            off(b.centre(), b.sigmaPx(), random),
                            b.diameterPx().isPresent()
                                    ? OptionalDouble.of(
                                            b.diameterPx().getAsDouble() + b.diameterSigmaPx() * random.nextGaussian())
                                    : OptionalDouble.empty(),
                            b.sigmaPx(),
                            b.diameterSigmaPx())));
            for (var mark : v.marks()) {
                moved = moved.withMark(mark.movedTo(off(mark.at(), mark.sigmaPx(), random)));
            }
            for (var mark : v.floorMarks()) {
                moved = moved.withFloorMark(mark.movedTo(off(mark.at(), mark.sigmaPx(), random)));
            }
            again = again.withView(moved);
        }
        return again;
    }

    private static ImagePoint off(ImagePoint at, double sigmaPx, SplittableRandom random) {
        return at.plus(sigmaPx * random.nextGaussian(), sigmaPx * random.nextGaussian());
    }
}
