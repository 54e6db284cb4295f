package org.toeline.handout;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.geom.Point2D;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.toeline.advice.Assessment;
import org.toeline.advice.FindingWords;
import org.toeline.advice.FirstThing;
import org.toeline.advice.page.PlayerWords;
import org.toeline.geometry.ImagePoint;
import org.toeline.mark.Landmark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.paint.BodyPoints;
import org.toeline.paint.OverlayShapes;
import org.toeline.paint.OverlayShapes.Kind;
import org.toeline.paint.OverlayShapes.Line;
import org.toeline.reading.ReadingKind;
import org.toeline.study.KneeMarked;

/**
 * From the still alone one can say what to change: the sentence, the line and the gauge are there, the line where the truth of
 * the filmed scene has the landmarks, the whole player in the picture and the gauge below it.
 */
class StillTellsTest {

    /** Half a shoe's width in these pictures: the marks were clicked with some two pixels of spread. */
    private static final double NEAR_PX = 12;

    @ParameterizedTest
    @ValueSource(strings = {"before", "left-handed"})
    void tellsWhatToChange(String id) throws Exception {
        Handout handout = Samples.handout(id);
        FirstThing first = handout.assessment().advice().first().orElseThrow();
        Still still = handout.still();
        PlayerWords player = PlayerWords.of(handout.words(), handout.assessment());
        StillPicture picture = still.picture().orElseThrow();
        List<Line> lines = OverlayShapes.of(handout.assessment(), picture.view());

        String said =
                still.texts().stream().flatMap(t -> t.block().lines().stream()).collect(Collectors.joining(" "));
        assertThat(said).contains(player.fault(first.finding())).contains(player.instruction(first.finding()));

        Line shows = lines.stream()
                .filter(l -> l.kind() == OverlayShapes.shows(first.finding().kind()))
                .findFirst()
                .orElseThrow();
        ball(id, picture.view(), shows);
        lines.stream()
                .filter(l -> OverlayShapes.mattersFor(first.finding().kind()).contains(l.kind()))
                .forEach(l -> fromLandmark(id, picture.view(), l));

        assertThat(still.gauge().orElseThrow().getMinY())
                .as("the gauge hides nothing of the picture")
                .isGreaterThanOrEqualTo(picture.picture().frame().getMaxY());
        ViewMarks marks = handout.lesson().sheet().view(picture.view()).orElseThrow();
        assertThat(BodyPoints.of(handout.assessment().posture(), marks))
                .as("the whole player is in the picture")
                .allMatch(p -> picture.picture().frame().contains(on(picture, p)));
        assertThat(shows.points()).allMatch(p -> picture.picture().frame().contains(on(picture, p)));
    }

    private static Point2D on(StillPicture picture, ImagePoint p) {
        return picture.picture().toDevice().transform(new Point2D.Double(p.xPx(), p.yPx()), null);
    }

    /** The lines of the ball's place end on the ground under the ball: below its middle by no more than tee and radius. */
    private static void ball(String id, View view, Line line) throws Exception {
        JsonNode truth = truth(id, view);
        ImagePoint end = line.points().get(line.points().size() - 1);
        assertThat(Math.abs(end.xPx() - truth.path("ball").path("x").asDouble()))
                .isLessThan(NEAR_PX);
        assertThat(end.yPx() - truth.path("ball").path("y").asDouble())
                .isBetween(0.0, 3 * truth.path("ball").path("diameter").asDouble() + NEAR_PX);
    }

    /** What starts at a landmark starts where the truth has it. */
    private static void fromLandmark(String id, View view, Line line) {
        Optional<String> landmark = Optional.ofNullable(
                switch (line.kind()) {
                    case PLUMB -> Landmark.LEAD_SHOULDER.id();
                    case LEAD_SQUARE -> Landmark.LEAD_HEEL.id();
                    case TRAIL_SQUARE -> Landmark.TRAIL_HEEL.id();
                    default -> null;
                });
        landmark.ifPresent(name -> {
            JsonNode at = truth(id, view).path("landmarks").path(name);
            ImagePoint start = line.points().get(0);
            assertThat(start.distancePx(
                            new ImagePoint(at.path(3).asDouble(), at.path(4).asDouble())))
                    .as(name + " of " + id)
                    .isLessThan(NEAR_PX);
        });
    }

    private static JsonNode truth(String id, View view) {
        try {
            return new ObjectMapper()
                    .readTree(Path.of("sample-media", id, view.id() + ".truth.json")
                            .toFile());
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"after", "all-good"})
    void tellsThatNothingIsToBeChanged(String id) throws Exception {
        Handout handout = Samples.handout(id);
        assertThat(handout.assessment().advice().first()).isEmpty();
        Still still = handout.still();
        assertThat(still.gauge()).isEmpty();
        assertThat(still.texts().get(1).block().lines())
                .contains(new FindingWords(handout.words())
                        .nothing(handout.assessment().advice()));
    }

    /** Every reading is found in a sample, and seen there by its line in its best view, so that whatever comes first can be shown. */
    @ParameterizedTest
    @EnumSource(ReadingKind.class)
    void everyReadingHasItsLine(ReadingKind kind) throws Exception {
        Kind shows = OverlayShapes.shows(kind);
        boolean found = false;
        for (String sample : List.of("before", "after", "left-handed", "all-good")) {
            Assessment assessment = Assessment.of(KneeMarked.sheet(sample));
            if (assessment.advice().finding(kind).isPresent()) {
                found = true;
                assertThat(OverlayShapes.of(assessment, OverlayShapes.bestView(kind)))
                        .as(kind.id() + " of " + sample)
                        .anyMatch(l -> l.kind() == shows);
            }
        }
        assertThat(found).as("a sample has it").isTrue();
        assertThat(OverlayShapes.mattersFor(kind)).contains(shows);
    }

    /** 33 units of 1080 are 11 pixels on a screen of 360. */
    @ParameterizedTest
    @ValueSource(strings = {"before", "after", "left-handed", "all-good"})
    void isReadableOnAPhone(String id) throws Exception {
        Still still = Samples.handout(id).still();
        assertThat(still.texts()).allMatch(t -> t.block().font().getSize2D() * 360 / still.width() >= 11);
    }

    /** Both pictures have as many units to a metre, straight up at the player, and the ball in one place. */
    @Test
    void beforeAndAfterAreToOneScale() throws Exception {
        Handout before = Samples.handout("before");
        Handout after = Samples.handout("after");
        BeforeAfter both = BeforeAfter.of(before, after).orElseThrow();
        double left = heightOfAMetre(before, both.placed().get(0));
        double right = heightOfAMetre(after, both.placed().get(1));
        assertThat(left).isCloseTo(both.unitsPerMetre(), org.assertj.core.api.Assertions.within(0.01 * left));
        assertThat(right).isCloseTo(left, org.assertj.core.api.Assertions.within(0.01 * left));
        double shift = both.placed().get(1).picture().frame().getX();
        Point2D a = ball(before, both.placed().get(0));
        Point2D b = ball(after, both.placed().get(1));
        assertThat(b.getX() - a.getX()).isCloseTo(shift, org.assertj.core.api.Assertions.within(0.5));
        assertThat(b.getY()).isCloseTo(a.getY(), org.assertj.core.api.Assertions.within(0.5));
    }

    private static double heightOfAMetre(Handout handout, SameScale.Placed placed) {
        var waist = SameScale.player(handout.assessment().posture());
        return seen(handout, placed, waist.plus(0, 0, -0.5)).distance(seen(handout, placed, waist.plus(0, 0, 0.5)));
    }

    private static Point2D ball(Handout handout, SameScale.Placed placed) {
        return seen(handout, placed, org.toeline.geometry.WorldPoint.ORIGIN);
    }

    private static Point2D seen(Handout handout, SameScale.Placed placed, org.toeline.geometry.WorldPoint point) {
        ImagePoint p = handout.assessment().posture().seen(placed.view(), point).orElseThrow();
        return placed.picture().toDevice().transform(new Point2D.Double(p.xPx(), p.yPx()), null);
    }
}
