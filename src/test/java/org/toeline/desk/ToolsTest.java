package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.picture.OnPicture;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.Handedness;
import org.toeline.mark.Landmark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;

/** Every tool by mouse and key on the real desk: as it opens, zoomed, left-handed, on a clip that is turned. */
class ToolsTest extends DrivenDesk {

    /** A ball on the sample clips is found to half a pixel or so (docs/marking.md). */
    private static final double BALL_PX = 1.2;
    /** A hand's miss: within the ball also where a whole upright picture is shown small. */
    private static final double OFF_DEVICE = 1;

    private static final UnaryOperator<ImagePoint> AS_IT_IS = p -> p;

    @Start
    void start(Stage stage) {
        open(stage);
    }

    private ViewMarks marks() {
        return model().marks(View.FACE_ON).orElseThrow();
    }

    @Test
    void asItOpens(FxRobot robot) throws Exception {
        tools(robot, "before", Path.of("sample-media", "before", "face-on.mp4"), AS_IT_IS, 1);
    }

    @Test
    void zoomed(FxRobot robot) throws Exception {
        tools(robot, "before", Path.of("sample-media", "before", "face-on.mp4"), AS_IT_IS, 2.5);
    }

    /** As on a screen of 1920 by 1080 points that shows everything one and a half times as large. */
    @Test
    void atOneAndAHalfTimesTheSize(FxRobot robot) throws Exception {
        robot.interact(() -> {
            Window window = picture.getScene().getWindow();
            window.setRenderScaleX(1.5);
            window.setRenderScaleY(1.5);
            window.setWidth(1280);
            window.setHeight(720);
        });
        tools(robot, "before", Path.of("sample-media", "before", "face-on.mp4"), AS_IT_IS, 1);
    }

    @Test
    void leftHanded(FxRobot robot) throws Exception {
        tools(robot, "left-handed", Path.of("sample-media", "left-handed", "face-on.mp4"), AS_IT_IS, 1);
    }

    /** The same clip with a note to turn it by three quarters, as a phone held upright writes it. */
    @Test
    void onATurnedClip(FxRobot robot) throws Exception {
        Path turned = folder.resolve("turned.mp4");
        tools(robot, "before", turnedClip(turned), p -> new ImagePoint(p.yPx(), 1280 - p.xPx()), 1);
    }

    private static Path turnedClip(Path to) throws Exception {
        try {
            Process ffmpeg = new ProcessBuilder(
                            "ffmpeg",
                            "-v",
                            "error",
                            "-y",
                            "-i",
                            Path.of("sample-media", "before", "face-on.mp4").toString(),
                            "-c",
                            "copy",
                            "-metadata:s:v:0",
                            "rotate=90",
                            to.toString())
                    .inheritIO()
                    .start();
            Assumptions.assumeTrue(ffmpeg.waitFor() == 0, "this ffmpeg cannot turn a clip");
            try (org.toeline.video.Clip clip = org.toeline.video.Clip.open(to)) {
                Assumptions.assumeTrue(clip.info().rotation() == 270, "this ffmpeg leaves the note to turn out");
            }
        } catch (java.io.IOException e) {
            Assumptions.abort("no ffmpeg on this machine");
        }
        return to;
    }

    private void tools(FxRobot robot, String lesson, Path clip, UnaryOperator<ImagePoint> shown, double zoom)
            throws Exception {
        MarkSheet placed = LessonDocument.read(Path.of("sample-media", lesson, lesson + ".lesson.json"))
                .sheet();
        JsonNode truth = new ObjectMapper()
                .readTree(Path.of("sample-media", lesson, "face-on.truth.json").toFile());
        robot.interact(() -> {
            model().open(
                            Lesson.of(MarkSheet.empty(placed.handedness(), placed.club())
                                    .withFloor(placed.floor())),
                            Optional.empty());
            sheet.welcomed();
            sheet.clips().choose(View.FACE_ON, clip.toAbsolutePath());
        });
        until(() -> sheet.clips().time(View.FACE_ON).isPresent() && picture.picture() != null);
        if (shown != AS_IT_IS) {
            // nobody stands on a turned picture, so no address is found by itself
            robot.interact(() -> sheet.clips().seek(View.FACE_ON, 2.2));
        }
        until(() ->
                sheet.clips().frame(View.FACE_ON).filter(f -> f.seconds() > 1).isPresent());
        until(() -> sheet.clips().lines().getChildrenUnmodifiable().isEmpty());
        ball(
                robot,
                shown.apply(new ImagePoint(
                        truth.at("/ball/x").asDouble(), truth.at("/ball/y").asDouble())),
                zoom);
        rod(robot, truth, shown);
        upright(robot, truth, shown);
        landmark(robot, truth, shown);
        assertThat(model().sheet().handedness())
                .isEqualTo(placed.handedness() == Handedness.LEFT ? Handedness.LEFT : Handedness.RIGHT);
    }

    private void ball(FxRobot robot, ImagePoint at, double zoom) throws Exception {
        robot.interact(() -> {
            model().select(Item.BALL);
            if (zoom > 1) {
                OnPicture.zoom(picture, zoom);
            }
        });
        if (zoom > 1) {
            // the ball may have left the pane: the right button brings it back
            drag(
                    robot,
                    MouseButton.SECONDARY,
                    picture.getWidth() / 2,
                    picture.getHeight() / 2,
                    picture.getWidth() - OnPicture.inPane(picture, at).getX(),
                    picture.getHeight() - OnPicture.inPane(picture, at).getY());
        }
        robot.clickOn(OnPicture.onScreen(picture, at).add(OFF_DEVICE, -OFF_DEVICE));
        until(() -> marks().ball().isPresent());
        assertThat(marks().ball().orElseThrow().centre().distancePx(at))
                .as("ball")
                .isLessThan(BALL_PX);
        assertThat(marks().ball().orElseThrow().diameterPx())
                .as("its outline was found")
                .isPresent();
        robot.interact(() -> picture.fit());
    }

    private void rod(FxRobot robot, JsonNode truth, UnaryOperator<ImagePoint> shown) throws Exception {
        JsonNode near = truth.at("/floor/0");
        JsonNode far = truth.at("/floor/1");
        ImagePoint a = shown.apply(
                new ImagePoint(near.path("x").asDouble(), near.path("y").asDouble()));
        ImagePoint b = shown.apply(
                new ImagePoint(far.path("x").asDouble(), far.path("y").asDouble()));
        robot.interact(() -> model().select(new Item.OfFloor(near.path("id").asText())));
        stroke(robot, a, b);
        until(() -> marks().floorMarks().size() == 2);
        // the rod lies on the turf: its visible axis is up to a pixel above the floor points
        assertThat(marks().floorMark(near.path("id").asText())
                        .orElseThrow()
                        .at()
                        .distancePx(a))
                .isLessThan(4);
        assertThat(marks().floorMark(far.path("id").asText()).orElseThrow().at().distancePx(b))
                .isLessThan(4);
    }

    private void upright(FxRobot robot, JsonNode truth, UnaryOperator<ImagePoint> shown) throws Exception {
        JsonNode post = truth.at("/verticals/0");
        ImagePoint a = shown.apply(
                new ImagePoint(post.path("x1").asDouble(), post.path("y1").asDouble()));
        ImagePoint b = shown.apply(
                new ImagePoint(post.path("x2").asDouble(), post.path("y2").asDouble()));
        robot.interact(() -> model().select(new Item.OfVertical(0)));
        stroke(robot, a, b);
        until(() -> marks().verticals().size() == 1);
        assertThat(marks().verticals().get(0).from().distancePx(a)).isLessThan(5);
        assertThat(marks().verticals().get(0).to().distancePx(b)).isLessThan(5);
    }

    private void landmark(FxRobot robot, JsonNode truth, UnaryOperator<ImagePoint> shown) {
        JsonNode toe = truth.at("/landmarks/lead-toe");
        ImagePoint at =
                shown.apply(new ImagePoint(toe.get(3).asDouble(), toe.get(4).asDouble()));
        robot.interact(() -> model().select(new Item.OfLandmark(Landmark.LEAD_TOE)));
        robot.clickOn(OnPicture.onScreen(picture, at));
        WaitForAsyncUtils.waitForFxEvents();
        ImagePoint placed = marks().mark(Landmark.LEAD_TOE).orElseThrow().at();
        assertThat(placed.distancePx(at)).isLessThan(1.5 / OnPicture.scale(picture));
        robot.interact(() -> model().select(new Item.OfLandmark(Landmark.LEAD_TOE)));
        robot.type(KeyCode.UP);
        assertThat(placed.yPx()
                        - marks().mark(Landmark.LEAD_TOE).orElseThrow().at().yPx())
                .isCloseTo(0.25, within(0.06));
        robot.type(KeyCode.DELETE);
        assertThat(marks().mark(Landmark.LEAD_TOE)).isEmpty();
    }

    private void stroke(FxRobot robot, ImagePoint from, ImagePoint to) {
        drag(
                robot,
                MouseButton.PRIMARY,
                OnPicture.inPane(picture, from).getX(),
                OnPicture.inPane(picture, from).getY(),
                OnPicture.inPane(picture, to).getX(),
                OnPicture.inPane(picture, to).getY());
    }

    private void drag(FxRobot robot, MouseButton button, double x1, double y1, double x2, double y2) {
        robot.moveTo(picture.localToScreen(x1, y1))
                .press(button)
                .moveTo(picture.localToScreen((x1 + x2) / 2, (y1 + y2) / 2))
                .moveTo(picture.localToScreen(x2, y2))
                .release(button);
        WaitForAsyncUtils.waitForFxEvents();
    }
}
