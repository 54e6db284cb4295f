package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.toeline.desk.film.Player;
import org.toeline.desk.film.Reel;
import org.toeline.desk.film.Tie;
import org.toeline.desk.picture.PicturePane;
import org.toeline.ledger.Lesson;
import org.toeline.mark.View;

/** The film plays, is dragged along and watched in step; nothing of it changes the lesson. */
class PlayingTest extends DrivenDesk {

    private Lesson before;

    @Start
    void start(Stage stage) {
        open(stage);
    }

    private void sample(FxRobot robot) throws Exception {
        robot.interact(() -> sheet.desk().sample());
        until(() -> ready(View.FACE_ON) && ready(View.DOWN_THE_LINE));
        before = model().lesson();
        robot.interact(picture::requestFocus);
    }

    private boolean ready(View view) {
        return reel(view).filter(r -> r.film().ended()).isPresent()
                && sheet.clips().shown(view).isPresent();
    }

    private Optional<Reel> reel(View view) {
        return sheet.clips().reel(view);
    }

    private double at(View view) {
        Reel reel = reel(view).orElseThrow();
        return reel.clip().seconds(reel.at());
    }

    private Player player() {
        return sheet.films().player();
    }

    private void unchanged() {
        assertThat(model().lesson()).isEqualTo(before);
        assertThat(model().canUndo()).isFalse();
    }

    @Test
    void spacePlaysAndStandsOnAnExactFrame(FxRobot robot) throws Exception {
        sample(robot);
        // from where a busy machine too finds it before its end
        robot.interact(() -> sheet.films().seek(0.2));
        robot.push(KeyCode.SPACE);
        until(() -> at(View.FACE_ON) > 0.5);
        assertThat(player().plays()).isTrue();
        assertThat(picture.passes()).isTrue();
        robot.push(KeyCode.SPACE);
        until(() -> sheet.clips().shown(View.FACE_ON).isPresent() && !picture.passes());
        assertThat(player().plays()).isFalse();
        assertThat(sheet.clips().shown(View.FACE_ON)).hasValue(at(View.FACE_ON));
        unchanged();
    }

    @Test
    void backwardsAndSlowlyAndToTheEnd(FxRobot robot) throws Exception {
        sample(robot);
        robot.push(KeyCode.R).push(KeyCode.D);
        assertThat(player().pace().slowed()).isEqualTo(2);
        double from = at(View.FACE_ON);
        robot.push(KeyCode.SPACE);
        until(() -> at(View.FACE_ON) < from - 0.2);
        robot.push(KeyCode.SPACE);
        robot.push(KeyCode.R).push(KeyCode.U);
        Reel reel = reel(View.FACE_ON).orElseThrow();
        robot.interact(() -> sheet.films().seek(reel.clip().seconds(reel.clip().frameCount() - 8)));
        robot.push(KeyCode.SPACE);
        until(() -> !player().plays());
        assertThat(reel.at()).isEqualTo(reel.clip().frameCount() - 1);
        unchanged();
    }

    @Test
    void theStripIsDraggedAlong(FxRobot robot) throws Exception {
        sample(robot);
        Node strip = robot.lookup("#strip").query();
        robot.drag(strip).moveBy(-60, 0);
        double width = strip.getBoundsInLocal().getWidth();
        Reel reel = reel(View.FACE_ON).orElseThrow();
        double length = reel.clip().info().durationSeconds();
        double there = (width / 2 - 60) / width * length;
        // with the hand still on it
        until(() -> Math.abs(at(View.FACE_ON) - there) < 2 * length / width + 0.02);
        robot.drop();
        until(() -> sheet.clips().shown(View.FACE_ON).isPresent() && !picture.passes());
        assertThat(at(View.FACE_ON)).isCloseTo(there, within(2 * length / width + 0.02));
        unchanged();
    }

    /** Both views in step: the same moment in both, each with a marked frame of its own. */
    @Test
    void bothViewsInStep(FxRobot robot) throws Exception {
        sample(robot);
        robot.interact(() -> sheet.films().tie(Optional.of(new Tie(1.0, 1.2, 0.01, Tie.By.HAND))));
        robot.push(KeyCode.V);
        until(() -> sheet.films().together());
        assertThat(robot.lookup("#second-view").query().isVisible()).isTrue();
        PicturePane large = picture;
        assertThat(robot.lookup("#second-view").query().getBoundsInParent().getHeight())
                .isCloseTo(large.getHeight(), within(2.0));
        robot.interact(() -> sheet.films().seek(1.0));
        until(() -> Math.abs(at(View.DOWN_THE_LINE) - 1.2) < 0.03);
        // neither gets to its end before it stands again
        robot.push(KeyCode.D);
        robot.push(KeyCode.SPACE);
        until(() -> at(View.FACE_ON) > 1.3);
        robot.push(KeyCode.SPACE);
        until(() -> sheet.clips().shown(View.FACE_ON).isPresent());
        assertThat(at(View.DOWN_THE_LINE) - at(View.FACE_ON)).isCloseTo(0.2, within(0.034));
        robot.push(KeyCode.V);
        assertThat(robot.lookup("#second-view").query().isVisible()).isFalse();
        unchanged();
    }

    /** The clips may still be listened to when the coach says which frames are one moment. */
    @Test
    void whatThePersonSaidIsOneMomentStands(FxRobot robot) throws Exception {
        sample(robot);
        Tie said = new Tie(3.0, 3.2, 0.01, Tie.By.HAND);
        Tie heard = new Tie(3.0, 3.0, 0.002, Tie.By.SOUND);
        robot.interact(() -> {
            sheet.films().found(Optional.of(heard));
            assertThat(sheet.films().tie()).contains(heard);
            sheet.films().tie(Optional.of(said));
            sheet.films().found(Optional.of(heard));
            sheet.films().found(Optional.empty());
        });
        assertThat(sheet.films().tie()).contains(said);
    }
}
