package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.picture.OnPicture;
import org.toeline.geometry.ImagePoint;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.mark.FloorMark;
import org.toeline.mark.Landmark;
import org.toeline.mark.MarkSheet;
import org.toeline.mark.Takes;
import org.toeline.mark.VerticalMark;
import org.toeline.mark.View;
import org.toeline.mark.ViewMarks;
import org.toeline.reading.Reading;
import org.toeline.reading.ReadingKind;

/**
 * A whole driver lesson on the sample clips, both views, from the clips to the findings, as a coach would do it whose bay
 * and rods the desk knows: every gesture (a click, a stroke, a key, a clip dropped) is counted, and what comes out is
 * compared with the truth of the clips. Where the coach clicks is where the marks of the sample lesson were placed by eye.
 */
class WholeLessonTest extends DrivenDesk {

    private static final Path MEDIA = Path.of("sample-media", "before");
    /** What the findings of a driver lesson need; the rest makes them a little narrower. */
    private static final List<Landmark> NEEDED = List.of(
            Landmark.LEAD_SHOULDER,
            Landmark.TRAIL_SHOULDER,
            Landmark.LEAD_HEEL,
            Landmark.LEAD_TOE,
            Landmark.TRAIL_HEEL,
            Landmark.TRAIL_TOE,
            Landmark.LEAD_WRIST,
            Landmark.TRAIL_WRIST,
            Landmark.HEAD_CENTRE,
            Landmark.LEAD_HIP,
            Landmark.TRAIL_HIP,
            Landmark.CLUB_HEAD,
            Landmark.GRIP_END);

    private static final List<Landmark> OF_THE_CLUB = List.of(Landmark.CLUB_HEAD, Landmark.GRIP_END);

    private int gestures;

    @Start
    void start(Stage stage) {
        open(stage);
    }

    @Test
    void byHand(FxRobot robot) throws Exception {
        run(robot, NEEDED, false);
        assertThat(gestures).isLessThanOrEqualTo(36);
    }

    @Test
    void withSuggestions(FxRobot robot) throws Exception {
        run(robot, OF_THE_CLUB, true);
        assertThat(gestures).isLessThanOrEqualTo(12);
    }

    private void run(FxRobot robot, List<Landmark> clicked, boolean suggestions) throws Exception {
        MarkSheet placed =
                LessonDocument.read(MEDIA.resolve("before.lesson.json")).sheet();
        robot.interact(() -> {
            model().open(
                            Lesson.of(model().sheet().withFloor(placed.floor()).withTakes(Takes.SIMULTANEOUS)),
                            Optional.empty());
            sheet.welcomed();
        });
        for (View view : List.of(View.FACE_ON, View.DOWN_THE_LINE)) {
            open(robot, view, placed.view(view).orElseThrow());
            mark(robot, placed.view(view).orElseThrow(), clicked, suggestions);
        }
        until(() -> sheet.assessment().isPresent()
                && sheet.assessment().get().sheet().equals(model().sheet()));
        report(suggestions);
    }

    /** A clip dropped on the picture: its address is found, and where the marks are from is within the still span. */
    private void open(FxRobot robot, View view, ViewMarks placed) throws Exception {
        robot.interact(() -> model().show(view));
        robot.interact(() ->
                sheet.clips().choose(view, MEDIA.resolve(view.id() + ".mp4").toAbsolutePath()));
        gestures++;
        until(() -> sheet.clips().time(view).filter(t -> t[0] > 1.0).isPresent()
                && sheet.clips().shown(view).isPresent()
                && model().marks(view).isPresent());
        assertThat(placed.widthPx()).isEqualTo(model().marks(view).orElseThrow().widthPx());
    }

    private void mark(FxRobot robot, ViewMarks placed, List<Landmark> clicked, boolean suggestions) throws Exception {
        select(robot, Item.BALL);
        click(robot, placed.ball().orElseThrow().centre());
        until(() -> model().marks(model().large()).orElseThrow().ball().isPresent());
        if (suggestions) {
            robot.type(KeyCode.G);
            gestures++;
            until(() -> model().marks(model().large()).orElseThrow().marks().size() > 6);
            robot.push(KeyCode.SHIFT, KeyCode.ENTER);
            gestures++;
            acceptTheDoubtful(robot);
        }
        for (int i = 0; i + 1 < placed.floorMarks().size(); i += 2) {
            rod(robot, placed.floorMarks().get(i), placed.floorMarks().get(i + 1));
        }
        if (marks().verticals().isEmpty()) {
            VerticalMark post = placed.verticals().get(0);
            select(robot, new Item.OfVertical(0));
            stroke(robot, post.from(), post.to());
        }
        for (Landmark landmark : clicked) {
            if (marks().mark(landmark).isPresent()) {
                continue;
            }
            placed.mark(landmark).ifPresent(m -> {
                select(robot, new Item.OfLandmark(landmark));
                click(robot, m.at());
            });
            if (placed.mark(landmark).isEmpty()) {
                // one cannot be seen: the coach says so
                gestures++;
            }
        }
    }

    /** What is not accepted with the rest is looked at one by one. */
    private void acceptTheDoubtful(FxRobot robot) throws Exception {
        for (int left = model().suggestions().left().size(); left > 0; left--) {
            int before = left;
            robot.type(KeyCode.ENTER);
            gestures++;
            until(() -> model().suggestions().left().size() < before);
        }
    }

    /** With one stroke, or with a click on the end that was not suggested. */
    private void rod(FxRobot robot, FloorMark from, FloorMark to) throws Exception {
        boolean first = marks().floorMark(from.pointId()).isPresent();
        boolean second = marks().floorMark(to.pointId()).isPresent();
        if (!first && !second) {
            select(robot, new Item.OfFloor(from.pointId()));
            stroke(robot, from.at(), to.at());
        } else if (!first || !second) {
            FloorMark missing = first ? to : from;
            select(robot, new Item.OfFloor(missing.pointId()));
            click(robot, missing.at());
        }
    }

    private ViewMarks marks() {
        return model().marks(model().large()).orElseThrow();
    }

    /** The next thing is announced and selected by itself, in an order of its own; a test goes by a fixed one. */
    private void select(FxRobot robot, Item item) {
        robot.interact(() -> model().select(item));
    }

    private void click(FxRobot robot, ImagePoint p) {
        gestures++;
        robot.clickOn(OnPicture.onScreen(picture, p));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void stroke(FxRobot robot, ImagePoint from, ImagePoint to) throws Exception {
        gestures++;
        int before = placedCount();
        robot.moveTo(OnPicture.onScreen(picture, from))
                .press(MouseButton.PRIMARY)
                .moveTo(OnPicture.onScreen(picture, to))
                .release(MouseButton.PRIMARY);
        until(() -> placedCount() > before);
    }

    private int placedCount() {
        ViewMarks v = model().marks(model().large()).orElseThrow();
        return v.floorMarks().size() + v.verticals().size();
    }

    private void report(boolean suggestions) throws Exception {
        JsonNode truth = new ObjectMapper()
                .readTree(MEDIA.resolve("face-on.truth.json").toFile())
                .path("readings");
        System.out.printf(
                "%n%s: %d gestures%n%n| reading | unit | truth | reading, 95 %% interval | holds |%n"
                        + "| --- | --- | ---: | ---: | --- |%n",
                suggestions ? "With suggestions" : "By hand", gestures);
        int held = 0;
        int all = 0;
        for (Reading r : sheet.assessment().orElseThrow().readings()) {
            double t = truth.path(r.kind().id()).path("value").asDouble();
            boolean holds = r.shownLow() <= t && t <= r.shownHigh();
            held += holds ? 1 : 0;
            all++;
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %s | %.2f | %.2f (%.2f to %.2f) | %s |%n",
                    r.kind().id(),
                    r.kind().unit().id(),
                    t,
                    r.shownValue(),
                    r.shownLow(),
                    r.shownHigh(),
                    holds ? "yes" : "**no**");
        }
        sheet.assessment()
                .orElseThrow()
                .posture()
                .doubts()
                .forEach(d -> System.out.printf(
                        Locale.ROOT,
                        "| *in doubt: %s, %s* | px | | %.1f | |%n",
                        d.view().id(),
                        d.mark(),
                        d.offPx()));
        assertThat((double) held / all).as("intervals that hold the truth").isGreaterThanOrEqualTo(0.85);
        assertThat(sheet.assessment()
                        .orElseThrow()
                        .advice()
                        .first()
                        .orElseThrow()
                        .finding()
                        .kind())
                .isEqualTo(ReadingKind.BALL_TO_LEAD_SHOULDER);
    }
}
