package org.toeline.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.toeline.geometry.ImagePoint;
import org.toeline.geometry.WorldPoint;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.posture.Posture;
import org.toeline.posture.PostureEstimator;

/** Pictures of lessons that were filmed from different places come to one scale and one place. */
class BallPlaneTest {

    private static final double PX_PER_M = 400;
    /** Half a canvas pixel, 1.25 mm: what bilinear looking up moves a small spot by at most. */
    private static final double SPOT_PX = 0.5;

    private static MarkSheet sheet(String id) throws Exception {
        return LessonDocument.read(Path.of("sample-media", id, id + ".lesson.json"))
                .sheet();
    }

    /** Points of the plane, in either view's; within what every sample picture shows. */
    private static List<WorldPoint> points(View view) {
        return view == View.FACE_ON
                ? List.of(WorldPoint.ORIGIN, new WorldPoint(-0.5, 0, 0.5), new WorldPoint(0.4, 0, 1.2))
                : List.of(WorldPoint.ORIGIN, new WorldPoint(0, 0.4, 0.5), new WorldPoint(0, 0.9, 1.2));
    }

    /** A spot of the plane is painted where a lesson's camera sees it, and found on the canvas where the plane has it. */
    @ParameterizedTest
    @CsvSource({
        "before, FACE_ON",
        "after, FACE_ON",
        "before, DOWN_THE_LINE",
        "after, DOWN_THE_LINE",
        "left-handed, FACE_ON",
        "left-handed, DOWN_THE_LINE"
    })
    void spotsOfThePlaneLieAtTheirPlaces(String id, View view) throws Exception {
        MarkSheet sheet = sheet(id);
        Posture posture = PostureEstimator.estimate(sheet);
        ViewMarks marks = sheet.view(view).orElseThrow();
        BallPlane plane = new BallPlane(view, sheet.handedness(), PX_PER_M);
        for (WorldPoint point : points(view)) {
            ImagePoint seen = posture.seen(view, point).orElseThrow();
            assertThat(seen.xPx()).isBetween(5.0, marks.widthPx() - 5.0);
            Point2D found =
                    brightest(plane.warp(spot(marks, seen), posture.camera(view).orElseThrow()));
            assertThat(found.distance(plane.on(point))).as(id + " " + point).isLessThan(SPOT_PX);
        }
    }

    private static BufferedImage spot(ViewMarks marks, ImagePoint at) {
        BufferedImage picture = new BufferedImage(marks.widthPx(), marks.heightPx(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = picture.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(Color.WHITE);
        g.fill(new Ellipse2D.Double(at.xPx() - 2.5, at.yPx() - 2.5, 5, 5));
        g.dispose();
        return picture;
    }

    /** The middle of what is bright, weighted by how bright. */
    private static Point2D brightest(BufferedImage image) {
        double sum = 0;
        double x = 0;
        double y = 0;
        for (int i = 0; i < image.getWidth() * image.getHeight(); i++) {
            double light = Math.max(0, (image.getRGB(i % image.getWidth(), i / image.getWidth()) >> 8 & 255) - 60);
            sum += light;
            x += light * (i % image.getWidth() + 0.5);
            y += light * (i / image.getWidth() + 0.5);
        }
        return new Point2D.Double(x / sum, y / sum);
    }

    /** A landmark behind the plane stands on the canvas where its picture does, so that a figure lies on its player. */
    @ParameterizedTest
    @CsvSource({"before, FACE_ON", "after, DOWN_THE_LINE", "left-handed, FACE_ON"})
    void landmarksStandWhereThePictureHasThem(String id, View view) throws Exception {
        Posture posture = PostureEstimator.estimate(sheet(id));
        BallPlane plane = new BallPlane(view, posture.handedness(), PX_PER_M);
        for (Landmark landmark : List.of(Landmark.LEAD_SHOULDER, Landmark.TRAIL_HEEL, Landmark.CLUB_HEAD)) {
            Point2D on = plane.seen(posture.at(landmark), posture).orElseThrow();
            ImagePoint there =
                    posture.seen(view, plane.at(on.getX(), on.getY())).orElseThrow();
            assertThat(there.distancePx(posture.seen(view, posture.at(landmark)).orElseThrow()))
                    .as(landmark.id())
                    .isCloseTo(0, within(1e-6));
        }
    }

    /** The canvas runs as the picture does: the target is to the right face-on, to the left for a left-handed player. */
    @Test
    void theCanvasRunsAsThePictureDoes() {
        WorldPoint nearer = new WorldPoint(0.3, 0, 0);
        assertThat(across(View.FACE_ON, Handedness.RIGHT, nearer)).isCloseTo(120, within(1e-9));
        assertThat(across(View.FACE_ON, Handedness.LEFT, nearer)).isCloseTo(-120, within(1e-9));
        WorldPoint player = new WorldPoint(0, 0.5, 0);
        assertThat(across(View.DOWN_THE_LINE, Handedness.RIGHT, player)).isCloseTo(-200, within(1e-9));
        assertThat(across(View.DOWN_THE_LINE, Handedness.LEFT, player)).isCloseTo(200, within(1e-9));
        assertThatIllegalArgumentException().isThrownBy(() -> new BallPlane(View.TEE, Handedness.RIGHT, PX_PER_M));
    }

    /** Canvas pixels to the right of the ball. */
    private static double across(View view, Handedness handedness, WorldPoint point) {
        BallPlane plane = new BallPlane(view, handedness, PX_PER_M);
        return plane.on(point).getX() - plane.on(WorldPoint.ORIGIN).getX();
    }
}
