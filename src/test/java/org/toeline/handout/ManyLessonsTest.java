package org.toeline.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.toeline.advice.Finding;
import org.toeline.advice.Verdict;
import org.toeline.advice.page.PlayerWords;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;
import org.toeline.paint.BodyPoints;
import org.toeline.paint.Ghost;
import org.toeline.paint.OverlayShapes;
import org.toeline.paint.StillOverlay;
import org.toeline.reading.ReadingKind;

/** Property, over sixty lessons: nothing on a still lies over something else, and ten seconds are enough to read it. */
class ManyLessonsTest {

    /** Half the thickness of the thickest line: writing may touch a limb by no more. */
    private static final double HAIR = 1e-6;
    /** What the halo of a word and the rounded corner of a page take, in units of the still. */
    private static final double EDGE = 20;

    static List<Integer> lessons() {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < ManyLessons.COUNT; i++) {
            all.add(i);
        }
        return all;
    }

    /** Every box of writing and every gauge, in the drawing. */
    private static List<Rectangle2D> boxes(Still still) {
        List<Rectangle2D> boxes = new ArrayList<>();
        still.picture().ifPresent(p -> p.overlay().labels().forEach(l -> boxes.add(l.box())));
        still.gauge().ifPresent(boxes::add);
        boxes.addAll(still.rows());
        still.texts()
                .forEach(t -> boxes.add(new Rectangle2D.Double(
                        t.x(), t.top(), Still.WIDTH - 2 * t.x(), t.block().height())));
        return boxes;
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void nothingLiesOverSomethingElse(int i) {
        Handout handout = ManyLessons.lesson(i);
        Still still = handout.still();
        List<Rectangle2D> boxes = boxes(still);
        Rectangle2D whole = new Rectangle2D.Double(0, 0, still.width(), still.height());
        for (int a = 0; a < boxes.size(); a++) {
            assertThat(whole.contains(boxes.get(a)))
                    .as("%s is on the still", boxes.get(a))
                    .isTrue();
            for (int b = a + 1; b < boxes.size(); b++) {
                Rectangle2D both = boxes.get(a).createIntersection(boxes.get(b));
                assertThat(both.getWidth() > HAIR && both.getHeight() > HAIR)
                        .as("%s over %s", boxes.get(a), boxes.get(b))
                        .isFalse();
            }
        }
        still.picture().ifPresent(p -> picture(handout, p));
    }

    private static void picture(Handout handout, StillPicture picture) {
        Rectangle2D frame = picture.picture().frame();
        handout.lesson()
                .sheet()
                .view(picture.view())
                .ifPresent(marks -> BodyPoints.of(handout.assessment().posture(), marks)
                        .forEach(p -> {
                            assertThat(frame.contains(on(picture, p)))
                                    .as("the whole player is shown")
                                    .isTrue();
                        }));
        for (StillOverlay.Label label : picture.overlay().labels()) {
            assertThat(frame.contains(grown(label.box(), EDGE)))
                    .as("%s keeps clear of the edge", label)
                    .isTrue();
            picture.overlay()
                    .targetHead()
                    .ifPresent(head -> assertThat(head.intersects(label.box()))
                            .as("%s lies over the head of the arrow to the target", label)
                            .isFalse());
        }
        if (handout.assessment().posture().camera(picture.view()).isPresent()) {
            assertThat(picture.overlay().labels())
                    .as("the target is named")
                    .anyMatch(l -> l.text().equals(handout.words().text("handout.target")));
        }
    }

    private static Rectangle2D grown(Rectangle2D box, double by) {
        return new Rectangle2D.Double(
                box.getX() - by, box.getY() - by, box.getWidth() + 2 * by, box.getHeight() + 2 * by);
    }

    private static Point2D on(StillPicture picture, ImagePoint p) {
        return picture.picture().toDevice().transform(new Point2D.Double(p.xPx(), p.yPx()), null);
    }

    /** What, which way, how far, with which club: in the text, and the way in the drawn arrow too. */
    @ParameterizedTest
    @MethodSource("lessons")
    void tenSecondsAreEnough(int i) {
        Handout handout = ManyLessons.lesson(i);
        Still still = handout.still();
        String said =
                still.texts().stream().flatMap(t -> t.block().lines().stream()).collect(Collectors.joining(" "));
        assertThat(said)
                .as("the club")
                .containsIgnoringCase(
                        handout.words().name(handout.lesson().sheet().club()));
        Optional<Finding> first = handout.assessment().advice().first().map(f -> f.finding());
        if (first.isEmpty()) {
            return;
        }
        PlayerWords player = PlayerWords.of(handout.words(), handout.assessment());
        assertThat(said).contains(player.instruction(first.get())).contains(player.fault(first.get()));
        assertThat(still.gauge()).isPresent();
        StillPicture picture = still.picture().orElseThrow();
        assertThat(picture.overlay().arrows()).as("an arrow").isNotEmpty();
        way(handout, first.get(), picture.view(), picture.overlay().arrows().get(0));
    }

    /** A player reads of left and right, and of nothing that is counted in a picture's points; doubted marks are in some. */
    @ParameterizedTest
    @MethodSource("lessons")
    void thePageSpeaksAPlayersWords(int i) {
        Handout handout = ManyLessons.lesson(i);
        Page page = Page.of(handout.assessment(), handout.words(), "", "", "");
        assertThat(Stream.of(page.beside(), page.below()).flatMap(List::stream).flatMap(s -> s.paragraphs().stream()))
                .isNotEmpty()
                .doesNotHaveDuplicates()
                .allSatisfy(said -> assertThat(said).doesNotContainPattern("\\bpx\\b|\\b[Ll]ead\\b|\\b[Tt]rail\\b"));
    }

    /** The same for all that is out of range: each would have its arrow, and the right way, were it the first. */
    @ParameterizedTest
    @MethodSource("lessons")
    void everythingThatIsOutWouldHaveItsArrow(int i) {
        Handout handout = ManyLessons.lesson(i);
        for (Finding finding : handout.assessment().advice().findings()) {
            View view = OverlayShapes.bestView(finding.kind());
            if (finding.verdict().filter(Verdict::isOut).isPresent()
                    && handout.assessment().posture().camera(view).isPresent()) {
                Ghost.Move move = Ghost.of(handout.assessment().posture(), view, finding)
                        .orElseThrow(() -> new AssertionError(finding.kind() + " has no arrow"))
                        .moves()
                        .get(0);
                way(
                        handout,
                        finding,
                        view,
                        new Line2D.Double(
                                move.from().xPx(),
                                move.from().yPx(),
                                move.to().xPx(),
                                move.to().yPx()));
            }
        }
    }

    /** No lesson above has its tee judged first, so a filmed one is asked as if it had. */
    @Test
    void aBallTeedTooLowGoesUpInThePictureOfTheTee() throws Exception {
        var assessment = Samples.handout("before").assessment();
        Finding tee = assessment.advice().finding(ReadingKind.BALL_ABOVE_CROWN).orElseThrow();
        assertThat(tee.verdict()).contains(Verdict.OUT_LOW);
        assertThat(OverlayShapes.bestView(tee.kind())).isEqualTo(View.TEE);
        Ghost.Move move = Ghost.of(assessment.posture(), View.TEE, tee)
                .orElseThrow()
                .moves()
                .get(0);
        assertThat(move.to().yPx()).isLessThan(move.from().yPx() - 2);
    }

    private static void way(Handout handout, Finding finding, View view, Line2D arrow) {
        boolean low = finding.verdict().equals(Optional.of(Verdict.OUT_LOW));
        if (Set.of(ReadingKind.TEE_HEIGHT, ReadingKind.BALL_ABOVE_CROWN).contains(finding.kind())) {
            assertThat(arrow.getY2() < arrow.getY1())
                    .as(finding.kind() + " moves up")
                    .isEqualTo(low);
        } else if (view == View.DOWN_THE_LINE) {
            wayFromTheSide(handout, finding.kind(), low, arrow);
        } else {
            wayFromTheFront(handout, finding.kind(), low, arrow);
        }
    }

    /** Seen from behind, along the line to the target, the ball is right of a right-handed player, left of a left-handed one. */
    private static void wayFromTheSide(Handout handout, ReadingKind kind, boolean low, Line2D arrow) {
        double toBall = handout.lesson().sheet().handedness() == Handedness.RIGHT ? 1 : -1;
        double across = (arrow.getX2() - arrow.getX1()) * toBall;
        switch (kind) {
            case FORWARD_BEND, KNEE_FLEX, HANDS_TO_BODY ->
                assertThat(across > 0).as(kind + " moves towards the ball").isEqualTo(low);
            case BALL_DISTANCE, SHOULDERS_TO_TARGET, SHOULDERS_TO_FEET ->
                assertThat(across < 0).as(kind + " moves away from the ball").isEqualTo(low);
            case FEET_TO_TARGET ->
                assertThat(across < 0).as("a foot goes back, whichever").isTrue();
            case BALL_IN_STANCE, BALL_TO_LEAD_SHOULDER, BALL_TO_LEAD_HEEL, LEAD_FOOT_FLARE ->
                assertThat(arrow.getY2() < arrow.getY1())
                        .as(kind + " moves towards the target, farther up the picture")
                        .isEqualTo(low);
            case TRAIL_FOOT_FLARE ->
                assertThat(arrow.getY2() > arrow.getY1())
                        .as(kind + " moves away from the target, farther down the picture")
                        .isEqualTo(low);
            default -> throw new AssertionError(kind + " is not known from the side");
        }
    }

    /** Seen face-on, towards the target is right for a right-handed player, and left for a left-handed one. */
    private static void wayFromTheFront(Handout handout, ReadingKind kind, boolean low, Line2D arrow) {
        double toTarget = handout.lesson().sheet().handedness() == Handedness.RIGHT ? 1 : -1;
        double across = (arrow.getX2() - arrow.getX1()) * toTarget;
        switch (kind) {
            case BALL_TO_LEAD_SHOULDER,
                    BALL_IN_STANCE,
                    BALL_TO_LEAD_HEEL,
                    HEAD_TO_BALL,
                    SHAFT_LEAN,
                    LEAD_FOOT_OUTSIDE_SHOULDER,
                    LEAD_FOOT_FLARE,
                    STANCE_WIDTH,
                    STANCE_TO_SHOULDER_WIDTH ->
                assertThat(across > 0).as(kind + " moves towards the target").isEqualTo(low);
            case SIDE_BEND, TRAIL_FOOT_FLARE ->
                assertThat(across < 0).as(kind + " moves away from the target").isEqualTo(low);
            case SHOULDER_TILT, TRAIL_HAND_LOWER ->
                assertThat(arrow.getY2() > arrow.getY1())
                        .as(kind + " moves the trail side down")
                        .isEqualTo(low);
            default -> throw new AssertionError(kind + " is not known from the front");
        }
    }

    /** The world the arrows are held against: a metre towards the target falls where the player's hand says. */
    @ParameterizedTest
    @MethodSource("lessons")
    void theTargetLiesWhereTheHandSays(int i) {
        Handout handout = ManyLessons.lesson(i);
        var posture = handout.assessment().posture();
        if (posture.camera(View.FACE_ON).isEmpty()) {
            return;
        }
        double from =
                posture.seen(View.FACE_ON, WorldPoint.ORIGIN).orElseThrow().xPx();
        double to = posture.seen(View.FACE_ON, new WorldPoint(0.3, 0, 0))
                .orElseThrow()
                .xPx();
        assertThat(to > from).isEqualTo(handout.lesson().sheet().handedness() == Handedness.RIGHT);
    }
}
