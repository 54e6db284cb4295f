package org.toeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import javafx.scene.control.Labeled;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.toeline.desk.lesson.Item;
import org.toeline.desk.records.Settings;
import org.toeline.desk.text.Texts;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.rows.LessonLine;
import org.toeline.ledger.store.rows.Search;
import org.toeline.mark.Handedness;
import org.toeline.mark.View;

/** The keys that every program has, on every screen, and what a lesson that was just begun knows of itself. */
class UsualKeysTest extends DrivenDesk {

    @Start
    void start(Stage stage) {
        open(stage);
    }

    private String said(FxRobot robot) {
        return robot.lookup("#status").queryAs(Labeled.class).getText();
    }

    private void clip(FxRobot robot) throws Exception {
        until(() -> screens.records().keeps());
        robot.interact(() -> {
            sheet.welcomed();
            model().clip(View.FACE_ON, "/clips/face-on.mp4", 1920, 1080);
        });
        until(() -> screens.records().lessonId().isPresent());
    }

    private boolean isShown(String title) {
        return Window.getWindows().stream().anyMatch(w -> w instanceof Stage s && title.equals(s.getTitle()));
    }

    @Test
    void helpIsThereOnEveryScreen(FxRobot robot) throws Exception {
        for (KeyCode screen : new KeyCode[] {KeyCode.F3, KeyCode.F7, KeyCode.F2}) {
            robot.press(screen).release(screen).press(KeyCode.F1).release(KeyCode.F1);
            until(() -> isShown(Texts.of("keys.title")));
            robot.press(KeyCode.ESCAPE).release(KeyCode.ESCAPE);
            until(() -> !isShown(Texts.of("keys.title")));
        }
    }

    @Test
    void theMenuShowsTheKeysAndTheLastLessons(FxRobot robot) throws Exception {
        clip(robot);
        robot.clickOn("#menu");
        until(() -> item("menu-new")
                        .flatMap(i -> Optional.ofNullable(i.getAccelerator()))
                        .isPresent()
                && item("menu-recent")
                        .filter(i -> ((javafx.scene.control.Menu) i).getItems().size() > 0)
                        .isPresent());
        assertThat(item("menu-new").orElseThrow().getAccelerator())
                .isEqualTo(sheet.keyBook().key(org.toeline.desk.keys.Act.NEW));
        robot.press(KeyCode.ESCAPE).release(KeyCode.ESCAPE);
    }

    private Optional<MenuItem> item(String id) {
        return ((javafx.scene.control.MenuButton) screens.root().lookup("#menu"))
                .getItems().stream().filter(i -> id.equals(i.getId())).findFirst();
    }

    @Test
    void whatIsKeptIsSaidAndWhere(FxRobot robot) throws Exception {
        until(() -> screens.records().keeps());
        robot.press(KeyCode.CONTROL, KeyCode.S).release(KeyCode.S, KeyCode.CONTROL);
        until(() -> said(robot).equals(Texts.of("kept.nothing")));
        clip(robot);
        robot.press(KeyCode.CONTROL, KeyCode.S).release(KeyCode.S, KeyCode.CONTROL);
        until(() -> said(robot)
                .equals(Texts.of(
                        "kept.in-ledger",
                        Settings.usual(folder.resolve("ledger")).place().name())));
    }

    @Test
    void aLessonThatBeginsWithAClipHasADateAndAFirstThingToMark(FxRobot robot) throws Exception {
        clip(robot);
        assertThat(model().lesson().recorded()).isPresent();
        Item first = model().selected().orElseThrow();
        robot.interact(() -> {
            model().undo();
            model().redo();
        });
        assertThat(model().selected()).contains(first);
        int id = screens.records().lessonId().orElseThrow();
        until(() -> line(id).flatMap(LessonLine::recorded).isPresent());
    }

    private Optional<LessonLine> line(int id) throws Exception {
        try (Ledger ledger =
                Ledger.open(Settings.usual(folder.resolve("ledger")).place(), "the test")) {
            return ledger.find(Search.RECENT).stream().filter(l -> l.id() == id).findFirst();
        }
    }

    @Test
    void theHandThatIsChangedIsThatOfThePlayerWithoutAName(FxRobot robot) throws Exception {
        clip(robot);
        int player = screens.records().playerId().orElseThrow();
        robot.interact(() -> model().handedness(Handedness.LEFT));
        until(() -> {
            try (Ledger ledger =
                    Ledger.open(Settings.usual(folder.resolve("ledger")).place(), "the test")) {
                return ledger.player(player).orElseThrow().details().handedness() == Handedness.LEFT;
            }
        });
    }

    @Test
    void anotherLightIsShownAndLeadsBack(FxRobot robot) throws Exception {
        clip(robot);
        robot.interact(() -> picture.requestFocus());
        robot.press(KeyCode.B).release(KeyCode.B);
        until(() -> robot.lookup("#light").query().isVisible());
        assertThat(robot.lookup("#light").queryLabeled().getText()).contains("+10");
        robot.press(KeyCode.DIGIT0).release(KeyCode.DIGIT0);
        until(() -> !robot.lookup("#light").query().isVisible());
        robot.press(KeyCode.C).release(KeyCode.C);
        until(() -> robot.lookup("#light").query().isVisible());
        robot.interact(() -> sheet.desk().fresh());
        assertThat(robot.lookup("#light").query().isVisible())
                .as("in the next lesson")
                .isFalse();
    }

    @Test
    void theQuestionWhoseLessonItIsStaysInTheWindow(FxRobot robot) throws Exception {
        until(() -> screens.records().keeps());
        robot.clickOn("#lesson-player");
        until(() -> robot.lookup("#whose").tryQuery().isPresent());
        Window window = screens.root().getScene().getWindow();
        until(() -> {
            Window popup = robot.lookup("#whose").query().getScene().getWindow();
            return popup.getX() + popup.getWidth() <= window.getX() + window.getWidth() + 1;
        });
        robot.press(KeyCode.ESCAPE).release(KeyCode.ESCAPE);
    }
}
