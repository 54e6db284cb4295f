package org.toeline.desk.players;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.Start;
import org.toeline.across.StatedFindings;
import org.toeline.desk.ScreenUnderTest;
import org.toeline.desk.dialog.ShownDialog;
import org.toeline.desk.records.Settings;
import org.toeline.ledger.Lesson;
import org.toeline.ledger.LessonDocument;
import org.toeline.ledger.store.Ledger;
import org.toeline.ledger.store.rows.KeptLesson;
import org.toeline.ledger.store.rows.Player;
import org.toeline.ledger.store.rows.PlayerDetails;
import org.toeline.ledger.store.rows.Saved;
import org.toeline.mark.Handedness;

/** The screen over a real ledger, by mouse and key. */
class PlayersScreenTest extends ScreenUnderTest {

    private static final String LONG =
            "Maximiliana-Konstantina von und zu Hohenlangenfeld-Überlingen am Bodensee (junior squad, second bay)";

    private PlayersScreen screen;
    private Stage window;

    @Start
    void start(Stage stage) {
        window = stage;
        screen = show(stage, PlayersScreen::new);
    }

    private Ledger ledger() throws Exception {
        return Ledger.open(Settings.usual(folder).place(), "the test");
    }

    private static Lesson sample(String id, String day) throws Exception {
        return LessonDocument.read(Path.of("sample-media", id, id + ".lesson.json"))
                .withRecorded(OffsetDateTime.parse(day + "T10:00:00+02:00"))
                .withPlayerName(Optional.empty());
    }

    private static void keep(Ledger ledger, String name, String id, String day, String notes) throws Exception {
        Player player =
                ledger.playersNamed(name, Handedness.RIGHT).stream().findFirst().orElse(null);
        if (player == null) {
            player = ledger.addPlayer(PlayerDetails.of(Optional.of(name), Handedness.RIGHT));
        }
        Lesson lesson = sample(id, day).withNotes(notes);
        ledger.keep(player.id(), lesson, StatedFindings.of(lesson));
    }

    private void enter(FxRobot robot, int lessons) throws Exception {
        robot.interact(screen::entered);
        until(() -> list(robot).getItems().size() == lessons);
    }

    private static ListView<?> list(FxRobot robot) {
        return robot.lookup("#lessons").queryListView();
    }

    private static String player(FxRobot robot) {
        return robot.lookup("#card-player")
                .tryQueryAs(Label.class)
                .map(Label::getText)
                .orElse("");
    }

    @Test
    void withoutALessonItSaysWhereLessonsComeFrom(FxRobot robot) throws Exception {
        enter(robot, 0);
        robot.clickOn("New lesson");
        assertThat(studio.asked()).containsExactly("fresh");
        picture(robot, "players-0");
    }

    @Test
    void twoLettersAndEnterOpenTheLatestLessonOfAPlayer(FxRobot robot) throws Exception {
        try (Ledger ledger = ledger()) {
            keep(ledger, "D. Walker", "before", "2026-03-01", "grip");
            keep(ledger, "D. Walker", "after", "2026-04-01", "ball back");
            keep(ledger, "E. Miller", "after", "2026-05-01", "");
        }
        enter(robot, 3);
        until(() -> player(robot).equals("E. Miller"));
        robot.write("wa").type(KeyCode.ENTER);
        until(() -> list(robot).getItems().size() == 2);
        until(() -> player(robot).equals("D. Walker"));
        robot.type(KeyCode.ENTER);
        assertThat(studio.asked().get(studio.asked().size() - 1)).isEqualTo("lesson 2");
        robot.type(KeyCode.DOWN).type(KeyCode.ENTER);
        assertThat(studio.asked().get(studio.asked().size() - 1)).isEqualTo("lesson 1");
        picture(robot, "players-found");
    }

    @Test
    void notesAreKeptAndFound(FxRobot robot) throws Exception {
        try (Ledger ledger = ledger()) {
            keep(ledger, "D. Walker", "before", "2026-03-01", "grip");
        }
        enter(robot, 1);
        until(() -> robot.lookup("#notes").tryQuery().isPresent());
        robot.clickOn("#notes").write(" and posture").clickOn("#find");
        until(() -> {
            try (Ledger ledger = ledger()) {
                return ledger.lesson(1).orElseThrow().lesson().notes().contains("posture");
            }
        });
        robot.write("postu");
        until(() -> list(robot).getItems().size() == 1
                && ((TextField) robot.lookup("#find").query()).getText().equals("postu"));
        robot.write("xx");
        until(() -> list(robot).getItems().isEmpty());
        assertThat(player(robot)).as("nothing chosen, nothing shown").isEmpty();
    }

    /** The card of another lesson than the one on the desk: what is kept of one field must not take away the next. */
    @Test
    void whatIsWrittenAfterTabIsKept(FxRobot robot) throws Exception {
        try (Ledger ledger = ledger()) {
            keep(ledger, "D. Walker", "before", "2026-03-01", "");
        }
        enter(robot, 1);
        until(() -> robot.lookup("#place").tryQuery().isPresent());
        robot.clickOn("#place").write("bay 2").type(KeyCode.TAB);
        until(() -> kept(1).place().equals("bay 2"));
        robot.write("ball too far");
        robot.interact(screen::entered);
        until(() -> kept(1).notes().equals("ball too far"));
        robot.clickOn("#notes").write("!").type(KeyCode.TAB);
        until(() -> kept(1).notes().contains("!"));
        assertThat(kept(1).notes()).as("the tabulator leads on").doesNotContain("\t");
        // not clicked a second time: two clicks soon after each other choose a word
        TextArea notes = robot.lookup("#notes").queryAs(TextArea.class);
        robot.interact(() -> {
            notes.requestFocus();
            notes.end();
        });
        robot.eraseText(1).type(KeyCode.TAB);
        until(() -> !kept(1).notes().contains("!"));
        assertThat(studio.asked()).as("no button was pressed by a space").isEmpty();
    }

    /** Nobody has to leave a field for what is written in it to be kept: whoever stops writing may go, or the power may. */
    @Test
    void whatIsWrittenIsKeptWhenTheHandRests(FxRobot robot) throws Exception {
        try (Ledger ledger = ledger()) {
            keep(ledger, "D. Walker", "before", "2026-03-01", "");
        }
        enter(robot, 1);
        until(() -> robot.lookup("#place").tryQuery().isPresent());
        robot.clickOn("#place").write("bay 2");
        until(() -> kept(1).place().equals("bay 2"));
        TextField place = (TextField) robot.lookup("#place").query();
        assertThat(place.isFocused()).isTrue();
        robot.write(" by the net");
        until(() -> kept(1).place().equals("bay 2 by the net"));
        assertThat(place.getText()).as("written on, not over").isEqualTo("bay 2 by the net");
    }

    /** What was written is kept when Tab leads on from it, and the card shown anew: the button that Tab led to is still there. */
    @Test
    void whatIsShownAnewLeavesTheFocusWhereItIs(FxRobot robot) throws Exception {
        try (Ledger ledger = ledger()) {
            keep(ledger, "D. Walker", "before", "2026-03-01", "");
        }
        enter(robot, 1);
        until(() -> robot.lookup("#notes").tryQuery().isPresent());
        try (Ledger ledger = ledger()) {
            Player player = ledger.player(1).orElseThrow();
            ledger.changePlayer(
                    new Player(player.id(), player.version(), player.details().withName(Optional.of("E. Walker"))));
        }
        robot.clickOn("#notes").write("ball too far").type(KeyCode.TAB);
        Node led = window.getScene().getFocusOwner();
        assertThat(led).isInstanceOf(Button.class);
        until(() -> player(robot).equals("E. Walker"));
        Node now = window.getScene().getFocusOwner();
        assertThat(now.getId()).isEqualTo(led.getId());
        assertThat(now.getScene()).as("on the screen").isNotNull();
        assertThat(kept(1).notes()).isEqualTo("ball too far");
    }

    private Lesson kept(int id) throws Exception {
        try (Ledger ledger = ledger()) {
            return ledger.lesson(id).orElseThrow().lesson();
        }
    }

    @Test
    void theRecentLessonsStandFirst(FxRobot robot) throws Exception {
        try (Ledger ledger = ledger()) {
            keep(ledger, "D. Walker", "after", "2026-04-01", "the later");
            keep(ledger, "E. Miller", "before", "2026-03-01", "the earlier, put in later");
        }
        enter(robot, 2);
        until(() -> player(robot).equals("D. Walker"));
    }

    @Test
    void sixtyLessonsAndLongNamesFit(FxRobot robot) throws Exception {
        try (Ledger ledger = ledger()) {
            for (int i = 0; i < 60; i++) {
                keep(
                        ledger,
                        i % 3 == 0 ? LONG : "D. Walker",
                        i % 2 == 0 ? "before" : "after",
                        String.format("2026-%02d-%02d", 1 + i / 28, 1 + i % 28),
                        "lesson " + i);
            }
        }
        enter(robot, 60);
        robot.write("max");
        until(() -> list(robot).getItems().size() == 20 && player(robot).equals(LONG));
        Label name = robot.lookup("#card-player").queryAs(Label.class);
        assertThat(name.localToScene(name.getBoundsInLocal()).getMaxX())
                .as("inside the window")
                .isLessThanOrEqualTo(name.getScene().getWidth());
        assertThat(robot.lookup("#lessons").queryListView().lookupAll(".scroll-bar").stream()
                        .filter(b -> b instanceof javafx.scene.control.ScrollBar s
                                && s.isVisible()
                                && s.getOrientation() == javafx.geometry.Orientation.HORIZONTAL))
                .as("no scrolling sideways")
                .isEmpty();
        picture(robot, "players-60");
    }

    @Test
    void enterDeletesNoLesson(FxRobot robot) throws Exception {
        try (Ledger ledger = ledger()) {
            keep(ledger, "D. Walker", "before", "2026-03-01", "grip");
        }
        enter(robot, 1);
        until(() -> robot.lookup("#delete-lesson").tryQuery().isPresent());
        robot.clickOn("#delete-lesson");
        ShownDialog.wellMade(window);
        robot.type(KeyCode.ENTER);
        assertThat(ShownDialog.over(window)).isEmpty();
        enter(robot, 1);
    }

    @Test
    void anotherVersionGoesOnlyWhenThatIsSure(FxRobot robot) throws Exception {
        try (Ledger ledger = ledger()) {
            keep(ledger, "D. Walker", "before", "2026-03-01", "grip");
            KeptLesson kept = ledger.lesson(1).orElseThrow();
            ledger.saveMarks(1, kept.version(), kept.lesson().withNotes("theirs"));
            assertThat(ledger.saveMarks(1, kept.version(), kept.lesson().withNotes("mine")))
                    .isInstanceOf(Saved.Conflict.class);
        }
        enter(robot, 1);
        until(() -> robot.lookup("#aside-drop").tryQuery().isPresent());
        for (String button : List.of("#aside-drop", "#aside-take")) {
            robot.clickOn(button);
            ShownDialog.wellMade(window);
            robot.type(KeyCode.ENTER);
            assertThat(ShownDialog.over(window)).isEmpty();
        }
        robot.clickOn("#aside-drop").clickOn("#sure-aside-drop");
        until(() -> robot.lookup("#aside-drop").tryQuery().isEmpty());
        try (Ledger ledger = ledger()) {
            assertThat(ledger.asides(1)).isEmpty();
            assertThat(ledger.lesson(1).orElseThrow().lesson().notes()).isEqualTo("theirs");
        }
    }

    @Test
    void whatIsWrongOfAPlayerIsSaidBesideTheField(FxRobot robot) throws Exception {
        try (Ledger ledger = ledger()) {
            keep(ledger, LONG, "before", "2026-03-01", "grip");
        }
        enter(robot, 1);
        until(() -> robot.lookup("#edit-player").tryQuery().isPresent());
        robot.clickOn("#edit-player");
        Stage dialog = ShownDialog.wellMade(window);
        robot.interact(
                () -> robot.lookup("#player-height").queryAs(TextField.class).setText("tall"));
        robot.clickOn("#player-keep");
        assertThat(dialog.isShowing()).isTrue();
        assertThat(robot.lookup("#player-height-fault").query().isVisible()).isTrue();
        assertThat(robot.lookup("#player-born-fault").query().isVisible()).isFalse();
        robot.type(KeyCode.ESCAPE);
        assertThat(dialog.isShowing()).as("asked first").isTrue();
        robot.type(KeyCode.ENTER);
        robot.interact(
                () -> robot.lookup("#player-height").queryAs(TextField.class).setText("178"));
        robot.clickOn("#player-keep");
        until(() -> {
            try (Ledger ledger = ledger()) {
                return ledger.players().get(0).details().heightM().equals(OptionalDouble.of(1.78));
            }
        });
    }

    @Test
    void aPlayerIsDeletedOnlyWhenThatIsSure(FxRobot robot) throws Exception {
        try (Ledger ledger = ledger()) {
            keep(ledger, "D. Walker", "before", "2026-03-01", "grip");
        }
        enter(robot, 1);
        until(() -> robot.lookup("#delete-player").tryQuery().isPresent());
        robot.clickOn("#delete-player");
        assertThat(ShownDialog.wellMade(window)).as("with what it asks whole").isNotNull();
        robot.type(KeyCode.ENTER);
        assertThat(ShownDialog.over(window)).as("Enter is the safe answer").isEmpty();
        robot.clickOn("#delete-player").clickOn("Cancel");
        enter(robot, 1);
        until(() -> robot.lookup("#delete-player").tryQuery().isPresent());
        robot.clickOn("#delete-player").clickOn("#give-first").clickOn("#sure-delete");
        until(() -> list(robot).getItems().isEmpty());
        try (Ledger ledger = ledger()) {
            assertThat(ledger.players()).isEmpty();
        }
    }

    @Test
    void twoPlayersAreMadeOneOnlyWhenThatIsSure(FxRobot robot) throws Exception {
        try (Ledger ledger = ledger()) {
            keep(ledger, "D. Walker", "before", "2026-03-01", "grip");
            keep(ledger, "Dora Walker", "after", "2026-04-01", "ball back");
            keep(ledger, "E. Miller", "after", "2026-03-15", "");
        }
        enter(robot, 3);
        robot.write("dora");
        until(() -> player(robot).equals("Dora Walker"));
        for (boolean sure : new boolean[] {false, true}) {
            until(() -> robot.lookup("#one-with").tryQuery().isPresent());
            robot.clickOn("#one-with");
            until(() -> robot.lookup("#one-person").tryQuery().isPresent());
            robot.interact(
                    () -> robot.lookup("#one-person").queryAs(TextField.class).setText("walker"));
            until(() -> robot.lookup("#one-person-1").tryQuery().isPresent());
            assertThat(robot.lookup("#one-person-2").tryQuery())
                    .as("nobody is the same as themselves")
                    .isEmpty();
            robot.clickOn("#one-person-1");
            until(() -> !ShownDialog.over(window).isEmpty());
            ShownDialog.wellMade(window);
            picture(robot, "players-one");
            if (sure) {
                robot.clickOn("#sure-one");
            } else {
                robot.type(KeyCode.ENTER);
            }
            assertThat(ShownDialog.over(window)).isEmpty();
        }
        until(() ->
                said().stream().anyMatch(s -> s.equals("One lesson belongs to Dora Walker (number 2) now as well.")));
        try (Ledger ledger = ledger()) {
            assertThat(ledger.players()).extracting(Player::id).containsExactly(3, 2);
            assertThat(ledger.lessonNumbers(Optional.of(2))).containsExactly(1, 2);
        }
    }

    @Test
    void theSameSetupOnceMoreIsAskedOfTheDesk(FxRobot robot) throws Exception {
        try (Ledger ledger = ledger()) {
            keep(ledger, "D. Walker", "before", "2026-03-01", "grip");
            KeptLesson kept = ledger.lesson(1).orElseThrow();
            ledger.save(1, kept.version(), kept.lesson().withSetup("told"), kept.findings());
        }
        enter(robot, 1);
        until(() -> robot.lookup("#same-setup").tryQuery().isPresent());
        robot.clickOn("#same-setup");
        assertThat(studio.asked()).containsExactly("same setup as 1");
        picture(robot, "players-setup");
        robot.clickOn("#other-setup");
        until(() -> robot.lookup("#other-setup").tryQuery().isEmpty());
        try (Ledger ledger = ledger()) {
            assertThat(ledger.lesson(1).orElseThrow().lesson().setup()).isEmpty();
            assertThat(ledger.lesson(1).orElseThrow().findings())
                    .as("what was found stays")
                    .isNotEmpty();
        }
    }
}
