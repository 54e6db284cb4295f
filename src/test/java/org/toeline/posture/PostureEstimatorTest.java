package org.toeline.posture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.BallMark;
import org.toeline.mark.Club;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.Mark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;
import org.toeline.reading.Readings;
import org.toeline.study.Scenes;

/** Properties of the estimator that hold for every sheet. */
class PostureEstimatorTest {

    private static Reading reading(MarkSheet sheet, ReadingKind kind) {
        return Readings.of(kind, PostureEstimator.estimate(sheet)).orElseThrow();
    }

    /** A left-handed player is the mirror image: the same readings to rounding. */
    @Test
    void leftHandedIsTheMirrorImage() {
        for (long seed = 0; seed < 10; seed++) {
            MarkSheet sheet = Scenes.bothViews(100 + seed);
            MarkSheet mirrored = mirrored(sheet);
            List<Reading> one = Readings.of(PostureEstimator.estimate(sheet));
            List<Reading> other = Readings.of(PostureEstimator.estimate(mirrored));
            for (int i = 0; i < one.size(); i++) {
                assertThat(other.get(i).value()).isCloseTo(one.get(i).value(), within(1e-9));
                assertThat(other.get(i).standardUncertainty())
                        .isCloseTo(one.get(i).standardUncertainty(), within(1e-9));
            }
        }
    }

    private static MarkSheet mirrored(MarkSheet sheet) {
        MarkSheet out =
                sheet.withHandedness(sheet.handedness() == Handedness.LEFT ? Handedness.RIGHT : Handedness.LEFT);
        for (ViewMarks v : sheet.views()) {
            ViewMarks m = ViewMarks.empty(v.view(), v.widthPx(), v.heightPx());
            for (Mark mark : v.marks()) {
                m = m.withMark(mark.movedTo(mark.at().mirrored(v.widthPx())));
            }
            for (var f : v.floorMarks()) {
                m = m.withFloorMark(f.movedTo(f.at().mirrored(v.widthPx())));
            }
            BallMark b = v.ball().orElseThrow();
            m = m.withBall(Optional.of(
                    new BallMark(b.centre().mirrored(v.widthPx()), b.diameterPx(), b.sigmaPx(), b.diameterSigmaPx())));
            m = m.withVerticals(v.verticals().stream()
                    .map(p ->
                            new VerticalMark(p.from().mirrored(v.widthPx()), p.to().mirrored(v.widthPx()), p.sigmaPx()))
                    .toList());
            out = out.withView(m);
        }
        return out;
    }

    /** The order in which views and marks were put on the sheet says nothing. */
    @Test
    void orderDoesNotMatter() {
        MarkSheet sheet = Scenes.bothViews(5);
        MarkSheet turned = new MarkSheet(
                sheet.handedness(),
                sheet.club(),
                sheet.takes(),
                sheet.floor(),
                List.of(sheet.views().get(1), sheet.views().get(0)),
                sheet.clickSigmaPx());
        for (ReadingKind kind : List.of(ReadingKind.SHOULDER_TILT, ReadingKind.BALL_TO_LEAD_SHOULDER)) {
            assertThat(reading(turned, kind).value())
                    .isCloseTo(reading(sheet, kind).value(), within(1e-6));
        }
    }

    /** Each view taken away, and the rods, makes the interval wider: nothing else changes. */
    @Test
    void lessIsWider() {
        MarkSheet all = Scenes.bothViews(7);
        MarkSheet faceOn = all.withoutView(View.DOWN_THE_LINE);
        for (ReadingKind kind : List.of(
                ReadingKind.SHOULDERS_TO_FEET,
                ReadingKind.SHOULDER_TILT,
                ReadingKind.BALL_TO_LEAD_SHOULDER,
                ReadingKind.STANCE_WIDTH)) {
            assertThat(reading(faceOn, kind).standardUncertainty())
                    .isGreaterThan(reading(all, kind).standardUncertainty());
        }
        assertThat(reading(faceOn, ReadingKind.SHOULDERS_TO_FEET).standardUncertainty())
                .as("one face-on view cannot tell the shoulders' alignment")
                .isGreaterThan(Math.toRadians(5));
    }

    /** Two clicks and nothing else still give honest, wide readings. */
    @Test
    void twoClicksAreEnoughToSayLittle() {
        ViewMarks view = ViewMarks.empty(View.FACE_ON, 1280, 720)
                .withMark(Mark.placed(Landmark.LEAD_SHOULDER, new ImagePoint(700, 250), 2))
                .withMark(Mark.placed(Landmark.TRAIL_SHOULDER, new ImagePoint(600, 265), 2));
        MarkSheet sheet = MarkSheet.empty(Handedness.RIGHT, Club.DRIVER).withView(view);
        Reading tilt = reading(sheet, ReadingKind.SHOULDER_TILT);
        assertThat(tilt.value()).isBetween(Math.toRadians(3), Math.toRadians(14));
        assertThat(tilt.standardUncertainty()).isGreaterThan(Math.toRadians(1.5));
        Posture posture = PostureEstimator.estimate(sheet);
        assertThat(posture.hasBall()).isFalse();
        assertThat(Readings.of(ReadingKind.BALL_TO_LEAD_SHOULDER, posture)).isEmpty();
    }

    @Test
    void anEmptySheetHasNoReadings() {
        MarkSheet sheet =
                MarkSheet.empty(Handedness.LEFT, Club.WEDGE).withView(ViewMarks.empty(View.DOWN_THE_LINE, 1280, 720));
        assertThat(Readings.of(PostureEstimator.estimate(sheet))).isEmpty();
    }

    /** Marks of pure nonsense give finite numbers or none, never an exception. */
    @Test
    void nonsenseIsSurvived() {
        ViewMarks view = ViewMarks.empty(View.FACE_ON, 1920, 1080)
                .withBall(Optional.of(new BallMark(new ImagePoint(10, 10), OptionalDouble.of(600), 1, 1)));
        int at = 0;
        for (Landmark landmark : Landmark.values()) {
            at += 1;
            view = view.withMark(Mark.placed(landmark, new ImagePoint(1920 - 80.0 * at, (at * 379) % 1080), 2));
        }
        MarkSheet sheet = MarkSheet.empty(Handedness.RIGHT, Club.DRIVER).withView(view);
        assertThat(Readings.of(PostureEstimator.estimate(sheet)))
                .as("readings that are said at all")
                .isNotEmpty()
                .allSatisfy(r -> assertThat(Double.isFinite(r.low()) && Double.isFinite(r.high()))
                        .isTrue());
    }

    /** A heel dragged 60 px away is named, with about how far off it is, and the other readings stay. */
    @Test
    void aWrongMarkIsNamed() {
        MarkSheet sheet = Scenes.bothViews(21);
        ViewMarks faceOn = sheet.view(View.FACE_ON).orElseThrow();
        Mark heel = faceOn.mark(Landmark.TRAIL_HEEL).orElseThrow();
        MarkSheet spoilt = sheet.withView(faceOn.withMark(heel.movedTo(heel.at().plus(36, -48))));
        Posture posture = PostureEstimator.estimate(spoilt);
        assertThat(posture.doubts().get(0).odds()).isBetween(0.99, 1.0);
        assertThat(posture.doubts().get(0).moves()).isTrue();
        assertThat(posture.doubts()).hasSize(1);
        Doubt doubt = posture.doubts().get(0);
        assertThat(doubt.view()).isEqualTo(View.FACE_ON);
        assertThat(doubt.mark()).isEqualTo("trail-heel");
        assertThat(doubt.offPx()).isBetween(40.0, 80.0);
        Reading before = reading(sheet, ReadingKind.SHOULDER_TILT);
        Reading after = Readings.of(ReadingKind.SHOULDER_TILT, posture).orElseThrow();
        assertThat(Math.abs(after.value() - before.value())).isLessThan(before.standardUncertainty());
    }

    /** Hypotheses are a distribution, and where they differ the reading's interval holds what each says. */
    @Test
    void aMarkInDoubtStaysInTheReckoning() {
        MarkSheet sheet = Scenes.bothViews(21);
        ViewMarks faceOn = sheet.view(View.FACE_ON).orElseThrow();
        Mark heel = faceOn.mark(Landmark.TRAIL_HEEL).orElseThrow();
        boolean undecided = false;
        for (int off = 10; off < 40; off++) {
            MarkSheet spoilt =
                    sheet.withView(faceOn.withMark(heel.movedTo(heel.at().plus(0.6 * off, -0.8 * off))));
            Posture posture = PostureEstimator.estimate(spoilt);
            assertThat(posture.hypotheses().stream()
                            .mapToDouble(Hypothesis::probability)
                            .sum())
                    .isCloseTo(1, within(1e-9));
            Hypothesis likeliest = posture.hypotheses().get(0);
            if (likeliest.probability() < 0.9) {
                undecided = true;
                Reading mixed = Readings.of(ReadingKind.STANCE_WIDTH, posture).orElseThrow();
                for (Hypothesis h : posture.hypotheses()) {
                    if (h.probability() > 0.1) {
                        assertThat(Readings.value(ReadingKind.STANCE_WIDTH, h.coordinates()))
                                .isBetween(mixed.low(), mixed.high());
                    }
                }
            }
        }
        assertThat(undecided).as("somewhere between right and wrong it is open").isTrue();
    }

    /** With one view, what speaks against a shoulder is the habits of people alone: it may be mentioned, and moves nothing. */
    @Test
    void habitsAloneMoveNothing() {
        MarkSheet sheet = Scenes.bothViews(21);
        ViewMarks faceOn = sheet.view(View.FACE_ON).orElseThrow();
        Mark elbow = faceOn.mark(Landmark.TRAIL_ELBOW).orElseThrow();
        MarkSheet one = MarkSheet.empty(sheet.handedness(), sheet.club())
                .withView(ViewMarks.empty(View.FACE_ON, 1920, 1080)
                        .withMark(elbow)
                        .withMark(faceOn.mark(Landmark.LEAD_SHOULDER).orElseThrow())
                        .withMark(faceOn.mark(Landmark.TRAIL_SHOULDER).orElseThrow())
                        .withMark(faceOn.mark(Landmark.LEAD_HEEL).orElseThrow())
                        .withMark(faceOn.mark(Landmark.TRAIL_HEEL).orElseThrow()));
        boolean mentioned = false;
        for (int off = 0; off <= 200; off += 20) {
            MarkSheet odd = one.withView(one.view(View.FACE_ON)
                    .orElseThrow()
                    .withMark(elbow.movedTo(elbow.at().plus(0, -off))));
            Posture posture = PostureEstimator.estimate(odd);
            for (Doubt doubt : posture.doubts()) {
                mentioned |= !doubt.moves();
                if (!doubt.moves() && posture.doubts().size() == 1) {
                    assertThat(posture.hypotheses()).hasSize(1);
                }
            }
        }
        assertThat(mentioned).isTrue();
    }

    @Test
    void sharesAddUpToTheVariance() {
        Posture posture = PostureEstimator.estimate(Scenes.separateTakesWithBentLens(3));
        double[] gradient = new double[posture.coordinates().size()];
        gradient[posture.coordinates().indexOf(Landmark.LEAD_SHOULDER)] = 1;
        gradient[posture.coordinates().indexOfBall() + 2] = -0.3;
        double sum = posture.uncertainty().shares(gradient).values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        double variance = posture.uncertainty().variance(gradient);
        assertThat(sum).isCloseTo(variance, within(1e-9 * variance + 1e-15));
    }
}
